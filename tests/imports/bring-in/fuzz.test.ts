import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { proposalOf } from '../../../src/imports/bring-in/combine';
import { readFiles } from '../../../src/imports/bring-in/read-file';
import { readContents } from '../../../src/survey/contents';
import { bringIn } from '../../../src/survey/edits/bring-in';
import { newSurvey } from '../../../src/survey/new-survey';
import { openSurvey } from '../../../src/survey/open';
import { saveSurvey } from '../../../src/survey/save';
import { osmGeoJson, osmXml, overpassGeom, overpassNodes } from '../fixtures/extract';
import { answers, field, fileOf, now } from '../fixtures/surroundings';
import { damagedText } from '../../support/damage';
import { csv, csvCommas, geojson, gpx, kmlLine, kmlTrack } from '../fixtures/tracks';
import { cases } from '../../support/thorough';

/** Pinned, so that a failure is the same tomorrow. */
const seed = 20261125;

const airfieldTable = `id,airport_ident,length_ft,width_ft,surface,closed,le_ident,le_latitude_deg,le_longitude_deg,le_elevation_ft,le_heading_degT,le_displaced_threshold_ft,he_ident,he_latitude_deg,he_longitude_deg,he_elevation_ft,he_heading_degT,he_displaced_threshold_ft
11,XXTO,6830,148,ASP,0,07,50.9295056,18.1678602,610,70,525,25,50.9359,18.1956776,623,250,
12,XXTO,1800,,GRE,1,18L,50.94,18.18,,,,36R,50.935,18.18,,,`;

const files: Readonly<Record<string, string>> = {
  'a.json': JSON.stringify(overpassGeom()),
  'b.json': JSON.stringify(overpassNodes()),
  'c.osm': osmXml(),
  'd.geojson': JSON.stringify(osmGeoJson()),
  'e.gpx': gpx(),
  'f.kml': kmlTrack(),
  'g.kml': kmlLine(),
  'h.geojson': geojson(),
  'i.csv': csv(),
  'j.csv': csvCommas(),
  'k.csv': airfieldTable,
};

describe('[I70] damaged files', () => {
  for (const [name, text] of Object.entries(files))
    it(`are read as far as they make sense, or refused in words: ${name}`, async () => {
      await fc.assert(
        fc.asyncProperty(damagedText(text), async (broken) => {
          const { sources, refused } = await readFiles([fileOf(name, broken)], {
            progress: () => undefined,
            now,
          });
          expect(sources.length + refused.length).toBe(1);
          for (const reason of refused) expect(reason.length).toBeGreaterThan(name.length + 10);
          for (const around of [field, { ...field, reference: null, elevation: null }]) {
            const proposal = proposalOf(sources, around, { ...answers, tieToRunway: true });
            const survey = bringIn(newSurvey({ reference: [18.1734, 50.9287] }), {
              features: proposal.candidates,
              credits: proposal.credits,
              site: proposal.site,
            });
            // All that comes in is whole: it is saved, opened and read without a doubt, and comes in no second time.
            const opened = openSurvey(saveSurvey(survey));
            if (!opened.ok) throw new Error(opened.reason);
            expect(opened.problems).toEqual([]);
            expect(readContents(opened.survey).problems).toEqual([]);
            const again = { features: proposal.candidates, credits: proposal.credits };
            expect(bringIn(opened.survey, again)).toBe(opened.survey);
          }
        }),
        { seed, numRuns: cases(60) },
      );
    });
});
