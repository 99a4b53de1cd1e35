/** Whether there is time for what does not fit into the four minutes of npm test: npm run thorough. */
export const thorough = process.env['THOROUGH'] === '1';
