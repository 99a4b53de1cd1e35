import { zipSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { looksLikeArchive, pack, unpack, type ArchivedFile } from '../../src/storage/archive';

async function* files(list: readonly ArchivedFile[]): AsyncGenerator<ArchivedFile> {
  for (const file of list) yield await Promise.resolve(file);
}

const changed = Date.UTC(2026, 5, 21, 17);
const bytesOf = async (blob: Blob) => new Uint8Array(await blob.arrayBuffer());

describe('an archive of surveys', () => {
  it('gives back every text as it was, whatever letters it has', async () => {
    const list = [
      { name: 'näher-am-zaun.geojson', text: '{"name":"Näher am Zaun 滑走路 \u{1F6E9}"}', changed },
      { name: 'second.geojson', text: `{"long":"${'abcdefgh'.repeat(20_000)}"}`, changed },
      { name: 'empty.geojson', text: '', changed },
    ];
    const blob = await pack(files(list));
    expect(blob.type).toBe('application/zip');
    expect(blob.size).toBeLessThan(5_000);
    const bytes = await bytesOf(blob);
    expect(looksLikeArchive(bytes)).toBe(true);
    expect(await unpack(bytes, ['.geojson'])).toEqual({
      ok: true,
      files: list.map(({ name, text }) => ({ name, text })),
    });
  });

  it('is an archive even with nothing in it', async () => {
    const bytes = await bytesOf(await pack(files([])));
    expect(looksLikeArchive(bytes)).toBe(true);
    expect(await unpack(bytes, ['.geojson'])).toEqual({ ok: true, files: [] });
  });

  it('takes surveys out of folders and leaves everything else', async () => {
    const bytes = zipSync({
      'year/north/Field.GeoJSON': strToU8('{"a":1}'),
      'year/south/field.json': strToU8('{"b":2}'),
      'year/._field.json': strToU8('a system writes these'),
      'year/photo.jpg': strToU8('no survey'),
    });
    expect(await unpack(bytes, ['.geojson', '.json'])).toEqual({
      ok: true,
      files: [
        { name: 'Field.GeoJSON', text: '{"a":1}' },
        { name: 'field.json', text: '{"b":2}' },
      ],
    });
  });

  it('says when an archive is damaged', async () => {
    const bytes = zipSync({ 'field.geojson': strToU8('{"a":1}'.repeat(99)) });
    expect(await unpack(bytes.slice(0, 40), ['.geojson'])).toMatchObject({ ok: false });
  });

  it('does not unpack one that claims more than surveys could be', async () => {
    const bytes = zipSync({ 'field.geojson': strToU8('{"a":1}') });
    // Uncompressed size in the central directory: 24 bytes behind its signature (APPNOTE.TXT 4.3.12).
    const at = bytes.findIndex((_, i) => bytes[i] === 0x50 && bytes[i + 1] === 0x4b && bytes[i + 2] === 1);
    new DataView(bytes.buffer).setUint32(at + 24, 0xf000_0000, true);
    expect(await unpack(bytes, ['.geojson'])).toEqual({
      ok: false,
      reason: 'it holds more than surveys could be',
    });
  });

  it('knows text from an archive', () => {
    expect(looksLikeArchive(strToU8('{"type":"FeatureCollection"}'))).toBe(false);
    expect(looksLikeArchive(strToU8('PK, a name'))).toBe(false);
    expect(looksLikeArchive(new Uint8Array())).toBe(false);
  });
});
