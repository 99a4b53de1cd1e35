import { momentsOf } from '../figures/light/moments';
import { nightOf } from '../figures/light/night';
import type { Stretch } from '../figures/light/stretches';
import type { Contents } from '../survey/contents';
import { dayOf, isoInstant } from '../time/local-time';

/** How dark a civil day is and when the moon is up, in order, and the moon half-way through it, as the `figures` command prints it. */
export function nightJson(contents: Contents, date: string) {
  const { from, to } = dayOf(date, momentsOf(contents, 0).timeZone);
  const { sky, moon, lit, phase } = nightOf(contents.site.reference, from, to);
  const told = <T>(stretches: readonly Stretch<T>[]) =>
    stretches.map((s) => ({ from: isoInstant(s.from), to: isoInstant(s.to), is: s.value }));
  return { sky: told(sky), moon: { phase, lit, stretches: told(moon) } };
}
