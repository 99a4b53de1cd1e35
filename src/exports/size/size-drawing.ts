import type { Subject } from '../../survey/schema/subject';
import { tag, type Tag } from '../sheet/markup';

type Size = Pick<Subject, 'length' | 'span' | 'propulsion' | 'tailSpan'>;

/** Shares of length and span that only make the drawing read as an aircraft; they measure nothing. */
const shape = {
  body: 0.1,
  wingAt: 0.42,
  chord: 0.16,
  tip: 0.07,
  tail: 0.34,
  tailAt: 0.9,
  sweep: 0.12,
} as const;

/**
 * Two aircraft from above, nose up, side by side at one scale: length and span are true, all else is a sign for an
 * aircraft. The grid's squares are 10 m to a side.
 */
export function sizeDrawing(one: Size, known: Size, title: string): Tag {
  const gap = 6;
  const wide = one.span + known.span + 3 * gap;
  const tall = Math.max(one.length, known.length) + 2 * gap;
  const lines = [
    ...steps(wide).map((x) => tag('path', { d: `M${x} 0V${round(tall)}` })),
    ...steps(tall).map((y) => tag('path', { d: `M0 ${y}H${round(wide)}` })),
  ];
  return tag(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${round(wide)} ${round(tall)}`,
      role: 'img',
      'aria-label': title,
    },
    tag('g', { fill: 'none', stroke: 'currentColor', 'stroke-width': 0.1, opacity: 0.4 }, ...lines),
    tag('path', { class: 'one', d: outline(one, gap + one.span / 2, gap), fill: 'currentColor' }),
    tag('path', {
      ...{ class: 'known', d: outline(known, 2 * gap + one.span + known.span / 2, gap) },
      ...{ fill: 'none', stroke: 'currentColor', 'stroke-width': 0.5 },
    }),
  );
}

const round = (v: number) => Number(v.toFixed(2));
const steps = (to: number) => Array.from({ length: Math.floor(to / 10) }, (_, i) => (i + 1) * 10);

/** Body, wings and tailplane; of a rotorcraft the body and the disc of its rotor. */
function outline({ length: l, span: b, propulsion, tailSpan }: Size, x: number, y: number): string {
  const half = (l * shape.body) / 2;
  const body = `M${p(x, y)}Q${p(x + half, y + half)} ${p(x + half, y + 2.5 * half)}L${p(x + half * 0.7, y + l * 0.8)}L${p(x, y + l)}L${p(x - half * 0.7, y + l * 0.8)}L${p(x - half, y + 2.5 * half)}Q${p(x - half, y + half)} ${p(x, y)}Z`;
  if (propulsion === 'rotor') {
    const [r, cy] = [b / 2, y + l * 0.35];
    return `${body}M${p(x - r, cy)}A${round(r)} ${round(r)} 0 1 0 ${p(x + r, cy)}A${round(r)} ${round(r)} 0 1 0 ${p(x - r, cy)}Z`;
  }
  const sweep = propulsion === 'jet' ? shape.sweep * b : 0;
  const plane = (at: number, span: number, chord: number, tip: number, back: number) => {
    const top = y + l * at;
    return `M${p(x, top)}L${p(x + span / 2, top + back)}L${p(x + span / 2, top + back + tip)}L${p(x, top + chord)}L${p(x - span / 2, top + back + tip)}L${p(x - span / 2, top + back)}Z`;
  };
  const tail = tailSpan ?? shape.tail * b;
  return [
    body,
    plane(shape.wingAt, b, l * shape.chord, l * shape.tip * 0.6, Math.min(sweep, l * 0.3)),
    plane(shape.tailAt - 0.05, tail, l * 0.07, l * 0.03, Math.min(sweep * 0.3, l * 0.05)),
  ].join('');
}

const p = (x: number, y: number) => `${round(x)} ${round(y)}`;
