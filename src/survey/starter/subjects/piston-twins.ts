import type { Subject } from '../../schema/subject';
import { propeller } from './entry';

/** Piston twins. Where sizes and performance are from: `../subjects.ts`. */
export const pistonTwins: readonly Subject[] = [
  // span F, height within its range in F; length from memory
  propeller({
    key: 'BE58',
    name: 'BE58 — piston twin',
    length: 9.09,
    span: 11.52,
    height: 2.9,
    wing: 'low',
    engines: 2,
    approachSpeed: 49,
    climbSpeed: 54,
    groundRun: 430,
    landingRun: 430,
    climbGradient: 0.155,
    rpm: 2700,
    blades: 3,
  }),
  // all from memory
  propeller({
    key: 'DA42',
    name: 'DA42 — piston twin',
    length: 8.56,
    span: 13.42,
    height: 2.49,
    wing: 'low',
    engines: 2,
    approachSpeed: 43,
    climbSpeed: 47,
    groundRun: 380,
    landingRun: 320,
    climbGradient: 0.125,
    rpm: 2300,
    blades: 3,
  }),
  // span and height F; length from memory
  propeller({
    key: 'PA31',
    name: 'PA31 — piston twin',
    length: 9.94,
    span: 12.4,
    height: 3.96,
    wing: 'low',
    engines: 2,
    approachSpeed: 49,
    climbSpeed: 55,
    groundRun: 410,
    landingRun: 500,
    climbGradient: 0.115,
    rpm: 2575,
    blades: 3,
  }),
];
