import { tripSheetPage, type TripSheet } from '../exports/trip/trip-sheet';
import { groundLine } from '../figures/geometry/earth';
import { readTypedWind } from '../figures/traffic/wind/typed-wind';
import { goodPasses } from '../figures/trip/field-day';
import { rankFields } from '../figures/trip/rank-fields';
import { messageOf } from '../keeping/survey-files';
import type { CompareAsked, Comparing, FoundDay, Trips } from '../ports/trips';
import type { Ways } from '../state/ways.svelte';
import type { Autosave } from '../storage/autosave';
import { saveFile, type FileKind } from '../storage/files';
import { fileStem } from '../units/file-stem';
import type { TripAnswer, TripRequest } from './trip-messages';

/** A worker, as far as it is needed here: a double stands in for it in tests. */
export interface TripHand {
  postMessage(request: TripRequest): void;
  onmessage: ((event: { readonly data: TripAnswer }) => void) | null;
  onerror: ((event: unknown) => void) | null;
  terminate(): void;
}

export interface TripNeeds {
  readonly store: Pick<Autosave, 'read'>;
  readonly ways: Pick<Ways, 'from' | 'minutesFor' | 'trafficOf'>;
  readonly makeHand: () => TripHand;
}

const pageFile: FileKind = { mediaType: 'text/html', extensions: ['.html'], description: 'Page (HTML)' };

/** Kept surveys side by side. One at a time is read and handed to a worker, so that five hundred never lie in memory. */
export class FieldTrips implements Trips {
  readonly #needs: TripNeeds;
  readonly readWind = readTypedWind;

  constructor(needs: TripNeeds) {
    this.#needs = needs;
  }

  compare(asked: CompareAsked, told: (found: FoundDay) => void): Comparing {
    const hand = this.#needs.makeHand();
    let cancel = () => undefined as void;
    const cancelled = new Promise<null>((resolve) => (cancel = () => resolve(null)));
    let over = false;
    const all = this.#all(asked, hand, (found) => {
      if (!over) told(found);
    });
    const done = Promise.race([all, cancelled]).finally(() => {
      over = true;
      hand.terminate();
    });
    return { done, cancel: () => cancel() };
  }

  async #all(
    { surveys, dates, wind }: CompareAsked,
    hand: TripHand,
    told: (found: FoundDay) => void,
  ): Promise<readonly string[]> {
    const refused: string[] = [];
    for (const { id, name } of surveys) {
      const stored = await this.#needs.store.read(id);
      if (!stored) {
        refused.push(`${name} is not kept on this device any more.`);
        continue;
      }
      const request = { text: stored.text, asked: dates.map((date) => ({ date, wind, perHour: null })) };
      const reason = await one(hand, request, ({ day, credits }) =>
        told({ survey: id, name, day, credits, way: null }),
      );
      if (reason !== null) refused.push(`${name}: ${reason}`);
    }
    return refused;
  }

  rank(found: readonly FoundDay[]): {
    readonly ranked: readonly FoundDay[];
    readonly unranked: readonly FoundDay[];
  } {
    const now = found.map((field) => this.#asOfNow(field));
    const { ranked, unranked } = rankFields(
      now.map((field) => ({ day: field.day, way: field.way?.minutes ?? null, field })),
    );
    return { ranked: ranked.map(({ field }) => field), unranked: unranked.map(({ field }) => field) };
  }

  async saveSheet(sheet: TripSheet): Promise<string | null> {
    try {
      await saveFile(tripSheetPage(sheet), `${fileStem(sheet.title, 'trip')}.html`, pageFile, null);
      return null;
    } catch (error) {
      return `The sheet could not be saved: ${messageOf(error)}.`;
    }
  }

  /** With what is typed of the traffic by now, and the way from where one starts by now. */
  #asOfNow(field: FoundDay): FoundDay {
    const { survey, day } = field;
    const typed = this.#needs.ways.trafficOf(survey);
    const traffic = typed === null ? day.traffic : { perHour: typed, from: 'typed' as const };
    const passes = goodPasses(day.goodMinutes, traffic);
    return { ...field, day: { ...day, traffic, goodPasses: passes }, way: this.#wayTo(day.position) };
  }

  #wayTo(position: FoundDay['day']['position']): FoundDay['way'] {
    const { ways } = this.#needs;
    if (!ways.from) return null;
    const { distance } = groundLine(ways.from.position, position);
    return { distance, minutes: ways.minutesFor(distance) };
  }
}

/** Null once all days of a survey are told, or why there are none. */
function one(
  hand: TripHand,
  request: TripRequest,
  told: (day: Extract<TripAnswer, { part: 'day' }>) => void,
): Promise<string | null> {
  return new Promise((resolve) => {
    hand.onmessage = ({ data }) => {
      if (data.part === 'day') told(data);
      else resolve(data.part === 'end' ? null : data.reason);
    };
    hand.onerror = () => resolve('the browser could not compute it: it may be too large.');
    hand.postMessage(request);
  });
}
