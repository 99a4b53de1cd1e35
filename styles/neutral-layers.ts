import { fonts, paper, type LayerPiece } from './map-style';

/** A layer of vector tiles about which nothing is known but its name and the fields of its features. */
interface Unknown {
  readonly id: string;
  readonly fields: readonly string[];
}

type Paint = LayerPiece['paint'];
type Piece = LayerPiece & { readonly 'source-layer': string };

const only = (...types: string[]) => ['in', ['geometry-type'], ['literal', types]] as const;
const areas = only('Polygon', 'MultiPolygon');
const lines = only('LineString', 'MultiLineString');
const points = only('Point', 'MultiPoint');

/** Widths in pixels at zooms 6, 12 and 17. */
const widths = (a: number, b: number, c: number) =>
  ['interpolate', ['exponential', 1.5], ['zoom'], 6, a, 12, b, 17, c] as const;

interface Look {
  readonly rank: number;
  readonly area: Paint;
  readonly line: readonly Paint[];
}

const thin: readonly Paint[] = [{ 'line-color': paper.apronEdge, 'line-width': widths(0.4, 0.8, 1.4) }];
const nameless: Look = {
  rank: 2,
  area: { 'fill-color': paper.apron, 'fill-opacity': 0.3, 'fill-outline-color': paper.apronEdge },
  line: thin,
};

/** By what layers of vector tiles are usually called; the first that fits. */
const looks: readonly (readonly [RegExp, Look])[] = [
  [
    /water|ocean|sea|lake|river|stream/i,
    {
      rank: 3,
      area: { 'fill-color': paper.water },
      line: [{ 'line-color': paper.waterEdge, 'line-width': widths(0.4, 1, 3) }],
    },
  ],
  [
    /bound|admin|border/i,
    { rank: 7, area: { 'fill-opacity': 0 }, line: [{ ...thin[0], 'line-dasharray': [4, 2] }] },
  ],
  [
    /build|structure/i,
    { rank: 4, area: { 'fill-color': paper.building, 'fill-outline-color': paper.buildingEdge }, line: thin },
  ],
  [
    /road|street|transport|highway|path|track/i,
    {
      rank: 5,
      area: { 'fill-color': paper.pavement },
      line: [
        { 'line-color': paper.minorEdge, 'line-width': widths(0.6, 2.4, 11) },
        { 'line-color': paper.sheet, 'line-width': widths(0.2, 1.4, 9) },
      ],
    },
  ],
  [
    /rail|transit/i,
    {
      rank: 6,
      area: { 'fill-color': paper.pavement },
      line: [{ 'line-color': paper.rail, 'line-width': widths(0.5, 1, 2) }],
    },
  ],
  [/aeroway|runway|airport/i, { rank: 6, area: { 'fill-color': paper.apron }, line: thin }],
  [
    /wood|forest|park|green|land_?cover|grass|natural|vegetation/i,
    { rank: 1, area: { 'fill-color': paper.wood }, line: thin },
  ],
  [/land|earth|continent|country/i, { rank: 0, area: { 'fill-color': paper.sheet }, line: thin }],
];

const lookOf = (id: string) => looks.find(([words]) => words.test(id))?.[1] ?? nameless;

/**
 * A quiet drawing of vector tiles that come without a style: each layer's areas, lines and points, tinted by what
 * its name says it is, named where its features have names. Without sources: the map puts those in.
 */
export function neutralLayers(layers: readonly Unknown[]): readonly Piece[] {
  const ranked = layers.map((layer) => ({ ...layer, ...lookOf(layer.id) })).sort((a, b) => a.rank - b.rank);
  const piece = (
    id: string,
    part: string,
    type: LayerPiece['type'],
    filter: LayerPiece['filter'],
    paint: Paint,
  ) =>
    ({
      id: `${id}-${part}`,
      type,
      'source-layer': id,
      filter: filter ?? [],
      paint: paint ?? {},
    }) satisfies Piece;
  return [
    ...ranked.map(({ id, area }) => piece(id, 'area', 'fill', areas, area)),
    ...ranked.flatMap(({ id, line }) =>
      line.map((paint, i) => ({
        ...piece(id, `line-${i}`, 'line', lines, paint),
        layout: { 'line-cap': 'round', 'line-join': 'round' },
      })),
    ),
    ...ranked.map(({ id }) =>
      piece(id, 'point', 'circle', points, {
        'circle-radius': 2,
        'circle-color': paper.softInk,
        'circle-stroke-color': paper.sheet,
        'circle-stroke-width': 1,
      }),
    ),
    ...ranked
      .filter(({ fields }) => fields.includes('name'))
      .map(({ id }) => ({
        ...piece(id, 'name', 'symbol', points, {
          'text-color': paper.name,
          'text-halo-color': paper.page,
          'text-halo-width': 1.4,
        }),
        layout: {
          'text-field': ['get', 'name'],
          'text-font': [fonts.plain],
          'text-size': 11,
          'text-anchor': 'top',
          'text-offset': [0, 0.4],
          'text-optional': true,
        },
      })),
  ];
}
