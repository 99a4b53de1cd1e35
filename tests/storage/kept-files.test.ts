import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { KeptFiles } from '../../src/storage/kept-files';

describe('large files kept on this device', () => {
  test('[M15] come back by their name until they are forgotten', async () => {
    const files = new KeptFiles('m15');
    expect(await files.read('a')).toBeNull();
    expect(await files.keep('a', new Blob(['one']))).toEqual({ ok: true, value: undefined });
    await files.keep('b', new Blob(['two']));
    expect(await files.keys()).toEqual(['a', 'b']);
    await files.forget('a');
    expect(await files.keys()).toEqual(['b']);
  });

  test('[M15] where the browser refuses, that is said and nothing is thrown', async () => {
    const { indexedDB } = globalThis;
    Reflect.deleteProperty(globalThis, 'indexedDB');
    const files = new KeptFiles('refused');
    expect(await files.keep('a', new Blob(['one']))).toMatchObject({ ok: false });
    expect(await files.read('a')).toBeNull();
    expect(await files.keys()).toEqual([]);
    globalThis.indexedDB = indexedDB;
  });
});
