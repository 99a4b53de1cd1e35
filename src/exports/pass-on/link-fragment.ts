/** Characters of a fragment. Longer links are cut by some messengers. Common practice, no source. */
export const longestFragment = 8000;
/** Bytes of a survey's text out of a link. */
export const mostUnpacked = 2_000_000;

const version = 1;
const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** "#survey-1=..." in base64url (RFC 4648, section 5) without padding; null where it would be too long. */
export function linkFragment(packed: Uint8Array): string | null {
  const fragment = `#survey-${version}=${base64url(packed)}`;
  return fragment.length <= longestFragment ? fragment : null;
}

export type ReadFragment =
  { readonly is: 'survey'; readonly packed: Uint8Array } | { readonly is: 'newer' | 'broken' | 'too-long' };

/** What a fragment holds; null for one that is none of ours. */
export function readFragment(fragment: string): ReadFragment | null {
  if (!/^#survey-\d/.test(fragment)) return null;
  if (fragment.length > longestFragment) return { is: 'too-long' };
  const [, stated, text] = /^#survey-(\d{1,6})=(.*)$/.exec(fragment) ?? [];
  if (stated === undefined || text === undefined) return { is: 'broken' };
  if (Number(stated) > version) return { is: 'newer' };
  const packed = Number(stated) === version ? bytesOf(text) : null;
  return packed ? { is: 'survey', packed } : { is: 'broken' };
}

function base64url(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const [a, b = 0, c = 0] = bytes.subarray(i, i + 3);
    const bits = ((a ?? 0) << 16) | (b << 8) | c;
    const four = [18, 12, 6, 0].map((shift) => digits.charAt((bits >> shift) & 63)).join('');
    text += four.slice(0, Math.min(3, bytes.length - i) + 1);
  }
  return text;
}

/** Null where the text is no base64url. */
function bytesOf(text: string): Uint8Array | null {
  if (text.length === 0 || text.length % 4 === 1 || !/^[\w-]*$/.test(text)) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let bits = 0;
  let held = 0;
  let at = 0;
  for (const digit of text) {
    bits = ((bits << 6) | digits.indexOf(digit)) & 0xffff;
    held += 6;
    if (held < 8) continue;
    held -= 8;
    bytes[at++] = (bits >> held) & 0xff;
  }
  return bytes;
}
