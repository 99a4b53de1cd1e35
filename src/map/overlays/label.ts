import { shortened } from '../../units/plain-text';

/** Characters of a name that a map has room for, and of a name that has no place to break its line at. */
const [most, mostUnbroken] = [48, 24];

/** A name as the map prints it. */
export function labelOf(name: string): string {
  const text = shortened(name, most);
  return /^\S{25}/u.test(text) ? shortened(text, mostUnbroken) : text;
}
