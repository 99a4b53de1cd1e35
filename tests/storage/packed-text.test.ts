import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { packText, unpackText } from '../../src/storage/archive';

describe('a packed text', () => {
  it('[E60] is read back; what another deflate packed is read as well', async () => {
    const text = '{"name":"Żółw, 北"} '.repeat(300);
    expect(await unpackText(await packText(text), 1e6)).toEqual({ ok: true, text });
    expect(await unpackText(new Uint8Array(deflateRawSync(text)), 1e6)).toEqual({ ok: true, text });
  });

  it('[E61] a few bytes that claim to be a gigabyte are refused', async () => {
    const bomb = new Uint8Array(deflateRawSync(Buffer.alloc(64_000_000)));
    expect(await unpackText(bomb, 2_000_000)).toEqual({ ok: false, why: 'too-large' });
    expect(await unpackText(await packText('x'.repeat(1001)), 1000)).toEqual({ ok: false, why: 'too-large' });
    expect(await unpackText(await packText('x'.repeat(1000)), 1000)).toMatchObject({ ok: true });
  });

  it('[E62] what was cut, damaged or is no text is null, wherever it breaks', async () => {
    const packed = await packText(JSON.stringify(Array.from({ length: 200 }, (_, i) => `spot ${i * 7919}`)));
    for (let length = 1; length < packed.length; length += 13)
      expect(await unpackText(packed.slice(0, length), 1e6)).toEqual({ ok: false, why: 'broken' });
    expect(await unpackText(new Uint8Array(deflateRawSync(Buffer.from([0xff, 0xfe, 0xc0]))), 1e6)).toEqual({
      ok: false,
      why: 'broken',
    });
  });
});
