import type { Contents } from '../../survey/contents';
import type { Position, SurveyFeature } from '../../survey/document';
import { readFeature } from '../../survey/read-feature';
import { bearing, length } from '../../units/format';
import { lineFigures } from '../line-figures';
import { metric, type MapUnits } from '../units';
import { line, point, type OverlayFeature } from './features';
import type { VertexRef } from '../../survey/edits/vertices';

type Field = Pick<Contents, 'site' | 'runways'>;

/** What is being drawn: vertices so far and, last, the pointer, with the length and bearings of the leg under it. */
export function drawingOf(
  drawing: readonly Position[],
  runway: boolean,
  runways: Contents['runways'],
  site: Contents['site'],
  instant: number,
  units: MapUnits = metric,
): OverlayFeature[] {
  const [before, pointer] = [drawing[drawing.length - 2], drawing[drawing.length - 1]];
  if (!pointer) return [];
  const dots = drawing.slice(0, -1).map((position) => point(position, { part: 'drawn-vertex' }));
  const lines = drawing.length > 1 ? [line(drawing, { part: 'drawn-line' })] : [];
  const label = before ? legLabel(before, pointer, runway, { runways, site }, instant, units) : '';
  return [...lines, ...dots, point(pointer, { part: 'drawn-pointer', label })];
}

/** The same for a runway while one of its ends is dragged. */
export function draggedRunway(
  feature: SurveyFeature | null,
  vertex: VertexRef | null,
  field: Field,
  instant: number,
  units: MapUnits = metric,
): OverlayFeature[] {
  const reading = feature && readFeature(feature);
  if (reading?.kind !== 'runway' || !vertex) return [];
  const [start, end] = reading.value.line;
  const pointer = vertex.index === 0 ? start : end;
  const label = legLabel(start, end, true, field, instant, units);
  return label === '' ? [] : [point(pointer, { part: 'drawn-pointer', label })];
}

function legLabel(
  from: Position,
  to: Position,
  runway: boolean,
  field: Field,
  instant: number,
  { lengths, bearings }: MapUnits,
): string {
  const leg = lineFigures(from, to, field, instant);
  if (!leg) return '';
  if (!runway) return `${length(leg.length, lengths)}\n${bearing(leg.trueBearing, bearings)} true`;
  return [
    length(leg.length, lengths),
    `${bearing(leg.trueBearing, bearings)} true, ${bearing(leg.magneticBearing, bearings)} magnetic`,
    `runway ${leg.designators.join('/')}`,
  ].join('\n');
}
