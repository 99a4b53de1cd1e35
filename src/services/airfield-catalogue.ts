import { catalogueCredit } from '../imports/catalogue/credit';
import { loadCatalogue, loadFrequencies, loadRunways } from '../imports/catalogue/load';
import { airfieldsNear } from '../imports/catalogue/near';
import { searchCatalogue } from '../imports/catalogue/search';
import { surveyFromAirfield } from '../imports/catalogue/survey-from-airfield';
import type { Airfield, Catalogue, Loaded } from '../imports/catalogue/types';
import { timeZoneAt } from '../imports/time-zone';
import { chosenMoments } from '../figures/light/day-light';
import { sunTimes } from '../figures/light/sun-times';
import type { Position, Survey } from '../survey/document';
import { setMomentRule, setMoments } from '../survey/edits/set-members';
import { freshId } from '../survey/ids';
import { newSurvey } from '../survey/new-survey';
import { clockAt, dateAt, dayOf } from '../time/local-time';
import type { AirfieldMatch, Airfields, NearAirfield, NearLight } from '../ports/airfields';
import { litRunway, stripOf } from './near-strips';
import type { Mine } from '../state/mine.svelte';
import type { Files } from '../ports/files';

/** As many lines as are still looked through; further letters narrow better. */
const linesShown = 40;

/** Where the three files of the catalogue lie. */
export type FilePlaces = Readonly<Record<'catalogue' | 'runways' | 'frequencies', string>>;
const besideThePage: FilePlaces = {
  catalogue: './catalogue.json',
  runways: './runways.json',
  frequencies: './frequencies.json',
};

export interface AirfieldNeeds {
  readonly files: Pick<Files, 'start'>;
  /** What every new survey starts with. */
  readonly mine: Pick<Mine, 'startWith'>;
  readonly now: () => number;
  readonly places?: FilePlaces;
}

/** Remembers what `load` has loaded; what could not be is null, and asked for again the next time. */
function kept<T>(load: (catalogue: Catalogue) => Promise<Loaded<T>>) {
  let value: Promise<T | null> | null = null;
  return (catalogue: Catalogue | null): Promise<T | null> => {
    if (!catalogue) return Promise.resolve(null);
    return (value ??= load(catalogue).then((loaded) => {
      if (!loaded.ok) value = null;
      return loaded.ok ? loaded.value : null;
    }));
  };
}

/** The part of the composition root that knows the airfield catalogue and where time zones lie. */
export class AirfieldCatalogue implements Airfields {
  readonly credit = catalogueCredit;
  readonly #files: Pick<Files, 'start'>;
  readonly #mine: AirfieldNeeds['mine'];
  readonly #now: () => number;
  readonly #places: FilePlaces;
  #catalogue: Catalogue | null = null;
  readonly #runways = kept((catalogue) => loadRunways(this.#places.runways, catalogue));
  readonly #frequencies = kept((catalogue) => loadFrequencies(this.#places.frequencies, catalogue));

  constructor({ files, mine, now, places = besideThePage }: AirfieldNeeds) {
    this.#files = files;
    this.#mine = mine;
    this.#now = now;
    this.#places = places;
  }

  async load(): Promise<string | null> {
    if (this.#catalogue) return null;
    const result = await loadCatalogue(this.#places.catalogue);
    if (!result.ok) return result.reason;
    this.#catalogue = result.value;
    // On its way while somebody types; what fails now is asked for again when a survey starts.
    void this.#runways(this.#catalogue);
    return null;
  }

  search(text: string): readonly AirfieldMatch[] {
    if (!this.#catalogue) return [];
    return searchCatalogue(this.#catalogue, text, linesShown).map(({ airfield }) => matchOf(airfield));
  }

  positionOf({ key }: AirfieldMatch): Position | null {
    return this.#catalogue?.airfieldAt(key).position ?? null;
  }

  async near(from: Position, reach: number): Promise<readonly NearAirfield[]> {
    const catalogue = this.#catalogue;
    if (!catalogue) return [];
    const runways = await this.#runways(catalogue);
    return airfieldsNear(catalogue, from, reach).map(({ index, distance }) => {
      const airfield = catalogue.airfieldAt(index);
      const strips = runways?.(index).map(stripOf) ?? null;
      return { ...matchOf(airfield), position: airfield.position, distance, strips };
    });
  }

  async lightAt({ key, position }: NearAirfield, date: string): Promise<NearLight> {
    const [runways, { timeZone }] = await Promise.all([this.#runways(this.#catalogue), timeZoneAt(position)]);
    const day = dayOf(date, timeZone);
    const lit: NearLight['runways'][number][] = [];
    for (const runway of runways?.(key) ?? []) {
      lit.push(...litRunway(runway, day));
      // A breath after each: the list can be scrolled meanwhile.
      await new Promise((go) => setTimeout(go));
    }
    return { timeZone, day, runways: lit };
  }

  async start({ key }: AirfieldMatch): Promise<void> {
    const catalogue = this.#catalogue;
    const found = catalogue?.airfieldAt(key);
    if (!found) throw new Error(`expected an airfield of the catalogue, got ${key}`);
    await this.#files.start(async () => {
      const [runways, frequencies, { timeZone, guessed }] = await Promise.all([
        this.#runways(catalogue),
        this.#frequencies(catalogue),
        timeZoneAt(found.position),
      ]);
      const airfield = {
        ...found,
        runways: runways?.(key) ?? null,
        frequencies: frequencies?.(key) ?? null,
      };
      const { survey, doubts } = surveyFromAirfield(airfield, newIds(), timeZone);
      const notice = [...doubts, ...(guessed ? [guessedZone] : [])].join(' ');
      return { survey: this.#begun(survey, airfield.position, timeZone), notice: notice || null };
    });
  }

  async startEmpty(name: string, position: Position): Promise<void> {
    await this.#files.start(async () => {
      const { timeZone, guessed } = await timeZoneAt(position);
      const survey = newSurvey({ name, timeZone, reference: position });
      return {
        survey: this.#begun(survey, position, timeZone),
        notice: `A new survey. Draw its first runway by its two ends.${guessed ? ` ${guessedZone}` : ''}`,
        life: { holds: hasNoRunway, then: guessed ? guessedZone : null },
      };
    });
  }

  #begun(survey: Survey, position: Position, timeZone: string): Survey {
    return this.#mine.startWith(lightWorthSeeing(survey, position, timeZone, this.#now()));
  }
}

/** Moments A and B an hour after today's sunrise and an hour before its sunset, where the sun rises at all. */
function lightWorthSeeing(survey: Survey, position: Position, timeZone: string, now: number): Survey {
  const day = dayOf(dateAt(now, timeZone), timeZone);
  const { afterSunrise, beforeSunset } = chosenMoments(sunTimes(position, day.from, day.to), null);
  if (afterSunrise === null || beforeSunset === null) return survey;
  const typed = setMoments(survey, {
    a: clockAt(afterSunrise, timeZone),
    b: clockAt(beforeSunset, timeZone),
  });
  // They follow the sun, whatever date is looked at later.
  const morning = setMomentRule(typed, 'a', { event: 'sunrise', minutes: 60 });
  return setMomentRule(morning, 'b', { event: 'sunset', minutes: -60 });
}

const hasNoRunway = ({ features }: Survey): boolean =>
  !features.some(({ properties }) => properties?.['kind'] === 'runway');

const guessedZone =
  'The time zone is guessed from the longitude: set it in the site panel, where nothing is selected.';

function newIds(): () => string {
  const taken = new Set<string>();
  return () => {
    const id = freshId(taken);
    taken.add(id);
    return id;
  };
}

const countries = new Intl.DisplayNames('en', { type: 'region', fallback: 'code' });

function matchOf(airfield: Airfield): AirfieldMatch {
  const codes = [airfield.icao, airfield.iata, ...airfield.localCodes].filter((code) => code !== null);
  const [code = '', ...otherCodes] = new Set(codes);
  const country = /^[A-Z]{2}$/.test(airfield.country) ? countries.of(airfield.country) : airfield.country;
  return {
    key: airfield.index,
    code,
    otherCodes,
    name: airfield.name,
    place: [airfield.town, country].filter(Boolean).join(', '),
    kind: airfield.kind.endsWith('airport') ? '' : airfield.kind.replace('-', ' '),
    locatedRunways: airfield.locatedCount,
    runways: airfield.runwayCount,
  };
}
