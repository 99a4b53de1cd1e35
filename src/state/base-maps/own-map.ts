import * as v from 'valibot';
import { choiceField, readFields, textField, type Read } from '../../survey/fields';

const ownKinds = ['tiles', 'style', 'archive'] as const;
export type OwnKind = (typeof ownKinds)[number];

const fields = {
  id: textField(''),
  name: textField(''),
  kind: choiceField(ownKinds, null),
  /** Null for an archive that is kept on this device. */
  address: textField(null),
  credit: textField(''),
  /** The last zoom that a tile server has. */
  maxZoom: v.nullish(v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(24)), 19),
  /** Bytes of a kept file. */
  size: v.nullish(v.pipe(v.number(), v.minValue(0)), null),
};
type Fields = Read<typeof fields>;

/** A base map that the user has added. */
export type OwnMap = Readonly<Omit<Fields, 'kind'> & { kind: OwnKind }>;

/** What is kept on the device about base maps. */
export interface KeptBases {
  readonly chosen: string;
  /** Paler, so that the survey stands out. */
  readonly pale: boolean;
  readonly own: readonly OwnMap[];
}

/** What was kept; an entry that makes no sense is left out. */
export function readKeptBases(text: string | null): KeptBases {
  const nobody = () => undefined;
  let json: unknown;
  try {
    json = text === null ? undefined : JSON.parse(text);
  } catch {
    json = undefined;
  }
  const { chosen, pale } = readFields(
    { chosen: textField(''), pale: v.nullish(v.boolean(), true) },
    json,
    'bases',
    nobody,
  );
  const list: unknown = (json as { own?: unknown } | null | undefined)?.own;
  const own = (Array.isArray(list) ? list : [])
    .map((entry) => readFields(fields, entry, 'base', nobody))
    .filter((entry): entry is OwnMap => entry.id !== '' && entry.kind !== null && isComplete(entry));
  return { chosen, pale, own };
}

const isComplete = ({ kind, address, size }: Fields) =>
  address !== null || (kind === 'archive' && size !== null);
