import type { Position } from '../../survey/document';

/** One land area: its outer ring, then its lakes and inland seas. Degrees, cut at the antimeridian. */
export type LandArea = readonly (readonly Position[])[];

/** Units of the file's whole numbers in a degree: a hundredth, about 1 km. */
const perDegree = 100;

/** `src/public/land.json`: each ring as whole numbers, the first position, then the way to each next one. */
export interface LandFile {
  /** Hash of what it was built by: when that changes, it is built anew. */
  readonly builtBy: string;
  readonly credit: string;
  readonly areas: readonly (readonly (readonly number[])[])[];
}

const landCredit = 'World land: Natural Earth, by way of world-atlas; public domain.';

export const encodeLand = (areas: readonly LandArea[], builtBy: string): LandFile => ({
  builtBy,
  credit: landCredit,
  areas: areas.map((rings) => rings.map(encodeRing)),
});

function encodeRing(ring: readonly Position[]): number[] {
  let [x, y] = [0, 0];
  return ring.flatMap(([lng, lat]) => {
    const [x0, y0] = [x, y];
    [x, y] = [Math.round(lng * perDegree), Math.round(lat * perDegree)];
    return [x - x0, y - y0];
  });
}

/** Null for anything that is no such file. */
export function decodeLand(file: unknown): LandArea[] | null {
  const areas = (file as Partial<LandFile> | null)?.areas;
  return Array.isArray(areas) ? (areas as LandFile['areas']).map((rings) => rings.map(decodeRing)) : null;
}

function decodeRing(steps: readonly number[]): Position[] {
  const ring: Position[] = [];
  let [x, y] = [0, 0];
  for (let i = 0; i + 1 < steps.length; i += 2) {
    x += steps[i] ?? 0;
    y += steps[i + 1] ?? 0;
    ring.push([x / perDegree, y / perDegree]);
  }
  return ring;
}
