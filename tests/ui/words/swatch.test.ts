import { expect, it } from 'vitest';
import { darkColour, faded, flatColour, lightColour, twilightColour } from '../../../styles/ramps';
import { swatch } from '../../../src/ui/words/swatch';

const sample = { light: 'side-lit', lightAngle: 80 } as const;

it('[U967] a card’s swatch is as pale as the word beside it says the picture is poor', () => {
  expect(swatch(sample, false, 'good')).toBe(lightColour(80));
  expect(swatch(sample, false, 'fair')).toBe(faded(lightColour(80), 'fair'));
  expect(swatch(sample, false, 'not worth waiting for')).toBe(
    faded(lightColour(80), 'not worth waiting for'),
  );
});
it('[U968] under overcast it is that of flat light, from whichever side; night and twilight stay what they are', () => {
  expect(swatch(sample, true, 'fair')).toBe(faded(flatColour, 'fair'));
  expect(swatch({ light: 'back-lit', lightAngle: 170 }, true, 'fair')).toBe(faded(flatColour, 'fair'));
  expect(swatch({ light: 'civil-twilight', lightAngle: 80 }, true, 'not worth waiting for')).toBe(
    twilightColour,
  );
  expect(swatch({ light: 'dark', lightAngle: null }, false, 'not worth waiting for')).toBe(darkColour);
});
