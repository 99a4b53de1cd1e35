import { standingEyeHeight } from '../survey/schema/standing-spot';
import { outlookOf } from '../figures/outlook';
import type { Path } from '../figures/traffic/paths';
import { pickedSamples } from './picked-samples';
import { cellPosition, centreOf, middleOf } from './area';
import { Kernel } from './kernel/kernel';
import { cellsOfLevel } from './levels';
import { bestInstant, emptyFigures, groundCodes, type CellFigures, type Sweep } from './sweep';

/** Instants and samples that a sketch looks at: of so many each. */
const mostInstants = 6;
const everySample = 8;

/**
 * The coarsest cells at a glance, before there is anything better: as if the ground were level and open, at few of the instants and at
 * few of the samples. What is closed is closed already. It is drawn until the first picture is whole, and goes nowhere else.
 */
export function sketchOf(sweep: Sweep): CellFigures {
  const { contents, plan, ground } = sweep;
  const { area, paths, instants } = plan;
  const every = Math.max(1, Math.ceil(instants.length / mostInstants));
  const few = instants.filter((_, t) => t % every === 0);
  const open = outlookOf({ ...contents, obstacles: [] }, null);
  // The field's own, of the terrain where nothing else says it: its runways lie there.
  const level = sweep.outlook.fieldElevation;
  const kernel = new Kernel({
    paths: paths.map(thinned),
    outlook: open,
    instants: few,
    middle: centreOf(area),
    everyInstant: false,
  });
  const cells = cellsOfLevel(area.count, 0);
  const out = emptyFigures(cells, paths.length);
  const scale = instants.length / Math.max(1, few.length);
  for (let k = 0; k < cells.length; k++) {
    const index = cells[k] as number;
    out.ground[k] = groundCodes.indexOf(ground.ofCell(...middleOf(area, index)).ground);
    kernel.at(cellPosition(area, index), level + standingEyeHeight);
    const best = bestInstant(kernel.worth);
    out.worth[k] = kernel.worth[best] as number;
    out.focal[k] = kernel.focal[best] as number;
    out.light[k] = kernel.light[best] as number;
    let good = 0;
    for (let t = 0; t < few.length; t++)
      if (paths.some((_, p) => kernel.good[p * few.length + t] === 1)) good++;
    out.good[k] = Math.round(good * scale);
  }
  return out;
}

const thinned = (path: Path): Path => ({ ...path, samples: pickedSamples(path.samples, everySample) });
