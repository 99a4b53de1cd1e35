import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { decodeCatalogue } from '../../src/imports/catalogue/decode';
import { searchCatalogue } from '../../src/imports/catalogue/search';
import type { Catalogue } from '../../src/imports/catalogue/types';
import { measure, printed } from './measure.ts';

/** Where `npm run data` puts them. */
const publicFiles = join(import.meta.dirname, '../../src/public');

/** The airfield catalogue: what goes over the network, what reading it costs, and a keystroke in the search. */
export function airfieldCatalogue(): void {
  const read = (name: string) => readFileSync(join(publicFiles, `${name}.json`));
  const packed = ['catalogue', 'runways', 'frequencies'].map(
    (name) => gzipSync(read(name), { level: 9 }).length,
  );
  const text = read('catalogue').toString();
  let catalogue: Catalogue | null = null;
  const reading = measure(8, () => {
    const loaded = decodeCatalogue(JSON.parse(text));
    if (!loaded.ok) throw new Error(loaded.reason);
    catalogue = loaded.value;
  });
  const typed = ['l', 'lo', 'lon', 'london', 'new york kennedy', 'de'];
  const keystroke = measure(60, (i) => {
    if (catalogue) searchCatalogue(catalogue, typed[i % typed.length] ?? '', 40);
  });
  const kB = (bytes: number) => `${Math.round(bytes / 1000)} kB`;
  const whole = packed.reduce((sum, bytes) => sum + bytes, 0);
  console.log(
    `airfield catalogue: ${packed.map(kB).join(' + ')} = ${kB(whole)} compressed (budget 1,000 kB)`,
  );
  console.log(`  parse and read        ${printed(reading)}`);
  console.log(`  a keystroke           ${printed(keystroke)}`);
}
