import { DOMParser } from '@xmldom/xmldom';
import { describe, expect, it } from 'vitest';
import { tripSheetPage } from '../../../src/exports/trip/trip-sheet';

describe('[E80] the sheet of a trip', () => {
  const page = tripSheetPage({
    title: 'Trip: <script>alert(1)</script> & Co',
    days: [
      {
        heading: 'Saturday: "Sarn"',
        remarks: ['Leave by 06:10.'],
        rungs: [['07:15–10:40', 'Mill <b>Lane</b>', '25 arrival', '300–400 mm']],
      },
      { heading: 'Sunday: Tolverby', remarks: [], rungs: [] },
    ],
    cautions: ['Not for navigation.'],
    credits: ['Data of A, ODbL 1.0'],
  });

  it('holds every day, rung, caution and credit, and what files say is never markup', () => {
    const body = page.slice(page.indexOf('<body>'), page.indexOf('</html>'));
    const read = new DOMParser().parseFromString(body, 'text/xml');
    const texts = (tag: string) =>
      Array.from(read.getElementsByTagName(tag)).map((element) => element.textContent);
    expect(texts('h1')).toEqual(['Trip: <script>alert(1)</script> & Co']);
    expect(texts('h2')).toEqual(['Saturday: "Sarn"', 'Sunday: Tolverby']);
    expect(texts('td')).toEqual(['07:15–10:40', 'Mill <b>Lane</b>', '25 arrival', '300–400 mm']);
    expect(texts('strong')).toEqual(['Not for navigation.']);
    expect(texts('small')).toEqual(['Data of A, ODbL 1.0']);
  });
});
