import { closedSpots } from '../../figures/access/closed-spots';
import { fieldForbidsPhotographs } from '../../figures/access/field-forbids-photographs';
import { statusOn } from '../../figures/access/status-on';
import { runwayLength } from '../../figures/geometry/along-runway';
import { grounded } from '../../figures/sight/grounded';
import type { ElevationGrid } from '../../figures/sight/terrain';
import type { Contents } from '../../survey/contents';
import type { Problem } from '../../survey/problems';
import type { LateAirfieldTools } from '../late-airfield-tools.svelte';
import type { Day } from './day.svelte';
import type { Sights } from './sights.svelte';

interface Survey {
  readonly contents: Contents;
  readonly openingProblems: readonly Problem[];
  readonly terrain: ElevationGrid | null;
  readonly airfieldTools: Pick<LateAirfieldTools, 'found' | 'failed'> | undefined;
}

const notChecked: Problem = {
  id: null,
  reason:
    'What checks a survey and tells magnetic north could not be loaded, so that neither is done. Is there a network? Reload the page.',
  used: true,
};

/** What the airfield itself measures, and what is odd about its survey. */
export class Airfield {
  readonly #survey: Survey;
  readonly #day: Day;
  readonly #sights: Sights;

  constructor(survey: Survey, day: Day, sights: Sights) {
    this.#survey = survey;
    this.#day = day;
    this.#sights = sights;
  }

  /** m above mean sea level. A number, so that what hangs on it stays while it does. */
  readonly #elevation = $derived.by(() => this.#sights.outlook.fieldElevation);
  readonly #tools = $derived.by(() => this.#survey.airfieldTools?.found ?? null);
  /** Magnetic declination at moment A, degrees, east positive; null until the model is there. */
  readonly declination = $derived.by(
    () =>
      this.#tools?.declination(this.#survey.contents.site.reference, this.#elevation, this.#day.instantA) ??
      null,
  );
  /** One entry a runway of the contents, null for one without direction; null for all until the magnetic model is there. */
  readonly runways = $derived.by(() => {
    const tools = this.#tools;
    return this.#survey.contents.runways.map(
      (r) => tools?.runwayFigures(r, this.#elevation, this.#day.instantA) ?? null,
    );
  });
  /** Their lengths in m, which wait for nothing. */
  readonly lengths = $derived.by(() => this.#survey.contents.runways.map(runwayLength));
  /** One entry a spot of the contents: its status on the day, after what was asked and answered. */
  readonly access = $derived.by(() => {
    const { date } = this.#day;
    return this.#survey.contents.spots.map((spot) => statusOn(spot.access, date));
  });
  readonly fieldForbids = $derived.by(() => fieldForbidsPhotographs(this.#survey.contents.rules));
  /** Ids of the spots where nobody may stand with a camera on the day, by their own standing or the field's rules. */
  readonly closedSpots: ReadonlySet<string> = $derived.by(() =>
    closedSpots(this.#survey.contents.spots, this.access, this.fieldForbids),
  );
  /** What was odd in reading it, at once; what the checks find, once they are there. */
  readonly problems = $derived.by(() => {
    const { contents, openingProblems, terrain, airfieldTools } = this.#survey;
    const found =
      this.#tools?.problemsOf(grounded(contents, terrain), this.runways, this.#day.instantA) ??
      contents.problems;
    return [...openingProblems, ...(airfieldTools?.failed ? [notChecked] : []), ...found];
  });
}
