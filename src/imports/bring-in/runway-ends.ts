import { angleBetween, RAD, wrap360 } from '../../figures/geometry/angles';
import { designatorsApart, suggestedDesignator } from '../../figures/geometry/designator';
import { groundLine } from '../../figures/geometry/earth';
import { declination } from '../../figures/geometry/magnetic';
import type { Position } from '../../survey/document';
import { impliedDesignator } from '../catalogue/implied-designator';
import type { KnownRunway } from './types';

export interface NamedEnds {
  /** In the order of the line's positions. */
  readonly designators: readonly [string, string];
  readonly doubts: readonly string[];
}

/** More tens of degrees than these between a number and its direction are a doubt. */
const numbersApart = 1;

/**
 * Which end of a line has which designator: the number is the magnetic bearing from that end, in tens of degrees.
 * `label`: "07L/25R", "7-25", one of the two, or nothing.
 */
export function namedEnds(
  [a, b]: readonly [Position, Position],
  label: string,
  elevation: number,
  instant: number,
): NamedEnds {
  const { azimuth } = groundLine(a, b);
  const magnetic = wrap360((azimuth ?? 0) - declination(a, elevation, instant));
  const along: readonly [string, string] = [
    suggestedDesignator(magnetic),
    suggestedDesignator(magnetic + 180),
  ];
  const said = designatorsIn(label);
  if (!said)
    return {
      designators: along,
      doubts: [
        `The map gives ${label.trim() === '' ? 'no designators' : `"${label.slice(0, 40)}" for its designators`}; ${along.join('/')} follows from the runway's direction. Check it.`,
      ],
    };
  const off = (pair: readonly [string, string]) =>
    (designatorsApart(along[0], pair[0]) ?? 0) + (designatorsApart(along[1], pair[1]) ?? 0);
  const turned: readonly [string, string] = [said[1], said[0]];
  const designators = off(turned) < off(said) ? turned : said;
  const worst = off(designators) / 2;
  return {
    designators,
    doubts:
      worst > numbersApart
        ? [
            `The map calls it ${said.join('/')}, but it points to ${along.join('/')}. Check which end is which.`,
          ]
        : [],
  };
}

/** "09", "27R" as a pair; a single one implies the other. Null where there is no number, or one that no runway has. */
export function designatorsIn(label: string): readonly [string, string] | null {
  const found = [...label.toUpperCase().matchAll(/(?<![\dA-Z])(\d{1,2})\s?([LCR]?)(?![\dA-Z])/g)].map(
    ([, digits = '', letter = '']) => ({ number: Number(digits), letter }),
  );
  if (found.length > 2 || found.some(({ number }) => number < 1 || number > 36)) return null;
  const [first, second] = found.map(({ number, letter }) => `${String(number).padStart(2, '0')}${letter}`);
  const other = second ?? (first === undefined ? null : impliedDesignator(first));
  return first !== undefined && other !== null ? [first, other] : null;
}

/** m between the ends of two runways within which they are one and the same. */
const sameWithin = 500;

/** The runway of the survey that a line is, whichever way it runs; null for a new one. */
export function knownAs(
  line: readonly [Position, Position],
  source: string,
  runways: readonly KnownRunway[],
): KnownRunway | null {
  const { azimuth } = groundLine(...line);
  const apart = (p: Position, q: Position) => groundLine(p, q).distance;
  const same = ({ line: [c, d] }: KnownRunway) => {
    const turn = angleBetween(azimuth ?? 0, groundLine(c, d).azimuth ?? 0);
    // Two parallel runways lie closer than that: their ends must lie along the line, not beside it.
    const beside = (p: Position) => {
      const to = groundLine(line[0], p);
      return to.distance * Math.abs(Math.sin(((to.azimuth ?? 0) - (azimuth ?? 0)) * RAD));
    };
    if (Math.min(turn, 180 - turn) > 5 || Math.max(beside(c), beside(d)) > 60) return false;
    const straight = Math.max(apart(line[0], c), apart(line[1], d));
    const turned = Math.max(apart(line[0], d), apart(line[1], c));
    return Math.min(straight, turned) < sameWithin;
  };
  return runways.find((runway) => runway.source !== source && same(runway)) ?? null;
}
