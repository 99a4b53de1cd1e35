import { RAD, wrap180 } from '../../figures/geometry/angles';
import { groundLine } from '../../figures/geometry/earth';
import type { Position } from '../../survey/document';
import type { JsonObject } from '../../survey/json';
import { metres } from '../../units/format';
import { knownAs } from '../bring-in/runway-ends';
import { Tally } from '../bring-in/tally';
import {
  noQuestions,
  type AirfieldChoice,
  type Answers,
  type Candidate,
  type Proposal,
  type ReadSource,
  type Surroundings,
} from '../bring-in/types';
import { flagsOf } from '../catalogue/flags';
import { isLocated, missingRunwayDoubts } from '../catalogue/doubts';
import { runwayProperties } from '../catalogue/survey-from-airfield';
import { openDataCredit } from './credit';
import type { AirportRow, OpenDataTable, RunwayRow } from './tables';

/** As many airfields as are offered to choose from. */
const mostOffered = 12;

/** m: what the survey takes. */
const elevations = [-500, 9000] as const;
const displacements = [0, 5000] as const;

interface Field {
  readonly ident: string;
  readonly position: Position;
  readonly airport: AirportRow | null;
  readonly runways: readonly RunwayRow[];
}

/** The runways of one airfield of the open airport tables. `instant`: the day whose declination checks their numbers. */
export class AirfieldTablesSource implements ReadSource {
  readonly #fields = new Map<string, Field>();
  readonly #left: number;
  readonly #instant: number;
  readonly #onlyAirports: boolean;

  constructor(tables: readonly OpenDataTable[], instant: number) {
    this.#instant = instant;
    this.#left = tables.reduce((sum, { left }) => sum + left, 0);
    this.#onlyAirports = tables.every(({ table }) => table === 'airports');
    const airports = new Map(
      tables.flatMap((t) => (t.table === 'airports' ? t.rows.map((row) => [row.ident, row] as const) : [])),
    );
    const runways = new Map<string, RunwayRow[]>();
    for (const table of tables)
      if (table.table === 'runways')
        for (const row of table.rows) {
          const list = runways.get(row.airport);
          if (list) list.push(row);
          else runways.set(row.airport, [row]);
        }
    for (const ident of new Set([...airports.keys(), ...runways.keys()])) {
      const airport = airports.get(ident) ?? null;
      const rows = runways.get(ident) ?? [];
      const position =
        airport?.position ?? rows.flatMap(({ ends }) => ends).find((end) => end !== null)?.position;
      if (position) this.#fields.set(ident, { ident, position, airport, runways: rows });
    }
  }

  propose(around: Surroundings, answers: Answers): Proposal {
    const tally = new Tally();
    if (this.#left > 0) tally.add('rows', 'they have no code or no coordinates', this.#left);
    const nearest = this.#nearest(around.reference);
    const asked = answers.airfield?.trim().toUpperCase() ?? '';
    const field =
      asked === ''
        ? (around.reference && nearest[0]) || null
        : (this.#fields.get(asked) ?? this.#byIcao(asked));
    const remarks =
      asked !== '' && !field
        ? [
            `There is no airfield "${asked.slice(0, 20)}" in this table. Type its code as it stands in the column "ident".`,
          ]
        : field
          ? this.#remarksOn(field)
          : ['This survey does not say where it is: type the code of the airfield.'];
    return {
      candidates: field ? this.#candidates(field, around, tally) : [],
      leftOut: tally.list,
      remarks,
      credits: [openDataCredit],
      site: field ? siteOf(field, around) : {},
      asks: {
        ...noQuestions,
        airfields: nearest.slice(0, mostOffered).map((f) => choiceOf(f, around.reference)),
      },
      middle: field?.position ?? null,
      placeName: field?.airport?.name ?? field?.ident ?? '',
    };
  }

  #byIcao(code: string): Field | null {
    for (const field of this.#fields.values()) if (field.airport?.icao === code) return field;
    return null;
  }

  #nearest(reference: Position | null): Field[] {
    const fields = [...this.#fields.values()];
    if (!reference) return fields;
    const apart = ([lng, lat]: Position) =>
      Math.hypot(lat - reference[1], wrap180(lng - reference[0]) * Math.cos(reference[1] * RAD));
    return fields
      .map((field) => ({ field, away: apart(field.position) }))
      .sort((a, b) => a.away - b.away)
      .slice(0, mostOffered)
      .map(({ field }) => field);
  }

  #remarksOn({ airport, runways }: Field): string[] {
    if (this.#onlyAirports)
      return [
        'This table names airfields, not runways. Bring in runways.csv as well, together with it or after it.',
      ];
    const missing = runways.filter(
      (runway) => !isLocated(flagged(runway, runwayAirfield(runway, airport), this.#instant)),
    );
    return missing.length === 0 && runways.length > 0 ? [] : missingRunwayDoubts({ runways: missing });
  }

  #candidates({ airport, runways }: Field, around: Surroundings, tally: Tally): Candidate[] {
    return runways.flatMap((given): Candidate[] => {
      const row = credible(given, tally);
      const airfield = runwayAirfield(row, airport);
      const runway = flagged(row, airfield, this.#instant);
      if (!isLocated(runway)) {
        tally.add('runways', 'the table does not say where both ends lie');
        return [];
      }
      const line = [runway.ends[0].position, runway.ends[1].position] as const;
      const source = `airport table ${row.id}`;
      const known = knownAs(line, source, around.runways);
      const properties = runwayProperties(runway, airfield);
      if (known) {
        tally.add(`runway ${known.name}`, 'the survey has this runway already');
        return [];
      }
      return [
        {
          source,
          kind: 'runway',
          group: 'runways',
          shape: { type: 'LineString', coordinates: line },
          properties: row.closed ? closed(properties) : properties,
        },
      ];
    });
  }
}

/** A row without the numbers that no runway has (the survey's bounds), which are counted. */
function credible(row: RunwayRow, tally: Tally): RunwayRow {
  const within = (value: number | null, [least, most]: readonly [number, number], what: string) => {
    if (value === null || (value >= least && value <= most)) return value;
    tally.add(what, `they are outside ${metres(least)} to ${metres(most)}`);
    return null;
  };
  const [a, b] = row.ends.map(
    (end) =>
      end && {
        ...end,
        elevation: within(end.elevation, elevations, 'elevations of runway ends'),
        displaced: within(end.displaced, displacements, 'displaced thresholds') ?? 0,
      },
  );
  return { ...row, ends: [a ?? null, b ?? null] };
}

/** Where the field lies, by what the tables say of it. */
function runwayAirfield({ ends }: RunwayRow, airport: AirportRow | null) {
  const end = ends[0] ?? ends[1];
  return {
    position: airport?.position ?? end?.position ?? ([0, 0] as const),
    elevation: airport?.elevation ?? end?.elevation ?? 0,
  };
}

const flagged = (
  row: RunwayRow,
  { position, elevation }: { position: Position; elevation: number },
  instant: number,
) => ({
  ...row,
  flags: flagsOf(row, position, elevation, instant),
});

function closed(properties: JsonObject): JsonObject {
  const ends = properties['ends'] as readonly JsonObject[];
  return { ...properties, ends: ends.map((end) => ({ ...end, closed: true })) };
}

const isElevation = (m: number): boolean => m >= elevations[0] && m <= elevations[1];

/** What the survey does not say itself. */
function siteOf({ airport, position }: Field, { reference, elevation }: Surroundings): JsonObject {
  return {
    ...(reference === null ? { reference: position } : {}),
    ...(reference === null && airport ? { name: airport.name } : {}),
    ...(reference === null && airport?.icao ? { icao: airport.icao } : {}),
    ...(elevation === null && airport && airport.elevation !== null && isElevation(airport.elevation)
      ? { elevation: Math.round(airport.elevation * 100) / 100 }
      : {}),
  };
}

const choiceOf = ({ ident, airport, position }: Field, reference: Position | null): AirfieldChoice => {
  const away = reference ? groundLine(reference, position).distance : null;
  return { ident, name: airport?.name ?? (away === null ? '' : `${metres(away)} away`), away };
};
