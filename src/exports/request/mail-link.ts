/** An address that opens a new mail (RFC 6068): everything percent-encoded, lines ended by CR and LF. */
export function mailLink(
  to: string,
  { subject, body }: { readonly subject: string; readonly body: string },
): string {
  const encoded = (text: string) => encodeURIComponent(wellFormed(text).replace(/\r?\n/g, '\r\n'));
  return `mailto:${encoded(to).replace(/%40/g, '@')}?subject=${encoded(subject)}&body=${encoded(body)}`;
}

/** Half a surrogate pair cannot be encoded. */
const wellFormed = (text: string): string => text.replace(/\p{Surrogate}/gu, '\ufffd');
