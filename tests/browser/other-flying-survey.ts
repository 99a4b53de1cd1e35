import { readFileSync } from 'node:fs';

interface Feature {
  readonly properties: Readonly<Record<string, unknown>>;
}

/** The sample site with a winch run and a published path, which it has not; `more`: properties of its kinds beside its own. */
export function otherFlyingSurvey(more: Readonly<Record<string, object>> = {}): string {
  const sample = JSON.parse(readFileSync('sample-sites/tolverby.geojson', 'utf8')) as { features: Feature[] };
  const line = (
    id: string,
    properties: Feature['properties'],
    coordinates: readonly (readonly number[])[],
  ) => ({
    type: 'Feature',
    id,
    properties,
    geometry: { type: 'LineString', coordinates },
  });
  const winch = line('winch', { kind: 'winch-run', name: 'South winch' }, [
    [18.165, 50.925],
    [18.178, 50.9275],
  ]);
  const published = line(
    'published',
    { kind: 'flight-path', name: 'Curved approach', heights: [900, 500], source: 'drawn' },
    [
      [18.05, 50.9],
      [18.16, 50.927],
    ],
  );
  const features = [...sample.features, winch, published].map((feature) => ({
    ...feature,
    properties: { ...feature.properties, ...more[String(feature.properties['kind'])] },
  }));
  return JSON.stringify({ ...sample, features });
}
