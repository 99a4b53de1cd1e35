import { tag, type Tag } from '../sheet/markup';
import type { Letter } from './request-letter';

/** A letter on paper with the map of its places. */
export const letterPage = ({ subject, body }: Letter, map: Tag): Tag =>
  tag(
    'article',
    { class: 'field-sheet letter' },
    tag('h1', {}, subject),
    tag('p', { class: 'body' }, body),
    map,
  );
