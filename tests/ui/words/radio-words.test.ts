import { describe, expect, it } from 'vitest';
import { contentsOf, runwayFeature } from '../../support/contents';
import { spokenEnd, tellingWords } from '../../../src/ui/words/radio-words';

describe('what a listener knows an end by', () => {
  it('[U966] says designators digit by digit, with their side (ICAO Doc 4444, 12.3)', () => {
    expect(spokenEnd('25L')).toBe('two five left');
    expect(spokenEnd('09')).toBe('zero niner');
    expect(spokenEnd('36C')).toBe('three six centre');
    expect(spokenEnd('')).toBe('');
  });

  it('[U967] names the end that lands and the end that departs', () => {
    const contents = contentsOf([
      runwayFeature('r', [8, 47], [8.02, 47], [{ designator: '09' }, { designator: '27' }]),
    ]);
    const words = tellingWords(
      { arrivals: [{ runway: 'r', end: 0 }], departures: [{ runway: 'r', end: 1 }] },
      contents,
    ).join('\n');
    expect(words).toContain('cleared to land, runway zero niner');
    expect(words).toContain('runway two seven, cleared for take-off');
    expect(tellingWords({ arrivals: [], departures: [] }, contents)).toHaveLength(5);
  });
});
