import type { Subject } from '../../survey/schema/subject';

/** What an aircraft looks like in the large. */
export type Kind = 'airliner' | 'business-jet' | 'fast-jet' | 'propeller' | 'helicopter' | 'glider';

/** m of height below which a jet has its engines at the tail: there is no room under the wing. Drawing only, from memory. */
const enginesAtTail = 8.6;
/** m/s of climb speed from which a small jet is a fast one. Drawing only. */
const fast = 105;

export function kindOf({ propulsion, height, climbSpeed }: Subject): Kind {
  switch (propulsion) {
    case 'rotor':
      return 'helicopter';
    case 'none':
      return 'glider';
    case 'propeller':
      return 'propeller';
    case 'jet':
      if (height >= enginesAtTail) return 'airliner';
      return climbSpeed >= fast ? 'fast-jet' : 'business-jet';
  }
}

export type WingPlace = 'low' | 'mid' | 'high' | 'two';

/** Where the wing sits, by the subject's own word. */
export function wingPlace(subject: Subject): WingPlace {
  const word = subject.wing?.toLowerCase() ?? '';
  if (/two|bi/.test(word)) return 'two';
  if (/high|parasol|shoulder/.test(word)) return 'high';
  return word.includes('mid') ? 'mid' : 'low';
}
