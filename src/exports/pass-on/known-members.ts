import { isKind, type Kind } from '../../survey/kinds';

/** What this program knows of a member: all of it, or these members of it or of its entries, where it is a list. */
export type Known = true | { readonly [member: string]: Known };

const all = <M extends string>(...members: readonly M[]) =>
  Object.fromEntries(members.map((member) => [member, true as const]));

const access = {
  ...all('status', 'contact', 'hours', 'ladder', 'parking', 'checkedOn'),
  permission: all('askedOn', 'answer', 'by', 'from', 'until', 'reference'),
};

/** `origin`: where a thing was brought in from; a licence may ask for it. */
const ofEvery = all('kind', 'name', 'notes', 'origin');

const kindMembers: Readonly<Record<Kind, Readonly<Record<string, Known>>>> = {
  runway: {
    ...all('width', 'surface', 'doubts', 'patterns'),
    ends: all(
      'designator',
      'elevation',
      'displaced',
      'glide',
      'crossingHeight',
      'circuit',
      'closed',
      'flown',
    ),
  },
  'standing-spot': { ...all('eyeHeight', 'ground'), access },
  'taxi-route': all('heading'),
  apron: all('heading'),
  'no-go': all('reason'),
  obstacle: all('height', 'base', 'sight', 'underside', 'width', 'leafMonths', 'heightFrom', 'standOn'),
  'flight-path': all('heights', 'source', 'times', 'turnBank', 'fromSpots'),
  'display-line': all('passes', 'height', 'speed', 'programme', 'aircraft', 'spacing', 'late'),
  'crowd-line': {},
  helipad: all('courses', 'elevation'),
  'winch-run': {},
  'ground-use': all('use', 'access'),
  // A log goes or stays as a whole.
  'log-entry': {},
};

/** The members that a feature of a kind may have; a log entry, and a kind of other programs, is one thing. */
export const knownOfFeature = (kind: unknown): Known =>
  !isKind(kind) || kind === 'log-entry'
    ? true
    : {
        ...all('type', 'id', 'geometry'),
        properties: { ...ofEvery, ...kindMembers[kind] },
      };

/** The survey's own member. Credits pass as they are, whatever stands in them. */
export const knownOfSurvey: Known = {
  ...all('version', 'sources', 'kit', 'kits', 'subjects', 'current', 'moments', 'sky', 'weather'),
  ...all('windRecord', 'flow', 'movements', 'plan', 'log'),
  site: all('name', 'icao', 'military', 'elevation', 'timeZone', 'reference', 'frequencies'),
  rules: {
    ...all('photography', 'radio', 'ladders', 'tripods', 'office', 'phone', 'email', 'hours', 'notes'),
    ...all('checkedOn', 'source'),
  },
};
