import { isFlat } from '../figures/light/sky';
import { SunTrack } from '../figures/light/sun-track';
import { headlineOf } from '../figures/summary/spot-summary';
import type { PathFromSpot } from '../figures/types';
import { classUnder, flankUnder, glareUnder } from '../figures/when/best-light';
import { holdsUntil } from '../figures/when/holds-until';
import { keptViews } from '../figures/when/still-views';
import type { StandingSpot } from '../survey/schema/standing-spot';
import type { Derived } from './derived.svelte';

/**
 * Until when (ms since 1970, to the minute) the light on what a path leads with stays as it is at an instant: its class,
 * glare, flank and whether it is flat. Null when it stays so for the rest of the day, or the path is none of those drawn.
 * Loaded when a spot is first selected: the page starts without it.
 */
export function lightUntil(
  { contents, day, sights, terrain }: Pick<Derived, 'contents' | 'day' | 'sights' | 'terrain'>,
  spot: StandingSpot,
  path: PathFromSpot,
  instant: number,
): number | null {
  const drawn = sights.paths.findIndex(({ ref }) => ref.path === path.ref.path);
  const view = keptViews(spot, sights.paths, contents, day.span.from, terrain)[drawn];
  const sample = sights.paths[drawn]?.samples.station.indexOf(headlineOf(path).station) ?? -1;
  if (!view || sample < 0) return null;
  const track = new SunTrack(spot.position, view.skyAt);
  const lightAt = (at: number) => {
    const sun = track.at(at);
    const asked = [classUnder, flankUnder, glareUnder].map((ask) => ask(view, sample, sun));
    return [...asked, isFlat(sun.sky)].join();
  };
  const light = lightAt(instant);
  return holdsUntil((at) => lightAt(at) === light, instant, day.span.to);
}
