import type { BufferGeometry } from 'three';
import { MeshBuilder, type BodyPoint } from './mesh';

/** A rib of a wing or fin: where its middle is, its chord and its thickness as a share of the chord. */
export interface Rib {
  readonly at: BodyPoint;
  readonly chord: number;
  readonly thickness: number;
}

/** Half an aerofoil: share of the chord from the leading edge, share of the thickness. */
const profile = [
  [0, 0],
  [0.03, 0.36],
  [0.12, 0.78],
  [0.3, 1],
  [0.55, 0.82],
  [0.8, 0.4],
  [1, 0.03],
] as const;

/** Outline of a rib: over the top from the leading edge, and back below. `normal`: where its thickness goes. */
function outline({ at, chord, thickness }: Rib, normal: BodyPoint): BodyPoint[] {
  const half = (chord * thickness) / 2;
  const place = (along: number, off: number): BodyPoint => [
    at[0] + chord * (0.5 - along),
    at[1] + normal[1] * off * half,
    at[2] + normal[2] * off * half,
  ];
  return [
    ...profile.map(([along, off]) => place(along, off)),
    ...profile
      .slice(1, -1)
      .toReversed()
      .map(([along, off]) => place(along, -off)),
  ];
}

/** A lifting surface through ribs from root to tip. `normal`: up for a wing, sideways for a fin. */
export function surface(ribs: readonly Rib[], normal: BodyPoint): BufferGeometry {
  const mesh = new MeshBuilder();
  const rows = ribs.map((rib) => outline(rib, normal));
  const first = rows[0] as BodyPoint[];
  const last = rows[rows.length - 1] as BodyPoint[];
  // Which way round the skin goes depends on the side: its outside must look outwards.
  const outward =
    last[0] && first[0] ? (last[0][2] - first[0][2]) * normal[1] - (last[0][1] - first[0][1]) * normal[2] : 0;
  const turned = outward > 0 ? rows : rows.map((row) => row.toReversed());
  mesh.grid(turned, true);
  mesh.cap(turned[turned.length - 1] as BodyPoint[]);
  mesh.cap(turned[0] as BodyPoint[], true);
  return mesh.build();
}

/** The same surface on the other side. */
export const mirrored = (ribs: readonly Rib[]): Rib[] =>
  ribs.map((rib) => ({ ...rib, at: [rib.at[0], rib.at[1], -rib.at[2]] }));
