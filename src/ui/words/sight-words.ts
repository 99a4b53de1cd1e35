import type { MeshAhead } from '../../figures/sight/mesh-ahead';
import type { HiddenStretch, PathFromSpot, PathKind } from '../../figures/types';
import { share } from '../../units/format';
import type { Formats } from '../formats';
import { stationWords } from './station-words';

/** An obstacle's name for the sentence; the terrain is the ground. */
export const hiderWords = (
  by: string,
  obstacles: readonly { readonly id: string; readonly name: string | null }[],
): string => (by === 'terrain' ? 'the ground' : obstacles.find((o) => o.id === by)?.name || 'an obstacle');

/** "82% in sight", and the stations between which, for at most three stretches. `station`: of each sample. */
export function inSightWords(
  { visibleShare, sector }: Pick<PathFromSpot, 'visibleShare' | 'sector'>,
  kind: PathKind,
  station: ArrayLike<number>,
  format: Formats,
): string {
  if (visibleShare === null) return '';
  if (sector.runs.length === 0) return 'Nothing of the usable part is in sight.';
  const at = (i: number) => stationWords(kind, station[i] ?? 0, format);
  const stretches = sector.runs
    .slice(0, 3)
    .map(({ from, bearings }) => `from ${at(from)} to ${at(from + bearings.length - 1)}`);
  const more = sector.runs.length > 3 ? ', and more' : '';
  return `${share(visibleShare)} of it in sight, ${stretches.join('; ')}${more}.`;
}

/** Who hides what: each name once, the longest stretch first. */
export function hiders(
  hidden: readonly HiddenStretch[],
  obstacles: Parameters<typeof hiderWords>[1],
): readonly string[] {
  const lengths = new Map<string, number>();
  for (const { by, first, last } of hidden) lengths.set(by, (lengths.get(by) ?? 0) + last - first + 1);
  return [...lengths].sort(([, a], [, b]) => b - a).map(([by]) => hiderWords(by, obstacles));
}

/** The fences that are looked through: where the lens can be held to one, how; else how far off it stands. `within`: m. */
export function meshWords(
  meshes: readonly MeshAhead[],
  within: number,
  obstacles: Parameters<typeof hiderWords>[1],
  format: Formats,
): string {
  const beside = meshes.filter((mesh) => mesh.beside).map(({ id }) => hiderWords(id, obstacles));
  const off = meshes
    .filter((mesh) => !mesh.beside)
    .map(({ id, distance }) => `${hiderWords(id, obstacles)}, ${format.length(distance)} away`);
  const sentences = [];
  if (beside.length > 0)
    sentences.push(
      `Through ${beside.join(', ')}: hold the lens within ${format.fine(within)} of it, at its widest aperture.`,
    );
  if (off.length > 0) sentences.push(`Seen through ${off.join('; ')}.`);
  return sentences.join(' ');
}
