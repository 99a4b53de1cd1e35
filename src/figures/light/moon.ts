export const moonPhases = [
  'new',
  'waxing-crescent',
  'first-quarter',
  'waxing-gibbous',
  'full',
  'waning-gibbous',
  'last-quarter',
  'waning-crescent',
] as const;
export type MoonPhase = (typeof moonPhases)[number];

/** Shares of a lunation to each side of new, quarter and full that go by that name: a day and a half. */
const byName = 0.05;

/** The name of a phase: the four principal ones for a day or so about them, the stretches in between for the rest. */
export function moonPhase(phase: number): MoonPhase {
  const quarter = Math.round(phase * 4);
  const principal = Math.abs(phase - quarter / 4) <= byName;
  const eighth = principal ? 2 * (quarter % 4) : 2 * Math.floor((phase % 1) * 4) + 1;
  return moonPhases[eighth] ?? 'new';
}
