import { writeFileSync } from 'node:fs';
import { builtSizes, recordFile, sizeAtStart } from './chunk-sizes.ts';

/** `npm run -s sizes`: builds, and records the compressed size of every chunk. */
const sizes = builtSizes();
writeFileSync(recordFile, `${JSON.stringify(sizes, null, 2)}\n`);
for (const [name, size] of Object.entries(sizes)) console.log(`${String(size).padStart(8)}  ${name}`);
console.log(`${String(sizeAtStart()).padStart(8)}  before the map library`);
