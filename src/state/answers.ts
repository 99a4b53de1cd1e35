import { verdictFor } from '../figures/optics/verdict';
import { meshWithin } from '../figures/practice';
import { groundAt } from '../figures/sight/ground';
import { meshAhead, type MeshAhead } from '../figures/sight/mesh-ahead';
import { monthsInLeaf } from '../figures/sight/surroundings';
import { lensToTake, spotSummary, type SpotSummary } from '../figures/summary/spot-summary';
import type { SpotFigures, Verdict } from '../figures/types';
import type { Obstacle } from '../survey/schema/places';
import type { Derived } from './derived.svelte';

/** Figures that hang on what a panel asks about, not on the survey alone: worked out when they are asked for. */
export class Answers {
  readonly #figures: Pick<Derived, 'contents' | 'sights'>;
  /** m from the spot within which a mesh fence is out of focus. */
  readonly meshWithin = meshWithin;

  constructor(figures: Pick<Derived, 'contents' | 'sights'>) {
    this.#figures = figures;
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

  /** What a spot is good for, and the path to wait at. */
  summary({ a, b }: { readonly a: SpotFigures; readonly b: SpotFigures }): SpotSummary {
    return spotSummary(a, b);
  }

  /** The lens to take for a needed focal length in mm; null without one. */
  lensFor(needed: number | null): Verdict | null {
    return needed === null ? null : lensToTake(this.verdicts(needed), this.#figures.contents.kit.fill);
  }

  /** What each lens of the kit makes of a needed focal length in mm. */
  verdicts(needed: number): Verdict[] {
    const { kit, body } = this.#figures.contents;
    return kit.lenses.map((lens) => verdictFor(lens, needed, body, kit.fill));
  }
}
