import { expect, test } from 'vitest';
import { MapLook } from '../../src/map/map-look';
import { palettes } from '../../styles/map-style';

/** A map that says what is painted, and has no images yet. */
function dressed() {
  const painted = new Map<string, unknown>();
  let reliefs = 0;
  const look = new MapLook(
    'day',
    {
      setPaint: (layer, property, value) => void painted.set(`${layer} ${property}`, value),
      hasImage: () => false,
      updateImage: () => expect.unreachable('there are no images'),
    },
    { repaint: () => void reliefs++ },
    () => [
      { id: 'base:road', paint: { 'line-color': palettes.day.rail, 'line-width': 2, 'line-opacity': 0.5 } },
    ],
  );
  return { look, painted, reliefs: () => reliefs };
}

test('[M37] another look paints what has another colour in it, the base map on paper with it, and no more', () => {
  const { look, painted, reliefs } = dressed();
  look.begin();
  look.wear('day');
  expect(painted.size).toBe(0);
  expect(reliefs()).toBe(0);
  look.wear('night');
  expect(look.now).toBe('night');
  expect(painted.get('page background-color')).toBe(palettes.night.page);
  expect(painted.get('base:road line-color')).toBe(palettes.night.rail);
  expect([...painted.keys()].filter((name) => name.startsWith('base:'))).toEqual(['base:road line-color']);
  expect(reliefs()).toBe(1);
});

test('[M38] a look that is put on before the map is there is painted once it is, and known at once', () => {
  const { look, painted } = dressed();
  look.wear('night');
  look.wear('contrast');
  expect(look.now).toBe('contrast');
  expect(painted.size).toBe(0);
  look.begin();
  expect(painted.get('page background-color')).toBe(palettes.contrast.page);
  painted.clear();
  look.wear('day');
  expect(painted.get('page background-color')).toBe(palettes.day.page);
});
