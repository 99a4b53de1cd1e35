import type { ListEntries, ListName } from './kit-lists';

/** What a member of an entry is measured in: the form and the tables turn what people type into it. */
export type Measure =
  | 'text'
  | 'propulsion'
  | 'count'
  | 'millimetres'
  | 'f-number'
  | 'factors'
  | 'metres'
  | 'metres-per-second'
  | 'gradient'
  | 'degrees'
  | 'rpm';

export interface Member<L extends ListName = ListName> {
  readonly member: string & keyof ListEntries[L];
  /** As a form's label and a table's heading have it, without the unit. */
  readonly name: string;
  readonly measure: Measure;
  /** Without it an entry makes no sense; all else may stay empty. */
  readonly needed: boolean;
}

const needed = <M>(member: M, name: string, measure: Measure) =>
  ({ member, name, measure, needed: true }) as const;
const free = <M>(member: M, name: string, measure: Measure) =>
  ({ member, name, measure, needed: false }) as const;

/** The members of each list in the order in which forms and tables show them. */
export const kitMembers: { readonly [L in ListName]: readonly Member<L>[] } = {
  bodies: [
    free('name', 'Name', 'text'),
    needed('sensorWidth', 'Sensor width', 'millimetres'),
    needed('sensorHeight', 'Sensor height', 'millimetres'),
    needed('pixelsWide', 'Pixels wide', 'count'),
    needed('pixelsHigh', 'Pixels high', 'count'),
  ],
  lenses: [
    free('name', 'Name', 'text'),
    needed('shortest', 'Shortest focal length', 'millimetres'),
    needed('longest', 'Longest focal length', 'millimetres'),
    needed('widestAperture', 'Widest aperture', 'f-number'),
    free('extenders', 'Extenders', 'factors'),
  ],
  subjects: [
    free('name', 'Name', 'text'),
    needed('length', 'Length', 'metres'),
    needed('span', 'Span', 'metres'),
    needed('height', 'Height', 'metres'),
    needed('propulsion', 'Propulsion', 'propulsion'),
    free('wing', 'Wing', 'text'),
    free('engines', 'Engines', 'count'),
    needed('approachSpeed', 'Approach speed', 'metres-per-second'),
    needed('climbSpeed', 'Climb speed', 'metres-per-second'),
    needed('groundRun', 'Ground run', 'metres'),
    needed('landingRun', 'Landing run', 'metres'),
    needed('climbGradient', 'Climb gradient', 'gradient'),
    free('approachAngle', 'Approach angle', 'degrees'),
    free('crossingHeight', 'Crossing height', 'metres'),
    free('approachAttitude', 'Nose attitude on approach', 'degrees'),
    free('climbAttitude', 'Nose attitude in the climb', 'degrees'),
    free('rpm', 'Propeller or rotor speed', 'rpm'),
    free('blades', 'Blades', 'count'),
    free('tailSpan', 'Span of the tailplane', 'metres'),
  ],
};
