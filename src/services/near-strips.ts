import { litSpans } from '../figures/light/lit-side';
import type { CatalogueRunway } from '../imports/catalogue/types';
import type { NearAirfield, NearLight } from '../ports/airfields';
import type { Runway } from '../survey/schema/runway';
import { readRunwayProperties } from '../survey/schema/runway';

type Strip = NonNullable<NearAirfield['strips']>[number];

const nameOf = ({ ends }: CatalogueRunway): string =>
  ends.flatMap((end) => (end === null || end.designator === '' ? [] : [end.designator])).join('/');

/** A runway of the catalogue in one line. */
export const stripOf = (runway: CatalogueRunway): Strip => ({
  name: nameOf(runway),
  length: runway.length,
  surface: runway.surface,
});

/** When which side of it is lit; nothing where the data do not say where it lies. */
export function litRunway(runway: CatalogueRunway, { from, to }: NearLight['day']): NearLight['runways'] {
  const [a, b] = runway.ends;
  if (a === null || b === null) return [];
  const line: Runway['line'] = [a.position, b.position];
  const drawn: Runway = { id: nameOf(runway), line, ...readRunwayProperties({}, () => undefined) };
  return [{ name: nameOf(runway), spans: litSpans(drawn, from, to) }];
}
