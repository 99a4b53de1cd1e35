import { focalSteps, lightSteps } from '../../../styles/ramps';
import type { LightClass, PathFromSpot, SpotFigures } from '../../figures/types';
import { decimal } from '../../units/format';

/** Which data colours and signs are on the map now. */
export interface LegendEntries {
  readonly litSides: boolean;
  /** The light ramp, as far as the sun is up at one of the moments. */
  readonly light: boolean;
  /** Somewhere the sky lets no sun through by day. */
  readonly flat: boolean;
  readonly twilight: boolean;
  readonly dark: boolean;
  readonly glare: boolean;
  /** Focal lengths of the drawn steps; null while no spot colours the paths. */
  readonly focal: readonly { readonly label: string; readonly colour: string }[] | null;
  readonly outOfReach: boolean;
  /** Part of a path is hidden from the selected spot. */
  readonly hidden: boolean;
}

interface Lit {
  readonly litSides: readonly {
    readonly a: { side: string | null } | null;
    readonly b: { side: string | null } | null;
  }[];
}
interface Seen {
  readonly spots: readonly { readonly a: SpotFigures; readonly b: SpotFigures }[];
  /** Of the selected spot, in mm, infinite out of reach, NaN where hidden. */
  readonly focalLengths: readonly Float64Array[] | null;
}

/** `isFlat`: whether a sky lets no direct sun through. */
export function legendEntries(
  { litSides }: Lit,
  { spots, focalLengths }: Seen,
  isFlat: (sky: SpotFigures['sky']) => boolean,
): LegendEntries {
  const seen = spots.flatMap(({ a, b }) => [...a.paths, ...b.paths]).filter((p) => p.sector.runs.length > 0);
  const has = (light: LightClass) => seen.some((p) => p.best.light === light);
  const isDay = ({ best }: PathFromSpot) => best.light !== 'dark' && best.light !== 'civil-twilight';
  const day = (flat: boolean) =>
    spots
      .flatMap(({ a, b }) => [a, b])
      .some(
        ({ sky, paths }) => isFlat(sky) === flat && paths.some((p) => p.sector.runs.length > 0 && isDay(p)),
      );
  return {
    litSides: litSides.some(({ a, b }) => (a?.side ?? b?.side ?? null) !== null),
    light: day(false),
    flat: day(true),
    twilight: has('civil-twilight'),
    dark: has('dark'),
    glare: seen.some((p) => (p.glareShare ?? 0) > 0),
    focal: focalLengths && focalEntries(focalLengths),
    outOfReach: focalLengths?.some((path) => path.some((mm) => mm === Infinity)) ?? false,
    hidden: focalLengths?.some((path) => path.some(Number.isNaN)) ?? false,
  };
}

/** The steps of the focal ramp that some part of a path falls on. The last step has no upper end. */
function focalEntries(focalLengths: readonly Float64Array[]) {
  const last = focalSteps.length - 1;
  return focalSteps.flatMap(({ to, colour }, i) => {
    const from = focalSteps[i - 1]?.to ?? 0;
    const drawn = focalLengths.some((path) =>
      path.some((mm) => mm > from && (mm <= to || (i === last && mm < Infinity))),
    );
    if (!drawn) return [];
    const label =
      i === 0
        ? `to ${decimal(to, 0)}`
        : i === last
          ? `over ${decimal(from, 0)}`
          : `${decimal(from, 0)}–${decimal(to, 0)}`;
    return [{ label: `${label} mm`, colour }];
  });
}

/** The light ramp with the share of the half circle that each step takes, and the degrees where classes change. */
export const lightRamp = lightSteps.map(({ to, colour }, i) => ({
  colour,
  degrees: to - (lightSteps[i - 1]?.to ?? 0),
}));
