import { archiveMediaType } from '../storage/archive-media-type';
import type { FileKind } from '../storage/files';
import type { SurveyFacts } from '../storage/records';
import { readContents } from '../survey/contents';
import type { Position, Survey } from '../survey/document';
import { isObject } from '../survey/json';
import { surveyExtension, surveyMediaType } from '../survey/save';
import { formatCoordinates } from '../units/coordinates';
import { fileStem } from '../units/file-stem';

export const surveyFile: FileKind = {
  mediaType: surveyMediaType,
  extensions: [surveyExtension, '.json'],
  description: 'Sunside survey (GeoJSON)',
};

export const archiveFile: FileKind = {
  mediaType: archiveMediaType,
  extensions: ['.zip'],
  description: 'Archive of surveys (zip)',
};

/** A file name that every system takes, from a survey's name. */
export const fileName = (name: string): string => `${fileStem(name, 'survey')}${surveyExtension}`;

/** An empty survey that names no place has its reference at 0, 0. */
const isSomewhere = ([lng, lat]: Position): boolean => lng !== 0 || lat !== 0;

/** To about 100 m. */
const roughly = ([lng, lat]: Position): string =>
  formatCoordinates([Number(lng.toFixed(3)), Number(lat.toFixed(3))], 'decimal');

/** What the list says of a survey. */
export function factsOf(survey: Survey): SurveyFacts {
  const { site, moments, spots } = readContents(survey);
  // Without a name or a code nothing else would tell it from the next one.
  const whereItIs = site.name === '' && isSomewhere(site.reference) ? roughly(site.reference) : '';
  const at = isSomewhere(site.reference) ? site.reference : null;
  return { place: site.icao || whereItIs, date: moments.date, spots: spots.length, at };
}

/** Name and facts of a survey, as far as they can be read: keeping a survey must not depend on what it says. */
export function aboutSurvey(survey: Survey): { readonly name: string; readonly facts: SurveyFacts } {
  try {
    return { name: readContents(survey).site.name, facts: factsOf(survey) };
  } catch {
    const site = survey.sunside['site'];
    const name = isObject(site) && typeof site['name'] === 'string' ? site['name'] : '';
    return { name, facts: { place: '', date: null, spots: 0, at: null } };
  }
}

export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
