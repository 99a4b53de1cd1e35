import { findTypes } from './find-types';
import type { AircraftType } from '../../survey/starter/aircraft-types';
import type { Subject } from '../../survey/schema/subject';

/**
 * Generic classes by how type designators begin (ICAO Doc 8643): a first proposal for a type that no subject is known
 * by, which the user may mend. From memory.
 */
const classes: readonly (readonly [RegExp, string])[] = [
  [/^(A30|A310|A3[3458]|B7[4678]|B78|MD11|DC10|IL96|A124|C17|A225|A40)/, 'any-wide-body'],
  [/^(A1[89]|A2[01]N|A32|A31[89]|B73|B3[789]M|B3X|B75|BCS|MD[89]|C919|T204)/, 'any-narrow-body'],
  [/^(E1[3479]|E2[79]|E7|E29|CR[A-K][0-9X]|F70|F100|RJ|B46|SU95|J328)/, 'any-regional-jet'],
  [
    /^(C25|C5[0125]|C56|C6[58]|C7[05]|CL[36]|GL|GALX|F2TH|F900|FA|LJ|H25|E5[05]|E35|PC24|HDJT|BE40|PRM)/,
    'any-business-jet',
  ],
  [/^(AT[47]|DH8|SF34|SB20|D328|BE20|B350|BE9|B190|AN2[46]|C130|C30J|SW4|L410)/, 'any-turboprop-twin'],
  [/^(PC12|C208|TBM|PC6|P46T|TBM9|KODI)/, 'any-turboprop-single'],
  [/^(F16|F15|F18|F35|EUFI|RFAL|GRIP|TOR|HAWX|MG29|M346|T38|L39)/, 'any-fast-jet'],
  [/^(H47|H53|H60|EH10|NH90|AS32|AS3B|A139|S92|S61|MI8)/, 'any-large-helicopter'],
  [/^(R[246][24]|EC|AS|H1|B06|B4|A109|A119|GAZL|BK17|MD5|S76|CABR)/, 'any-helicopter'],
  [/^(BE5|BE76|DA42|DA62|PA3[149]|PA44|C3[0134]|C4[012]|P68|AEST)/, 'any-piston-twin'],
  [
    /^(C1[5-9]|C20[67]|C21|P28|P32|PA1|PA2[2-8]|PA46|DR[24]|SR2|BE3|BE2[34]|M20|AA[15]|DA[24]0|DV2|TB[12]|TOB)/,
    'any-light-single',
  ],
  [/^(GLID|AS2|LS|DUOD|DG|DISC|NIMB|VENT|ARC)/, 'any-glider'],
  [/^(ULAC|CTLS|C42|EV97|FDCT|PIAT|SAV)/, 'any-ultralight'],
];

/**
 * The class of the survey's subjects that comes nearest to a type, by name or designator: to be offered, not taken in
 * silence. Null where nobody can tell.
 */
export function nearestClass(type: string, subjects: readonly Subject[]): string | null {
  const has = (key: string | undefined) =>
    key !== undefined && subjects.some((s) => s.key === key) ? key : null;
  const [first, ...others] = familyOf(type);
  if (first && others.every(({ classKey }) => classKey === first.classKey)) return has(first.classKey);
  return has(classes.find(([pattern, key]) => pattern.test(type.toUpperCase()) && has(key))?.[1]);
}

/** Types that a text names, or its first word where it names a variant that nobody here knows: "717-500". */
function familyOf(type: string): readonly AircraftType[] {
  const found = findTypes(type, 6);
  const [family = ''] = type.split(/[^\p{L}\p{N}]+/u);
  return found.length > 0 || family.length < 3 ? found : findTypes(family, 6);
}
