import type { Markup } from '../../exports/sheet/markup';
import { nodeOf } from './node-of';

/** Puts a tree into an element of the page. */
export const put = (tree: Markup) => (node: HTMLElement) => node.replaceChildren(nodeOf(tree));

/** The printer's copy of a tree: it lies beside the program, which is not printed while it is there (field-sheet.css). */
export function printed(tree: Markup) {
  return () => {
    const copy = document.createElement('div');
    copy.className = 'print-copy';
    copy.append(nodeOf(tree));
    document.body.append(copy);
    return () => copy.remove();
  };
}
