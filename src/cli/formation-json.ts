import { formationFigures } from '../figures/frame/formation-figures';
import { outlookOf } from '../figures/outlook';
import { Scratch } from '../figures/scratch';
import type { ElevationGrid } from '../figures/sight/terrain';
import { everyPath } from '../figures/traffic/every-path';
import type { PathFromSpot } from '../figures/types';
import type { Contents } from '../survey/contents';

/** mm that frame all of a formation, and one of it; null where nobody can say. */
interface Needed {
  readonly all: number | null;
  readonly one: number | null;
}

export interface FormationJson {
  readonly aircraft: number;
  /** m from centre to centre of neighbours; null where nobody has said. */
  readonly spacing: number | null;
  /** Null where they do not fly together any more: a stream has broken by then. */
  readonly closest: Needed | null;
  readonly best: Needed | null;
}

/**
 * What flies together along a path from a spot, as the `figures` command prints it: held landscape, at its closest and at its
 * best sample at an instant. A member for those alone that several fly.
 */
export function formationJson(contents: Contents, at: number, terrain: ElevationGrid | null) {
  const together = new Map(
    everyPath(contents, () => true, terrain)
      .filter(({ formation }) => formation !== undefined && formation.aircraft > 1)
      .map((path) => [path.ref.path, path]),
  );
  const outlook = outlookOf(contents, terrain);
  const scratch = new Scratch();
  return (spotId: string, { ref, closest, best }: PathFromSpot): { readonly formation?: FormationJson } => {
    const path = together.get(ref.path);
    const spot = path && contents.spots.find(({ id }) => id === spotId);
    if (!path?.formation || !spot) return {};
    const needed = ({ station }: { readonly station: number }): Needed | null => {
      const figures = formationFigures(spot, path, station, contents, outlook, at, false, scratch);
      return figures && { all: figures.all, one: figures.one };
    };
    const { aircraft, spacing } = path.formation;
    return { formation: { aircraft, spacing, closest: needed(closest), best: needed(best) } };
  };
}

export type FormationOf = ReturnType<typeof formationJson>;
