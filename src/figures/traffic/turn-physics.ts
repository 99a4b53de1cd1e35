import { DEG, RAD } from '../geometry/angles';

/** m/s2 (ISO 80000-3: standard acceleration of free fall). */
const gravity = 9.80665;

/**
 * m of radius of a level, coordinated turn: v2 / (g tan bank), as FAA-H-8083-25 chapter 5 has it in knots and feet.
 * `speed`: m/s through still air; `bank`: degrees above 0.
 */
export const turnRadius = (speed: number, bank: number): number =>
  speed ** 2 / (gravity * Math.tan(bank * RAD));

/** Degrees of bank of a level, coordinated turn; 0 straight ahead. `radius`: m, without sign. */
export const bankOf = (speed: number, radius: number): number =>
  Math.atan(speed ** 2 / (gravity * radius)) * DEG;
