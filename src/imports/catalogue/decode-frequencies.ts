import { frequenciesFileSchema } from './columns';
import { outside, unequal } from './consistent';
import { fromDigits } from './digits';
import type { ByAirfield, Catalogue, CatalogueFrequency, Loaded } from './types';
import { at, damaged, fitting, ofAnotherBuild, secondOf, triples } from './unpack';

const what = 'The list of frequencies';

/** The frequencies that go with a catalogue (already parsed JSON), or why they cannot be used. Never throws. */
export function decodeFrequencies(
  json: unknown,
  { size, fields }: Pick<Catalogue, 'size' | 'fields'>,
): Loaded<ByAirfield<CatalogueFrequency>> {
  const file = fitting(what, frequenciesFileSchema, json);
  if (!file.ok) return file;
  const other = ofAnotherBuild(what, file.value, fields);
  if (other) return other;
  const { uses, frequencies } = file.value;
  const use = fromDigits(frequencies.use, frequencies.khz.length);
  if (!use) return damaged(what, `the digits of use are not those of ${frequencies.khz.length} frequencies`);
  const { airfields, khz: figures } = frequencies;
  const byAirfield = triples(airfields, use, figures);
  const wrong =
    unequal('frequencies', figures.length, [['airfields', airfields]]) ??
    outside('frequencies', [...byAirfield.keys()], size - 1) ??
    outside('frequencies', secondOf(byAirfield), uses.length - 1);
  if (wrong !== null) return damaged(what, wrong);
  return {
    ok: true,
    value: (index) =>
      (byAirfield.get(index) ?? []).map(([, use, khz]) => ({ use: at(uses, use), mhz: khz / 1000 })),
  };
}
