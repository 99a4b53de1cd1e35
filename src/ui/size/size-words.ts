import { codeLetter } from '../../survey/code-letter';
import type { Subject } from '../../survey/schema/subject';
import { decimal } from '../../units/format';
import type { Formats } from '../formats';

const propulsions: Readonly<Record<Subject['propulsion'], string>> = {
  jet: 'jet',
  propeller: 'propeller',
  rotor: 'rotor',
  none: 'no engine',
};

/** "code letter C, jet, 2 engines: length 37.6 m, span 35.8 m". A rotor's span is its disc. */
export function sizeWords({ length, span, propulsion, engines }: Subject, format: Formats): string {
  const letter = propulsion === 'rotor' ? null : codeLetter(span);
  const kind = [
    letter && `code letter ${letter}`,
    propulsions[propulsion],
    engines !== null && engines > 0 && `${engines} ${engines === 1 ? 'engine' : 'engines'}`,
  ].filter(Boolean);
  const wide = propulsion === 'rotor' ? 'rotor' : 'span';
  return `${kind.join(', ')}: length ${format.fine(length)}, ${wide} ${format.fine(span)}`;
}

/** "1.3 times as long and as wide as", "half as long, as wide". */
export function besideWords(one: Subject, known: Subject): string {
  const times = (a: number, b: number) => {
    const by = a / b;
    return by > 0.97 && by < 1.03 ? 'about as' : `${decimal(by, by < 9.95 ? 1 : 0)} times as`;
  };
  return `${times(one.length, known.length)} long, ${times(one.span, known.span)} wide`;
}
