import type { MergeUnderWay } from '../../ports/merging';
import type { DrawnSide } from '../../state/drawn-merge.svelte';
import type { Position, Survey } from '../../survey/document';
import { isObject, type Json } from '../../survey/json';

/** Both states of every thing whose place is asked about, and what is new. `marked`: id of what is looked at. */
export function drawnSides(under: MergeUnderWay, marked: string | null): readonly DrawnSide[] {
  const placed = new Set(
    under.questions.flatMap(({ id, pointer }) =>
      id !== null && (pointer === '/geometry' || pointer === '' || id === marked) ? [id] : [],
    ),
  );
  const sideOf = (survey: Survey, id: string, side: DrawnSide['side']): readonly DrawnSide[] => {
    const lines = linesOf(survey, id);
    return lines.length === 0 ? [] : [{ side, lines, marked: id === marked }];
  };
  const { mine, theirs, beside } = under;
  return [
    ...[...placed].flatMap((id) => [...sideOf(mine, id, 'mine'), ...sideOf(theirs, id, 'theirs')]),
    ...[...beside].flatMap(([id, put]) => [...sideOf(mine, id, 'mine'), ...sideOf(theirs, put, 'theirs')]),
    ...under.added.flatMap((id) => sideOf(theirs, id, 'theirs-only')),
  ];
}

/** The lines of a feature: a point is a line of one position. None where its geometry is odd. */
export function linesOf(survey: Survey, id: string): DrawnSide['lines'] {
  const geometry = survey.features.find((feature) => feature.id === id)?.geometry;
  if (!isObject(geometry)) return [];
  const { type, coordinates } = geometry;
  if (!Array.isArray(coordinates)) return [];
  const lines: readonly Json[] =
    type === 'Point'
      ? [[coordinates]]
      : type === 'LineString'
        ? [coordinates]
        : type === 'Polygon'
          ? coordinates
          : [];
  return lines.every(isLine) ? lines : [];
}

const isLine = (line: Json): line is Json & readonly Position[] =>
  Array.isArray(line) && line.length > 0 && (line as readonly Json[]).every(isPosition);
const isPosition = (at: Json): at is Json & Position =>
  Array.isArray(at) && at.length >= 2 && typeof at[0] === 'number' && typeof at[1] === 'number';
