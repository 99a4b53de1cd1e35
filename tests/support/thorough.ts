/** Whether what takes long runs too: npm run thorough. */
export const thorough = process.env['THOROUGH'] === '1';

/** How many of the made-up cases of a test are tried: the first third in `npm test`, all in `npm run thorough`. */
export const cases = (all: number): number => (thorough ? all : Math.ceil(all / 3));
