import { markupText, tag, type Tag } from './markup';

/**
 * A sheet as a document of its own, which any browser shows and prints: everything is in it, it fetches nothing and
 * runs nothing. `style`: the text of styles/field-sheet.css.
 */
export function sheetDocument(title: string, page: Tag, style: string): string {
  const head = tag(
    'head',
    {},
    tag('meta', { charset: 'utf-8' }),
    tag('meta', { name: 'viewport', content: 'width=device-width' }),
    tag('title', {}, title),
  );
  // The style is ours, and HTML knows no escapes within it.
  const styled = markupText(head).replace('</head>', () => `<style>${style}</style></head>`);
  return `<!doctype html><html lang="en">${styled}${markupText(tag('body', {}, page))}</html>\n`;
}
