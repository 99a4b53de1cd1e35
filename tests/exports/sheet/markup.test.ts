import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { markupText, tag } from '../../../src/exports/sheet/markup';
import { sheetDocument } from '../../../src/exports/sheet/sheet-document';

const read = (text: string) =>
  text
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, '&');

describe('pieces of a sheet as text', () => {
  it('[E100] keeps what was typed as text, whatever it is: in leaves and in attributes', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (typed) => {
        const text = markupText(tag('p', { title: typed }, typed));
        const [, attribute, leaf] = /^<p title="([^"<>]*)">([^<>]*)<\/p>$/s.exec(text) ?? [];
        // eslint-disable-next-line no-control-regex -- what no document may hold
        const clean = typed.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g, '');
        expect([read(attribute ?? '-'), read(leaf ?? '-')]).toEqual([clean, clean]);
      }),
    );
  });

  it('[E101] a document holds its style once, after its title, and nothing that runs or fetches', () => {
    const text = sheetDocument(
      '<script>alert(1)</script>',
      tag('article', {}, '$& </style>'),
      'p { color: #000 }',
    );
    expect(text).toContain(
      '<title>&lt;script&gt;alert(1)&lt;/script&gt;</title><style>p { color: #000 }</style></head>',
    );
    expect(text).toContain('<article>$&amp; &lt;/style&gt;</article>');
    expect(text).not.toMatch(/<script|<link|src=|href=/);
  });
});
