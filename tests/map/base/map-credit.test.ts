import { expect, it } from 'vitest';
import { mapCredit } from '../../../src/map/base/map-credit';
import type { BaseGround } from '../../../src/state/base-maps/ground';
import { providers } from '../../../src/state/base-maps/providers';

const plain: BaseGround = { kind: 'plain' };
const texts = (onMap: Parameters<typeof mapCredit>[0]) => mapCredit(onMap).map(({ text }) => text);
const report = { credit: [{ text: '© Said by the data', href: null }] };

it('[U903] names the plan, the data and the land of the plain ground, each without its full stop', () => {
  const own = ['Tolverby is invented.', 'Heights: nobody'];
  expect(texts({ ground: plain, report, own, withLand: true }).join(' ')).toMatch(
    /Tolverby is invented\b[^.]*Heights: nobody.*Natural Earth/,
  );
});

it('[U904] believes what its own list says of a base map, and adds what another map’s data say', () => {
  const ours = providers.find(({ ground }) => ground.kind !== 'plain');
  if (!ours) throw new Error('expected a base map in the list');
  expect(texts({ ground: ours.ground, report, own: [], withLand: false })).not.toContain(
    '© Said by the data',
  );
  const theirs = { ...ours.ground };
  expect(texts({ ground: theirs, report, own: [], withLand: false }).join(' ')).toContain('Said by the data');
});
