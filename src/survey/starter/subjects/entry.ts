import type { Subject } from '../../schema/subject';

type Silent =
  | 'wing'
  | 'engines'
  | 'approachAngle'
  | 'crossingHeight'
  | 'approachAttitude'
  | 'climbAttitude'
  | 'rpm'
  | 'blades'
  | 'tailSpan'
  | 'seaplane';

type Stated = Omit<Subject, Silent> & Partial<Pick<Subject, Silent>>;

/** A starter subject: what an entry does not state is null, so that the runway end's word goes. */
export const entry = (stated: Stated): Subject => ({
  wing: null,
  engines: null,
  approachAngle: null,
  crossingHeight: null,
  approachAttitude: null,
  climbAttitude: null,
  rpm: null,
  blades: null,
  tailSpan: null,
  seaplane: null,
  ...stated,
});

type Jet = Omit<
  Stated,
  'propulsion' | 'rpm' | 'blades' | 'approachAngle' | 'approachAttitude' | 'climbAttitude'
>;

/** A jet climbs about five degrees of nose above its flight path. From memory, not verified. */
export const jet = (stated: Jet): Subject =>
  entry({
    ...stated,
    propulsion: 'jet',
    climbAttitude: Math.round((Math.atan(stated.climbGradient) * 180) / Math.PI) + 5,
  });

/** `rpm` is the propeller's at take-off power: the fastest it turns, so the shortest shutter that still blurs it. */
export const propeller = (stated: Omit<Stated, 'propulsion'> & { rpm: number; blades: number }): Subject =>
  entry({ ...stated, propulsion: 'propeller' });

/**
 * A helicopter comes down more steeply than an aeroplane, nose up, and leaves nose down. Its runs are the
 * stretches flown in ground effect along the runway. From memory, not verified.
 */
export const helicopter = (
  stated: Omit<Stated, 'propulsion' | 'approachAngle'> & { rpm: number; blades: number },
): Subject =>
  entry({ ...stated, propulsion: 'rotor', approachAngle: 8, approachAttitude: 5, climbAttitude: -5 });

/** A glider comes in with its airbrakes half out, and leaves behind a towing aircraft. From memory, not verified. */
export const glider = (stated: Omit<Stated, 'propulsion' | 'engines' | 'approachAngle'>): Subject =>
  entry({
    ...stated,
    propulsion: 'none',
    engines: 0,
    approachAngle: 5.5,
    approachAttitude: 0,
    climbAttitude: 5,
  });
