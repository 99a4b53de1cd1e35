import { describe, expect, test } from 'vitest';
import { readContents } from '../../../src/survey/contents';
import { addConfiguration } from '../../../src/survey/edits/add-configuration';
import { changeConfiguration } from '../../../src/survey/edits/change-configuration';
import { deleteConfiguration } from '../../../src/survey/edits/delete-configuration';
import { moveConfiguration } from '../../../src/survey/edits/move-configuration';
import { setCalm } from '../../../src/survey/edits/set-calm';
import { followWind, setWeather } from '../../../src/survey/edits/set-weather';
import { saveSurvey } from '../../../src/survey/save';
import { opened, surveyText } from '../../support/contents';

const end = { runway: 'r', end: 1 as const };
const start = opened(
  surveyText([], {
    flow: {
      calm: 'West',
      note: 'kept',
      configurations: [
        { name: 'West', arrivals: [end], mine: 1 },
        { name: 'East', departures: [end] },
      ],
    },
  }),
);
const names = (survey: typeof start) => readContents(survey).configurations.map((c) => c.name);
const calm = (survey: typeof start) => (survey.sunside['flow'] as { calm?: string }).calm;

describe('edits of the flow and the wind', () => {
  test('[F234] configurations are added, changed, moved and deleted; what else stands there stays', () => {
    const added = addConfiguration(start, 'West', { arrivals: [end], departures: [] });
    expect(names(added)).toEqual(['West', 'East', 'West 2']);
    const moved = moveConfiguration(added, 1, -1);
    expect(names(moved)).toEqual(['East', 'West', 'West 2']);
    expect(moveConfiguration(added, 0, -1)).toBe(added);
    const changed = changeConfiguration(moved, 1, { hours: '06:00-22:00', maxTailwindKt: 8 });
    expect(readContents(changed).configurations[1]).toMatchObject({ hours: '06:00-22:00', maxTailwindKt: 8 });
    expect(changed.sunside['flow']).toMatchObject({ note: 'kept', configurations: [{}, { mine: 1 }, {}] });
    expect(names(deleteConfiguration(changed, 0))).toEqual(['West', 'West 2']);
    expect(changed.features).toBe(start.features);
  });

  test('[F235] the calm-wind choice goes with its configuration: renamed, deleted, or given by its place', () => {
    expect(calm(changeConfiguration(start, 0, { name: 'Westerly' }))).toBe('Westerly');
    expect(calm(changeConfiguration(start, 1, { name: 'Easterly' }))).toBe('West');
    expect(calm(deleteConfiguration(start, 0))).toBe(undefined);
    expect(readContents(setCalm(start, 'East')).calm).toBe(1);
    expect(readContents(setCalm(start, null)).calm).toBe(null);
    const byPlace = opened(
      surveyText([], { flow: { calm: 1, configurations: [{ name: 'West' }, { name: 'East' }] } }),
    );
    expect(readContents(byPlace).calm).toBe(1);
    expect(calm(moveConfiguration(byPlace, 1, -1))).toBe('East');
  });

  test('[F236] a wind is kept, followed and forgotten; what is odd in it is a doubt', () => {
    const wind = { direction: 240, speedKt: 15, gustKt: null, likelihood: 'throughout' as const };
    const given = opened(
      surveyText([], { weather: { text: '240/15', entered: '2026-06-21T10:00:00Z', winds: [wind] } }),
    );
    const { weather, problems } = readContents(given);
    expect(problems).toEqual([]);
    if (!weather) throw new Error('expected a wind');
    const again = setWeather(start, weather);
    expect(readContents(again).weather).toEqual(weather);
    expect(readContents(opened(saveSurvey(again))).weather).toEqual(weather);
    expect(JSON.stringify(again.sunside['weather'])).not.toContain('null');
    expect(readContents(followWind(again, true)).weather?.follow).toBe(true);
    expect(followWind(followWind(again, true), false).sunside).toEqual(again.sunside);
    expect(setWeather(again, null).sunside).toEqual(start.sunside);
    const odd = opened(
      surveyText([], { weather: { entered: 'soon', winds: [{ direction: 400, speedKt: 5 }] } }),
    );
    expect(readContents(odd).weather?.winds[0]).toMatchObject({ direction: null, speedKt: 5 });
    expect(readContents(odd).problems.map((p) => p.reason)).toEqual([
      expect.stringMatching(/^sunside\.weather\.winds\.0\.direction/),
      expect.stringMatching(/^sunside\.weather\.entered/),
    ]);
  });

  test('[S335] a pasted report of any usual length survives saving and opening, letter by letter', () => {
    const text = `METAR EPTV 210600Z 24010KT 9999 ${'BKN030 '.repeat(80).trim()}`;
    const winds = [{ from: '2026-06-21T06:00:00Z', to: '2026-06-21T20:00:00Z', direction: 240, speedKt: 10 }];
    const weather = { text, entered: '2026-06-21T06:00:00Z', source: 'typed', winds };
    const once = opened(surveyText([], { weather }));
    const { weather: read } = readContents(once);
    if (!read) throw new Error('expected a wind');
    const again = readContents(opened(saveSurvey(setWeather(once, read))));
    expect(again.weather?.text).toBe(text);
    expect(again.problems).toEqual([]);
  });
});
