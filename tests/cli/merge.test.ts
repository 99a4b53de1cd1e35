import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { mergeCommand } from '../../src/cli/merge-command';

let folder = '';
beforeAll(() => void (folder = mkdtempSync(join(tmpdir(), 'sunside-'))));
afterAll(() => rmSync(folder, { recursive: true }));

const file = (name: string, eyeHeight: number, more: object = {}) => {
  const path = join(folder, name);
  const feature = {
    type: 'Feature',
    id: 's1',
    properties: { kind: 'standing-spot', name: 'Mill Lane', eyeHeight },
    geometry: { type: 'Point', coordinates: [18.19, 50.93] },
  };
  writeFileSync(path, JSON.stringify({ type: 'FeatureCollection', features: [feature], ...more }));
  return path;
};

describe('[G10] the merge command', () => {
  it('prints the merged survey', () => {
    const base = file('base.geojson', 1.7);
    const mine = file('mine.geojson', 1.7, { credit: 'x' });
    const theirs = file('theirs.geojson', 11);
    const { status, out, err } = mergeCommand([mine, theirs, '--base', base]);
    expect({ status, err }).toEqual({ status: 0, err: '' });
    expect(JSON.parse(out)).toMatchObject({ credit: 'x', features: [{ properties: { eyeHeight: 11 } }] });
  });

  it('prints nothing while something is undecided, and the questions as JSON beside it', () => {
    const ended = mergeCommand([file('a.geojson', 2), file('b.geojson', 11)]);
    expect(ended).toMatchObject({ status: 3, out: '' });
    expect(JSON.parse(ended.err)).toEqual([
      { id: 's1', pointer: '/properties/eyeHeight', mine: 2, theirs: 11 },
    ]);
  });

  it('takes one side for all of them when told to', () => {
    const args = [file('a.geojson', 2), file('b.geojson', 11), '--take', 'theirs'];
    const { status, out } = mergeCommand(args);
    expect(status).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ features: [{ properties: { eyeHeight: 11 } }] });
  });

  it.each([
    ['no files', () => []],
    ['a file that is not there', () => [file('a.geojson', 2), join(folder, 'nowhere.geojson')]],
    ['an unknown take', () => [file('a.geojson', 2), file('b.geojson', 3), '--take', 'both']],
    ['an unknown option', () => [file('a.geojson', 2), file('b.geojson', 3), '--force']],
    ['a newer version', () => [file('a.geojson', 2), file('n.geojson', 2, { sunside: { version: 99 } })]],
  ])('refuses %s with status 2 and one line', (_, args) => {
    const { status, out, err } = mergeCommand(args());
    expect({ status, out }).toEqual({ status: 2, out: '' });
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});
