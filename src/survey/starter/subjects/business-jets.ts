import type { Subject } from '../../schema/subject';
import { jet } from './entry';

/** Business jets. Where sizes and performance are from: `../subjects.ts`. */
export const businessJets: readonly Subject[] = [
  // span and height F; length from memory
  jet({
    key: 'C525',
    name: 'C525 — light business jet',
    length: 12.98,
    span: 14.26,
    height: 4.2,
    wing: 'low',
    engines: 2,
    approachSpeed: 55,
    climbSpeed: 82,
    groundRun: 750,
    landingRun: 600,
    climbGradient: 0.19,
  }),
  // span O and F, length O, height F
  jet({
    key: 'C550',
    name: 'C550 — light business jet',
    length: 14.39,
    span: 15.9,
    height: 4.57,
    wing: 'low',
    engines: 2,
    approachSpeed: 57,
    climbSpeed: 82,
    groundRun: 800,
    landingRun: 650,
    climbGradient: 0.19,
  }),
  // span (without winglets) and height F; length from memory
  jet({
    key: 'F2TH',
    name: 'F2TH — large business jet',
    length: 20.2,
    span: 19.3,
    height: 7.06,
    wing: 'low',
    engines: 2,
    approachSpeed: 57,
    climbSpeed: 88,
    groundRun: 1100,
    landingRun: 650,
    climbGradient: 0.2,
  }),
  // O; its 7.82 m "fuselage height" is the overall height
  jet({
    key: 'GLF6',
    name: 'GLF6 — large business jet',
    length: 30.41,
    span: 30.36,
    height: 7.82,
    wing: 'low',
    engines: 2,
    approachSpeed: 60,
    climbSpeed: 90,
    groundRun: 1250,
    landingRun: 800,
    climbGradient: 0.21,
  }),
];
