import type { PassingNow } from '../../figures/now/passing-now';
import type { PlaceNow } from '../../figures/now/place-now';
import type { Pointing } from '../../figures/now/pointing';
import type { HeadingTrouble, WhereTrouble } from '../../ports/whereabouts';
import { decimal, degrees } from '../../units/format';
import type { Formats } from '../formats';
import { lightName } from '../words/sample-words';

const orChoose = 'or choose a spot by hand.';

/** Why there is no position, and the way on. `since`: when the last one was found, in words; null for never. */
export function troubleWords(trouble: WhereTrouble, since: string | null): string {
  switch (trouble) {
    case 'refused':
      return `The position was refused. Allow it for this page in the browser’s settings and ask again, ${orChoose}`;
    case 'lost':
      return since === null
        ? `No position yet. Step under open sky, ${orChoose}`
        : `No new position: the last one is of ${since}. Step under open sky, ${orChoose}`;
    case 'insecure':
      return `This page came by plain http, where browsers give no position. Open it by https, ${orChoose}`;
    case 'missing':
      return `This device gives no position: choose a spot by hand.`;
  }
}

export const headingTroubleWords: Readonly<Record<HeadingTrouble, string>> = {
  refused: 'The compass was refused. Allow motion and orientation for this page in the browser’s settings.',
  missing: 'This device has no compass that the page can read: find the path by its bearing.',
};

/** Where one is, in words. */
export function placeWords(place: PlaceNow, accuracy: number | null, format: Formats): string {
  const known = accuracy === null ? '' : `, known to ${format.length(accuracy)}`;
  switch (place.kind) {
    case 'spot':
      return `At ${place.spot.name || 'a standing spot'}${known}`;
    case 'here':
      return `At no spot of the survey${known}`;
    case 'rough':
      return `The position is known to ${format.length(place.accuracy)} only: too rough to tell lens and light. Wait under open sky, ${orChoose}`;
    case 'away':
      return `You are ${format.length(place.distance)} from the field. Choose a spot by hand to see how it is there.`;
  }
}

/** "front-lit for 23 min, then side-lit"; "front-lit for two hours or more". */
export function lightForWords({ sample, flat, toCome }: PassingNow): string {
  const light = `${lightName(sample.light, flat)}${sample.glare ? ', glare' : ''}`;
  const { minutes, to } = toCome;
  if (minutes === null || to === null) return `${light} for two hours or more`;
  return `${light} for ${minutes} min, then ${lightName(to.light, flat)}${to.glare ? ' with glare' : ''}`;
}

/** "turn right 40°", "straight ahead". */
export function turnToWords({ turn }: Pick<Pointing, 'turn'>): string {
  if (turn === null) return '';
  const by = Math.abs(turn);
  if (by < 5) return 'straight ahead';
  return `turn ${turn > 0 ? 'right' : 'left'} ${degrees(by)}`;
}

/** "12 min old", "3 h old". */
export const ageWords = (minutes: number): string =>
  minutes < 120 ? `${minutes} min old` : `${decimal(minutes / 60, 0)} h old`;
