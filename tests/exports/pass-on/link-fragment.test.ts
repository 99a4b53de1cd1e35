import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { linkFragment, longestFragment, readFragment } from '../../../src/exports/pass-on/link-fragment';

describe('the fragment of a link', () => {
  it('[E50] is base64url as Node writes it, and read back the same', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 1, maxLength: 400 }), (bytes) => {
        const fragment = linkFragment(bytes);
        expect(fragment).toBe(`#survey-1=${Buffer.from(bytes).toString('base64url')}`);
        expect(readFragment(fragment ?? '')).toEqual({ is: 'survey', packed: bytes });
      }),
    );
  });

  it('[E51] is never longer than 8,000 characters, written or read', () => {
    const most = Math.floor(((longestFragment - '#survey-1='.length) * 3) / 4);
    expect(linkFragment(new Uint8Array(most))?.length).toBeLessThanOrEqual(8000);
    expect(linkFragment(new Uint8Array(most + 1))).toBeNull();
    expect(readFragment(`#survey-1=${'A'.repeat(8000)}`)).toEqual({ is: 'too-long' });
  });

  it.each([
    ['', null],
    ['#somewhere', null],
    ['#survey', null],
    ['#survey-2=AAAA', { is: 'newer' }],
    ['#survey-0=AAAA', { is: 'broken' }],
    ['#survey-1=', { is: 'broken' }],
    ['#survey-1=AAAAA', { is: 'broken' }],
    ['#survey-1=AA+A', { is: 'broken' }],
    ['#survey-1', { is: 'broken' }],
    ['#survey-1=<b>', { is: 'broken' }],
  ])('[E52] %s', (fragment, is) => {
    expect(readFragment(fragment)).toEqual(is);
  });
});
