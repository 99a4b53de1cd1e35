/** Hours and minutes with or without something between them, and the half of the day where it is said. */
const typed = /^(\d{1,2})(?:\s*[:.h]\s*(\d{2})|(\d{2}))?\s*(?:([ap])\.?m\.?)?$/i;

/** A wall-clock time as people type it ("18:30", "18.30", "1830", "6:30 pm", "7"), as "18:30"; null for anything else. */
export function readClock(text: string): string | null {
  const found = typed.exec(text.trim());
  if (!found) return null;
  const half = found[4]?.toLowerCase();
  const hour = Number(found[1]);
  const minute = Number(found[2] ?? found[3] ?? 0);
  if (minute > 59 || (half ? hour < 1 || hour > 12 : hour > 23)) return null;
  const ofDay = half ? (hour % 12) + (half === 'p' ? 12 : 0) : hour;
  return `${String(ofDay).padStart(2, '0')}:${String(minute).padStart(2, '0')}`;
}
