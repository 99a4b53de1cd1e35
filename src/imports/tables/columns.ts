import type { ListName } from '../../survey/kit-lists';
import { kitMembers, type Measure } from '../../survey/kit-members';
import { sizeOfUnit } from './measures';

/** A column of the table that goes into the survey. */
export interface Column {
  readonly index: number;
  /** "key", or a member of the entry. */
  readonly member: string;
  readonly name: string;
  readonly measure: Measure;
  /** The size of one of its units in the survey's unit. */
  readonly size: number;
}

export interface Columns {
  readonly columns: readonly Column[];
  /** What is left out of the table as a whole, in words for the user. */
  readonly remarks: readonly string[];
  /** Names of columns without which no row makes sense. */
  readonly missing: readonly string[];
}

/** Other names of members, as headings have them, besides their own. */
const synonyms: Readonly<Record<ListName, Readonly<Record<string, readonly string[]>>>> = {
  bodies: {
    key: ['id'],
    name: ['body', 'camera'],
    sensorWidth: ['width'],
    sensorHeight: ['height'],
    pixelsWide: ['pixel width', 'horizontal pixels', 'image width'],
    pixelsHigh: ['pixel height', 'vertical pixels', 'image height'],
  },
  lenses: {
    key: ['id'],
    name: ['lens'],
    shortest: ['shortest', 'minimum focal length', 'min focal length', 'focal length from', 'from'],
    longest: ['longest', 'maximum focal length', 'max focal length', 'focal length to', 'to'],
    widestAperture: ['aperture', 'maximum aperture', 'max aperture', 'f number'],
    extenders: ['extender', 'teleconverters', 'teleconverter'],
  },
  subjects: {
    key: ['id', 'type', 'designator', 'type designator', 'icao'],
    name: ['subject', 'aircraft'],
    length: ['overall length'],
    span: ['wingspan', 'wing span', 'rotor diameter'],
    height: ['overall height', 'tail height'],
    engines: ['number of engines'],
    groundRun: ['take off run', 'takeoff run'],
    landingRun: ['landing roll'],
    climbGradient: ['gradient'],
    approachAngle: ['glide', 'glide angle'],
    crossingHeight: ['threshold crossing height'],
    approachAttitude: ['approach attitude'],
    climbAttitude: ['climb attitude'],
    rpm: ['propeller speed', 'rotor speed'],
    blades: ['number of blades'],
  },
};

/** Which column of the first row is what. Case, spaces and signs do not count; units stand in brackets or last. */
export function findColumns(list: ListName, headings: readonly string[]): Columns {
  const members = [
    { member: 'key', name: 'Key', measure: 'text' as Measure, needed: false },
    ...kitMembers[list],
  ].map((m) => ({
    ...m,
    spellings: [m.member, m.name, ...(synonyms[list][m.member] ?? [])].map(plain),
  }));
  const columns: Column[] = [];
  const remarks: string[] = [];
  headings.forEach((heading, index) => {
    if (heading === '') return;
    const { name, unit } = parted(heading);
    const asked = (words: string) => members.find((m) => m.spellings.includes(plain(words)));
    const [, shorter = '', lastWord = ''] = /^(.+)[\s_]+(\S+)$/.exec(spaced(name)) ?? [];
    const whole = asked(name);
    const member = whole ?? asked(shorter);
    const spelled = unit ?? (whole ? null : lastWord);
    const size = !member || spelled === null ? 1 : sizeOfUnit(member.measure, spelled);
    if (!member) remarks.push(`The column "${heading}" is not known and is left out.`);
    else if (size === null) remarks.push(`The column "${heading}" is left out: its unit is not known.`);
    else if (columns.some((c) => c.member === member.member))
      remarks.push(`The column "${heading}" is left out: an earlier one says the same.`);
    else columns.push({ index, member: member.member, name: member.name, measure: member.measure, size });
  });
  const missing = members.filter((m) => m.needed && !columns.some((c) => c.member === m.member));
  return { columns, remarks, missing: missing.map((m) => m.name) };
}

/** A heading without the unit in its brackets: "Length (ft)", "span [m]". */
function parted(heading: string): { readonly name: string; readonly unit: string | null } {
  const [, name, unit] = /^(.*?)\s*[([]\s*([^()[\]]*?)\s*[)\]]\s*$/.exec(heading) ?? [];
  return name === undefined || unit === undefined ? { name: heading, unit: null } : { name, unit };
}

const spaced = (text: string) => text.replace(/([\p{Ll}\d])(?=\p{Lu})/gu, '$1 ');

const plain = (text: string) =>
  spaced(text)
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
