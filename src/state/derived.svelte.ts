import { workingAhead } from '../figures/working-ahead';
import type { ElevationGrid } from '../figures/sight/terrain';
import type { OtherPaths } from '../figures/traffic/paths';
import { readContents, type Contents } from '../survey/contents';
import type { Survey } from '../survey/document';
import type { Problem } from '../survey/problems';
import { readFeature } from '../survey/read-feature';
import { Airfield } from './derived/airfield.svelte';
import { Day } from './derived/day.svelte';
import { Flow } from './derived/flow.svelte';
import { Inspection } from './derived/inspection.svelte';
import { Sights } from './derived/sights.svelte';
import { Sunlight } from './derived/sunlight.svelte';
import { WantedPaths } from './derived/wanted-paths.svelte';
import type { SurveyDocument } from './document.svelte';
import type { LateAirfieldTools } from './late-airfield-tools.svelte';
import type { ZoneAt } from '../survey/zones';
import type { View } from './view.svelte';

export interface DerivedFrom {
  readonly document: Pick<SurveyDocument, 'survey' | 'openingProblems'>;
  readonly view: Pick<View, 'selection' | 'shown'>;
  /** ms since 1970: stands in for a date that the survey does not name. */
  readonly now: () => number;
  /** Null where the ground is not asked for. */
  readonly terrain: { readonly grid: ElevationGrid | null } | null;
  /** The zone of a site that states none; null until it is known. */
  readonly zoneAt?: ZoneAt;
  /** What else is flown; nothing while its builders are on their way. */
  readonly otherPaths?: OtherPaths;
  /** Magnetic north and the checks; neither is known while they are on their way. */
  readonly airfieldTools?: Pick<LateAirfieldTools, 'found' | 'failed'>;
}

/**
 * Everything that follows from the survey and the view: the arrow survey -> figures is wired here and in the groups,
 * nowhere else. Each member of a group is worked out when somebody looks at it, and again only when what it hangs on has changed.
 */
export class Derived {
  readonly #from: DerivedFrom;
  readonly #wanted: WantedPaths;
  readonly day: Day;
  readonly light: Sunlight;
  readonly airfield: Airfield;
  readonly flow: Flow;
  readonly sights: Sights;
  readonly inspection: Inspection;

  constructor(from: DerivedFrom) {
    const { selection, shown } = from.view;
    this.#from = from;
    this.day = new Day(this, from.now);
    this.light = new Sunlight(this, this.day);
    this.flow = new Flow(this, this.day, shown);
    this.#wanted = new WantedPaths(this.flow, shown);
    this.sights = new Sights(this, this.day, this.#wanted, selection);
    this.inspection = new Inspection(this.sights, this.day, selection);
    this.airfield = new Airfield(this, this.day, this.sights);
  }

  readonly contents: Contents = $derived.by(() => this.#read(this.#from.document.survey));

  /** Works out step by step what follows from a survey that is to be shown next: shown then, it is there at once. */
  *ahead(survey: Survey): Generator<void> {
    for (const feature of survey.features) {
      readFeature(feature);
      yield;
    }
    const { terrain, otherPaths } = this;
    const instants = [this.day.instantA, this.day.instantB];
    const contents = this.#read(survey);
    yield* workingAhead({ contents, wanted: this.#wanted.filter, terrain, otherPaths, instants });
  }

  #read(survey: Survey): Contents {
    return readContents(survey, this.#from.zoneAt ?? null);
  }

  get otherPaths(): OtherPaths | undefined {
    return this.#from.otherPaths;
  }
  get airfieldTools(): DerivedFrom['airfieldTools'] {
    return this.#from.airfieldTools;
  }
  get openingProblems(): readonly Problem[] {
    return this.#from.document.openingProblems;
  }
  /** Heights of the ground, null while only those of the runways are known. */
  get terrain(): ElevationGrid | null {
    return this.#from.terrain?.grid ?? null;
  }
}
