import { gpx, kml } from '@tmcw/togeojson';
import { DOMParser, ParseError, type Document } from '@xmldom/xmldom';
import type { Json } from '../../survey/json';
import { tracksOfFeatures } from './track-geojson';
import type { TracksRead } from './track';

export type TracksReading =
  { readonly ok: true; readonly read: TracksRead } | { readonly ok: false; readonly reason: string };

/** A GPX or KML file: recorded flights and waypoints. The only file that knows these two packages. */
export function readTrackXml(text: string): TracksReading {
  const parsed = parsedXml(text);
  if (typeof parsed === 'string') return { ok: false, reason: parsed };
  const root = parsed.documentElement?.localName ?? '';
  if (root !== 'gpx' && root !== 'kml')
    return {
      ok: false,
      reason: `The file begins with <${root.slice(0, 40)}>; <gpx>, <kml> or <osm> was expected.`,
    };
  // What the converter returns is plain JSON.
  const { features } = (root === 'gpx' ? gpx(parsed) : kml(parsed)) as unknown as {
    readonly features: readonly Json[];
  };
  const read = tracksOfFeatures(features, 'm');
  const remarks = root === 'kml' ? modeRemarks(text) : [];
  return { ok: true, read: { ...read, remarks: [...read.remarks, ...remarks] } };
}

/** The document, or what is wrong with it. A document type with entities of its own is refused: none needs one. */
function parsedXml(text: string): Document | string {
  if (/<!ENTITY/i.test(text.slice(0, 100_000)))
    return 'The file defines entities of its own, which no flight or waypoint needs. Remove its <!DOCTYPE ...>.';
  try {
    const errors: string[] = [];
    const document = new DOMParser({
      onError: (level, message) => {
        if (level !== 'warning') errors.push(message);
      },
    }).parseFromString(text.replace(/^\uFEFF/, ''), 'text/xml');
    return document;
  } catch (error) {
    if (!(error instanceof ParseError)) throw error;
    const { lineNumber, columnNumber } = (error.locator ?? {}) as Partial<Record<string, number>>;
    const place = lineNumber === undefined ? '' : ` At line ${lineNumber}, column ${columnNumber ?? 1}:`;
    return `The file is not XML.${place} ${error.message.split('\n')[0] ?? ''}`;
  }
}

function modeRemarks(text: string): string[] {
  const modes = new Set([...text.matchAll(/<(?:\w+:)?altitudeMode>\s*(\w+)/g)].map((m) => m[1]));
  if (!modes.has('relativeToGround')) return [];
  return [
    'Some altitudes of this file are above the ground, not above sea level. Tie the flight to the runway, or leave it out.',
  ];
}
