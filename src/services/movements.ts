import { typeNamed } from '../figures/movements/find-types';
import { nearestClass } from '../figures/movements/nearest-class';
import type { Derived } from '../state/derived.svelte';
import type { SurveyDocument } from '../state/document.svelte';
import { saveFile } from '../storage/files';
import { addMovements } from '../survey/edits/movements';
import { pickOne, tableFile, textOfTable } from './table-file';
import type { MovementFigures } from '../figures/movements/movement-figures';
import type { MovementLists, MovementPlan, MovementReading } from '../ports/movement-lists';

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

  async plan(text: string): Promise<MovementPlan | null> {
    const { planList } = await import('../imports/movements/read-list');
    return planList(text, this.#derived.day.date);
  }

  async read(plan: MovementPlan): Promise<MovementReading> {
    const { readList, typesOf } = await import('../imports/movements/read-list');
    const { contents } = this.#derived;
    const { date, timeZone } = this.#derived.day;
    const { icao, name } = contents.site;
    const home = [icao, name].filter((n) => n !== null && n !== '').map((n) => (n ?? '').toUpperCase());
    const reading = readList(plan, timeZone, date, home, contents.movements);
    const unknown = typesOf(reading).filter((type) => !this.#isKnown(type));
    return {
      ...reading,
      unknown: unknown.map((type) => ({ type, nearest: nearestClass(type, contents.subjects) ?? '' })),
    };
  }

  add({ movements, unknown }: MovementReading, subjects: Readonly<Record<string, string>>): void {
    const chosen = (type: string) => {
      const known = unknown.find((u) => u.type === type);
      return known ? (subjects[type] ?? known.nearest) || null : null;
    };
    const added = movements.map((m) => ({ ...m, subject: m.subject ?? chosen(m.type) }));
    const present = this.#derived.contents.movements;
    this.#document.perform('add movements', (s) => addMovements(s, present, added));
  }

  async type(line: string, everyDay: boolean): Promise<string | null> {
    const { readTypedMovement } = await import('../imports/movements/typed-movement');
    const { contents } = this.#derived;
    const { date } = this.#derived.day;
    const read = readTypedMovement(line, everyDay ? null : date);
    if (!read.ok) return read.reason;
    const { type } = read.movement;
    const subject = type === '' || this.#isKnown(type) ? null : nearestClass(type, contents.subjects);
    const before = this.#document.survey;
    this.#document.perform('add a movement', (s) =>
      addMovements(s, contents.movements, [{ ...read.movement, subject }]),
    );
    return this.#document.survey === before ? 'That one is in the list already.' : null;
  }

  #isKnown(type: string): boolean {
    const own = this.#derived.contents.subjects.some((s) => s.key.toUpperCase() === type.toUpperCase());
    return own || typeNamed(type) !== null;
  }

  async save(figures: readonly MovementFigures[]): Promise<void> {
    const { movementsText } = await import('../exports/movements');
    const { date, timeZone } = this.#derived.day;
    await saveFile(movementsText(figures, timeZone), `movements-${date}.csv`, listFile, null);
  }
}
