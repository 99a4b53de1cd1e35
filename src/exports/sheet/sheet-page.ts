import type { FieldSheet, SheetPart, SheetStay, SheetTable } from './field-sheet';
import { tag, type Markup, type Tag } from './markup';

/**
 * The sheet as an article of a page, with the field's map in it: one for paper and one that a phone's screen shows instead.
 * `styles/field-sheet.css` sets it on A4.
 */
export function sheetPage(sheet: FieldSheet, maps: { readonly paper: Tag; readonly phone: Tag }): Tag {
  const { title, day, head, stays, staysNote, doubts, parts, cautions, made } = sheet;
  return tag(
    'article',
    { class: 'field-sheet' },
    tag('header', {}, tag('h1', {}, title), tag('p', { class: 'day' }, day)),
    pairs(head, 'head'),
    doubts.length > 0
      ? tag('section', { class: 'doubts' }, tag('h2', {}, 'Check first'), list(doubts))
      : null,
    tag('div', { class: 'map', role: 'region', 'aria-label': 'Map of the day' }, maps.paper, maps.phone),
    tag(
      'section',
      { class: 'stays' },
      tag('h2', {}, 'Where to stand when'),
      staysNote === null ? null : tag('p', {}, staysNote),
      ...stays.map(stayOf),
    ),
    tag('div', { class: 'parts' }, ...parts.map(partOf)),
    tag('section', { class: 'cautions' }, tag('h2', {}, 'Cautions'), list(cautions)),
    tag('p', { class: 'made' }, made),
  );
}

const list = (lines: readonly string[], name = '') =>
  tag('ul', name === '' ? {} : { class: name }, ...lines.map((line) => tag('li', {}, line)));

const pairs = (all: readonly (readonly [string, string])[], name: string) =>
  tag(
    'dl',
    { class: name },
    ...all.map(([label, text]) => tag('div', {}, tag('dt', {}, label), tag('dd', {}, text))),
  );

const stayOf = ({ time, spot, way, windows, instead, place }: SheetStay): Tag =>
  tag(
    'section',
    { class: 'stay' },
    tag('h3', {}, tag('b', {}, time), ` ${spot}`),
    tag('p', { class: 'way' }, way),
    table({
      headings: ['When', 'Path', 'Light', 'Picture', 'Lens', 'Start with'],
      rows: windows.map((w) => [w.time, w.path, w.light, w.picture, w.lens, w.settings]),
    }),
    instead.length > 0 ? list(instead, 'instead') : null,
    pairs(place, 'place'),
  );

const partOf = ({ title, lines = [], ticks = [], table: rows, after = [], wide = false }: SheetPart): Tag =>
  tag(
    'section',
    { class: wide ? 'part wide' : 'part' },
    tag('h2', {}, title),
    ...lines.map((line) => tag('p', {}, line)),
    ticks.length > 0 ? list(ticks, 'ticks') : null,
    rows ? table(rows) : null,
    after.length > 0 ? list(after, 'after') : null,
  );

function table({ headings, rows }: SheetTable): Tag {
  const cell = (text: string, i: number): Markup =>
    i === 0 ? tag('th', { scope: 'row' }, text) : tag('td', {}, text);
  return tag(
    'table',
    {},
    tag('thead', {}, tag('tr', {}, ...headings.map((heading) => tag('th', { scope: 'col' }, heading)))),
    tag('tbody', {}, ...rows.map((row) => tag('tr', {}, ...row.map(cell)))),
  );
}
