/** Whether the longest browser tests run too: npm run thorough. */
export const thorough = process.env['THOROUGH'] === '1';
