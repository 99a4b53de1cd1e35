import type { Survey } from '../../survey/document';
import { shortened } from '../../units/plain-text';

/** Characters of a name in a button or a sentence. */
const mostTitle = 80;

const kindWords: Readonly<Record<string, string>> = {
  runway: 'Runway',
  'standing-spot': 'Standing spot',
  'taxi-route': 'Taxi route',
  apron: 'Apron',
  'no-go': 'No-go area',
  obstacle: 'Obstacle',
  'flight-path': 'Flight path',
  'ground-use': 'Ground use',
  'log-entry': 'Log entry',
};

/** A feature's kind in the words of the screen; kinds of other programs as they stand in the file. */
export function kindTitle(kind: unknown): string {
  if (typeof kind !== 'string' || kind === '') return 'Feature';
  return (Object.hasOwn(kindWords, kind) ? kindWords[kind] : null) ?? shortened(kind, mostTitle);
}

/** What a message calls the feature with an id: its name, else its kind. */
export function featureTitle(survey: Survey, id: string): string {
  const properties = survey.features.find((f) => f.id === id)?.properties;
  const name = properties?.['name'];
  return typeof name === 'string' && name !== ''
    ? shortened(name, mostTitle)
    : kindTitle(properties?.['kind']);
}
