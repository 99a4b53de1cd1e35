import { crc32, deflateSync } from 'node:zlib';

/** RGBA, 8 bits each, row by row from the top -> a PNG file (W3C PNG specification, section 5). */
export function encodePng(size: number, rgba: Uint8Array): Uint8Array<ArrayBuffer> {
  const stride = size * 4;
  // Each row begins with its filter type; 0 is none.
  const rows = new Uint8Array(size * (stride + 1));
  for (let y = 0; y < size; y++) rows.set(rgba.subarray(y * stride, (y + 1) * stride), y * (stride + 1) + 1);
  const head = new DataView(new ArrayBuffer(13));
  head.setUint32(0, size);
  head.setUint32(4, size);
  // 8 bits a sample, colour type 6: RGBA.
  head.setUint16(8, 0x0806);
  return new Uint8Array(
    Buffer.concat([
      Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
      chunk('IHDR', new Uint8Array(head.buffer)),
      chunk('IDAT', deflateSync(rows, { level: 9 })),
      chunk('IEND', new Uint8Array(0)),
    ]),
  );
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const out = Buffer.alloc(body.length + 8);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), body.length + 4);
  return out;
}
