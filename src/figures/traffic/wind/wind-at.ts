import type { Weather, WeatherWind } from '../../../survey/schema/weather';
import { parseInstant } from '../../../time/local-time';
import type { Likelihood } from './taf';
import type { Wind } from './wind';

/** A wind that may come beside the one that holds. */
export interface OtherWind {
  readonly likelihood: Exclude<Likelihood, 'throughout'>;
  /** Percent, null where none is said. */
  readonly probability: number | null;
  readonly wind: Wind;
}

export interface WindAt {
  readonly wind: Wind;
  readonly others: readonly OtherWind[];
}

const instantOr = (text: string | null, otherwise: number): number =>
  text === null ? otherwise : (parseInstant(text) ?? otherwise);
/** Instants (ms since 1970) from and up to which a wind holds. */
export const spanOf = ({
  from,
  to,
}: Pick<WeatherWind, 'from' | 'to'>): readonly [from: number, to: number] => [
  instantOr(from, -Infinity),
  instantOr(to, Infinity),
];

const asWind = (w: WeatherWind): Wind => ({
  from: w.speedKt === 0 ? null : w.direction,
  speedKt: w.speedKt,
  gustKt: w.gustKt,
  varies: w.variesFrom === null || w.variesTo === null ? null : [w.variesFrom, w.variesTo],
});

/** The wind that the survey tells for an instant (ms since 1970), null where it tells none. */
export function windAt({ winds }: Pick<Weather, 'winds'>, instant: number): WindAt | null {
  const then = winds.filter((w) => {
    const [from, to] = spanOf(w);
    return instant >= from && instant < to;
  });
  const holds = then.find((w) => w.likelihood === 'throughout');
  if (!holds) return null;
  const others = then.flatMap((w): OtherWind[] =>
    w.likelihood === 'throughout' || w.likelihood === null
      ? []
      : [{ likelihood: w.likelihood, probability: w.probability, wind: asWind(w) }],
  );
  return { wind: asWind(holds), others };
}
