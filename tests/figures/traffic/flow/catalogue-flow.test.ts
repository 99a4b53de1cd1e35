import { expect, test } from 'vitest';
import { groundLine } from '../../../../src/figures/geometry/earth';
import { chooseFlow } from '../../../../src/figures/traffic/flow/choose-flow';
import { flowRules } from '../../../../src/figures/traffic/flow/flow-for';
import { surfaceOf } from '../../../../src/figures/traffic/surface';
import { windComponents } from '../../../../src/figures/traffic/wind/components';
import { isLocated, type LocatedRunway } from '../../../../src/imports/catalogue/doubts';
import { surveyFromAirfield } from '../../../../src/imports/catalogue/survey-from-airfield';
import type { RunwayFlag } from '../../../../src/imports/catalogue/types';
import { readContents } from '../../../../src/survey/contents';
import { everyAirfield, realCatalogue, type WholeAirfield } from '../../../support/catalogue';
import { thorough } from '../../../support/thorough';

const lengthOf = ({ ends: [a, b] }: LocatedRunway) => groundLine(a.position, b.position);

/** Data that are wrong about where a runway lies; a designator that has moved on with the magnetic pole does no harm. */
const isGrave = ({ kind }: RunwayFlag) => kind !== 'designator-off' && kind !== 'at-thresholds';

/** The longest runway (not known to be unpaved) and the shortest strip that crosses it, at fields whose data are clear. */
function longAndShort({ kind, runways }: WholeAirfield) {
  if (kind !== 'large-airport' && kind !== 'medium-airport') return null;
  const located = runways.filter(isLocated);
  if (located.length < 2 || located.some(({ flags }) => flags.some(isGrave))) return null;
  const lines = located.map((r) => ({ surface: surfaceOf(r.surface), ...lengthOf(r) }));
  const [longest, ...others] = lines.toSorted((a, b) => b.distance - a.distance);
  const shortest = others.at(-1);
  if (!longest || !shortest || longest.surface === 'unpaved' || longest.surface === 'water') return null;
  if (longest.azimuth === null || shortest.azimuth === null) return null;
  const turned = Math.abs(longest.azimuth - shortest.azimuth) % 180;
  const angle = Math.min(turned, 180 - turned);
  const short = shortest.distance < 0.6 * longest.distance && shortest.distance < 1300;
  return longest.distance >= 2200 && short && angle > 30 ? { longest, shortest } : null;
}

test('[F654] at fields with a short cross strip, winds within the main runway’s limits never send an airliner there', async () => {
  const fields = everyAirfield(await realCatalogue()).filter((field) => longAndShort(field) !== null);
  expect(fields.length).toBeGreaterThanOrEqual(20);
  let [asked, within, none] = [0, 0, 0];
  for (const field of fields) {
    let id = 0;
    const { survey } = surveyFromAirfield(field, () => `id${id++}`, 'UTC');
    for (const key of ['A320', 'AT76', 'B738']) {
      const all = readContents(survey);
      const subject = all.subjects.find((s) => s.key === key);
      if (!subject) throw new Error(`expected ${key} among the subjects`);
      const contents = { ...all, subject };
      const rules = flowRules(contents);
      const mainLength = Math.max(...rules.ends.map((e) => e.length));
      const isStrip = (id: string) =>
        rules.ends.some((e) => e.ref.runway === id && e.length < 0.6 * mainLength && e.length < 1300);
      const main = rules.ends.filter((e) => e.length === mainLength);
      for (let from = 10; from <= 360; from += thorough ? 10 : 30)
        for (const speedKt of [0, 4, 8, 15, 24]) {
          const wind = { from: speedKt === 0 ? null : from, speedKt, gustKt: null, varies: null };
          const choice = chooseFlow(rules, wind, 0);
          asked++;
          if (choice.arrivals.length === 0) none++;
          const suits = main.some((e) => {
            const parts = windComponents(wind.from, speedKt, e.bearingDeg);
            return !parts || (parts.headwindKt >= -5 && Math.abs(parts.crosswindKt) <= 20);
          });
          if (!suits) continue;
          within++;
          const where = `${field.icao ?? field.name} ${key} ${from}/${speedKt}: ${choice.reason}`;
          expect(
            choice.arrivals.filter(({ runway }) => isStrip(runway)),
            where,
          ).toEqual([]);
          expect(
            choice.departures.filter(({ runway }) => isStrip(runway)),
            where,
          ).toEqual([]);
        }
    }
  }
  console.log(
    `catalogue: ${fields.length} fields with a short cross strip, ${asked} winds and types, ${within} within limits, ${none} without an end`,
  );
  expect(none).toBeLessThan(asked / 10);
}, 120_000);
