import type { Markup } from '../../exports/sheet/markup';

const namespaces: Readonly<Record<string, string>> = { svg: 'http://www.w3.org/2000/svg' };
const html = 'http://www.w3.org/1999/xhtml';

/** A piece of a sheet as nodes of the page. Text becomes text: nothing that somebody has typed is read as markup. */
export function nodeOf(markup: Markup, namespace = html): Node {
  if (typeof markup === 'string') return document.createTextNode(markup);
  const own = namespaces[markup.tag] ?? namespace;
  const element = document.createElementNS(own, markup.tag);
  for (const [name, value] of Object.entries(markup.attributes))
    if (name !== 'xmlns') element.setAttribute(name, String(value));
  element.append(...markup.children.map((child) => nodeOf(child, own)));
  return element;
}
