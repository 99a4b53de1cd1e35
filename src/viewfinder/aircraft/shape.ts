import { BufferAttribute, type BufferGeometry } from 'three';
import type { Subject } from '../../survey/schema/subject';
import { airliner, type Stance } from './airliner';
import { fastJet } from './fast-jet';
import { glider } from './glider';
import { helicopter } from './helicopter';
import { kindOf } from './kinds';
import { lightAircraft } from './light';
import { propeller, type Part } from './parts';

export type { Stance } from './airliner';

/** m of length from which a propeller aircraft is a tube with wings rather than a cabin with an engine in front. */
const tubeFrom = 13;

/**
 * The simple body of a subject in m about its centre: x forward, y up, z to the right. It reaches exactly to the
 * points by which subjects are framed (`framedPoints`): nose, tail, tips of wing and tailplane or rim of the rotor, fin tip, wheels.
 */
export function shapeOf(subject: Subject, stance: Stance): Part[] {
  const parts = partsOf(subject, stance);
  for (const { stuff, geometry } of parts) if (stuff === 'skin') shadeBelly(geometry);
  return parts;
}

function partsOf(subject: Subject, stance: Stance): Part[] {
  switch (kindOf(subject)) {
    case 'airliner':
    case 'business-jet':
      return airliner(subject, stance);
    case 'fast-jet':
      return fastJet(subject, stance);
    case 'glider':
      return glider(subject);
    case 'helicopter':
      return helicopter(subject, stance, (radius) =>
        // A standing rotor is parked with a blade over the nose.
        propeller([0, 0, 0], radius, subject.blades ?? 3, stance.arc, 0.04, -Math.PI / 2),
      );
    case 'propeller':
      return subject.length >= tubeFrom && (subject.engines ?? 1) > 1
        ? airliner(subject, stance)
        : lightAircraft(subject, stance);
  }
}

/** White above, grey below: most aircraft are. */
function shadeBelly(geometry: BufferGeometry): void {
  const normals = geometry.getAttribute('normal');
  const colours = new Float32Array(normals.count * 3);
  for (let i = 0; i < normals.count; i++) {
    const under = Math.max(0, Math.min(1, (-normals.getY(i) - 0.25) / 0.5));
    colours.set([0.93 - 0.36 * under, 0.92 - 0.35 * under, 0.89 - 0.31 * under], 3 * i);
  }
  geometry.setAttribute('color', new BufferAttribute(colours, 3));
}
