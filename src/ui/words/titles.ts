import type { Survey } from '../../survey/document';
import { isKind, kinds } from '../../survey/kinds';
import { shortened } from '../../units/plain-text';

/** Characters of a name in a button or a sentence. */
const mostTitle = 80;

/** A feature's kind in the words of the screen; kinds of other programs as they stand in the file. */
export function kindTitle(kind: unknown): string {
  if (typeof kind !== 'string' || kind === '') return 'Feature';
  if (!isKind(kind)) return shortened(kind, mostTitle);
  const { word } = kinds[kind];
  return `${word.charAt(0).toUpperCase()}${word.slice(1)}`;
}

/** What a message calls the feature with an id: its name, else its kind. */
export function featureTitle(survey: Survey, id: string): string {
  const properties = survey.features.find((f) => f.id === id)?.properties;
  const name = properties?.['name'];
  return typeof name === 'string' && name !== ''
    ? shortened(name, mostTitle)
    : kindTitle(properties?.['kind']);
}
