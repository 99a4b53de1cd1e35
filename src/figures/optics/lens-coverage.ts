import type { Contents } from '../../survey/contents';
import type { Lens } from '../../survey/schema/kit';
import { sunriseAltitude } from '../light/sun';
import { goodFrameLens, sideLitTo } from '../practice';
import { spotFigures } from '../spot-figures';
import type { Outlook } from '../outlook';
import { Scratch } from '../scratch';
import type { Path } from '../traffic/paths';
import { fillAt, fitOf, type Fit } from './lens-fit';
import { rangesOf, reachOf, type FocalRange } from './reach';

/** Good frames by the focal length that they need. */
export interface FocalBin {
  /** mm; `to` excluded. */
  readonly from: number;
  readonly to: number;
  /** Share of all good frames, 0 to 1, and whether a setting of the kit frames what needs the middle of the bin. */
  readonly share: number;
  readonly covered: boolean;
}

export interface LensShare {
  readonly lens: Lens;
  readonly ranges: readonly FocalRange[];
  /** Share of the good frames that fit or are tight with it alone, and with its extenders. */
  readonly alone: number;
  readonly extended: number;
}

export interface LensCoverage {
  /** How many frames are good, of all spots, paths and both moments. */
  readonly frames: number;
  readonly bins: readonly FocalBin[];
  readonly lenses: readonly LensShare[];
  /** Share that no lens frames. */
  readonly missing: number;
}

/** Verdicts by which a lens serves a frame: the same as on the card. */
const frames: readonly Fit[] = ['fits', 'tight'];

/** Bins to an octave: a third of one tells lenses apart. */
const binsPerOctave = 3;

/**
 * Which lens to take: the frames, one a sample, in which the aircraft is in sight, lit from the front or the side and
 * free of glare at one of the instants (ms since 1970, UTC), counted by the focal length in mm that frames it. Spots
 * where nobody may stand do not count; beyond `goodFrameLens` nobody carries a lens.
 */
export function lensCoverage(
  contents: Contents,
  paths: readonly Path[],
  outlook: Outlook,
  instants: readonly number[],
): LensCoverage {
  const [shortest, longest] = goodFrameLens;
  const { lenses, fill } = contents.kit;
  const everything = {
    ...outlook,
    reach: { ...reachOf({ fill, lenses: [{ shortest, longest, extenders: [] }] }), usableTo: longest },
  };
  const needed: number[] = [];
  const scratch = new Scratch();
  for (const spot of contents.spots) {
    if (spot.access.status === 'forbidden') continue;
    for (const { sun, paths: seen } of spotFigures(spot, paths, everything, instants, scratch)) {
      if (sun.geometricAltitude < sunriseAltitude) continue;
      for (const run of seen.flatMap((p) => p.sector.runs))
        run.focalLengths.forEach((focal, i) => {
          if (!run.glare[i] && (run.lightAngles[i] ?? 180) <= sideLitTo && focal >= shortest)
            needed.push(focal);
        });
    }
  }
  const within = (ranges: readonly FocalRange[], focal: number) =>
    ranges.some((range) => frames.includes(fitOf(fillAt(range, focal, fill), fill)));
  const share = (covers: (focal: number) => boolean) =>
    needed.length === 0 ? 0 : needed.filter(covers).length / needed.length;
  const all = lenses.flatMap(rangesOf);
  return {
    frames: needed.length,
    bins: binsFor(needed, (focal) => within(all, focal)),
    lenses: lenses.map((lens) => {
      const ranges = rangesOf(lens);
      return {
        lens,
        ranges,
        alone: share((focal) => within(ranges.slice(0, 1), focal)),
        extended: share((focal) => within(ranges, focal)),
      };
    }),
    missing: needed.length === 0 ? 0 : share((focal) => !within(all, focal)),
  };
}

function binsFor(needed: readonly number[], covered: (focal: number) => boolean): FocalBin[] {
  const [shortest, longest] = goodFrameLens;
  const count = Math.ceil(Math.log2(longest / shortest) * binsPerOctave);
  const edge = (i: number) => shortest * 2 ** (i / binsPerOctave);
  const counts = new Array<number>(count).fill(0);
  for (const focal of needed) {
    const i = Math.min(count - 1, Math.floor(Math.log2(focal / shortest) * binsPerOctave));
    counts[i] = (counts[i] ?? 0) + 1;
  }
  return counts.map((n, i) => ({
    from: edge(i),
    to: edge(i + 1),
    share: needed.length === 0 ? 0 : n / needed.length,
    covered: covered(Math.sqrt(edge(i) * edge(i + 1))),
  }));
}
