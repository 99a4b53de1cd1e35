import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import { saveFile } from '../storage/files';
import { addMovements } from '../survey/edits/movements';
import { pickOne, tableFile, textOfTable } from './table-file';
import type { MovementFigures } from '../figures/movements/movement-figures';
import type { MovementLists, MovementLayout, MovementReading } from '../ports/movement-lists';

const listFile = tableFile('List of movements (CSV)');

export interface SurveyMovementsNeeds {
  readonly document: SurveyDocument;
  readonly derived: Pick<Derived, 'contents'> & { readonly day: Pick<Derived['day'], 'date' | 'timeZone'> };
}

/** Lists of movements: the part of the composition root that knows imports, exports and files. */
export class SurveyMovements implements MovementLists {
  readonly #document: SurveyDocument;
  readonly #derived: SurveyMovementsNeeds['derived'];

  constructor({ document, derived }: SurveyMovementsNeeds) {
    this.#document = document;
    this.#derived = derived;
  }

  pick(): Promise<File | null> {
    return pickOne(listFile);
  }
  textOf(file: File): Promise<string> {
    return textOfTable(file);
  }

  async layout(text: string): Promise<MovementLayout | null> {
    const { listLayout } = await import('../imports/movements/read-list');
    return listLayout(text, this.#derived.day.date);
  }

  async read(layout: MovementLayout): Promise<MovementReading> {
    const [{ readList, typesOf }, { typeNamed }, { nearestClass }] = await Promise.all([
      import('../imports/movements/read-list'),
      import('../figures/movements/find-types'),
      import('../figures/movements/nearest-class'),
    ]);
    const isKnown = (type: string) =>
      typeNamed(type) !== null || contents.subjects.some((s) => s.key.toUpperCase() === type.toUpperCase());
    const { contents } = this.#derived;
    const { date, timeZone } = this.#derived.day;
    const { icao, name } = contents.site;
    const home = [icao, name].filter((n) => n !== null && n !== '').map((n) => (n ?? '').toUpperCase());
    const reading = readList(layout, timeZone, date, home, contents.movements);
    const unknown = typesOf(reading).filter((type) => !isKnown(type));
    return {
      ...reading,
      unknown: unknown.map((type) => ({ type, nearest: nearestClass(type, contents.subjects) ?? '' })),
    };
  }

  add({ movements, unknown }: MovementReading, subjects: Readonly<Record<string, string>>): void {
    // What nobody chose stays unknown: a class is offered, never taken in silence.
    const chosen = (type: string) => (unknown.some((u) => u.type === type) ? subjects[type] || null : null);
    const added = movements.map((m) => ({ ...m, subject: m.subject ?? chosen(m.type) }));
    const present = this.#derived.contents.movements;
    this.#document.perform('add movements', (s) => addMovements(s, present, added));
  }

  async type(line: string, everyDay: boolean): Promise<string | null> {
    const [{ readTypedMovement }, { typeHeard }] = await Promise.all([
      import('../imports/movements/typed-movement'),
      import('../figures/movements/type-heard'),
    ]);
    const { contents } = this.#derived;
    const { date } = this.#derived.day;
    const read = readTypedMovement(line, everyDay ? null : date, typeHeard);
    if (!read.ok) return read.reason;
    const before = this.#document.survey;
    this.#document.perform('add a movement', (s) => addMovements(s, contents.movements, [read.movement]));
    return this.#document.survey === before ? 'That one is in the list already.' : null;
  }

  async save(figures: readonly MovementFigures[]): Promise<void> {
    const { movementsText } = await import('../exports/movements');
    const { date, timeZone } = this.#derived.day;
    await saveFile(movementsText(figures, timeZone), `movements-${date}.csv`, listFile, null);
  }
}
