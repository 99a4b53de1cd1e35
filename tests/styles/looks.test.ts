import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { mapLayers } from '../../src/map/layers';
import { inLook, palettes, paper, type Look } from '../../styles/map-style';
import { darkColour, faded, fading, focalSteps, lightSteps, twilightColour } from '../../styles/ramps';

const looks: readonly Look[] = ['day', 'night', 'contrast'];

/** Relative luminance of #rgb or #rrggbb and contrast ratio: WCAG 2.2, the definitions of these terms. */
function luminance(colour: string): number {
  const hex = colour.length === 4 ? [...colour.slice(1)].map((c) => c + c).join('') : colour.slice(1);
  const [r, g, b] = [0, 2, 4].map((i) => {
    const c = parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
function contrast(one: string, other: string): number {
  const [dark, bright] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (bright + 0.05) / (dark + 0.05);
}

const css = readFileSync(resolve(import.meta.dirname, '../../styles/tokens.css'), 'utf8');
/** What a look's block says, over what the day says. */
function tokens(look: Look): Record<string, string> {
  const block = (selector: string) => {
    const from = css.indexOf(`\n${selector} {`);
    if (from < 0) throw new Error(`expected a block ${selector} in tokens.css`);
    return css.slice(from, css.indexOf('\n}', from));
  };
  const read = (text: string): Record<string, string> =>
    Object.fromEntries(
      [...text.matchAll(/(--[\w-]+): ([^;]+);/g)].map((m) => [m[1] ?? '', m[2] ?? ''] as const),
    );
  return { ...read(block(':root')), ...(look === 'day' ? {} : read(block(`:root[data-look='${look}']`))) };
}

describe('the looks', () => {
  test('the measure of contrast is that of WCAG: black on white 21, #767676 on white 4.54', () => {
    expect(contrast('#000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#767676', '#fff')).toBeCloseTo(4.54, 2);
  });

  test('[U1] each colour of the map is known by its value alone, so that a look can change it', () => {
    const values = Object.values(paper);
    expect(new Set(values).size).toBe(values.length);
  });

  test.each(looks)('[U1] no colour of the day is left over in the map of the look %s', (look) => {
    const days = Object.values(paper).filter((c) => !Object.values<string>(palettes[look]).includes(c));
    const painted = JSON.stringify(inLook(mapLayers, look));
    expect(look === 'day' ? [] : days.filter((colour) => painted.includes(colour))).toEqual([]);
    // All that is no colour stays.
    expect(inLook(mapLayers, look).map((l) => [l.id, l.filter, l.layout])).toEqual(
      mapLayers.map((l) => [l.id, l.filter, l.layout]),
    );
  });

  test.each(looks)('[U2] words and what can be typed in or pressed stand out in the look %s', (look) => {
    const t = tokens(look);
    const least = look === 'contrast' ? 7 : 4.5;
    for (const ground of [
      '--paper',
      '--sheet',
      '--sheet-sunk',
      '--field',
      '--caution-ground',
      '--signal-ground',
    ])
      for (const ink of ['--ink', '--ink-soft'])
        expect(contrast(t[ink] ?? '', t[ground] ?? ''), `${ink} on ${ground}`).toBeGreaterThanOrEqual(least);
    expect(contrast(t['--on-ink'] ?? '', t['--ink'] ?? '')).toBeGreaterThanOrEqual(least);
    // WCAG 2.2, 1.4.11: 3:1 for outlines of controls and the focus.
    for (const line of ['--rule-strong', '--signal', '--focus'])
      for (const ground of ['--sheet', '--field'])
        expect(contrast(t[line] ?? '', t[ground] ?? ''), `${line} on ${ground}`).toBeGreaterThanOrEqual(3);
  });

  test.each(looks)(
    '[U3] labels of the map stand out from their halo and its ground in the look %s',
    (look) => {
      const p = palettes[look];
      for (const ground of [p.page, p.sheet])
        for (const ink of ['ink', 'softInk', 'signal', 'name', 'waterName', 'gridName'] as const)
          expect(contrast(p[ink], ground), ink).toBeGreaterThanOrEqual(4.5);
    },
  );

  test.each(looks)('[U4] data colours stay apart from one another and edged in the look %s', (look) => {
    const p = palettes[look];
    expect(contrast(p.dataEdge, p.page)).toBeGreaterThanOrEqual(3);
    for (const ramp of [lightSteps, focalSteps]) {
      const steps = ramp.map((step) => luminance(step.colour));
      const way = Math.sign((steps.at(-1) ?? 0) - (steps[0] ?? 0));
      for (const [i, step] of steps.entries())
        if (i > 0) expect(Math.sign(step - (steps[i - 1] ?? 0))).toBe(way);
    }
    // Good light stands out the more from the ground the better the picture is: in no look does the poorest shine.
    const over = (colour: string) => {
      const opaque = colour.length > 7 ? parseInt(colour.slice(7), 16) / 255 : 1;
      const mix = [1, 3, 5].map((at) => {
        const [c, ground] = [colour, p.page].map((hex) => parseInt(hex.slice(at, at + 2), 16)) as [
          number,
          number,
        ];
        return Math.round(c * opaque + ground * (1 - opaque));
      });
      return `#${mix.map((c) => c.toString(16).padStart(2, '0')).join('')}`;
    };
    for (const { to, colour } of lightSteps) {
      const worths = (Object.keys(fading) as (keyof typeof fading)[]).map((w) =>
        contrast(over(faded(colour, w)), p.page),
      );
      const [first, last] = [worths[0] ?? 0, worths.at(-1) ?? 0];
      if (to <= 85) expect(first, colour).toBeGreaterThan(look === 'night' ? 2 * last : last);
    }
    // The words on the brightest data colour, and the hatching on the darkest ones.
    expect(contrast(tokens(look)['--on-data'] ?? '', lightSteps[0].colour)).toBeGreaterThanOrEqual(4.5);
    for (const { to, colour } of lightSteps)
      if (to > 110) expect(contrast(p.hatch, colour), colour).toBeGreaterThanOrEqual(3);
    // On a bar of the day, night is darker than day.
    for (const colour of [darkColour, twilightColour])
      expect(luminance(colour)).toBeLessThan(luminance(tokens(look)['--sky'] ?? ''));
  });
});
