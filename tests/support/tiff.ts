/** Writes the plainest GeoTIFF: one uncompressed strip, little-endian. By the TIFF 6.0 and OGC GeoTIFF 1.1 texts. */
export interface TiffPlan {
  readonly columns: number;
  readonly rows: number;
  readonly heights: ArrayLike<number>;
  readonly format?: 'int16' | 'float32';
  /** Coordinates of the first sample's corner (area) or middle (point). */
  readonly west: number;
  readonly north: number;
  readonly stepLng: number;
  readonly stepLat: number;
  readonly point?: boolean;
  readonly noData?: string;
  /** GeoTIFF keys as [id, value]; longitude and latitude on WGS84 unless given. */
  readonly keys?: readonly (readonly [id: number, value: number])[];
  /** A matrix in place of tie point and scale. */
  readonly matrix?: readonly number[];
}

interface Entry {
  readonly tag: number;
  readonly type: 2 | 3 | 4 | 12;
  readonly values: readonly number[];
}
const sizes = { 2: 1, 3: 2, 4: 4, 12: 8 } as const;

export function tiff(plan: TiffPlan): ArrayBuffer {
  const { columns, rows, format = 'float32', point = false } = plan;
  const bytes = format === 'int16' ? 2 : 4;
  const keys = [
    ...(plan.keys ?? [
      [1024, 2],
      [2048, 4326],
    ]),
    [1025, point ? 2 : 1] as const,
  ].sort(([a], [b]) => a - b);
  const placed: Entry[] = plan.matrix
    ? [{ tag: 34264, type: 12, values: plan.matrix }]
    : [
        { tag: 33550, type: 12, values: [plan.stepLng, plan.stepLat, 0] },
        { tag: 33922, type: 12, values: [0, 0, 0, plan.west, plan.north, 0] },
      ];
  const list: Entry[] = [
    { tag: 256, type: 4, values: [columns] },
    { tag: 257, type: 4, values: [rows] },
    { tag: 258, type: 3, values: [8 * bytes] },
    { tag: 259, type: 3, values: [1] },
    { tag: 262, type: 3, values: [1] },
    { tag: 273, type: 4, values: [8] },
    { tag: 277, type: 3, values: [1] },
    { tag: 278, type: 4, values: [rows] },
    { tag: 279, type: 4, values: [columns * rows * bytes] },
    { tag: 339, type: 3, values: [format === 'int16' ? 2 : 3] },
    ...placed,
    {
      tag: 34735,
      type: 3,
      values: [1, 1, 0, keys.length, ...keys.flatMap(([id, value]) => [id, 0, 1, value])],
    },
    ...(plan.noData === undefined
      ? []
      : [{ tag: 42113, type: 2 as const, values: [...plan.noData].map((c) => c.charCodeAt(0)) }]),
  ];
  const entries = list.sort((a, b) => a.tag - b.tag);
  const data = 8 + columns * rows * bytes + ((columns * rows * bytes) % 2);
  const outside = data + 2 + 12 * entries.length + 4;
  const length =
    outside + entries.reduce((sum, e) => sum + Math.max(8, sizes[e.type] * e.values.length + 1), 0);
  const buffer = new ArrayBuffer(length);
  const view = new DataView(buffer);
  view.setUint16(0, 0x4949, true);
  view.setUint16(2, 42, true);
  view.setUint32(4, data, true);
  for (let i = 0; i < columns * rows; i++) {
    if (format === 'int16') view.setInt16(8 + 2 * i, plan.heights[i] ?? 0, true);
    else view.setFloat32(8 + 4 * i, plan.heights[i] ?? 0, true);
  }
  const put = (at: number, type: Entry['type'], value: number) => {
    if (type === 2) view.setUint8(at, value);
    else if (type === 3) view.setUint16(at, value, true);
    else if (type === 4) view.setUint32(at, value, true);
    else view.setFloat64(at, value, true);
  };
  view.setUint16(data, entries.length, true);
  let free = outside;
  entries.forEach(({ tag, type, values }, i) => {
    const at = data + 2 + 12 * i;
    view.setUint16(at, tag, true);
    view.setUint16(at + 2, type, true);
    view.setUint32(at + 4, values.length, true);
    let to = at + 8;
    if (sizes[type] * values.length > 4) {
      free += free % 2;
      view.setUint32(at + 8, free, true);
      to = free;
      free += sizes[type] * values.length;
    }
    values.forEach((value, k) => put(to + k * sizes[type], type, value));
  });
  return buffer;
}
