import { describe, expect, it } from 'vitest';
import { encodeCatalogue } from '../../../src/imports/catalogue/encode';
import { loadCatalogue, loadFrequencies, loadRunways } from '../../../src/imports/catalogue/load';
import { decoded, invented, source } from './airfields';

const answer =
  (text: string, status = 200) =>
  () =>
    Promise.resolve({ ok: status < 400, status, text: () => Promise.resolve(text) });

describe('loading the catalogue', () => {
  it('gives the catalogue of the address asked for', async () => {
    const asked: string[] = [];
    const good = answer(JSON.stringify(encodeCatalogue(invented, source, 'tests').catalogue));
    const result = await loadCatalogue('place/catalogue.json', (url) => {
      asked.push(url);
      return good();
    });
    expect(asked).toEqual(['place/catalogue.json']);
    expect(result.ok && result.value.size).toBe(invented.length);
  });

  it.each([
    ['a missing file', answer('', 404), 'status 404'],
    ['a page instead of the file', answer('<!doctype html>'), 'not JSON'],
    ['other JSON', answer('[1, 2]'), 'does not fit this program'],
    ['no network', () => Promise.reject(new TypeError('Failed to fetch')), 'Is the network there?'],
    [
      'a connection that breaks',
      () => Promise.resolve({ ok: true, status: 200, text: () => Promise.reject(new Error('aborted')) }),
      'cannot be loaded',
    ],
  ])('[C2] %s gives a reason and does not reject', async (_, fetcher, reason) => {
    const result = await loadCatalogue('x', fetcher);
    expect(result.ok ? '' : result.reason).toContain(reason);
    const { catalogue } = decoded(invented);
    const others = [
      await loadRunways('x', catalogue, fetcher),
      await loadFrequencies('x', catalogue, fetcher),
    ];
    for (const other of others) expect(other.ok ? '' : other.reason).toContain(reason);
  });
});
