import type { Contents } from '../../survey/contents';
import type { StandingSpot } from '../../survey/schema/standing-spot';
import { framed } from '../frame/frame-for';
import { isFlat } from '../light/sky';
import { SunTrack } from '../light/sun-track';
import { nothingPinned } from '../optics/settings';
import type { SettingsCard } from '../optics/settings-card';
import { verdictFor } from '../optics/verdict';
import { outlookOf } from '../outlook';
import { mayBeFlown, programmesOn } from '../plan/acts-due';
import { lightAhead } from '../practice';
import { Scratch } from '../scratch';
import { isWorthIt } from '../score-words';
import type { ElevationGrid } from '../sight/terrain';
import { spotFigures } from '../spot-figures';
import { headlineOf, lensToTake } from '../summary/spot-summary';
import type { Path } from '../traffic/paths';
import type { LightClass, Sample, Sun, Verdict } from '../types';
import { dateAt } from '../../time/local-time';
import { classUnder, glareUnder } from '../when/best-light';
import type { StillView } from '../when/still-view';
import { stillViewsOf } from '../when/still-views';

/** How the light on a picture goes on: the first change, or none as far as is looked ahead. */
export interface LightToCome {
  /** Whole minutes until it changes; null for none within `lightAhead`. */
  readonly minutes: number | null;
  readonly to: { readonly light: LightClass; readonly glare: boolean } | null;
}

/** A path as it comes past somebody now. */
export interface PassingNow {
  readonly path: Path;
  /** What the path leads with: its pass, or else its best. */
  readonly sample: Sample;
  readonly flat: boolean;
  readonly worthIt: boolean;
  readonly lens: Verdict | null;
  readonly settings: SettingsCard | null;
  readonly toCome: LightToCome;
}

/** What comes past a place at an instant (ms since 1970), best first, and the sun there. */
export interface AroundNow {
  readonly sun: Sun;
  readonly passing: readonly PassingNow[];
}

const minuteMs = 60_000;

/** The paths within reach of the kit from a place, by the same figures that a spot's panel shows; of a display only while an act is on. */
export function passingNow(
  contents: Contents,
  terrain: ElevationGrid | null,
  spot: StandingSpot,
  every: readonly Path[],
  instant: number,
  scratch: Scratch = new Scratch(),
): AroundNow {
  const outlook = outlookOf(contents, terrain);
  const programmes = programmesOn(contents, dateAt(instant, contents.site.timeZone));
  const paths = every.filter(({ ref }) => mayBeFlown(programmes, ref, instant));
  const [figures] = spotFigures(spot, paths, outlook, [instant], scratch);
  if (!figures) throw new Error('expected figures for one instant');
  const within = figures.paths.flatMap((seen, i) => {
    const path = paths[i];
    return path && seen.sector.runs.length > 0 ? [{ path, sample: headlineOf(seen) }] : [];
  });
  const views = stillViewsOf(
    spot,
    within.map(({ path }) => path),
    outlook,
    instant,
    scratch,
  );
  const passing = within.map(({ path, sample }, i): PassingNow => {
    const { focalLength, score } = sample;
    const lens =
      focalLength === null
        ? null
        : lensToTake(
            contents.kit.lenses.map((l) => verdictFor(l, focalLength, contents.body, contents.kit.fill)),
            contents.kit.fill,
          );
    const pinned = lens && {
      ...nothingPinned,
      focalLength: lens.focalLength,
      sky: outlook.skyAt(instant).direct,
    };
    const hold = { portrait: false, part: 'whole' } as const;
    const settings =
      lens && pinned
        ? framed(
            spot,
            path,
            sample.station,
            contents,
            outlook,
            instant,
            { lens: lens.lens, hold, pinned },
            scratch,
          ).card
        : null;
    const view = views[i];
    const at = path.samples.station.indexOf(sample.station);
    return {
      path,
      sample,
      flat: isFlat(figures.sky),
      worthIt: isWorthIt(score.total),
      lens,
      settings,
      toCome: view ? toCome(view, spot, at, instant) : { minutes: null, to: null },
    };
  });
  return {
    sun: figures.sun,
    passing: passing.toSorted((a, b) => b.sample.score.total - a.sample.score.total),
  };
}

/** When the class of light on a sample changes, or glare comes or goes. Flat light changes with the day alone. */
function toCome(view: StillView, spot: StandingSpot, sample: number, instant: number): LightToCome {
  const track = new SunTrack(spot.position, view.skyAt);
  const at = (t: number) => {
    const sun = track.at(t);
    const light = classUnder(view, sample, sun);
    const up = light !== 'dark' && light !== 'civil-twilight';
    const glare = glareUnder(view, sample, sun);
    return { light, glare, key: isFlat(sun.sky) && up ? 'flat' : `${light} ${glare}` };
  };
  const { key } = at(instant);
  for (let minutes = 1; minutes <= lightAhead; minutes++) {
    const then = at(instant + minutes * minuteMs);
    if (then.key !== key) return { minutes, to: { light: then.light, glare: then.glare } };
  }
  return { minutes: null, to: null };
}
