import type { Turn, Turning } from '../../figures/traffic/flow/turning';
import type { WindComponents } from '../../figures/traffic/wind/components';
import type { Wind } from '../../figures/traffic/wind/wind';
import { wrap360 } from '../../survey/angles';
import type { EndRef } from '../../survey/schema/site';
import { knotsToMetresPerSecond } from '../../units/speed';
import type { Formats } from '../formats';

/** An end of the survey by name. */
export interface NamedEnd {
  readonly ref: EndRef;
  readonly designator: string;
  readonly closed: boolean;
}

type Printed = Pick<Formats, 'speed' | 'bearing'>;

export const knots = (format: Printed, kt: number): string => format.speed(knotsToMetresPerSecond(kt));

/** "240° at 15 kt, gusts 25 kt, varying 200° to 280°"; "variable at 3 kt"; "calm". */
export function windWords({ from, speedKt, gustKt, varies }: Wind, format: Printed): string {
  if (speedKt === 0) return 'calm';
  const direction = from === null ? 'variable' : format.bearing(from);
  const gusts = gustKt === null ? '' : `, gusts ${knots(format, gustKt)}`;
  const turning = varies ? `, varying ${format.bearing(varies[0])} to ${format.bearing(varies[1])}` : '';
  return `${direction} at ${knots(format, speedKt)}${gusts}${turning}`;
}

/** "240/15G25" in little room, whole knots. */
export function shortWind({ from, speedKt, gustKt }: Wind): string {
  if (speedKt === 0) return 'calm';
  const direction = from === null ? 'VRB' : String(Math.round(from)).padStart(3, '0');
  return `${direction}/${Math.round(speedKt)}${gustKt === null ? '' : `G${Math.round(gustKt)}`}`;
}

/** What the direction of a wind is told from and where; a wind without direction has no north. */
export const windNote = (
  { from }: Pick<Wind, 'from'>,
  { magnetic, station }: { readonly magnetic: boolean; readonly station: string | null },
): string =>
  [from !== null && (magnetic ? 'true, from the magnetic direction you typed' : 'true'), station]
    .filter(Boolean)
    .join(', ');

/** Along and across an end: "15 kt head" and "3 kt left"; a calm is just that, a variable wind neither. */
export function endWindWords(
  { speedKt }: Pick<Wind, 'speedKt'>,
  components: WindComponents | null,
  format: Printed,
): readonly [along: string, across: string] {
  if (speedKt === 0) return ['calm', ''];
  return components ? [headWords(components, format), crossWords(components, format)] : ['–', '–'];
}

/** "15 kt head" or "3 kt tail". */
const headWords = ({ headwindKt }: WindComponents, format: Printed): string =>
  `${knots(format, Math.abs(headwindKt))} ${headwindKt < -0.5 ? 'tail' : 'head'}`;

/** "3 kt from the left". */
function crossWords({ crosswindKt }: WindComponents, format: Printed): string {
  const speed = knots(format, Math.abs(crosswindKt));
  return Math.abs(crosswindKt) < 0.5 ? speed : `${speed} ${crosswindKt > 0 ? 'right' : 'left'}`;
}

export const namesOf = (refs: readonly EndRef[], ends: readonly NamedEnd[], between = '+'): string =>
  ends
    .filter(({ ref }) => refs.some((r) => r.runway === ref.runway && r.end === ref.end))
    .map((end) => end.designator)
    .join(between) || 'none';

/** "25", "25 in, 32 out" where arrivals and departures differ, "07 or 25" where either end is as good. */
export function flowName(
  { arrivals, departures, either }: Pick<Turn, 'arrivals' | 'departures'> & { readonly either?: boolean },
  ends: readonly NamedEnd[],
): string {
  const between = either ? ' or ' : '+';
  const [landing, leaving] = [namesOf(arrivals, ends, between), namesOf(departures, ends, between)];
  return landing === leaving ? landing : `${landing} in, ${leaving} out`;
}

/** How near the ends in use are to turning, one sentence each, the nearest turn of the wind first. */
export function turningWords(
  { veering, backing, stronger, weaker }: Turning,
  wind: Wind,
  ends: readonly NamedEnd[],
  format: Printed,
): string[] {
  const { from } = wind;
  const turned = (turn: Turn | null, sign: 1 | -1, does: string) =>
    turn && from !== null
      ? [
          {
            by: turn.by,
            words: `${flowName(turn, ends)} when it ${does} by ${Math.ceil(turn.by)}°, to ${format.bearing(wrap360(from + sign * turn.by) || 360)}`,
          },
        ]
      : [];
  const speeds = (turn: Turn | null, does: string) =>
    turn ? [`${flowName(turn, ends)} when it ${does} by ${knots(format, turn.by)}`] : [];
  return [
    ...[...turned(veering, 1, 'veers'), ...turned(backing, -1, 'backs')]
      .sort((a, b) => a.by - b.by)
      .map(({ words }) => words),
    ...speeds(stronger, 'freshens'),
    ...speeds(weaker, 'eases'),
  ];
}
