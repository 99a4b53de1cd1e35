import { landUntil } from '../../../styles/land-layers';
import { mapCredit } from '../../map/base/map-credit';
import type { GroundPlan } from '../../ports/ground-plan';
import type { Credit } from '../../state/base-maps/ground';
import { sourceMarks } from '../../survey/sources';
import type { Editing, Figures, Land } from '../contexts';
import type { Camera } from './camera.svelte';

/** From farther away a ground plan is a speck on the page. */
const groundPlanUntil = 10;
/** Degrees from the survey's reference within which its ground plan is what one looks at. */
const nearSurvey = 0.25;

export interface GroundNeeds {
  readonly land: Pick<Land, 'bases' | 'terrain' | 'groundPlan'>;
  readonly camera: Pick<Camera, 'rest'>;
  readonly editing: Pick<Editing, 'survey'>;
  readonly figures: Pick<Figures, 'contents'>;
}

/** What lies under the survey on the map, and whose it is. */
export class GroundShown {
  readonly #needs: GroundNeeds;
  /** The plain plan lies under a base map that is not there yet, or not any more. */
  readonly onPlain: boolean = $derived.by(() => {
    const { ground, report } = this.#needs.land.bases.choice;
    return ground.kind === 'plain' || report.health !== 'shown';
  });
  /** Away from the survey its ground plan is no ground: there the paper is ruled. */
  readonly #atSurvey: boolean = $derived.by(() => {
    const { camera, figures } = this.#needs;
    const [lng, lat] = figures.contents.site.reference;
    return Math.abs(camera.rest.lng - lng) < nearSurvey && Math.abs(camera.rest.lat - lat) < nearSurvey;
  });
  /** The ground plan of this survey. */
  readonly plan: GroundPlan | null = $derived.by(() =>
    this.onPlain && this.#atSurvey ? this.#needs.land.groundPlan : null,
  );
  /** A second view of the world is fetched only for those who look that far. */
  readonly withLand: boolean = $derived.by(() => this.onPlain && this.#needs.camera.rest.zoom < landUntil);
  readonly isRuled: boolean = $derived.by(
    () => this.onPlain && (!this.plan || this.#needs.camera.rest.zoom < groundPlanUntil),
  );
  /** Whose data the survey holds, where their licence asks that the map says so. */
  readonly #marks: readonly string[] = $derived.by(() => sourceMarks(this.#needs.editing.survey));
  readonly credit: Credit = $derived.by(() => {
    const { bases, terrain } = this.#needs.land;
    const { ground, report } = bases.choice;
    const lent = [this.plan?.credit ?? null, ...this.#marks, terrain.credit];
    return mapCredit({ ground, report, own: lent.filter((text) => text !== null), withLand: this.withLand });
  });

  constructor(needs: GroundNeeds) {
    this.#needs = needs;
  }
}
