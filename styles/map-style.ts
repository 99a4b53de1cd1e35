/**
 * The ground under a survey, drawn like a printed survey sheet: quiet paper tones, fine ink. No colour here is a
 * data colour or the signal colour, so that whatever is bright on the map is about light, lenses or the selection.
 */
export const paper = {
  page: '#f5f0e3',
  sheet: '#fbf8ef',
  ink: '#22251f',
  softInk: '#5d5d52',
  hairline: '#cdc5b1',
  /** The one signal colour: what is selected or being edited. */
  signal: '#c4391d',
  runway: '#54544d',
  apron: '#d3ccba',
  apronEdge: '#9d9583',
  obstacle: '#8a7d6a',
  obstacleEdge: '#3f3a31',
  leaf: '#6c7753',
  water: '#cbdde0',
  waterEdge: '#7fa3ae',
} as const;

export const fonts = { plain: 'Source Sans 3', strong: 'Source Sans 3 Semibold' } as const;

/** A layer of the map, without its library's types: those stay in one file. */
export interface LayerPiece {
  readonly id: string;
  readonly type: 'background' | 'fill' | 'line' | 'symbol' | 'circle';
  readonly source?: string;
  readonly filter?: readonly unknown[];
  readonly minzoom?: number;
  readonly maxzoom?: number;
  readonly layout?: Readonly<Record<string, unknown>>;
  readonly paint?: Readonly<Record<string, unknown>>;
}
