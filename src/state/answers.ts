import { pathsOf } from '../figures/traffic/paths';
import type { PathKind } from '../figures/types';
import type { EndIndex } from '../survey/schema/runway';
import { servedBy, type Served } from '../figures/optics/lens-fit';
import { verdictFor } from '../figures/optics/verdict';
import { meshWithin } from '../figures/practice';
import { groundAt } from '../figures/sight/ground';
import { meshAhead, type MeshAhead } from '../figures/sight/mesh-ahead';
import { monthsInLeaf } from '../figures/sight/surroundings';
import { isFlat } from '../figures/light/sky';
import { isWorthIt, scoreWord, type ScoreWord } from '../figures/score-words';
import {
  betterElsewhere,
  headlineOf,
  lensToTake,
  spotSummary,
  type SpotSummary,
} from '../figures/summary/spot-summary';
import type { PathFromSpot, Sample, SpotFigures, TakenSetting, Verdict } from '../figures/types';
import type { Obstacle } from '../survey/schema/places';
import type { Derived } from './derived.svelte';
import { FlownAnswers } from './flown-answers.svelte';

/** What a path leads with at a moment, and what that is worth. */
export interface Headline {
  readonly sample: Sample;
  /** What scores higher elsewhere on the path and is worth the wait; null for nothing. */
  readonly elsewhere: Sample | null;
  readonly word: ScoreWord;
  readonly worthIt: boolean;
}

type Needs = Pick<Derived, 'contents' | 'terrain' | 'light' | 'sights' | 'flow'>;

/** Figures that hang on what a panel asks about, not on the survey alone: worked out when they are asked for. */
export class Answers {
  readonly #figures: Needs;
  /** What recorded flights change in them. */
  readonly flown: FlownAnswers;
  /** m from the spot within which a mesh fence is out of focus. */
  readonly meshWithin = meshWithin;

  constructor(figures: Needs) {
    this.#figures = figures;
    this.flown = new FlownAnswers(figures);
  }

  /** The months (1 to 12) in which an obstacle's leaves hide. */
  leafMonths(obstacle: Obstacle): readonly number[] {
    return monthsInLeaf(obstacle, this.#figures.contents.site.reference);
  }

  /** m above mean sea level of the foot that an obstacle has where it states none. */
  footOf({ rings, line }: Obstacle): number {
    const { contents, sights } = this.#figures;
    const at = rings[0]?.[0] ?? line[0] ?? contents.site.reference;
    const { runways, fieldElevation, around } = sights.outlook;
    return groundAt(at, runways, fieldElevation, around?.terrain ?? null).elevation;
  }

  /** How far from the selected spot the mesh fences are that one looks through. */
  meshesAhead(through: readonly string[]): MeshAhead[] {
    const { contents, sights } = this.#figures;
    const spot = sights.selected?.spot;
    const fences = contents.obstacles.filter(({ id }) => through.includes(id));
    return spot ? fences.map((fence) => meshAhead(spot.position, fence)) : [];
  }

  /** The survey's own path of an end and kind for the subject: m of the centre above its datum by station. */
  heightsAlong(kind: PathKind, runway: string, end: EndIndex): { station: number; height: number }[] {
    const { contents, terrain } = this.#figures;
    const [path] = pathsOf(contents, (k, r, e) => k === kind && r === runway && e === end, terrain);
    if (!path) return [];
    const { station, height } = path.samples;
    return Array.from(station, (at, i) => ({ station: at, height: height[i] as number }));
  }

  /** What a spot is good for, and the path to wait at. */
  summary({ a, b }: { readonly a: SpotFigures; readonly b: SpotFigures }): SpotSummary {
    return spotSummary(a, b, this.flown.passedOver());
  }

  /** What to say of a path first. */
  headline(path: PathFromSpot): Headline {
    const sample = headlineOf(path);
    const elsewhere = betterElsewhere(path);
    return {
      sample,
      elsewhere: elsewhere && isWorthIt(elsewhere.score.total) ? elsewhere : null,
      word: scoreWord(sample.score.total),
      worthIt: isWorthIt(sample.score.total),
    };
  }
  /** What a total score is worth. */
  word(total: number): ScoreWord {
    return scoreWord(total);
  }
  /** Which sides of the runways are lit at either moment: none under a sky without sun. */
  litSides(): Derived['light']['litSides'] {
    const { light } = this.#figures;
    const [flatA, flatB] = [isFlat(light.skies.a), isFlat(light.skies.b)];
    if (!flatA && !flatB) return light.litSides;
    return light.litSides.map((of) => ({ ...of, a: flatA ? null : of.a, b: flatB ? null : of.b }));
  }
  /** Whether the light is flat under a sky: alike from either side. */
  isFlat(sky: SpotFigures['sky']): boolean {
    return isFlat(sky);
  }

  /** The lens to take for a needed focal length in mm; null without one. */
  lensFor(needed: number | null): Verdict | null {
    return needed === null ? null : lensToTake(this.verdicts(needed), this.#figures.contents.kit.fill);
  }

  /** The needed focal lengths in mm that a lens serves with the extender that it is judged with. */
  servedBy({ lens, extender }: TakenSetting): Served {
    const times = extender ?? 1;
    const range = { shortest: lens.shortest * times, longest: lens.longest * times };
    return servedBy(range, this.#figures.contents.kit.fill);
  }

  /** What each lens of the kit makes of a needed focal length in mm. */
  verdicts(needed: number): Verdict[] {
    const { kit, body } = this.#figures.contents;
    return kit.lenses.map((lens) => verdictFor(lens, needed, body, kit.fill));
  }
}
