import type { RecordLayout } from '../imports/wind-record/read-record';
import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import { pagePauses, sliced } from '../state/in-slices';
import { Turns } from '../state/turns';
import { setWindRecord } from '../survey/edits/set-wind-record';
import { pickOne, tableFile, textOfTable } from './table-file';
import type { PastWinds, PastWindsLayout, PastWindsRead } from '../ports/past-winds';

const windFile = tableFile('Table of past winds (CSV)');

export interface WindHistoryNeeds {
  readonly document: SurveyDocument;
  readonly derived: { readonly day: Pick<Derived['day'], 'timeZone'> };
}

/** Tables of past winds: the part of the composition root that knows imports and files. */
export class WindHistory implements PastWinds {
  readonly #document: SurveyDocument;
  readonly #derived: WindHistoryNeeds['derived'];
  readonly #turns = new Turns();

  constructor({ document, derived }: WindHistoryNeeds) {
    this.#document = document;
    this.#derived = derived;
  }

  pick(): Promise<File | null> {
    return pickOne(windFile);
  }

  async layout(file: File): Promise<PastWindsLayout | null> {
    const { recordLayout } = await import('../imports/wind-record/read-record');
    const text = await textOfTable(file);
    const layout = recordLayout(text);
    return layout && { ...layout, name: file.name, text };
  }

  async read(layout: PastWindsLayout, progress: (share: number) => void): Promise<PastWindsRead> {
    const { text, name, unit, ...rest } = layout;
    if (unit === null) throw new Error('expected a unit of speed');
    const isLast = this.#turns.begin();
    const { id } = this.#document;
    const { readRecord } = await import('../imports/wind-record/read-record');
    const steps = readRecord(
      text,
      { ...rest, unit } satisfies RecordLayout,
      this.#derived.day.timeZone,
      name,
    );
    const { record, ...read } = await sliced(steps, pagePauses, progress);
    // Another survey was opened, or another table brought in, while a long one was read.
    if (record.observations > 0 && isLast() && this.#document.id === id)
      this.#document.perform('bring in a wind record', (s) => setWindRecord(s, record));
    return { ...read, observations: record.observations };
  }
}
