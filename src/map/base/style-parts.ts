import { creditText, joinedCredits } from './credit-text';
import { basePrefix, UnusableBase, type BaseParts, type LayerSpec, type Spec } from './base-parts';

const isRecord = (value: unknown): value is Spec =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Kinds of sources that a base map may bring. */
const sourceTypes = ['vector', 'raster', 'raster-dem', 'geojson', 'image'];

/**
 * What a style (MapLibre Style Specification, version 8) puts under the survey. Its addresses may be relative to
 * its own. Light, terrain, projection and camera are the survey's own affair and are left out.
 */
export function styleParts(style: unknown, address: string): BaseParts {
  if (
    !isRecord(style) ||
    style['version'] !== 8 ||
    !isRecord(style['sources']) ||
    !Array.isArray(style['layers'])
  )
    throw new UnusableBase('what stands at its address is no map style of version 8');
  const absolute = (url: unknown): unknown => (typeof url === 'string' ? resolved(url, address) : url);
  const sources = Object.entries(style['sources']).flatMap(([id, source]): [string, Spec][] => {
    if (!isRecord(source) || !sourceTypes.includes(String(source['type']))) return [];
    const { url, tiles, data } = source;
    return [
      [
        basePrefix + id,
        {
          ...source,
          ...(typeof url === 'string' ? { url: absolute(url) } : {}),
          ...(Array.isArray(tiles) ? { tiles: tiles.map(absolute) } : {}),
          ...(typeof data === 'string' ? { data: absolute(data) } : {}),
        },
      ],
    ];
  });
  const known = new Set(sources.map(([id]) => id));
  const layers = style['layers'].flatMap((layer: unknown): LayerSpec[] => {
    if (!isRecord(layer) || typeof layer['id'] !== 'string' || typeof layer['type'] !== 'string') return [];
    const id = basePrefix + layer['id'];
    const { paint: given } = layer;
    const paint = isRecord(given) ? given : {};
    if (layer['type'] === 'background') return [{ ...layer, id, type: 'background', paint }];
    const source = basePrefix + String(layer['source']);
    return known.has(source) ? [{ ...layer, id, type: layer['type'], source, paint }] : [];
  });
  if (layers.length === 0) throw new UnusableBase('its style has no layers');
  const { glyphs } = style;
  return {
    sources: Object.fromEntries(sources),
    layers,
    isOnPaper: false,
    glyphs: typeof glyphs === 'string' ? resolved(glyphs, address) : null,
    sprites: spritesOf(style['sprite'], address),
    credit: joinedCredits(
      sources.map(([, { attribution }]) => (typeof attribution === 'string' ? creditText(attribution) : [])),
    ),
  };
}

function spritesOf(sprite: unknown, address: string): BaseParts['sprites'] {
  if (typeof sprite === 'string') return [{ id: 'default', url: resolved(sprite, address) }];
  if (!Array.isArray(sprite)) return [];
  return sprite.flatMap((entry: unknown) =>
    isRecord(entry) && typeof entry['id'] === 'string' && typeof entry['url'] === 'string'
      ? [{ id: entry['id'], url: resolved(entry['url'], address) }]
      : [],
  );
}

/** An address relative to another one, with its {placeholders} as they are. */
function resolved(url: string, base: string): string {
  try {
    return new URL(url, base).href.replace(/%7B/gi, '{').replace(/%7D/gi, '}');
  } catch {
    return url;
  }
}
