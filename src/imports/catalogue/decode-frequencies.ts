import { frequenciesFileSchema } from './columns';
import { outside } from './consistent';
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
  const { uses } = file.value;
  const byAirfield = triples(file.value.frequencies);
  const wrong =
    outside('frequencies', [...byAirfield.keys()], size - 1) ??
    outside('frequencies', secondOf(byAirfield), uses.length - 1);
  if (wrong !== null) return damaged(what, wrong);
  return {
    ok: true,
    value: (index) =>
      (byAirfield.get(index) ?? []).map(([, use, khz]) => ({ use: at(uses, use), mhz: khz / 1000 })),
  };
}
