import { describe, expect, it } from 'vitest';
import { blockedColour, classColours, faded, flatColour } from '../../../styles/ramps';
import type { LightEntry } from '../../../src/figures/when/light-row';
import { colourOf, isFromAbove } from '../../../src/ui/over-time/paint';

const entry = (more: Partial<LightEntry>): LightEntry => ({
  light: 'front-lit',
  glare: false,
  flat: false,
  blocked: false,
  worth: 'good',
  ...more,
});

describe('the colour of a stretch of time', () => {
  it('[U969] fades with what the picture is worth, by day', () => {
    expect(colourOf(entry({}))).toBe(classColours['front-lit']);
    expect(colourOf(entry({ worth: 'poor' }))).toBe(faded(classColours['front-lit'], 'poor'));
  });
  it('[U970] is one grey under overcast, also at noon in summer, where the light is from above without any lines', () => {
    const noon = entry({ light: 'top-lit', flat: true, worth: 'fair' });
    expect(colourOf(noon)).toBe(faded(flatColour, 'fair'));
    expect(isFromAbove(noon)).toBe(false);
    expect(isFromAbove({ ...noon, flat: false })).toBe(true);
  });
  it('[U971] stays as it is at night, in twilight, where it glares and where all is hidden', () => {
    const poorest = 'not worth waiting for';
    expect(colourOf(entry({ light: 'dark', flat: true, worth: poorest }))).toBe(classColours.dark);
    expect(colourOf(entry({ light: 'civil-twilight', worth: poorest }))).toBe(classColours['civil-twilight']);
    expect(colourOf(entry({ light: 'back-lit', glare: true, worth: poorest }))).toBe(
      classColours['back-lit'],
    );
    expect(colourOf(entry({ blocked: true, worth: poorest }))).toBe(blockedColour);
  });
});
