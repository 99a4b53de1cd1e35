import { problemsOf } from '../figures/checks/problems';
import { chosenMoments, skyOf, skyStretches, solarNoon } from '../figures/light/day-light';
import { litSide, litSpans } from '../figures/light/lit-side';
import { momentsOf } from '../figures/light/moments';
import { sunAt } from '../figures/light/sun';
import { sunTimes } from '../figures/light/sun-times';
import { meshWithin } from '../figures/practice';
import { groundAt } from '../figures/sight/ground';
import { meshAhead, type MeshAhead } from '../figures/sight/mesh-ahead';
import { sightProfile } from '../figures/sight/profile';
import type { ElevationGrid } from '../figures/sight/terrain';
import { monthsInLeaf } from '../figures/sight/surroundings';
import { verdictFor } from '../figures/optics/verdict';
import { declination } from '../figures/geometry/magnetic';
import { Scratch } from '../figures/scratch';
import { runwayFigures } from '../figures/runway-figures';
import { allSpotFigures } from '../figures/spot-figures';
import { focalLengthsAlong } from '../figures/spot/focal-lengths-along';
import { inspectPath } from '../figures/spot/inspect-path';
import { outlookOf } from '../figures/outlook';
import { fieldElevation, pathsOf } from '../figures/traffic/paths';
import { readContents } from '../survey/contents';
import {
  flowFor,
  flowRules,
  sameGround,
  siteMinute,
  type FlowContents,
} from '../figures/traffic/flow/flow-for';
import { flowHours } from '../figures/traffic/flow/flow-hours';
import { shortEnds } from '../figures/traffic/flow/short-ends';
import { turningOf } from '../figures/traffic/flow/turning';
import { inUse, type EndsInUse } from '../figures/traffic/in-use';
import { windAt } from '../figures/traffic/wind/wind-at';
import { lensToTake, spotSummary, type SpotSummary } from '../figures/summary/spot-summary';
import type { Obstacle } from '../survey/schema/places';
import type { SpotFigures, Verdict } from '../figures/types';
import type { SurveyDocument } from './document.svelte';
import type { View } from './view.svelte';

/**
 * Everything that follows from the survey and the view: the arrow survey -> figures is wired here and nowhere
 * else. `now` (ms since 1970) stands in for a date that the survey does not name.
 */
export class Derived {
  readonly #document: SurveyDocument;
  readonly #view: View;
  readonly #now: () => number;

  /** Room to work in for everything that is computed here, one thing at a time. */
  readonly scratch = new Scratch();
  readonly #terrain: { readonly grid: ElevationGrid | null };

  constructor(
    document: SurveyDocument,
    view: View,
    now: () => number,
    terrain: { readonly grid: ElevationGrid | null } = { grid: null },
  ) {
    this.#document = document;
    this.#view = view;
    this.#now = now;
    this.#terrain = terrain;
  }

  /** Heights of the ground, null while only those of the runways are known. */
  get terrain(): ElevationGrid | null {
    return this.#terrain.grid;
  }

  readonly contents = $derived.by(() => readContents(this.#document.survey));

  readonly #moments = $derived.by(() => momentsOf(this.contents, this.#now()));
  readonly timeZone = $derived.by(() => this.#moments.timeZone);
  readonly date = $derived.by(() => this.#moments.date);
  readonly #dayFrom = $derived.by(() => this.#moments.day.from);
  readonly #dayTo = $derived.by(() => this.#moments.day.to);
  readonly day = $derived.by(() => ({ from: this.#dayFrom, to: this.#dayTo }));
  /** The two moments as instants (ms since 1970, UTC). */
  readonly instantA = $derived.by(() => this.#moments.a);
  readonly instantB = $derived.by(() => this.#moments.b);
  readonly #lng = $derived.by(() => this.contents.site.reference[0]);
  readonly #lat = $derived.by(() => this.contents.site.reference[1]);
  readonly sunTimes = $derived.by(() => sunTimes([this.#lng, this.#lat], this.day.from, this.day.to));

  readonly sky = $derived.by(() => skyStretches([this.#lng, this.#lat], this.day.from, this.day.to));
  readonly solarNoon = $derived.by(() => solarNoon([this.#lng, this.#lat], this.day.from, this.day.to));
  readonly chosenMoments = $derived.by(() => chosenMoments(this.sunTimes, this.solarNoon));
  /** The sun at the airfield at both moments. */
  readonly suns = $derived.by(() => {
    const at = (instant: number) => {
      const sun = sunAt([this.#lng, this.#lat], instant);
      return { sun, sky: skyOf(sun) };
    };
    return { a: at(this.instantA), b: at(this.instantB) };
  });

  /** Magnetic declination at the airfield at moment A, degrees, east positive. */
  readonly siteDeclination = $derived.by(() =>
    declination([this.#lng, this.#lat], fieldElevation(this.contents), this.instantA),
  );

  /** One entry a runway of the contents, null for one without direction. */
  readonly runways = $derived.by(() =>
    this.contents.runways.map((r) => runwayFigures(r, fieldElevation(this.contents), this.instantA)),
  );
  readonly litSides = $derived.by(() =>
    this.contents.runways.map((runway) => ({
      runway: runway.id,
      a: litSide(runway, this.instantA),
      b: litSide(runway, this.instantB),
      spans: litSpans(runway, this.day.from, this.day.to),
    })),
  );
  readonly problems = $derived.by(() => [
    ...this.#document.openingProblems,
    ...problemsOf(this.contents, this.runways, this.instantA),
  ]);

  /** The moment that is shown where only one is. */
  readonly #shownInstant = $derived.by(() => (this.#view.moment === 'a' ? this.instantA : this.instantB));
  readonly #weather = $derived.by(() => this.contents.weather);
  /** The survey's wind at that moment, null where it tells none. */
  readonly wind = $derived.by(() => {
    const weather = this.#weather;
    return weather && windAt(weather, this.#shownInstant);
  });

  #lastGround: FlowContents | null = null;
  /** What the flow hangs on besides the wind: the same object until that changes, so that dragging a spot works out no flow. */
  readonly flowGround = $derived.by((): FlowContents => {
    const last = this.#lastGround;
    if (last && sameGround(last, this.contents)) return last;
    return (this.#lastGround = this.contents);
  });
  /** What that wind makes of every end, and which it puts in use. */
  readonly flow = $derived.by(
    () => this.wind && flowFor(this.flowGround, this.wind.wind, this.#shownInstant),
  );
  readonly turning = $derived.by(
    () =>
      this.wind &&
      turningOf(flowRules(this.flowGround), this.wind.wind, siteMinute(this.flowGround, this.#shownInstant)),
  );
  /** The flow through a forecast, hour by hour; empty without one. */
  readonly flowHours = $derived.by(() => {
    const weather = this.#weather;
    return weather?.forecastTo ? flowHours(this.flowGround, weather) : [];
  });

  /** The ends in use, and whether the survey says so or they are assumed; with a wind to follow, what it makes of them. */
  readonly inUse = $derived.by((): EndsInUse & { readonly byWind: boolean } => {
    const chosen = inUse(this.contents, this.#view.configuration);
    const flow = this.contents.weather?.follow ? this.flow : null;
    if (!flow || flow.arrivals.length + flow.departures.length === 0) return { ...chosen, byWind: false };
    const { arrivals, departures, configuration } = flow;
    const name = configuration === null ? '' : (this.contents.configurations[configuration]?.name ?? '');
    return { arrivals, departures, stated: true, name, byWind: true };
  });
  /** Ends in use that are too short for the subject. */
  readonly shortEnds = $derived.by(() => shortEnds(this.flowGround, this.inUse));
  readonly #wanted = $derived.by(() => {
    const { arrivals, departures } = this.inUse;
    const { circuits, everyEnd, onTheGround } = this.#view.paths;
    const has = (list: typeof arrivals, runway: string | null, end: number | null) =>
      everyEnd || list.some((e) => e.runway === runway && e.end === end);
    return (kind: string, runway: string | null, end: number | null) => {
      if (kind === 'arrival') return has(arrivals, runway, end);
      if (kind === 'departure') return has(departures, runway, end);
      if (kind === 'circuit') return circuits && (has(arrivals, runway, end) || has(departures, runway, end));
      if (kind === 'taxi' || kind === 'parked') return onTheGround;
      return true;
    };
  });
  /** The paths that are drawn and looked at. */
  readonly paths = $derived.by(() => pathsOf(this.contents, this.#wanted));
  readonly outlook = $derived.by(() => outlookOf(this.contents, this.terrain));

  /** Figures of every spot at moment A and B, in the survey's order. */
  readonly spots = $derived.by(() => {
    const figures = allSpotFigures(
      this.contents,
      this.paths,
      [this.instantA, this.instantB],
      this.terrain,
      this.scratch,
    );
    return this.contents.spots.map((spot, i) => {
      const [a, b] = figures[i] ?? [];
      if (!a || !b) throw new Error('expected figures for two moments');
      return { spot, a, b };
    });
  });

  readonly selectedSpot = $derived.by(
    () => this.spots.find((s) => s.spot.id === this.#view.selected) ?? null,
  );

  /** Needed focal length along each drawn path from the selected spot, in mm, infinite where it is out of reach; null without a spot. */
  readonly focalLengths = $derived.by(() => {
    const spot = this.selectedSpot;
    return spot ? this.paths.map((path, i) => focalLengthsAlong(path, spot.a.paths[i])) : null;
  });

  /** The months (1 to 12) in which an obstacle's leaves hide. */
  leafMonths(obstacle: Obstacle): readonly number[] {
    return monthsInLeaf(obstacle, this.contents.site.reference);
  }

  /** m above mean sea level of the foot that an obstacle has where it states none. */
  footOf({ rings, line }: Obstacle): number {
    const at = rings[0]?.[0] ?? line[0] ?? this.contents.site.reference;
    const { runways, fieldElevation, around } = this.outlook;
    return groundAt(at, runways, fieldElevation, around?.terrain ?? null).elevation;
  }
  readonly meshWithin = meshWithin;

  /** How far from the selected spot the mesh fences are that one looks through. */
  meshesAhead(through: readonly string[]): MeshAhead[] {
    const spot = this.selectedSpot?.spot;
    const fences = this.contents.obstacles.filter(({ id }) => through.includes(id));
    return spot ? fences.map((fence) => meshAhead(spot.position, fence)) : [];
  }

  /** What a spot is good for, and the path to wait at. */
  summary({ a, b }: { readonly a: SpotFigures; readonly b: SpotFigures }): SpotSummary {
    return spotSummary(a, b);
  }

  /** The lens to take for a needed focal length in mm; null without one. */
  lensFor(needed: number | null): Verdict | null {
    return needed === null ? null : lensToTake(this.verdicts(needed), this.contents.kit.fill);
  }

  /** What each lens of the kit makes of a needed focal length in mm. */
  verdicts(needed: number): Verdict[] {
    const { kit, body } = this.contents;
    return kit.lenses.map((lens) => verdictFor(lens, needed, body, kit.fill));
  }

  /** The inspected sample at both moments, from the selected spot. */
  readonly inspected = $derived.by(() => {
    const { inspected } = this.#view;
    const spot = this.selectedSpot?.spot;
    const path = this.paths.find((p) => p.ref.path === inspected?.path);
    if (!inspected || !spot || !path) return null;
    const at = (instant: number) =>
      inspectPath(spot, path, inspected.station, this.outlook, instant, this.scratch);
    return { path, a: at(this.instantA), b: at(this.instantB) };
  });

  /** The side view along the line of sight to the inspected sample; null while nobody looks at it. */
  readonly sightLine = $derived.by(() => {
    const spot = this.selectedSpot?.spot;
    if (!this.#view.sightLine || !this.inspected || !spot) return null;
    const { path, a } = this.inspected;
    const index = path.samples.station.indexOf(a.station);
    return { path, index, sample: a, profile: sightProfile(spot, path, index, this.outlook, this.instantA) };
  });
}
