import type { Subject } from '../../survey/schema/subject';
import { tailSpanOf } from '../../figures/optics/framed-points';
import { loft, patch, windows, type Section } from './fuselage';
import { fin, leg, nacelle, pair, part, propeller, type Part } from './parts';
import { kindOf, wingPlace } from './kinds';
import { RAD } from '../../survey/angles';

/** What the drawing needs to know beyond the subject. `arc`: degrees that a blade sweeps; null: it stands still. */
export interface Stance {
  readonly gearDown: boolean;
  readonly arc: number | null;
}

/** Proportions that make a kind look like itself: shares of height (fuselage) and of the span or length (the rest). From memory. */
interface Look {
  readonly radius: number;
  /** Height of the fuselage's axis above the ground. */
  readonly axis: number;
  readonly taper: number;
  /** Forward shift of the root over the tip, as a share of the half span. */
  readonly sweep: number;
  readonly aspectRatio: number;
  readonly dihedral: number;
  readonly tTail: boolean;
}

function lookOf(subject: Subject): Look {
  const kind = kindOf(subject);
  const place = wingPlace(subject);
  if (kind === 'business-jet')
    return {
      radius: 0.17,
      axis: 0.4,
      taper: 0.35,
      sweep: 0.3,
      aspectRatio: 8.5,
      dihedral: 3,
      tTail: true,
    };
  if (kind === 'airliner')
    return {
      radius: 0.165,
      axis: 0.34,
      taper: 0.28,
      sweep: 0.38,
      aspectRatio: 9.4,
      dihedral: 5.5,
      tTail: false,
    };
  // Airliners on propellers.
  return {
    radius: 0.185,
    axis: place === 'high' ? 0.3 : 0.38,
    taper: 0.5,
    sweep: 0.03,
    aspectRatio: 11.5,
    dihedral: place === 'high' ? 1.5 : 5,
    tTail: true,
  };
}

/** A tube with wings: jets of every size, and airliners on propellers. */
export function airliner(subject: Subject, { gearDown, arc }: Stance): Part[] {
  const { length: L, span: b, height: H } = subject;
  const look = lookOf(subject);
  const r = look.radius * H;
  const ground = -H / 2;
  const axis = ground + look.axis * H;
  const sections = tube(L, axis, r);
  const high = wingPlace(subject) === 'high';
  const half = b / 2;
  const mean = b / look.aspectRatio;
  const rootChord = (2 * mean) / (1 + look.taper);
  const tipX = -0.02 * L;
  const rootX = tipX + look.sweep * half;
  const wingY = high ? axis + 0.86 * r : axis - 0.62 * r;
  const rise = Math.tan(look.dihedral * RAD) * half;
  const tipChord = rootChord * look.taper;
  const wing = (share: number, chord: number, thickness: number) => ({
    at: [rootX + (tipX - rootX) * share, wingY + rise * share, half * share] as const,
    chord,
    thickness,
  });
  const kink = rootChord + (tipChord - rootChord) * 0.46;
  const parts: Part[] = [
    part('skin', loft(sections)),
    ...pair('skin', [wing(0, rootChord * 1.12, 0.14), wing(0.35, kink, 0.12), wing(1, tipChord, 0.1)]),
    ...glassOf(sections, L, r),
    ...tail(subject, look, axis, r),
  ];
  const engines = subject.engines ?? 2;
  const kind = kindOf(subject);
  if (kind === 'business-jet') parts.push(...rearEngines(L, axis, r, H));
  else if (kind === 'airliner') {
    const nr = (engines > 2 ? 0.075 : 0.098) * H;
    for (const share of engines > 2 ? [0.31, 0.56] : [0.33]) {
      const { at } = wing(share, 0, 0);
      const y = Math.max(ground + nr + 0.03 * H, at[1] - 1.15 * nr);
      for (const z of [at[2], -at[2]]) {
        parts.push(...nacelle(at[0] + kink * 0.5 + nr * 2.2, y, z, nr, nr * 4.1));
      }
    }
  } else {
    const radius = Math.min(0.26 * H, 0.24 * half);
    const nr = 0.055 * H + 0.12;
    const share = 0.3;
    const { at } = wing(share, 0, 0);
    for (const z of [at[2], -at[2]]) {
      const y = at[1] - 0.15 * nr;
      const front = at[0] + kink * 0.5 + nr * 2.4;
      parts.push(part('skin', loft(pod(front, front - nr * 9, y, nr)).translate(0, 0, z)));
      parts.push(...propeller([front + nr * 0.5, y, z], radius, subject.blades ?? 4, arc, nr * 0.5));
    }
  }
  if (gearDown) {
    const wheel = 0.052 * H;
    parts.push(...leg(0.39 * L, axis, 0, ground, wheel * 0.8, 2));
    const track = high ? r * 1.05 : 0.11 * b;
    for (const z of [track, -track])
      parts.push(...leg(-0.035 * L, high ? axis - 0.5 * r : wingY, z, ground, wheel, b > 52 ? 4 : 2));
  }
  return parts;
}

/** A tube: round at the nose, drawn up at the tail. */
function tube(L: number, axis: number, r: number): Section[] {
  const nose = Math.min(0.17 * L, 3.5 * r);
  const tail = Math.min(0.36 * L, 6.4 * r);
  const section = (x: number, k: number, y: number): Section => ({
    x,
    y: axis + y,
    halfWidth: k * r,
    halfHeight: k * r,
  });
  const sections: Section[] = [];
  for (let i = 0; i <= 10; i++) {
    const t = i / 10;
    // Fuller than an ellipse; the chin hangs a little.
    const k = Math.max(0.015, (1 - (1 - t) ** 1.95) ** 0.64);
    sections.push(section(L / 2 - nose * t * t, k, -0.16 * r * (1 - t) ** 1.4));
  }
  for (let i = 1; i <= 8; i++) sections.push(section(L / 2 - nose - ((L - nose - tail) * i) / 8, 1, 0));
  for (let i = 1; i <= 10; i++) {
    const t = i / 10;
    const k = 1 - 0.93 * t ** 1.55;
    sections.push(section(-L / 2 + tail * (1 - t), k, (1 - k) * 0.82 * r));
  }
  return sections;
}

/** A pod for an engine. */
function pod(front: number, back: number, y: number, r: number): Section[] {
  const shape = [0.62, 0.9, 1, 1, 0.95, 0.75, 0.4, 0.05];
  return shape.map((k, i) => ({
    x: front + ((back - front) * i) / (shape.length - 1),
    y,
    halfWidth: k * r * 0.85,
    halfHeight: k * r,
  }));
}

function glassOf(sections: readonly Section[], L: number, r: number): Part[] {
  const cockpit = L / 2 - Math.min(0.055 * L, 0.95 * r);
  const deep = Math.min(0.035 * L, 0.75 * r);
  const parts = [part('glass', patch(sections, cockpit, cockpit - deep, [24 * RAD, 156 * RAD], 0.02))];
  const cabin = [L / 2 - Math.max(0.13 * L, 3 * r), -L / 2 + Math.min(0.26 * L, 5 * r)] as const;
  const small = r < 1.25;
  if (cabin[0] - cabin[1] > 1.5)
    parts.push(
      part(
        'glass',
        windows(
          sections,
          cabin[0],
          cabin[1],
          small ? 1.05 : 0.53,
          small ? 0.42 : 0.26,
          (small ? 22 : 17) * RAD,
        ),
      ),
    );
  return parts;
}

function rearEngines(L: number, axis: number, r: number, H: number): Part[] {
  const nr = 0.085 * H;
  return [1, -1].flatMap((side) => nacelle(-0.21 * L, axis + 0.42 * r, side * (r + nr * 0.95), nr, nr * 5));
}

function tail(
  { length: L, span, height: H, tailSpan }: Subject,
  { tTail }: Look,
  axis: number,
  r: number,
): Part[] {
  const top = H / 2;
  const foot = axis + 0.55 * r;
  const finChord = 0.62 * (top - foot);
  const ribs = [
    { at: [-0.45 * L + 0.62 * (top - foot), foot, 0] as const, chord: finChord * 1.5, thickness: 0.1 },
    { at: [-0.45 * L, top, 0] as const, chord: finChord * 0.58, thickness: 0.09 },
  ];
  const half = tailSpanOf({ span, tailSpan }) / 2;
  const y = tTail ? top - 0.035 * H : axis + 0.55 * r;
  const root = tTail ? -0.445 * L : -0.4 * L;
  const chord = tTail ? finChord * 0.62 : Math.max(finChord * 0.95, 0.07 * L);
  const swept = root - (tTail ? 0.012 * L : 0.024 * L);
  const stabiliser = [
    { at: [root, y, 0] as const, chord, thickness: 0.1 },
    { at: [swept, y + (tTail ? 0 : 0.05 * half), half] as const, chord: chord * 0.42, thickness: 0.1 },
  ];
  return [fin(ribs), ...pair('skin', stabiliser)];
}
