import type { Contents } from '../../survey/contents';
import type { Position, Survey } from '../../survey/document';
import { kinds, readableKinds, type ReadableKind } from '../../survey/kinds';
import { Memo } from '../../survey/memo';
import { readFeature } from '../../survey/read-feature';
import type { Use } from '../../survey/schema/places';
import type { Access } from '../../survey/schema/standing-spot';
import type { SpotFigures } from '../../figures/types';
import { dateAt, parseInstant } from '../../time/local-time';
import type { Formats } from '../formats';
import { accessBadge, standingBadge } from '../words/access-words';
import { shortened } from '../../units/plain-text';
import { runwayName } from '../words/runway-name';

/** One line of the list. */
export interface Item {
  readonly id: string;
  readonly name: string;
  /** What else is worth knowing, "1,240 m". */
  readonly detail: string;
  /** The access record in a word or two; "" for features that have none. */
  readonly badge: string;
  /** Nobody may stand here. */
  readonly forbidden: boolean;
  /** Where it is: on screen when one of these is. */
  readonly places: readonly Position[];
}

export interface Group {
  readonly title: string;
  readonly items: readonly Item[];
}

interface Figures {
  /** The runways', in m; null for one without direction. */
  readonly lengths: readonly (number | null)[];
  readonly spots: readonly SpotFigures[];
  /** The spots' status on the day. */
  readonly access: readonly NonNullable<Access['status']>[];
  readonly fieldForbids: boolean;
}

const plain = { detail: '', badge: '', forbidden: false };

/** What the survey contains, grouped as it is on the map; empty groups are left out. */
export function contentsGroups(contents: Contents, figures: Figures, format: Formats): Group[] {
  return readableKinds
    .map((kind) => ({ title: kinds[kind].many, items: items[kind](contents, figures, format) }))
    .filter((group) => group.items.length > 0);
}

interface Drawn {
  readonly id: string;
  readonly name: string;
  readonly rings?: readonly (readonly Position[])[];
  readonly line?: readonly Position[];
}

/** The line of something drawn with corners: its name, or what it is and which. */
const named = (what: string, { id, name, rings, line }: Drawn, i: number): Item => ({
  ...plain,
  id,
  name: name || `${what} ${i + 1}`,
  places: rings?.[0] ?? line ?? [],
});

/** The lines of each kind. */
const items: {
  readonly [K in ReadableKind]: (contents: Contents, figures: Figures, format: Formats) => readonly Item[];
} = {
  runway: (contents, figures, format) =>
    contents.runways.map((runway, i) => ({
      ...plain,
      id: runway.id,
      name: runwayName(contents, runway.id),
      detail: format.length(figures.lengths[i] ?? null),
      places: runway.line,
    })),
  'standing-spot': (contents, figures, format) =>
    contents.spots.map((spot, i) => ({
      id: spot.id,
      name: spot.name || `Standing spot ${i + 1}`,
      detail: nearestCentreline(figures.spots[i], (id) => runwayName(contents, id), format),
      badge: standingBadge(figures.access[i] ?? 'unknown', figures.fieldForbids),
      forbidden: figures.fieldForbids || figures.access[i] === 'forbidden',
      places: [spot.position],
    })),
  'taxi-route': ({ taxiRoutes }) => taxiRoutes.map((route, i) => named('Taxi route', route, i)),
  apron: ({ aprons }) => aprons.map((apron, i) => named('Apron', apron, i)),
  'no-go': ({ noGoAreas }) =>
    noGoAreas.map((area, i) => ({ ...named('No-go area', area, i), detail: area.reason })),
  obstacle: ({ obstacles }, _, format) =>
    obstacles.map(
      remembered(format, (o, i) => ({
        ...named('Obstacle', o, i),
        detail: `${format.length(o.height)} high`,
      })),
    ),
  'flight-path': ({ flightPaths }) => flightPaths.map((path, i) => named('Flight path', path, i)),
  'display-line': ({ displayLines }) =>
    displayLines.map((display, i) => ({
      ...named('Display line', display, i),
      detail: display.programme.length > 0 ? `${display.programme.length} in the programme` : '',
    })),
  'crowd-line': ({ crowdLines }) => crowdLines.map((crowd, i) => named('Crowd line', crowd, i)),
  helipad: ({ helipads }) =>
    helipads.map((pad, i) => ({ ...named('Helipad', pad, i), places: [pad.position] })),
  'winch-run': ({ winchRuns }) => winchRuns.map((run, i) => named('Winch run', run, i)),
  'ground-use': ({ groundUses }, _, format) =>
    groundUses.map(
      remembered(format, (way, i) => ({
        ...named(useWords[way.use ?? 'road'], way, i),
        detail: way.access === 'unknown' || way.access === null ? '' : accessBadge[way.access],
      })),
    ),
  'log-entry': ({ logEntries, site }, _, format) =>
    logEntries.map(
      remembered(format, ({ id, time, position, path }, i) => {
        const instant = time === null ? null : parseInstant(time);
        return {
          ...plain,
          id,
          name:
            instant === null
              ? `Log entry ${i + 1}`
              : `${format.date(dateAt(instant, site.timeZone))}, ${format.clockAt(instant, site.timeZone)}`,
          detail: path === null ? '' : path.split('/').slice(-2).join(' '),
          places: [position],
        };
      }),
    ),
};

const kept = new Memo<Item>();

/** A line is made anew only when its feature, its place or the way of writing changes: a map has thousands, and a drag asks each time. */
function remembered<T extends object>(
  format: Formats,
  make: (value: T, i: number) => Item,
): (value: T, i: number) => Item {
  return (value, i) => kept.get([value, i, format], () => make(value, i));
}

const useWords: Readonly<Record<Use, string>> = {
  road: 'Road',
  path: 'Path',
  parking: 'Parking',
  green: 'Green',
  water: 'Water',
  rail: 'Railway',
  motorway: 'Motorway',
  aerodrome: 'Aerodrome',
  building: 'Building',
};

/** "180 m from 09/27, south side": the runway whose centreline is nearest. */
function nearestCentreline(
  spot: SpotFigures | undefined,
  nameOf: (id: string) => string,
  format: Formats,
): string {
  const nearest = [...(spot?.runways ?? [])].sort((a, b) => a.centrelineDistance - b.centrelineDistance)[0];
  if (!nearest) return '';
  const side = nearest.compassSide === null ? '' : `, ${nearest.compassSide} side`;
  return `${format.length(nearest.centrelineDistance)} from ${nameOf(nearest.id)}${side}`;
}

/** Kinds of other programs that are named. */
const mostKinds = 30;

/** What is in the file and not in the list, by its kind: kept as it is. `setAside`: ids of what cannot be read. */
export function keptAsTheyAre(
  survey: Survey,
  setAside: ReadonlySet<string>,
): readonly (readonly [kind: string, count: number])[] {
  const counts = new Map<string, number>();
  let others = 0;
  for (const feature of survey.features) {
    // What can be read stands in one of the groups.
    if (readFeature(feature).kind !== null) continue;
    const kind = feature.properties?.['kind'];
    const word = typeof kind === 'string' && kind !== '' ? shortened(kind, 40) : 'without a kind';
    const shown = setAside.has(feature.id) ? `${word}, set aside` : word;
    if (counts.size < mostKinds || counts.has(shown)) counts.set(shown, (counts.get(shown) ?? 0) + 1);
    else others++;
  }
  return others === 0 ? [...counts] : [...counts, ['of more kinds', others]];
}
