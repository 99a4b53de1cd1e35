/**
 * A piece of a document as a tree: written as text (`markupText`), or put into the page node by node. What people
 * have typed is a leaf, and so never markup.
 */
export interface Tag {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly Markup[];
}
export type Markup = Tag | string;

/** A tag with its children; what is null is left out. */
export const tag = (
  name: string,
  attributes: Tag['attributes'] = {},
  ...children: readonly (Markup | null)[]
): Tag => ({ tag: name, attributes, children: children.filter((child) => child !== null) });

/** Tags of HTML that have no end (HTML Living Standard 13.1.2). */
const withoutEnd = new Set(['meta', 'br', 'link', 'hr', 'input']);

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
/** Control characters, which neither HTML nor XML may hold, go. */
const escaped = (text: string): string =>
  // eslint-disable-next-line no-control-regex -- those of XML 1.0, 2.2, tab and line breaks excepted
  text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g, '').replace(/[&<>"]/g, (c) => escapes[c] ?? c);

/** As HTML, of which SVG is a part. */
export function markupText(node: Markup): string {
  if (typeof node === 'string') return escaped(node);
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${escaped(String(value))}"`)
    .join('');
  if (withoutEnd.has(node.tag)) return `<${node.tag}${attributes}>`;
  return `<${node.tag}${attributes}>${node.children.map(markupText).join('')}</${node.tag}>`;
}
