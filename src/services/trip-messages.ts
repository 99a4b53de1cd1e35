import type { FieldAsked, FieldDay } from '../figures/trip/field-day';

/** One survey's text and the days that are asked of it. */
export interface TripRequest {
  readonly text: string;
  readonly asked: readonly FieldAsked[];
}

/** A day each, in their order, then the end; or why there is none. */
export type TripAnswer =
  | { readonly part: 'day'; readonly day: FieldDay; readonly credits: readonly string[] }
  | { readonly part: 'refused'; readonly reason: string }
  | { readonly part: 'end' };
