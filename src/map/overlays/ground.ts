import { outlineOf } from '../../figures/sight/outline';
import type { Contents } from '../../survey/contents';
import { kinds, type KindLists, type ReadableKind, type ValueOf } from '../../survey/kinds';
import { Memo } from '../../survey/memo';
import type { FlightPath, Obstacle } from '../../survey/schema/places';
import { sightOf } from '../../survey/schema/sights';
import { length } from '../../units/format';
import { amongWords } from '../../units/plain-text';
import { metric, type MapUnits } from '../units';
import { line, overlay, point, polygon, type Overlay, type OverlayFeature } from './features';
import { labelOf } from './label';
import { runwayFeatures } from './runway-features';
import { thinnedLine } from './thinned-line';

/** m by which the line of a recorded flight may pass beside its points: less than positions are known by. */
const trackTolerance = 2;

/** Roads, paths, parking and greens of a map that was brought in, under everything that the user has drawn. */
export const useOverlay = (groundUses: Contents['groundUses']): Overlay =>
  overlay(
    groundUses.map(({ id, rings, line: way, use, access }) => {
      const properties = { part: 'use', id, use: use ?? 'road', access: access ?? 'unknown' };
      return rings.length > 0 ? polygon(rings, properties) : line(way, properties);
    }),
  );

/** What is drawn of each kind on the ground; nothing of those that have an overlay of their own. */
const drawn: {
  readonly [K in ReadableKind]: ((value: ValueOf<K>, units: MapUnits) => readonly OverlayFeature[]) | null;
} = {
  'no-go': ({ id, name, rings }) => [polygon(rings, { part: 'no-go', id, label: labelOf(name) })],
  apron: ({ id, name, rings }) => [polygon(rings, { part: 'apron', id, label: labelOf(name) })],
  'taxi-route': ({ id, name, line: way }) => [line(way, { part: 'taxi-route', id, label: labelOf(name) })],
  obstacle: (obstacle, units) => [obstacleFeature(obstacle, units)],
  runway: (runway) => runwayFeatures(runway),
  'flight-path': (flight) => [flightFeature(flight)],
  'display-line': ({ id, name, line: way }) => [
    line(way, { part: 'display-line', id, label: labelOf(name) }),
  ],
  'crowd-line': ({ id, name, line: way }) => [line(way, { part: 'crowd-line', id, label: labelOf(name) })],
  helipad: ({ id, name, position }) => [point(position, { part: 'helipad', id, label: labelOf(name) })],
  'winch-run': ({ id, name, line: way }) => [line(way, { part: 'winch-run', id, label: labelOf(name) })],
  'standing-spot': null,
  'ground-use': null,
  'log-entry': null,
};

const drawnKinds = (Object.keys(drawn) as ReadableKind[]).filter((kind) => drawn[kind] !== null);

/** What the ground's overlay is drawn from: a list for each kind that has a row above, in their order. */
export const groundLists = (contents: KindLists): readonly (readonly unknown[])[] =>
  drawnKinds.map((kind) => contents[kinds[kind].list]);

/** What the survey says stands on the ground: drawn again only when one of these lists changes. */
export function groundOverlay(lists: ReturnType<typeof groundLists>, units: MapUnits = metric): Overlay {
  const of = <K extends ReadableKind>(kind: K, list: readonly unknown[]): readonly OverlayFeature[] =>
    list.flatMap((value) => drawn[kind]?.(value as ValueOf<K>, units) ?? []);
  return overlay(drawnKinds.flatMap((kind, i) => of(kind, lists[i] ?? [])));
}

/** Key: the flight. Life: the flight's. Hundreds of them are handed on whenever anything else on the ground changes. */
const flights = new Memo<OverlayFeature>();

/** Recorded flights have a point a second: as a line, they are drawn with those that its shape needs. */
const flightFeature = (flight: FlightPath): OverlayFeature =>
  flights.get([flight], () =>
    line(flight.source === 'drawn' ? flight.line : thinnedLine(flight.line, trackTolerance), {
      part: 'flight-path',
      id: flight.id,
      label: labelOf(flight.name),
    }),
  );

function obstacleFeature(obstacle: Obstacle, { lengths }: MapUnits): OverlayFeature {
  const { id, name, height, sight } = obstacle;
  const { chains, closed } = outlineOf(obstacle);
  const label = `${name === '' ? '' : `${amongWords(labelOf(name))}, `}${length(height, lengths)} high`;
  const properties = { id, label, looks: sightOf(sight).looks };
  return closed
    ? polygon(chains, { part: 'obstacle', ...properties })
    : line(chains[0] ?? [], { part: 'obstacle-line', ...properties });
}
