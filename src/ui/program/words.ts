import type { Missing, NewVersion, Program } from '../../ports/program';

export const newVersionWords: Readonly<Record<NewVersion['why'], string>> = {
  waiting: 'A new version is ready.',
  'started-elsewhere': 'A new version was started in another tab; this one still shows the old one.',
  'part-missing': 'A part of the program is not there any more: a new version may have taken its place.',
};

const offlineWords: Readonly<Record<Program['offline'], string>> = {
  ready: 'Sunside is stored on this device and starts without a network.',
  soon: 'Sunside is being stored on this device; after that it starts without a network.',
  never: '',
};

const withheld: Readonly<Record<Missing, string>> = {
  offline: 'starting without a network',
  keeping: 'asking the browser to keep the surveys',
  position: 'your position',
  clipboard: 'copying by a button',
};

/** What the user should know of this browser and this connection, in a sentence or two; "" for nothing. */
export function deviceWords(
  { offline, missing }: Pick<Program, 'offline' | 'missing'>,
  secure: boolean,
): string {
  const lacking = missing.map((ability) => withheld[ability]);
  const why = secure ? 'This browser withholds' : 'This page came over plain http, so the browser withholds';
  const said = lacking.length > 0 ? `${why}: ${lacking.join(', ')}. All else works.` : '';
  return [offlineWords[offline], said].filter(Boolean).join(' ');
}
