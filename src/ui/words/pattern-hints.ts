import type { PatternKind } from '../../survey/schema/flying';

/** What each of them is, for whoever has never stood under one. */
export const patternHints: Readonly<Record<PatternKind, string>> = {
  break:
    'The run-in is flown fast and level along the runway, at 1,500 ft and 350 kt unless you say better; over the threshold it breaks: a steep level turn that takes the speed off, then downwind, and a curved final.',
  'wide-circuit': 'The wide, flat circuit of tankers and airlifters: 1,500 ft up, 1.5 NM beside the runway.',
  offset:
    'A straight approach that comes in a few degrees beside the runway and turns on to it near the end.',
  circling: "It begins on the other end's approach, goes round beside the field and lands on this end.",
  glider: 'Close beside the field, steep on final with the air brakes out.',
  aerotow: 'A glider behind a tug: a long run and a shallow climb.',
};
