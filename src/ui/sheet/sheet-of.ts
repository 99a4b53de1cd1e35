import type { FieldSheet, SheetPart, SheetStay, SheetWindow } from '../../exports/sheet/field-sheet';
import type { MovementFigures } from '../../figures/movements/movement-figures';
import type { PackItem } from '../../figures/plan/pack';
import type { Stay } from '../../figures/plan/stays-of';
import type { TakenAlong } from '../../figures/plan/taken-along';
import type { SunTimes } from '../../figures/light/sun-times';
import type { PlaceRules } from '../../state/field-day.svelte';
import type { Contents } from '../../survey/contents';
import { decimal, focal } from '../../units/format';
import type { Formats } from '../formats';
import { riseAndSetWords } from '../light/sun-words';
import { moveWords, spotName } from '../plan/plan-words';
import { apertureWords, isoWords, shutterWords } from '../viewfinder/words';
import { accessBadge, ladderWords, permissionWords, ruleWords } from '../words/access-words';
import { lightName, takeWords } from '../words/sample-words';
import { packWords } from '../pack/pack-words';

/** What a sheet is written from. */
export interface SheetNeeds {
  readonly contents: Pick<Contents, 'site' | 'rules' | 'subject'>;
  readonly date: string;
  readonly timeZone: string;
  readonly format: Formats;
  readonly sunTimes: SunTimes;
  /** Degrees, east positive; null while it is not known. */
  readonly declination: number | null;
  /** "25 in use", of the day. */
  readonly flow: string;
  readonly stays: readonly Stay[];
  readonly staysNote: string | null;
  readonly rulesAt: (stay: Stay) => PlaceRules | null;
  readonly ruleDoubts: readonly string[];
  /** What to do during a stay if the wind turns, a sentence each. */
  readonly instead: (stay: Stay) => readonly string[];
  readonly movements: readonly MovementFigures[];
  readonly pack: readonly PackItem[];
  readonly own: { readonly items: readonly string[]; readonly minutesFromHome: number | null };
  /** Words of the radio by which one knows the end in use. */
  readonly telling: readonly string[];
  /** When and out of which survey it is made. */
  readonly made: string;
}

/** Movements that one reads on paper; more are counted. */
const mostMovements = 24;

/** The sheet in the words of the screen: the same functions print both. */
export function sheetOf(needs: SheetNeeds): FieldSheet {
  const { contents, date, timeZone, format, sunTimes, declination, flow, stays, pack, own } = needs;
  const { site, rules, subject } = contents;
  const clock = (instant: number) => format.clockAt(instant, timeZone);
  const twilight = (label: string, instant: number | null) =>
    instant !== null && `${label} ${clock(instant)}`;
  const sun = [
    twilight('first light', sunTimes.civilDawn),
    riseAndSetWords(sunTimes, clock),
    twilight('last light', sunTimes.civilDusk),
  ].filter((words) => words !== false);
  const office = [rules.office, rules.phone, rules.email].filter((text) => text !== null);
  return {
    title: [site.name || 'Airfield', site.icao].filter(Boolean).join(', '),
    day: format.day(date),
    head: [
      ['Ends', flow],
      ['Sun', sun.join(', ')],
      ['For', subject.name || subject.key],
      ['Bearings', `true; compass needle ${declinationWords(declination)}`],
      ['Office', office.length > 0 ? office.join(', ') : 'not noted'],
    ],
    doubts: doubtsOf(needs),
    stays: stays.map((stay) => stayOf(stay, needs, clock)),
    staysNote: needs.staysNote,
    parts: [
      ...movementsPart(needs, clock),
      rulesPart(needs),
      ...takeAlong([...pack.map(packWords), ...own.items]),
      radioPart(needs),
    ],
    cautions: [
      'Stay on public or permitted ground; the airfield’s and the police’s word goes before this sheet. Rules of the country and the airfield come first.',
      'Never look at or near the sun through a lens or viewfinder.',
      'No ladders at a fence without leave. Keep clear of approach lights, jet blast, roads and rails.',
      'Photographing some airfields or aircraft is an offence in some places. Not for navigation.',
    ],
    made: needs.made,
  };
}

/** "3° west of true north". */
const declinationWords = (degrees: number | null): string => {
  if (degrees === null) return 'not known';
  const off = decimal(Math.abs(degrees), 0);
  return off === '0' ? 'within 1° of true north' : `${off}° ${degrees > 0 ? 'east' : 'west'} of true north`;
};

function doubtsOf({ stays, rulesAt, ruleDoubts }: SheetNeeds): string[] {
  const field = new Set(ruleDoubts);
  const seen = new Set<string>();
  const ofSpots = stays.flatMap((stay) => {
    const rules = rulesAt(stay);
    if (!stay.spot || !rules || seen.has(stay.spot.id)) return [];
    seen.add(stay.spot.id);
    const name = spotName(stay.spot);
    const { status, doubts } = rules.may;
    const first =
      status === 'ask' || status === 'unknown' ? [`${name}: ask whether one may stand there.`] : [];
    const closed = status === 'forbidden' ? [`${name}: nobody may stand there.`] : [];
    return [
      ...closed,
      ...first,
      ...doubts.filter((doubt) => !field.has(doubt)).map((doubt) => `${name}: ${doubt}`),
    ];
  });
  return [...ruleDoubts, ...ofSpots];
}

function stayOf(stay: Stay, needs: SheetNeeds, clock: (instant: number) => string): SheetStay {
  const { spot, from, to, windows, way } = stay;
  const { format, instead, own } = needs;
  const before = needs.stays[needs.stays.indexOf(stay) - 1];
  const home =
    !before && own.minutesFromHome !== null
      ? ` Leave home by ${clock(from - own.minutesFromHome * 60_000)} (${own.minutesFromHome} min).`
      : '';
  const stays = before && spot && before.spot?.id === spot.id && before.to <= from;
  return {
    time: `${clock(from)}–${clock(to)}`,
    spot: spot ? spotName(spot) : 'A spot that is not in the survey any more',
    way: way
      ? `Leave ${spotName(way.from)} by ${clock(way.leave)}: ${moveWords(way)}, about ${format.length(way.metres)}.`
      : stays
        ? `Stay, or come back by ${clock(from)}: from ${clock(before.to)} nothing is worth the wait.`
        : `Be there by ${clock(from)}.${home}`,
    windows: windows.map((window) => windowOf(window, clock, format)),
    instead: instead(stay),
    place: placeOf(stay, needs),
  };
}

function windowOf(
  { pathName, from, to, reading, lens, settings }: TakenAlong,
  clock: (instant: number) => string,
  format: Formats,
): SheetWindow {
  const none = '–';
  return {
    time: `${clock(from)}–${clock(to)}`,
    path: pathName,
    light: reading ? `${lightName(reading.light, reading.flat)}${reading.glare ? ', glare' : ''}` : none,
    picture: reading ? `${focal(reading.focalLength)} at ${format.length(reading.slantRange)}` : none,
    lens: lens ? takeWords(lens) : none,
    settings: settings
      ? `${apertureWords(settings.aperture)}, ${shutterWords(settings.shutter)}, ${isoWords(settings.iso)}`
      : none,
  };
}

function placeOf(stay: Stay, { rulesAt, format }: SheetNeeds): [string, string][] {
  const { spot } = stay;
  const rules = rulesAt(stay);
  if (!spot || !rules) return [];
  const { access, position } = spot;
  const date = (text: string) => format.date(text);
  const known: [string, string | null][] = [
    [
      'Access',
      [
        accessBadge[rules.may.status],
        access.hours,
        access.checkedOn !== null && `checked ${date(access.checkedOn)}`,
      ]
        .filter(Boolean)
        .join(', '),
    ],
    ['Permission', access.permission && permissionWords(access.permission, date)],
    ['Ask', access.contact],
    ['Parking', access.parking],
    ['Ladder', ladderWords(rules.ladder)],
    ['Where', format.whereabouts(position)],
  ];
  return known.flatMap(([label, text]) => (text === null || text === '' ? [] : [[label, text]]));
}

function movementsPart({ movements }: SheetNeeds, clock: (instant: number) => string): SheetPart[] {
  if (movements.length === 0)
    return [{ title: 'Due', lines: ['No movements are in the survey for this day.'] }];
  const rows = movements
    .slice(0, mostMovements)
    .map(({ movement, instant, ends, best }) => [
      clock(instant),
      `${movement.use === 'arrival' ? 'in' : 'out'}${movement.starred ? ' ★' : ''}`,
      [movement.type, movement.flight].filter(Boolean).join(' ') || '–',
      movement.place || '–',
      ends.join(', ') || '–',
      best ? spotName(best.spot) : '–',
    ]);
  const more = movements.length - rows.length;
  return [
    {
      title: 'Due',
      wide: true,
      lines: more > 0 ? [`The first ${rows.length}; ${more} more are in the program.`] : [],
      table: { headings: ['Time', '', 'Type, flight', 'From or to', 'Ends', 'Best from'], rows },
    },
  ];
}

function rulesPart({ contents: { rules }, format }: SheetNeeds): SheetPart {
  const checked =
    rules.checkedOn === null
      ? 'Nobody has noted when these rules were checked.'
      : `Checked ${format.date(rules.checkedOn)}${rules.source === null ? '' : `, by ${rules.source}`}.`;
  return {
    title: 'Rules of the field',
    lines: [
      `Photography ${ruleWords[rules.photography ?? 'unknown']}; listening to the radio ${ruleWords[rules.radio ?? 'unknown']}; ladders ${ruleWords[rules.ladders ?? 'unknown']}; tripods ${ruleWords[rules.tripods ?? 'unknown']}.`,
      ...(rules.hours === null ? [] : [`Hours: ${rules.hours}.`]),
      ...(rules.notes === null ? [] : [rules.notes]),
      checked,
    ],
  };
}

function radioPart({ contents: { site, rules }, telling }: SheetNeeds): SheetPart {
  if (rules.radio === 'forbidden')
    return { title: 'Radio', lines: ['Listening to its radio is forbidden here.'] };
  const rows = site.frequencies.map(({ use, name, mhz }) => [
    decimal(mhz, 3),
    [use, name].filter(Boolean).join(': '),
  ]);
  return {
    title: 'Radio',
    lines: [
      'Listening to airband radio is an offence in some countries: find out before you do.',
      ...(rows.length > 0 ? [] : ['No frequencies are noted.']),
    ],
    after: telling,
    ...(rows.length > 0 ? { table: { headings: ['MHz', 'Use'], rows } } : {}),
  };
}

/** Without a window, and things of one's own, there is nothing to head. */
const takeAlong = (ticks: readonly string[]): readonly SheetPart[] =>
  ticks.length > 0 ? [{ title: 'Take along', ticks }] : [];
