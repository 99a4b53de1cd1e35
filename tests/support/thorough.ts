/** Whether what takes long runs too: npm run thorough. */
export const thorough = process.env['THOROUGH'] === '1';

/** How many of the made-up cases of a test are tried: the first third in `npm test`, or a sixth where each of them asks much, all in `npm run thorough`. */
export const cases = (all: number, part: 3 | 6 = 3): number => (thorough ? all : Math.ceil(all / part));
