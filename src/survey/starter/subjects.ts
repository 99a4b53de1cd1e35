import type { Subject } from '../schema/subject';
import { businessJets } from './subjects/business-jets';
import { classes } from './subjects/classes';
import { codeLetters } from './subjects/code-letters';
import { lightSingles } from './subjects/light-singles';
import { narrowBodyJets } from './subjects/narrow-body-jets';
import { pistonTwins } from './subjects/piston-twins';
import { propellerClasses } from './subjects/propeller-classes';
import { rotorsAndGliders } from './subjects/rotors-and-gliders';
import { turboprops } from './subjects/turboprops';
import { wideBodyJets } from './subjects/wide-body-jets';

/**
 * The subjects of a survey that names none; the first one is the default. Keys are ICAO type designators (Doc
 * 8643, from memory) or `any-<class>`.
 *
 * Sizes carry their source beside each entry: O = OpenAP (TUDelft-CNS-ATM/openap, commit 1305320b), F = FAA
 * aircraft characteristics data as copied in jaggyluis/cdr-tx-profiler `aircraft-char.js`, A = a row of the FAA
 * Aircraft Characteristics Database; the rest is from memory and not verified. Sub-variants differ by some 2 %.
 *
 * All performance (speeds, runs, climb, propeller and rotor speeds, attitudes) is from memory: a middling weight
 * on a mild day at sea level without wind. Good for choosing a lens and a place, for nothing else.
 */
export const starterSubjects: readonly Subject[] = [
  ...narrowBodyJets,
  ...wideBodyJets,
  ...businessJets,
  ...turboprops,
  ...pistonTwins,
  ...lightSingles,
  ...rotorsAndGliders,
  ...classes,
  ...propellerClasses,
  ...codeLetters,
];
