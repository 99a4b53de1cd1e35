import { wrap180 } from '../../figures/geometry/angles';
import type { Position } from '../../survey/document';
import type { NewShape } from '../../survey/edits/add-feature';
import type { JsonObject } from '../../survey/json';
import { metres } from '../../units/format';
import { knownAs } from '../bring-in/runway-ends';
import { Nearness } from '../bring-in/nearness';
import { Tally } from '../bring-in/tally';
import {
  groundGroups,
  noQuestions,
  obstacleGroups,
  type Answers,
  type Candidate,
  type Group,
  type Proposal,
  type ReadSource,
  type Surroundings,
} from '../bring-in/types';
import { practice } from '../practice';
import { classify } from './classify';
import { osmCredit } from './credit';
import type { Mapped, Tags } from './elements';
import { heightIn } from './heights';
import type { MappedThings } from './mapped';
import { runwaysFrom } from './runways';

/** What of a map's things comes into a survey. `instant`: the day whose magnetic declination names the runways. */
export class OsmSource implements ReadSource {
  readonly #map: MappedThings;
  readonly #instant: number;

  constructor(map: MappedThings, instant: number) {
    this.#map = map;
    this.#instant = instant;
  }

  propose(around: Surroundings, answers: Answers): Proposal {
    const tally = new Tally();
    tally.addAll(this.#map.leftOut);
    const pieces: Mapped[] = [];
    const aerodromes: Mapped[] = [];
    const found: Candidate[] = [];
    const odd = new Set<string>();
    const oddBelow = new Set<string>();
    const middle = middleOf(this.#map.things);
    const reference = around.reference ?? middle;
    if (reference === null) return this.#nothing(tally);
    const assume = { buildingHeight: answers.buildingHeight, southern: reference[1] < 0 };
    for (const thing of this.#map.things) {
      const is = classify(thing.tags, thing.rings !== null, assume);
      if (is.is === 'runway') pieces.push(thing);
      else if (is.is === 'aerodrome') {
        aerodromes.push(thing);
        if (thing.rings) found.push(outlineOf(thing));
      } else if (is.is === 'left-out') tally.add(is.what, is.reason);
      else {
        if (is.oddHeight !== null) odd.add(is.oddHeight);
        if (is.oddUnderside !== null) oddBelow.add(is.oddUnderside);
        const { kind, group, properties, assumed } = is;
        found.push({
          source: `osm ${thing.id}`,
          kind,
          group,
          properties,
          shape: shapeOf(thing),
          ...(assumed ? { assumed } : {}),
        });
      }
    }
    const runways = runwaysFrom(pieces, around.elevation ?? 0, this.#instant).filter((runway) => {
      const known = knownAs(lineOf(runway), runway.source, around.runways);
      if (known) tally.add(`runway ${known.name}`, 'the survey has this runway already');
      return !known;
    });
    const near = relevant([...runways, ...found], reference, around, answers.radius, tally);
    return {
      candidates: near,
      leftOut: tally.list,
      remarks: [...this.#map.remarks, ...oddHeights(odd), ...oddUndersides(oddBelow)],
      credits: [osmCredit],
      site: siteOf(aerodromes, runwayMiddle(near) ?? reference, around),
      asks: {
        ...noQuestions,
        radius: true,
        buildingHeight: near.some(({ assumed, group }) => assumed === true && group === 'buildings'),
      },
      middle: runwayMiddle(runways) ?? middle,
      placeName: nearestTags(aerodromes, runwayMiddle(runways) ?? reference)['name']?.slice(0, 120) ?? '',
    };
  }

  #nothing(tally: Tally): Proposal {
    return {
      candidates: [],
      leftOut: tally.list,
      remarks: this.#map.remarks,
      credits: [],
      site: {},
      asks: noQuestions,
      middle: null,
      placeName: '',
    };
  }
}

/** Where the fence stands, more or less: inside it nobody is let in to take pictures. */
const outlineOf = (thing: Mapped): Candidate => ({
  source: `osm ${thing.id}`,
  kind: 'ground-use',
  group: 'outlines of aerodromes',
  properties: { use: 'aerodrome', name: (thing.tags['name'] ?? '').slice(0, 120), access: 'unknown' },
  shape: shapeOf(thing),
});

/** What the map says of the aerodrome nearest to a place. */
function nearestTags(aerodromes: readonly Mapped[], place: Position): Tags {
  const near = new Nearness(place, []);
  const away = (thing: Mapped) => near.toReference(shapeOf(thing));
  return [...aerodromes].sort((a, b) => away(a) - away(b))[0]?.tags ?? {};
}

/** What the map says of the airfield, where the survey says nothing. */
function siteOf(
  aerodromes: readonly Mapped[],
  middle: Position,
  { reference, elevation }: Surroundings,
): JsonObject {
  const { name, icao, ele } = nearestTags(aerodromes, middle);
  const height = heightIn(ele);
  return {
    ...(reference === null ? { reference: middle } : {}),
    ...(reference === null && name !== undefined ? { name: name.slice(0, 120) } : {}),
    ...(reference === null && /^[A-Z]{4}$/.test(icao ?? '') ? { icao: icao ?? '' } : {}),
    ...(elevation === null && height !== null ? { elevation: height } : {}),
  };
}

const obstacleKinds = new Set<Group>(obstacleGroups);
const groundKinds = new Set<Group>(groundGroups);

/** What lies near enough to matter: a city's extract would drown the survey. */
function relevant(
  all: readonly Candidate[],
  reference: Position,
  around: Surroundings,
  radius: number,
  tally: Tally,
): readonly Candidate[] {
  const runways = all.filter(({ group }) => group === 'runways').map(lineOf);
  const spots = around.spots.map((spot) => [spot, spot] as const);
  const near = new Nearness(reference, [...around.runways.map((r) => r.line), ...runways, ...spots]);
  const within = Math.min(practice.near, radius);
  const byDistance: { readonly candidate: Candidate; readonly distance: number }[] = [];
  const kept: Candidate[] = [];
  for (const candidate of all) {
    const { group, shape } = candidate;
    if (near.toReference(shape) > radius)
      tally.add(group, `farther than ${metres(radius)} from the airfield`);
    else if (!obstacleKinds.has(group) && !groundKinds.has(group)) kept.push(candidate);
    else if (group === 'buildings' && near.area(shape) < practice.leastBuilding)
      tally.add(group, `smaller than ${practice.leastBuilding} m²`);
    else {
      const distance = near.toLines(shape);
      if (distance <= within) byDistance.push({ candidate, distance });
      else tally.add(group, `farther than ${metres(within)} from runways and standing spots`);
    }
  }
  byDistance.sort((a, b) => a.distance - b.distance);
  let [obstacles, grounds] = [0, 0];
  for (const { candidate } of byDistance) {
    const { group } = candidate;
    const room = obstacleKinds.has(group)
      ? obstacles++ < practice.mostObstacles
      : grounds++ < practice.mostGroundUses;
    if (room) kept.push(candidate);
    else {
      const most = obstacleKinds.has(group) ? practice.mostObstacles : practice.mostGroundUses;
      tally.add(group, `only the ${most} nearest of their sort come in; a smaller radius says which`);
    }
  }
  return kept;
}

const lineOf = ({ shape }: Candidate): readonly [Position, Position] => {
  const [a, b] = shape.type === 'LineString' ? shape.coordinates : [];
  if (!a || !b) throw new Error(`expected a runway with two ends, got a ${shape.type}`);
  return [a, b];
};

const shapeOf = ({ rings, line }: Mapped): NewShape =>
  rings ? { type: 'Polygon', coordinates: rings } : { type: 'LineString', coordinates: line ?? [] };

function runwayMiddle(candidates: readonly Candidate[]): Position | null {
  const ends = candidates.filter(({ group }) => group === 'runways').flatMap(lineOf);
  return ends.length === 0 ? null : middleOfPlaces(ends);
}

function middleOf(things: readonly Mapped[]): Position | null {
  const aeroways = things.filter(({ tags }) => tags['aeroway'] !== undefined);
  const places = (aeroways.length > 0 ? aeroways : things).flatMap(({ rings, line }) =>
    (rings?.[0] ?? line ?? []).slice(0, 1),
  );
  return places.length === 0 ? null : middleOfPlaces(places);
}

/** The middle one by longitude and by latitude: a stray far off does not move it. */
function middleOfPlaces(places: readonly Position[]): Position {
  const middle = (values: readonly number[]) => {
    const sorted = [...values].sort((a, b) => a - b);
    const half = (sorted.length - 1) / 2;
    return ((sorted[Math.floor(half)] as number) + (sorted[Math.ceil(half)] as number)) / 2;
  };
  const round = (x: number) => Math.round(x * 1e7) / 1e7;
  // Counted from one of the places, longitudes do not jump at the antimeridian.
  const from = places[0]?.[0] ?? 0;
  const lng = wrap180(from + middle(places.map((p) => wrap180(p[0] - from))));
  return [round(lng), round(middle(places.map((p) => p[1])))];
}

const oddHeights = (odd: ReadonlySet<string>): string[] =>
  odd.size === 0
    ? []
    : [
        `${odd.size === 1 ? 'One height' : `${odd.size} heights`} could not be read (${someOf(odd)}): storeys, or an assumed height, stand in.`,
      ];

const oddUndersides = (odd: ReadonlySet<string>): string[] =>
  odd.size === 0
    ? []
    : [
        `${odd.size === 1 ? 'One underside' : `${odd.size} undersides`} of buildings could not be read or ${odd.size === 1 ? 'is' : 'are'} not below the top (${someOf(odd)}): taken to hide down to the ground.`,
      ];

/** The first three of them as they stand there. */
const someOf = (odd: ReadonlySet<string>): string =>
  [...odd]
    .slice(0, 3)
    .map((text) => `"${text}"`)
    .join(', ') + (odd.size > 3 ? ' …' : '');
