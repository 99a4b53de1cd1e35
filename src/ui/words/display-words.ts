import type { ActLight, DisplayLit } from '../../figures/display/act-light';
import type { Act } from '../../figures/display/programme-acts';
import type { DisplayPass } from '../../survey/schema/flying';

/** The passes along a display line, as a list asks for them. */
export const passLabels: Readonly<Record<DisplayPass, string>> = {
  level: 'Level, along the line',
  climbing: 'Climbing from the middle on',
  'turning-away': 'Turning away from the crowd',
  topside: 'Round the crowd, topside, banked 60°',
  underside: 'Past the crowd, underside, banked 60°',
};

/** How it is lit for somebody who looks at the line. */
export const litWords: Readonly<Record<DisplayLit, string>> = {
  dark: 'sun down',
  overhead: 'lit from above',
  'behind-you': 'lit from behind you',
  'from-the-left': 'lit from the left',
  'from-the-right': 'lit from the right',
  'in-your-eyes': 'against the sun',
};

type Clock = (instant: number) => string;

/** "lit from the left until 15:10"; empty where it is not known. */
export function litUntilWords(light: ActLight | null, clock: Clock): string {
  if (!light) return '';
  return [litWords[light.lit], light.until === null ? '' : `until ${clock(light.until)}`]
    .filter(Boolean)
    .join(' ');
}

/** "15:20 Jet, solo"; of one that is late the time that counts, and the printed one. */
export function actName({ entry, slot, late }: Act, clock: Clock): string {
  if (!slot) return entry.name;
  const printed = late === 0 ? '' : ` (printed ${entry.time ?? ''})`;
  return `${clock(slot.from)}${printed} ${entry.name}`;
}

/** What else must be said of an act: no time, others at the same time, a type that nobody here knows. */
export function actNotes({ slot, between: [before, after], beside, type }: Act): string[] {
  const notes: string[] = [];
  if (!slot) {
    const span = [before && `after ${before.name}`, after && `before ${after.name}`].filter(Boolean);
    notes.push(span.length > 0 ? `no time: ${span.join(', ')}` : 'no time');
  }
  if (beside.length > 0) notes.push(`at the same time as ${beside.map(({ name }) => name).join(', ')}`);
  if (type.kind === 'unknown')
    notes.push(`"${type.type}" is no type that is known here: its size is not known`);
  return notes;
}
