import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mailLink } from '../../../src/exports/request/mail-link';
import { mapLinks, requestLetter, type RequestNeeds } from '../../../src/exports/request/request-letter';

const needs: RequestNeeds = {
  field: 'Tolverby',
  day: 'Sunday, 21 June 2026',
  office: 'the airfield office',
  places: [
    {
      name: 'Field edge at Pallin Farm',
      position: [18.1669245, 50.9388956],
      coordinates: '50.9388956, 18.1669245',
      times: ['16:40–21:05'],
      paths: ['14 arrival'],
    },
  ],
  own: { name: 'A. Tester', phone: '0123 456', vehicle: 'grey estate car, X 1', home: '' },
  brings: 'a camera with a long lens',
};

describe('a request to the office', () => {
  it('[E110] says who, when, exactly where with a map, what for and with what vehicle', () => {
    const { subject, body } = requestLetter(needs);
    expect(subject).toBe('Request: photographs of aircraft at Tolverby, Sunday, 21 June 2026');
    for (const words of [
      'To the airfield office',
      'Field edge at Pallin Farm, 16:40–21:05',
      '50.9388956, 18.1669245',
      'https://www.openstreetmap.org/?mlat=50.93890&mlon=18.16692#map=17/50.93890/18.16692',
      'To photograph: 14 arrival',
      'A. Tester',
      '0123 456',
      'grey estate car, X 1',
    ])
      expect(body).toContain(words);
    expect(body).not.toContain('Address:');
  });

  it('[E111] without own details it asks all the same, and holds no empty line of them', () => {
    const { body } = requestLetter({ ...needs, own: { name: '', phone: '', vehicle: '', home: '' } });
    expect(body).not.toMatch(/About me|Name:|Vehicle:/);
    expect(body.endsWith('With kind regards')).toBe(true);
  });

  it('[E112] a place is a geo: address as well (RFC 5870: latitude first), south and west too', () => {
    expect(mapLinks([-58.41587, -34.55922]).geo).toBe('geo:-34.55922,-58.41587');
  });

  it('[E113] a mail carries the text through encoding, lines as CRLF (RFC 6068), whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (typed) => {
        const link = mailLink('office@example.org', { subject: 'a & b', body: typed });
        const url = new URL(link);
        expect(url.pathname).toBe('office@example.org');
        expect(url.searchParams.get('subject')).toBe('a & b');
        const body = decodeURIComponent(/&body=(.*)$/.exec(link)?.[1] ?? '-');
        const clean = typed.replace(/\p{Surrogate}/gu, '\ufffd').replace(/\r?\n/g, '\r\n');
        expect(body).toBe(clean);
        expect(link).toMatch(/^[\x21-\x7e]+$/);
      }),
    );
  });
});
