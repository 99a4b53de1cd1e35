import { describe, expect, test } from 'vitest';
import { typedPlace } from '../../../src/ui/search/typed-place';

describe('coordinates in the airfield search', () => {
  test.each([
    ['51.4775, -0.485', [-0.485, 51.4775]],
    ['51°28\'39"N 0°29\'06"W', [-0.485, 51.4775]],
    ['  -33.9461 151.1772 ', [151.1772, -33.9461]],
    ['64.13 north 21.94 west', [-21.94, 64.13]],
  ])('[M16] %s is a place', (text, position) => {
    const place = typedPlace(text);
    expect(place?.ok && place.position.map((x) => Number(x.toFixed(4)))).toEqual(position);
  });
  test.each(['EDDM', 'munich', '08L', '1B9', 'S45', 'N', '', '12', 'lot 7, field 3', 'K1N5'])(
    '[M16] %s is not',
    (text) => expect(typedPlace(text)).toBeNull(),
  );
  test.each(['95, 10', '51.4775', '51.5N 3.2N'])(
    '[M16] %s is meant as one, and what to mend is said',
    (text) => {
      const place = typedPlace(text);
      expect(place?.ok).toBe(false);
    },
  );
});
