import { crc32, deflateSync, inflateSync } from 'node:zlib';

/** Red, green, blue and opacity, each 0 to 255. */
export type Colour = readonly [r: number, g: number, b: number, a: number];

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** A picture as PNG (8 bits a channel, with opacity). */
export function encodePng(width: number, height: number, colourAt: (x: number, y: number) => Colour): Buffer {
  const rows = Buffer.alloc(height * (1 + width * 4));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) rows.set(colourAt(x, y), y * (1 + width * 4) + 1 + x * 4);
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 6, 0, 0, 0], 8);
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(data.length, 0);
  out.set(body, 4);
  out.writeUInt32BE(crc32(body), body.length + 4);
  return out;
}

/** The colours of a PNG with 8 bits a channel, as browsers write their screenshots, row by row. */
export function decodePng(png: Buffer): Colour[][] {
  const parts: Buffer[] = [];
  let [width, height, channels] = [0, 0, 4];
  for (let at = 8; at < png.length;) {
    const length = png.readUInt32BE(at);
    const type = png.toString('latin1', at + 4, at + 8);
    const data = png.subarray(at + 8, at + 8 + length);
    if (type === 'IHDR')
      [width, height, channels] = [data.readUInt32BE(0), data.readUInt32BE(4), data[9] === 2 ? 3 : 4];
    if (type === 'IDAT') parts.push(data);
    at += length + 12;
  }
  const raw = inflateSync(Buffer.concat(parts));
  const stride = width * channels;
  let above = Buffer.alloc(stride);
  return Array.from({ length: height }, (_, y) => {
    const at = y * (stride + 1);
    above = unfiltered(raw[at] ?? 0, raw.subarray(at + 1, at + 1 + stride), above, channels);
    const row = above;
    return Array.from({ length: width }, (__, x): Colour => {
      const [r = 0, g = 0, b = 0, a = 255] = row.subarray(x * channels, (x + 1) * channels);
      return [r, g, b, channels === 4 ? a : 255];
    });
  });
}

/** One row without its filter (PNG specification, section 9). */
function unfiltered(filter: number, row: Buffer, above: Buffer, channels: number): Buffer<ArrayBuffer> {
  const out = Buffer.alloc(row.length);
  for (let i = 0; i < row.length; i++) {
    const a = i >= channels ? (out[i - channels] ?? 0) : 0;
    const b = above[i] ?? 0;
    const c = i >= channels ? (above[i - channels] ?? 0) : 0;
    const p = a + b - c;
    const [pa, pb, pc] = [Math.abs(p - a), Math.abs(p - b), Math.abs(p - c)];
    const paeth = pa <= pb && pa <= pc ? a : pb <= pc ? b : c;
    out[i] = (row[i] ?? 0) + ([0, a, b, (a + b) >> 1, paeth][filter] ?? 0);
  }
  return out;
}
