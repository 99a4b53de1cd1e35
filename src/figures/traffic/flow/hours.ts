/** Minutes since midnight, from the first up to the second; over midnight where the second is not later. */
export type Span = readonly [from: number, to: number];

const minutes = (hour: string, minute: string | undefined): number => {
  const sum = Number(hour) * 60 + Number(minute ?? 0);
  return Number(minute ?? 0) < 60 && sum <= 24 * 60 ? sum : NaN;
};

const time = String.raw`(\d{1,2})[:.h]?(\d{2})?`;
const span = new RegExp(String.raw`^${time}\s*(?:-|–|to|until|till)\s*${time}$`, 'i');

/**
 * Hours in which a configuration may be used, "06:00-22:00" or "0600 to 0900, 17-22:30"; an empty list means
 * always, null that the text says something else.
 */
export function readHours(text: string | null): readonly Span[] | null {
  const parts = (text ?? '').split(/[,;]|\band\b/).map((part) => part.trim());
  const spans: Span[] = [];
  for (const part of parts.filter((p) => p !== '')) {
    const [whole, h1 = '', m1, h2 = '', m2] = span.exec(part) ?? [];
    const [from, to] = [minutes(h1, m1), minutes(h2, m2)];
    if (whole === undefined || Number.isNaN(from) || Number.isNaN(to)) return null;
    spans.push([from, to]);
  }
  return spans;
}

/** Whether a minute of the day lies in one of the spans; in an empty list it does. */
export const withinHours = (spans: readonly Span[], minute: number): boolean =>
  spans.length === 0 ||
  spans.some(([from, to]) => (from < to ? minute >= from && minute < to : minute >= from || minute < to));
