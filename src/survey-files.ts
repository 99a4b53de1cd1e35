import { archiveMediaType } from './storage/archive';
import type { FileKind } from './storage/files';
import type { SurveyFacts } from './storage/records';
import { readContents } from './survey/contents';
import type { Survey } from './survey/document';
import { surveyExtension, surveyMediaType } from './survey/save';

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
export function fileName(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain.slice(0, 60).toLowerCase() || 'survey'}${surveyExtension}`;
}

/** What the list says of a survey. */
export function factsOf(survey: Survey): SurveyFacts {
  const { site, moments, spots } = readContents(survey);
  return { place: site.icao ?? '', date: moments.date, spots: spots.length };
}

export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
