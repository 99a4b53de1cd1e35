import type { Contents } from '../../survey/contents';
import { lensName } from '../../survey/lens-name';
import type { Candidate, Proposed } from '../../sweep/candidates';
import type { GroundThere } from '../../sweep/ground/ground-plan';
import type { Planned } from '../../sweep/plan';
import type { WhyNoGround } from '../../ports/place-search';
import type { PlaceLayer } from '../../state/drawn-places.svelte';
import type { HourChoice } from '../../state/place-question';
import { decimal, focalRange, share } from '../../units/format';
import { focalSteps, outOfReachColour, placeStepsOn } from '../../../styles/ramps';
import type { Formats } from '../formats';
import { hiderWords } from './sight-words';

type Refused = Extract<Planned, { ok: false }>;

/** What the cells are coloured by. */
export const placeLayerWords: Readonly<Record<PlaceLayer, string>> = {
  minutes: 'Good minutes',
  focal: 'Focal length needed',
  'light-a': 'Light at A',
  'light-b': 'Light at B',
  'in-sight': 'Share in sight',
};

/** Of which hours of the day. */
export const hourChoiceWords: Readonly<Record<HourChoice, string>> = {
  day: 'Dawn to dusk',
  morning: 'Dawn to noon',
  afternoon: 'Noon to dusk',
  moments: 'Moments A to B',
};

/** Why nobody stands somewhere. */
const closedWords: Readonly<Record<NonNullable<GroundThere['closedBy']>, string>> = {
  'no-go': 'a no-go area of this survey',
  runway: 'too close to a runway',
  'taxi-route': 'too close to a taxi route',
  apron: 'too close to an apron',
  building: 'a building',
  water: 'water',
  rail: 'a railway or right beside it',
  motorway: 'a motorway or right beside it',
  helipad: 'within three rotor diameters of a helipad',
  'winch-run': 'beside a winch cable',
  'jet-blast': 'jet blast: behind the end where jets start their take-off',
  access: 'the map says: no access on foot',
  refused: 'somebody was refused here',
};

/** "Closed: too close to a runway (07/25)." */
export function groundWords({ ground, closedBy, name, veryClose }: GroundThere): string {
  const called = name === '' ? '' : ` (${name})`;
  if (ground === 'closed')
    return `Closed: ${closedBy ? closedWords[closedBy] : 'nobody may stand here'}${called}.`;
  if (ground === 'unknown') return 'Unknown ground: nothing here says that one may stand; check first.';
  return `Open: ${name === '' ? 'public ground' : name}${veryClose ? '; very close to moving aircraft' : ''}.`;
}

/** Why the base map has nothing to tell of the ground. */
export const baseGroundWords: Readonly<Record<WhyNoGround, string>> = {
  'no-vector':
    'The base map on the screen is a picture or a plain plan: it cannot be asked what is a road. Choose a vector base map, or bring in an extract of the map.',
  schema:
    'This base map does not say what its layers mean in a way that is known here (the OpenMapTiles layers "transportation" and "water" are). Bring in an extract of the map instead.',
  zoom: 'Zoom in until the airfield fills the screen: footpaths are in the base map from zoom 14 on only.',
  nothing: 'The base map on the screen has no ways or water near the runways. Move the map to the airfield.',
};

export const broughtWords = (count: number): string =>
  count === 0
    ? 'The survey has all of this ground already.'
    : `${count === 1 ? 'One piece' : `${count} pieces`} of ground brought in, of what is on the screen. The base map is named as their source.`;

/** What a place is called: its way, else where it lies. */
export const placeName = ({ way, side, ground }: Pick<Candidate, 'way' | 'side' | 'ground'>): string =>
  way ?? `${ground === 'open' ? 'Public way' : 'Open country'}${side ? `, ${side} side` : ''}`;

/** "140 m from Mill Lane lay-by". */
function nearWords({ nearestSpot }: Candidate, format: Formats): string {
  return nearestSpot === null
    ? ''
    : `${format.length(Math.round(nearestSpot / 10) * 10)} from the nearest spot`;
}

/**
 * What places are ranked by: minutes over all paths, since in a minute in which two are good twice as much comes past. Behind it how
 * long one stays for that.
 */
export const rankWords = ({
  pathMinutes,
  goodMinutes,
  paths,
}: Pick<Candidate, 'pathMinutes' | 'goodMinutes' | 'paths'>): string =>
  paths.length === 1
    ? `${decimal(goodMinutes, 0)} good min`
    : `${decimal(pathMinutes, 0)} good min over ${paths.length} paths, ${decimal(goodMinutes, 0)} by the clock`;

/** Paths that are good over the same time are told together: "25 arrivals and 25 departures 05:30–11:00". */
function pathWords({ paths }: Candidate, clock: (instant: number) => string): string {
  const told = new Map<string, string[]>();
  for (const { name, spells } of paths) {
    const when = spells.map(({ from, to }) => `${clock(from)}–${clock(to)}`).join(' and ');
    told.set(when, [...(told.get(when) ?? []), name]);
  }
  return [...told].map(([when, names]) => `${names.join(' and ')} good ${when}`).join(', ');
}

/** All that a line of the list says of a place, behind its name. `clock`: of the airfield. */
export function placeSentence(
  candidate: Candidate,
  contents: Pick<Contents, 'kit' | 'obstacles'>,
  format: Formats,
  clock: (instant: number) => string,
): string {
  const { ground, veryClose, paths, lens, visibleShare, hiddenBy, side, way, deck } = candidate;
  const focals = paths.map(({ focal }) => focal);
  const range =
    focals.length > 0
      ? focalRange(Math.min(...focals.map((f) => f.shortest)), Math.max(...focals.map((f) => f.longest)))
      : '';
  const taken = contents.kit.lenses.find(({ key }) => key === lens?.key);
  const lensWords = taken
    ? ` (${lensName(taken)}${lens?.extender ? ` with ${lens.extender}×` : ''} fits${lens?.throughout === false ? ' at its best' : ''})`
    : range === ''
      ? ''
      : ' (no lens of the kit fits: to be cropped)';
  const hides = hiddenBy.slice(0, 2).map((by) => hiderWords(by, contents.obstacles));
  const where = [way !== null && side ? `${side} side` : '', nearWords(candidate, format)].filter(Boolean);
  const told = [
    where.join(', '),
    pathWords(candidate, clock),
    `${range}${lensWords}`,
    visibleShare !== null && visibleShare < 0.995 ? `${share(visibleShare)} in sight` : '',
    hides.length > 0 ? `${hides.join(' and ')} ${hides.length > 1 ? 'hide' : 'hides'} part of it` : '',
    veryClose ? 'very close: stand back from the fence' : '',
    ground !== 'open' ? 'unknown ground: check first' : deck === null ? 'public way' : 'up on top of it',
  ].filter((words) => words !== '');
  return `${told.join('; ')}.`;
}

/** Why nothing can be asked, and the mend. */
export function refusedWords({ about, reason }: Refused): string {
  switch (about) {
    case 'runways':
      return 'No runway drawn yet. Draw one, or search for the airfield: then good places round it appear here.';
    case 'lenses':
      return 'No lens in the kit. Add or choose one under “Subject and kit”: what is in reach hangs on it.';
    case 'paths':
      return 'No end is in use. Choose the ends under “Ends in use”.';
    // The page has neither a side of the area nor paths to choose, of which the reason speaks.
    case 'antimeridian':
      return 'The ground round these runways lies on both sides of the 180th meridian, where east and west meet: places cannot be shown there. Where another runway lies clear of it, choose its ends under “Ends in use”.';
    default:
      return `${reason.charAt(0).toUpperCase()}${reason.slice(1)}.`;
  }
}

/** Why there is no place to propose, and what would help. */
export const noneWords: Readonly<Record<NonNullable<Proposed['none']>, string>> = {
  'forbidden-by-field':
    'Photography is forbidden here by the field’s rule: nothing is proposed. Who runs the field may allow it.',
  'nothing-good':
    'Nothing within this area is good in these hours with these ends and this kit. A longer lens, the other ends, other hours or another date would help; ground that is closed is never proposed.',
};

/** The caution that stands beside every list of places. */
export const placeCaution =
  'A map does not know today’s fences, crops and signs. Open ground is what the map calls public; unknown ground is somebody’s: ask. Park and stand clear of gates and traffic. The word of police, airfield and landowner goes before this list.';

const minuteText = (minutes: number) => (minutes < 120 ? `${minutes} min` : `${minutes / 60} h`);
const stepText: Readonly<Record<PlaceLayer, (value: number) => string>> = {
  minutes: minuteText,
  focal: (mm) => `${mm} mm`,
  'light-a': (factor) => factor.toFixed(2),
  'light-b': (factor) => factor.toFixed(2),
  'in-sight': share,
};

/** What the colours of a layer mean, in their order. */
export function placeLegend(
  layer: PlaceLayer,
  usableTo: number,
  isDark = false,
): readonly { colour: string; words: string }[] {
  const text = stepText[layer];
  const steps = placeStepsOn(layer, isDark);
  const entries = steps
    .map(({ to, colour }, i) => {
      const from = steps[i - 1]?.to ?? 0;
      const isOpen = to === Infinity || (layer === 'focal' && i === steps.length - 1);
      return { colour, from, words: isOpen ? `over ${text(from)}` : `to ${text(to)}` };
    })
    .filter(({ from }) => layer !== 'focal' || from < usableTo);
  return layer === 'focal' && usableTo < Infinity && focalSteps.length > 0
    ? [...entries, { colour: outOfReachColour, words: 'out of reach' }]
    : entries;
}

/** "9:00 to 11:00 and 17:00 to 20:00": the hours that are worth at least half of the best one. `byHour`: 24, in minutes. */
export function hourWords(byHour: readonly number[], hour: (clock: string) => string): string {
  const most = Math.max(...byHour);
  if (!(most > 0)) return '';
  const is = byHour.map((minutes) => minutes >= most / 2);
  const spans: string[] = [];
  const at = (h: number) => hour(`${String(h % 24).padStart(2, '0')}:00`);
  for (let h = 0; h < 24; h++) {
    if (!is[h] || is[h - 1]) continue;
    let end = h + 1;
    while (is[end]) end++;
    spans.push(`${at(h)} to ${at(end)}`);
  }
  return spans.join(' and ');
}
