/** A trip in words, ready to be printed. */
export interface TripSheet {
  readonly title: string;
  readonly days: readonly {
    /** "Saturday, 20 June 2026: Tolverby". */
    readonly heading: string;
    /** What is to be known before one goes, a sentence each. */
    readonly remarks: readonly string[];
    /** Time, place, what comes, what to take. */
    readonly rungs: readonly (readonly [time: string, place: string, path: string, lens: string])[];
  }[];
  readonly cautions: readonly string[];
  readonly credits: readonly string[];
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escaped = (text: string): string => text.replace(/[&<>"]/g, (mark) => escapes[mark] ?? mark);

const style = `
body { max-width: 46rem; margin: 1.5rem auto; padding: 0 1rem; font: 11pt/1.4 sans-serif; color: #000; background: #fff }
h1 { font-size: 16pt } h2 { font-size: 12.5pt; margin: 1.5em 0 .25em; border-top: 1px solid #000; padding-top: .5em }
table { width: 100%; border-collapse: collapse } th, td { padding: .25em .5em .25em 0; text-align: left; vertical-align: top; border-bottom: 1px solid #999 }
td:first-child { white-space: nowrap } section { break-inside: avoid } small { display: block; margin-top: .25em }
`;

/**
 * The days and fields of a trip as one page of HTML that prints by itself. It holds no script and fetches nothing. A day's
 * own field sheet is made from its survey; this page is what joins them.
 */
export function tripSheetPage({ title, days, cautions, credits }: TripSheet): string {
  const sections = days.map(
    ({ heading, remarks, rungs }) => `<section>
<h2>${escaped(heading)}</h2>
${remarks.map((remark) => `<p>${escaped(remark)}</p>`).join('\n')}
${rungs.length === 0 ? '' : table(rungs)}
</section>`,
  );
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escaped(title)}</title>
<style>${style}</style>
</head>
<body>
<h1>${escaped(title)}</h1>
${sections.join('\n')}
${cautions.map((text) => `<p><strong>${escaped(text)}</strong></p>`).join('\n')}
${credits.map((text) => `<small>${escaped(text)}</small>`).join('\n')}
</body>
</html>
`;
}

const table = (rungs: TripSheet['days'][number]['rungs']): string => `<table>
<thead><tr><th>When</th><th>Where</th><th>What comes</th><th>Take</th></tr></thead>
<tbody>
${rungs.map((rung) => `<tr>${rung.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`).join('\n')}
</tbody>
</table>`;
