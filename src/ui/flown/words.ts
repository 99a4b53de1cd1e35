import type { Flown, Learned } from '../../figures/flown/learn';
import type { Spread } from '../../figures/flown/percentile';
import type { WhatToTake } from '../../figures/flown/what-to-take';
import type { Contents } from '../../survey/contents';
import { decimal } from '../../units/format';

type Runways = Pick<Contents, 'runways'>;

/** "25", the runway's name where its end has no designator. */
const endName = ({ ends, name }: Contents['runways'][number], end: Flown['end']): string =>
  ends[end].designator || name || 'An end';

const many: Record<Flown['kind'], string> = {
  arrival: 'arrivals',
  departure: 'departures',
  circuit: 'circuits',
};

/** "24 arrivals". */
export function groupName(
  { runways }: Runways,
  { runway, end, kind }: Pick<Flown, 'runway' | 'end' | 'kind'>,
): string {
  const found = runways.find((r) => r.id === runway);
  return `${found ? endName(found, end) : 'An end'} ${many[kind]}`;
}

/** "3.21° (3.10 to 3.30)": the median, and the middle half of the flights. */
export function spreadWords({ median, low, high }: Spread, print: (value: number) => string): string {
  const [middle, from, to] = [print(median), print(low), print(high)];
  return from === to ? middle : `${middle} (${from} to ${to})`;
}

/** A touchdown, m beyond the landing threshold: "310 m beyond the threshold". */
export const beyondWords = (median: number, length: (m: number) => string): string =>
  `${length(Math.abs(median))} ${median < 0 ? 'before' : 'beyond'} the threshold`;

export const flightsWords = (count: number): string => (count === 1 ? '1 flight' : `${count} flights`);

/** Ends and kinds that too few flights are of, each in a sentence. */
export const fewWords = (runways: Runways, { few }: Learned): readonly string[] =>
  few.map(
    (group) =>
      `${groupName(runways, group)}: ${group.needed} flights of one kind are needed; there ${group.flights === 1 ? 'is 1' : `are ${group.flights}`}.`,
  );

export const otherWords = (other: number): string =>
  `${flightsWords(other)} taught nothing: a go-around, a crossing, lost on the way, or near no runway.`;

/** "Looking at 500 flights, 40 % …"; tens of a hundred, so that a voice has time to say them. */
export const lookingWords = (flights: number, progress: number | null): string =>
  `Looking at ${flights === 1 ? '1 flight' : `${flights.toLocaleString('en')} flights`}${
    progress === null || progress < 0.1 ? '' : `, ${Math.floor(progress * 10) * 10} %`
  } …`;

/** What a click writes, line by line. */
export function takeWords(
  { runways, subject }: Pick<Contents, 'runways' | 'subject'>,
  take: WhatToTake,
  fine: (m: number) => string,
  length: (m: number) => string,
): readonly string[] {
  const lines = take.ends.map(({ ref, glide, crossingHeight, flown }) => {
    const runway = runways.find((r) => r.id === ref.runway);
    const parts = [
      ...(glide === null ? [] : [`glide ${decimal(glide, 2)}°`]),
      ...(crossingHeight === null ? [] : [`wheels ${fine(crossingHeight)} above the threshold`]),
      ...flown.map(({ kind, flights }) => `the way that ${flights} ${many[kind]} took`),
    ];
    return `${runway ? endName(runway, ref.end) : 'An end'}: ${parts.join(', ') || 'nothing that fits'}`;
  });
  if (!take.subject) return lines;
  const { groundRun, climbGradient } = take.subject;
  const parts = [
    ...(groundRun === null ? [] : [`take-off run ${length(groundRun)}`]),
    ...(climbGradient === null ? [] : [`climb ${percentWords(climbGradient)}`]),
  ];
  return [...lines, `${subject.name}: ${parts.join(', ') || 'nothing that fits'}`];
}

/** "Glider (approach angle)": who goes by a word of its own. */
export const overridingWords = ({ overriding }: WhatToTake): string =>
  overriding
    .map(
      ({ name, approachAngle, crossingHeight }) =>
        `${name} (${[approachAngle === null ? [] : 'approach angle', crossingHeight === null ? [] : 'crossing height'].flat().join(', ')})`,
    )
    .join('; ');

export const percentWords = (gradient: number): string => `${decimal(gradient * 100, 1)} %`;
