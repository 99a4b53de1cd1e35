import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { encodeLand } from '../../src/imports/land/land-file';
import { SunsideBaseMaps } from '../../src/services/base-maps';
import { BaseChoice } from '../../src/state/base-maps/base-choice.svelte';
import { KeptFiles } from '../../src/storage/kept-files';
import type { BaseMapDraft } from '../../src/ports/base-maps';
import { vectorArchive } from '../support/tile-server';

const draft = (patch: Partial<BaseMapDraft>): BaseMapDraft => ({
  kind: 'tiles',
  address: 'https://tiles.example.org/{z}/{x}/{y}.png',
  name: '',
  credit: ' Map office ',
  maxZoom: 17,
  ...patch,
});
const file = (bytes: BlobPart, name: string) => new File([bytes], name);
const noCredit = { name: '', credit: '' };

let runs = 0;
let files: KeptFiles;
let bases: SunsideBaseMaps;
beforeEach(() => {
  let text: string | null = null;
  files = new KeptFiles(`bases-${++runs}`);
  const store = { read: () => text, write: (next: string) => ((text = next), true) };
  bases = new SunsideBaseMaps({ choice: new BaseChoice(store, files), files });
});

describe('a base map that the user adds', () => {
  test('[M21] by its tile address is shown at once, called after its server', async () => {
    expect(await bases.addAddress(draft({}))).toBeNull();
    expect(bases.choice.ground).toEqual({
      kind: 'tiles',
      name: 'tiles.example.org',
      template: 'https://tiles.example.org/{z}/{x}/{y}.png',
      maxZoom: 17,
      credit: [{ text: 'Map office', href: null }],
    });
  });

  test('[M21] by an address that means nothing is not added, and what to mend is said', async () => {
    expect(await bases.addAddress(draft({ address: 'tiles.example.org' }))).toMatch(/https:\/\//);
    expect(bases.choice.own).toEqual([]);
  });

  test('[M22] as a file is kept, and read back letter by letter', async () => {
    const bytes = new Uint8Array(vectorArchive());
    expect(await bases.addFile(file(bytes, 'North.pmtiles'), noCredit)).toBeNull();
    const [map] = bases.choice.own;
    expect(map).toMatchObject({ name: 'North', kind: 'archive', address: null, size: bytes.length });
    const kept = await files.read(map?.id ?? '');
    expect(new Uint8Array((await kept?.arrayBuffer()) ?? [])).toEqual(bytes);
  });

  test('[M22] as a file that is no archive is not kept', async () => {
    expect(await bases.addFile(file('song', 'song.pmtiles'), noCredit)).toMatch(
      /"song\.pmtiles".*no PMTiles archive/,
    );
    expect(await files.keys()).toEqual([]);
  });

  test('[M22] keeps its file after it was deleted, until it is tidied: then only what is on no list goes', async () => {
    const bytes = new Uint8Array(vectorArchive());
    await bases.addFile(file(bytes, 'a.pmtiles'), noCredit);
    await bases.addFile(file(bytes, 'b.pmtiles'), noCredit);
    const [a, b] = bases.choice.own.map(({ id }) => id);
    bases.choice.remove(a ?? '');
    expect(await files.keys()).toHaveLength(2);
    await bases.tidy();
    expect(await files.keys()).toEqual([b]);
  });
});

describe('the world’s land', () => {
  const ring = [
    [0, 0],
    [2, 0],
    [2, 1],
    [0, 0],
  ] as const;
  afterEach(() => vi.unstubAllGlobals());

  test('[M201] that could not be had is asked for again, and kept once it is there', async () => {
    const answers = [
      () => Promise.reject(new TypeError('no network')),
      () => Promise.resolve(new Response('', { status: 503 })),
      () => Promise.resolve(Response.json(encodeLand([[ring]], 'test'))),
    ];
    const asked = vi.fn(() => answers.shift()?.() ?? Promise.reject(new Error('expected no more questions')));
    vi.stubGlobal('fetch', asked);
    expect(await bases.land()).toBeNull();
    expect(await bases.land()).toBeNull();
    const land = await bases.land();
    expect(land?.features[0]?.geometry.coordinates).toEqual([ring]);
    expect(await bases.land()).toBe(land);
    expect(asked).toHaveBeenCalledTimes(3);
  });

  test('[M201] is asked for once by those who ask while it is on its way', async () => {
    const asked = vi.fn(() => Promise.resolve(Response.json(encodeLand([[ring]], 'test'))));
    vi.stubGlobal('fetch', asked);
    const [a, b] = await Promise.all([bases.land(), bases.land()]);
    expect(a).toBe(b);
    expect(asked).toHaveBeenCalledTimes(1);
  });
});
