/** A part of a credit line; a link where `href` is an address. */
export interface CreditPart {
  readonly text: string;
  readonly href: string | null;
}
export type Credit = readonly CreditPart[];

/** What lies under the survey, as the map needs to know it. The same object as long as nothing about it changes. */
export type BaseGround =
  | { readonly kind: 'plain' }
  | {
      readonly kind: 'tiles';
      readonly name: string;
      /** With {z}, {x} and {y}. */
      readonly template: string;
      /** The last zoom that the server has; beyond it tiles are enlarged. */
      readonly maxZoom: number;
      readonly credit: Credit;
    }
  | { readonly kind: 'style'; readonly name: string; readonly address: string; readonly credit: Credit }
  | {
      readonly kind: 'archive';
      readonly name: string;
      /** Where it is on the net, or how it is kept on this device (null when it no longer is). */
      readonly from: { readonly address: string } | { readonly read: () => Promise<Blob | null> };
      readonly credit: Credit;
    };

/**
 * How the chosen base map fares: nothing of it has come yet, it is there, its server cannot be reached, or the
 * server answers but has no tile for what is looked at.
 */
export type BaseHealth = 'waiting' | 'shown' | 'unreachable' | 'empty';

/** What the map tells of the base it was given. */
export interface BaseReport {
  readonly health: BaseHealth;
  /** Credits that the map's own data ask for. */
  readonly credit: Credit;
  /** What is wrong with it, in words, where more is known than that it cannot be reached. */
  readonly reason: string | null;
}
