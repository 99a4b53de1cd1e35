import { shortened } from '../../units/plain-text';

/** Characters of a name that a map has room for. */
const most = 48;

/** A name as the map prints it. */
export const labelOf = (name: string): string => shortened(name, most);
