/**
 * A type of aircraft: ICAO type designator (Doc 8643; from memory unless the source lists it), the class whose
 * performance stands in, length, span (of a helicopter the rotor's diameter) and height in m, where the sizes are from,
 * and what it is called: maker and model first, then family and everyday names.
 *
 * Sources, of span and length first: O = OpenAP (TUDelft-CNS-ATM/openap, commit 1305320b), F = FAA aircraft
 * characteristics data as copied in jaggyluis/cdr-tx-profiler `aircraft-char.js`, A = a row of the FAA Aircraft
 * Characteristics Database, m = from memory, not verified. Sub-variants differ by some 2 %.
 */
export type TypeRow = readonly [
  designator: string,
  classKey: string,
  length: number,
  span: number,
  height: number,
  source: 'O' | 'F' | 'A' | 'm',
  names: string,
];
