import { catalogueCredit } from '../imports/catalogue/credit';
import { isLocated } from '../imports/catalogue/doubts';
import { loadCatalogue } from '../imports/catalogue/load';
import { searchCatalogue } from '../imports/catalogue/search';
import { surveyFromAirfield } from '../imports/catalogue/survey-from-airfield';
import type { Airfield, Catalogue } from '../imports/catalogue/types';
import { timeZoneAt } from '../imports/time-zone';
import { chosenMoments } from '../figures/light/day-light';
import { sunTimes } from '../figures/light/sun-times';
import type { Position, Survey } from '../survey/document';
import { setMoments } from '../survey/edits/set-members';
import { freshId } from '../survey/ids';
import { newSurvey } from '../survey/new-survey';
import { clockAt, dateAt, dayOf } from '../time/local-time';
import type { AirfieldMatch, Airfields } from '../ports/airfields';
import type { Files } from '../ports/files';

/** As many lines as are still looked through; further letters narrow better. */
const linesShown = 40;

export interface AirfieldNeeds {
  readonly files: Pick<Files, 'start'>;
  readonly now: () => number;
  readonly url?: string;
}

/** The part of the composition root that knows the airfield catalogue and where time zones lie. */
export class AirfieldCatalogue implements Airfields {
  readonly credit = catalogueCredit;
  readonly #files: Pick<Files, 'start'>;
  readonly #now: () => number;
  readonly #url: string;
  #catalogue: Catalogue | null = null;

  constructor({ files, now, url = './catalogue.json' }: AirfieldNeeds) {
    this.#files = files;
    this.#now = now;
    this.#url = url;
  }

  async load(): Promise<string | null> {
    if (this.#catalogue) return null;
    const result = await loadCatalogue(this.#url);
    if (!result.ok) return result.reason;
    this.#catalogue = result.catalogue;
    return null;
  }

  search(text: string): readonly AirfieldMatch[] {
    if (!this.#catalogue) return [];
    return searchCatalogue(this.#catalogue, text, linesShown).map(({ airfield }) => matchOf(airfield));
  }

  async start({ key }: AirfieldMatch): Promise<void> {
    const airfield = this.#catalogue?.airfieldAt(key);
    if (!airfield) throw new Error(`expected an airfield of the catalogue, got ${key}`);
    await this.#files.start(async () => {
      const { timeZone, guessed } = await timeZoneAt(airfield.position);
      const { survey, doubts } = surveyFromAirfield(airfield, newIds(), timeZone);
      const notice = [...doubts, ...(guessed ? [guessedZone] : [])].join(' ');
      return { survey: this.#lit(survey, airfield.position, timeZone), notice: notice || null };
    });
  }

  async startEmpty(name: string, position: Position): Promise<void> {
    await this.#files.start(async () => {
      const { timeZone, guessed } = await timeZoneAt(position);
      const survey = newSurvey({ name, timeZone, reference: position });
      return {
        survey: this.#lit(survey, position, timeZone),
        notice: `A new survey. Draw its first runway: click both ends.${guessed ? ` ${guessedZone}` : ''}`,
        life: { holds: hasNoRunway, then: guessed ? guessedZone : null },
      };
    });
  }

  #lit(survey: Survey, position: Position, timeZone: string): Survey {
    return lightWorthSeeing(survey, position, timeZone, this.#now());
  }
}

/** Moments A and B an hour after today's sunrise and an hour before its sunset, where the sun rises at all. */
function lightWorthSeeing(survey: Survey, position: Position, timeZone: string, now: number): Survey {
  const day = dayOf(dateAt(now, timeZone), timeZone);
  const { afterSunrise, beforeSunset } = chosenMoments(sunTimes(position, day.from, day.to), null);
  if (afterSunrise === null || beforeSunset === null) return survey;
  return setMoments(survey, { a: clockAt(afterSunrise, timeZone), b: clockAt(beforeSunset, timeZone) });
}

const hasNoRunway = ({ features }: Survey): boolean =>
  !features.some(({ properties }) => properties?.['kind'] === 'runway');

const guessedZone =
  'The time zone is guessed from the longitude: set it in the site panel, where nothing is selected.';

function newIds(): () => string {
  const taken = new Set<string>();
  return () => {
    const id = freshId(taken);
    taken.add(id);
    return id;
  };
}

const countries = new Intl.DisplayNames('en', { type: 'region', fallback: 'code' });

function matchOf(airfield: Airfield): AirfieldMatch {
  const codes = [airfield.icao, airfield.iata, ...airfield.localCodes].filter((code) => code !== null);
  const [code = '', ...otherCodes] = new Set(codes);
  const country = /^[A-Z]{2}$/.test(airfield.country) ? countries.of(airfield.country) : airfield.country;
  return {
    key: airfield.index,
    code,
    otherCodes,
    name: airfield.name,
    place: [airfield.town, country].filter(Boolean).join(', '),
    kind: airfield.kind.endsWith('airport') ? '' : airfield.kind.replace('-', ' '),
    locatedRunways: airfield.runways.filter(isLocated).length,
    runways: airfield.runways.length,
  };
}
