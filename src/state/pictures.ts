import { framed, frameFor, type FrameChoice, type ViewfinderFrame } from '../figures/frame/frame-for';
import { circleOfConfusion } from '../figures/optics/depth-of-field';
import { rangesOf } from '../figures/optics/reach';
import { verdictFor } from '../figures/optics/verdict';
import type { SettingsCard } from '../figures/optics/settings-card';
import { apertures, isos, shutters } from '../figures/optics/third-stops';
import type { Path } from '../figures/traffic/paths';
import type { Sample } from '../figures/types';
import type { Lens } from '../survey/schema/kit';
import type { Answers } from './answers';
import type { Derived } from './derived.svelte';
import type { Viewfinder } from './view.svelte';

/** The f-numbers, shutters (s) and ISO values that cameras offer. */
export const offered = { aperture: apertures, shutter: shutters, iso: isos } as const;

/** Settings for one sample. */
export interface CardAt {
  readonly sample: Sample;
  readonly card: SettingsCard;
  readonly lens: Lens;
}

/** A picture with what its lens can do. */
export interface PictureAt extends ViewfinderFrame {
  readonly lens: Lens;
  /** mm, extenders included. */
  readonly lensRange: { readonly shortest: number; readonly longest: number };
}

/**
 * Settings and pictures from the selected spot: the arrow survey -> figures for what only settings and the viewfinder
 * show, loaded with them.
 */
export class Pictures {
  readonly #figures: Pick<Derived, 'contents' | 'day' | 'sights'>;
  readonly #answers: Pick<Answers, 'lensFor'>;
  readonly #viewfinder: Pick<Viewfinder, 'camera'>;

  constructor(
    figures: Pick<Derived, 'contents' | 'day' | 'sights'>,
    answers: Pick<Answers, 'lensFor'>,
    viewfinder: Pick<Viewfinder, 'camera'>,
  ) {
    this.#figures = figures;
    this.#answers = answers;
    this.#viewfinder = viewfinder;
  }

  /** Settings at a station of a path from the selected spot; null without a spot, path or lens. */
  cardAt(path: string, station: number, instant: number): CardAt | null {
    const spot = this.#figures.sights.selected?.spot;
    const found = this.path(path);
    if (!spot || !found) return null;
    const { contents } = this.#figures;
    const { outlook } = this.#figures.sights;
    const choose = (choice: FrameChoice) =>
      framed(spot, found, station, contents, outlook, instant, this.#under(choice, instant));
    return this.#chosen(choose, ({ sample }) => sample.focalLength);
  }

  /** What the camera sees at both moments, at a sample of a path or between two; null without a spot, path or lens. */
  atBoth(path: string, at: number): { readonly a: PictureAt; readonly b: PictureAt } | null {
    const selected = this.#figures.sights.selected;
    const found = this.path(path);
    if (!selected || !found) return null;
    const { contents } = this.#figures;
    const { outlook } = this.#figures.sights;
    const { instantA, instantB } = this.#figures.day;
    const pictureAt = (instant: number) => {
      const choose = (choice: FrameChoice) =>
        frameFor(
          selected.spot,
          selected.a.ground,
          found,
          at,
          contents,
          outlook,
          instant,
          this.#under(choice, instant),
        );
      const picture = this.#chosen(choose, ({ needed }) => needed);
      return picture && { ...picture, lensRange: lensRange(picture.lens) };
    };
    const [a, b] = [pictureAt(instantA), pictureAt(instantB)];
    return a && b ? { a, b } : null;
  }

  path(path: string): Path | null {
    return this.#figures.sights.paths.find((p) => p.ref.path === path) ?? null;
  }

  /** The circle of confusion in mm of the chosen body. */
  get confusion(): number {
    return circleOfConfusion(this.#figures.contents.body);
  }

  /** A sky that was not chosen is that of the moment. */
  #under(choice: FrameChoice, instant: number): FrameChoice {
    if (this.#viewfinder.camera.sky !== null) return choice;
    const { direct } = this.#figures.sights.outlook.skyAt(instant);
    return { ...choice, pinned: { ...choice.pinned, sky: direct } };
  }

  /** Asks with the lens that was chosen, else with the one to take for what is needed; then with its extender if it fits so. */
  #chosen<T>(
    choose: (choice: FrameChoice) => T,
    neededOf: (found: T) => number | null,
  ): (T & { lens: Lens }) | null {
    const { lenses } = this.#figures.contents.kit;
    const { lens: key, focalLength, portrait, part, sky, ...pins } = this.#viewfinder.camera;
    const own = lenses.find((lens) => lens.key === key);
    const [first] = lenses;
    if (!first) return null;
    const choice = (lens: Lens, focal: number | null): FrameChoice => ({
      lens,
      hold: { portrait, part },
      pinned: { ...pins, sky: sky ?? 'clear', focalLength: focal, circleOfConfusion: null },
    });
    const asked = choose(choice(own ?? first, focalLength));
    const needed = neededOf(asked);
    const lens = own ?? this.#answers.lensFor(needed)?.lens ?? first;
    const { body, kit } = this.#figures.contents;
    // As the verdict has it: with the extender only where the bare lens is too short.
    const judged = needed === null ? lens.shortest : verdictFor(lens, needed, body, kit.fill).focalLength;
    const wanted = focalLength ?? judged;
    return { ...choose(choice(lens, wanted)), lens };
  }
}

/** mm that a lens covers with all its extenders. */
function lensRange(lens: Lens): PictureAt['lensRange'] {
  const ranges = rangesOf(lens);
  return {
    shortest: Math.min(...ranges.map((r) => r.shortest)),
    longest: Math.max(...ranges.map((r) => r.longest)),
  };
}
