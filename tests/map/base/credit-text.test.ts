import { describe, expect, test } from 'vitest';
import { creditText, joinedCredits } from '../../../src/map/base/credit-text';

describe('a credit that comes with map data', () => {
  test('[M7] is text with links, never HTML', () => {
    expect(
      creditText(
        '<a href="https://example.org/a" onclick="x()">&copy; A &amp; B</a> | <b>Some&nbsp;office</b> <a href=\'javascript:alert(1)\'>C</a><img src=x onerror=alert(1)>',
      ),
    ).toEqual([
      { text: '© A & B', href: 'https://example.org/a' },
      { text: '| Some office', href: null },
      { text: 'C', href: null },
    ]);
  });
  test('[M7] shows markup that was encoded as the letters it is', () => {
    expect(creditText('&lt;script&gt;x&#60;/script&#x3e;')).toEqual([
      { text: '<script>x</script>', href: null },
    ]);
  });
  test.each(['', '   ', '<p></p>', ' | '])('[M7] of nothing is nothing: "%s"', (html) => {
    expect(creditText(html)).toEqual([]);
  });
  test('[M7] is said once', () => {
    const a = { text: '© A', href: null };
    expect(
      joinedCredits([
        [a],
        [
          { ...a, href: 'https://a.example.org' },
          { text: 'B', href: null },
        ],
      ]),
    ).toEqual([a, { text: 'B', href: null }]);
  });
});
