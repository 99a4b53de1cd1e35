import type { Measure } from '../../survey/kit-members';

/** A subject's key is the user's to choose; that of a body or a lens is nobody's concern. */
export const keyField = { member: 'key', name: 'Key', measure: 'text' as Measure, needed: false } as const;

/** What a label alone does not say, under its field. */
export const fieldHints: Readonly<Record<string, string>> = {
  key: 'ICAO type designator or a word of your own; empty: made of the name.',
  extenders: 'Factors with spaces between them: 1.4\u00a02',
  span: 'For a helicopter the diameter of the rotor.',
  wing: 'In words: low, high, swept …',
  tailSpan: 'From tip to tip. Empty: a third of the span.',
  approachAngle: 'Empty: the runway end’s glide angle.',
  crossingHeight: 'Of the wheels over the threshold. Empty: the runway end’s.',
  approachAttitude: 'Nose up is positive. Empty: 3°.',
  climbAttitude: 'Empty: 8°.',
};
