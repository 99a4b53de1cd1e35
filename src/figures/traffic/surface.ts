/** What a runway is made of, as far as it decides on who may use it. */
export type Surface = 'paved' | 'unpaved' | 'water' | 'unknown';

const water = /\b(?:water|sea|lake|river)\b/i;
const paved = /asph|asp\b|conc|\bcon\b|bitum|\bpaved\b|pavement|tarmac|macadam|cement|\bpem\b|metal|steel/i;
const unpaved =
  /unpaved|unmade|grass|\bgrs\b|turf|sod|soil|earth|dirt|clay|mud|gravel|\bg[rv][el]\b|stone|shale|coral|laterite|sand|snow|ice|ground|compacted|murram|\bpiçarra\b/i;

/**
 * The kind of a surface as people and open data name it ("asphalt", "Grass", "GRS"). Of two named together ("asphalt,
 * grass") the first counts: it is what the runway mostly is. What is not recognised stays unknown.
 */
export function surfaceOf(text: string): Surface {
  const [first = ''] = text.split(/[,;/+&]/);
  if (water.test(first)) return 'water';
  if (unpaved.test(first)) return 'unpaved';
  return paved.test(first) ? 'paved' : 'unknown';
}
