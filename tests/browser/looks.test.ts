import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { osmXml } from '../imports/fixtures/extract';
import { aFolder, exiftool, onePixel, writePhoto } from '../support/photos';
import { thorough } from '../support/thorough';
import { flownSurvey, tenDaysInJune, tenYearsOfWind } from './flown-survey';
import { otherFlyingSurvey } from './other-flying-survey';
import { openPage } from './page';
import { surveyName } from './tabs';

const axeSource = await readFile(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const looks = ['day', 'night', 'contrast'] as const;
/**
 * `npm test` looks at the first; `npm run thorough` at every look, on the wide page without the map. The others have the
 * same elements in the colours of the same tokens, whose contrasts tests/styles/looks.test.ts computes in `npm test`.
 */
const firstLook = ['day'] as const;

const button = (page: Page, name: string | RegExp) =>
  page
    .getByRole('button', { name, exact: typeof name === 'string' })
    .filter({ visible: true })
    .first();

/** The page is as it was looked at before. */
const nothingNew = Symbol('nothing new');

const tabs = (page: Page) => page.getByRole('navigation', { name: 'Sheets' }).getByRole('button');
const hasTabs = (page: Page) => tabs(page).first().isVisible();
/** What a narrow page has under its tabs is there at once on a wide one. */
async function tab(page: Page, place: number): Promise<void> {
  if (await hasTabs(page)) await tabs(page).nth(place).click();
}
const inMenu = (name: string) => async (page: Page) => {
  if (!(await button(page, name).isVisible())) await button(page, 'Menu').click();
  await button(page, name).click();
  await page.getByRole('dialog').waitFor();
};
const inFoot = (name: string) => async (page: Page) => {
  await tab(page, 3);
  await button(page, name).click();
};
const inList = (name: string | RegExp) => async (page: Page) => {
  await tab(page, 1);
  await button(page, name).click();
  await tab(page, 2);
};

/**
 * Every screen, and how to get to it from the one before; one line for each that is added. What is only a part of the
 * page begins with that part: the rest has been looked at. `nothingNew` where a page of this kind does not have it.
 */
const screens: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  'the survey': (page) => tab(page, 1),
  '.foot: time and light': (page) => tab(page, 3),
  '.right: the airfield': (page) => tab(page, 2),
  '.right: a standing spot': inList(/^Car park, top deck/),
  'the viewfinder': async (page) => {
    await button(page, 'Through the viewfinder').click();
    await page.getByRole('dialog').waitFor();
  },
  'the sight line from the side': (page) => button(page, 'Sight line').click(),
  'a spot under the map': async (page) => ((await hasTabs(page)) ? tab(page, 0) : nothingNew),
  'the base maps': async (page) => {
    // On the map itself, where there is one.
    if (!(await button(page, 'Base map').isVisible())) return nothingNew;
    await button(page, 'Base map').click();
    await page.getByText('Add a map of your own').click();
    return button(page, 'Add').click();
  },
  'the heights of the ground': async (page) => {
    await page.keyboard.press('Escape');
    if (!(await button(page, 'Heights of the ground').isVisible())) return nothingNew;
    await button(page, 'Heights of the ground').click();
    return page.getByRole('dialog').waitFor();
  },
  'what a map brings in': async (page) => {
    await page.keyboard.press('Escape');
    await drop(page, 'field.osm', osmXml());
    await page.getByLabel('What is left out').waitFor();
  },
  '.foot: the light of the day': inFoot('Light today'),
  '.foot: the light of the year': inFoot('Year'),
  '.foot: the wind record': inFoot('Wind record'),
  '.foot: what really flies': inFoot('What really flies'),
  '.foot: the log': inFoot('Log'),
  '.foot: the movements': inFoot('Movements'),
  '.foot: the plan': inFoot('Plan'),
  '.foot: the moments again': inFoot('Moments'),
  '.right: a runway': inList(/^07\/25/),
  '.right: an obstacle': inList(/^West hangar|high$/),
  'the menu': (page) => button(page, 'Menu').click(),
  drawing: async (page) => {
    await page.keyboard.press('Escape');
    await page.keyboard.press('a');
  },
  'the search': async (page) => {
    await page.keyboard.press('Escape');
    await button(page, 'Find airfield').click();
    await page.getByRole('dialog').getByRole('combobox').fill('gran');
    await page.getByRole('dialog').getByRole('option').first().waitFor();
  },
  'the surveys': inMenu('Surveys'),
  'the kit': inMenu('Kit'),
  'the preferences': inMenu('Preferences'),
  'the short cuts': inMenu('Short cuts'),
  'an empty survey with a notice': async (page) => {
    await button(page, 'Find airfield').click();
    await button(page, /^Start an empty survey/).click();
    await page.getByText('Dismiss').waitFor();
    await tab(page, 1);
  },
};

const allFlown = {
  'display-line': {
    passes: ['level', 'topside'],
    aircraft: 4,
    programme: [
      { time: '13:40', to: '13:55', name: 'Pair', type: 'Zorblatt 3' },
      { time: '13:50', name: 'Parachutes' },
      { name: 'Fire engine' },
      { time: '15:20', name: 'Solo jet', type: 'F-16' },
    ],
    late: { date: '2026-06-21', minutes: 20 },
  },
  runway: {
    patterns: [
      { pattern: 'break', end: 1, aircraft: 4 },
      { pattern: 'glider', end: 0 },
    ],
  },
};

/** What else is flown, in a survey that has all of it. */
const otherFlying: typeof screens = {
  'a survey with all that is flown': async (page) => {
    await drop(page, 'other-flying.geojson', otherFlyingSurvey(allFlown));
    await tab(page, 1);
    await button(page, /^South winch/).waitFor();
  },
  '.right: a display line': inList(/^Open day display/),
  '.right: a crowd line': inList(/^Open day crowd line/),
  '.right: a helipad': inList(/^Club helipad/),
  '.right: a winch run': inList(/^South winch/),
  '.right: a flight path': inList(/^Curved approach/),
  ".right: a runway's patterns": inList(/^07\/25/),
  '.foot: the acts of a programme': async (page) => {
    await inFoot('Plan')(page);
    await page.getByText('The programme, act by act').waitFor();
  },
  '.foot: night and moon': async (page) => {
    await inFoot('Light today')(page);
    await page
      .getByText(/Moon: /)
      .filter({ visible: true })
      .waitFor();
  },
  '.foot: the moon through the year': inFoot('Year'),
  'a formation in the viewfinder': async (page) => {
    await inList(/^Car park, top deck/)(page);
    await screens['the viewfinder']?.(page);
    const path = page.getByRole('dialog').getByLabel('Path', { exact: true });
    const names = await path.locator('option').allInnerTexts();
    await path.selectOption({ label: names.find((name) => name.includes('topside')) ?? '' });
    await page.getByText(/^4 together/).waitFor();
  },
};

/** The views that are empty until something was brought in, with that in them: see tests/browser/flown-survey.ts. */
const filled: typeof screens = {
  '.foot: what really flies, learned': async (page) => {
    await inFoot('What really flies')(page);
    await page.getByRole('button', { name: 'Take these values' }).filter({ visible: true }).waitFor();
  },
  '.foot: the wind record, with shares': async (page) => {
    await inFoot('Wind record')(page);
    await page.getByText(/Ends in Jun by recorded flights/).waitFor();
  },
  '.foot: the log, read': async (page) => {
    await inFoot('Log')(page);
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      button(page, /^Choose photographs/).click(),
    ]);
    await chooser.setFiles(photographs());
    await page.getByText('3 photographs, 2 passes').waitFor();
  },
  '.foot: the log, kept': async (page) => {
    const chosen = { label: '06 arrival' };
    await page.getByLabel('Path', { exact: true }).filter({ visible: true }).selectOption(chosen);
    const spot = page.getByLabel('Spot', { exact: true }).filter({ visible: true });
    if (await spot.isVisible()) await spot.selectOption({ label: 'Mound' });
    await button(page, /^Answer for/).click();
    await button(page, /^Keep 2 passes/).click();
    await page.getByText('2 passes in the log.').waitFor();
  },
  '.right: a spot that was photographed from': inList(/^Mound/),
  '.right: a recorded flight': inList(/^j0/),
};

function photographs(): readonly string[] {
  const folder = aFolder();
  const here = { GPSLatitude: 50.918, GPSLatitudeRef: 'N', GPSLongitude: 18.16, GPSLongitudeRef: 'E' };
  const taken = (clock: string) => ({ DateTimeOriginal: `2026:06:21 ${clock}`, FocalLength: 300 });
  return [
    writePhoto(folder, 'known.jpg', { ...taken('18:00:30'), ...here, 'XMP:Rating': 4 }),
    writePhoto(folder, 'asked.jpg', taken('16:00:00')),
    writePhoto(folder, 'broken.jpg', {}, onePixel.subarray(0, 30)),
  ];
}

/** Drops a file on the page. */
const drop = (page: Page, name: string, text: string) =>
  page.evaluate(
    ([called, content]) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([content], called));
      window.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    },
    [name, text] as const,
  );

/**
 * Waits until the screen is whole: no part of the program under way, nothing that says so, and two frames in which
 * nothing of the page changed. What moves while axe measures has its colours taken for those of what it covers.
 */
async function settled(page: Page, scripts: ReadonlySet<unknown>): Promise<void> {
  do {
    await page.evaluate(
      () =>
        new Promise<void>((done) => {
          let quiet = 0;
          const watch = new MutationObserver(() => (quiet = 0));
          watch.observe(document.body, {
            subtree: true,
            childList: true,
            attributes: true,
            characterData: true,
          });
          const frame = () => {
            const waiting = document.querySelector('.loading, progress') !== null;
            quiet = waiting || document.getAnimations().length > 0 ? 0 : quiet + 1;
            if (quiet <= 2) return void requestAnimationFrame(frame);
            watch.disconnect();
            done();
          };
          requestAnimationFrame(frame);
        }),
    );
  } while (scripts.size > 0);
}

/** The scripts on their way to a page: a part of the program that is asked for when it is first looked at. */
function scriptsUnderWay(page: Page): ReadonlySet<unknown> {
  const scripts = new Set<unknown>();
  page.on('request', (request) => request.resourceType() === 'script' && scripts.add(request));
  page.on('requestfinished', (request) => scripts.delete(request));
  page.on('requestfailed', (request) => scripts.delete(request));
  return scripts;
}

interface Axe {
  run(
    where: string | Document,
    how: object,
  ): Promise<{ violations: { id: string; nodes: { html: string; failureSummary: string }[] }[] }>;
}

/**
 * What axe finds broken (WCAG 2.2 A and AA, and its good practices) in all looks, by rule and element. In the looks
 * after the first only colours and sizes are new. The looks are put on the page by hand: that spares the frames between.
 */
function violations(page: Page, part: string | null, worn: readonly string[]): Promise<string[]> {
  return page.evaluate(
    async ([names, where]) => {
      const { axe } = globalThis as unknown as { axe: Axe };
      const root = document.documentElement;
      const before = root.dataset['look'];
      const all: string[] = [];
      for (const [i, look] of names.entries()) {
        root.dataset['look'] = look;
        const { violations: found } = await axe.run(where ?? document, {
          resultTypes: ['violations'],
          preload: false,
          ...(i === 0
            ? { rules: { 'target-size': { enabled: true } } }
            : { runOnly: ['color-contrast', 'target-size'] }),
        });
        for (const { id, nodes } of found)
          for (const { html, failureSummary } of nodes)
            all.push(`${look}: ${id}: ${html.slice(0, 160)} ${failureSummary.slice(0, 200)}`);
      }
      root.dataset['look'] = before;
      return all;
    },
    [worn, part] as const,
  );
}

/** Those that need the map, in their order: drawing it in software takes most of the time, so the others go without. */
const onTheMap = [
  'the survey',
  '.right: a standing spot',
  'the sight line from the side',
  'the base maps',
  'the heights of the ground',
  'drawing',
];

async function broken(
  page: Page,
  worn: readonly string[],
  names?: readonly string[],
  looked = screens,
): Promise<string[]> {
  await page.evaluate(axeSource);
  const scripts = scriptsUnderWay(page);
  const all: string[] = [];
  for (const screen of names ?? Object.keys(looked)) {
    // A dialog of the screen before is closed first.
    if (await page.getByRole('dialog').isVisible()) await page.keyboard.press('Escape');
    if ((await looked[screen]?.(page)) === nothingNew) continue;
    await settled(page, scripts);
    const part = (await page.getByRole('dialog').isVisible())
      ? 'dialog[open]'
      : (/^(\.\w+):/.exec(screen)?.[1] ?? null);
    all.push(...(await violations(page, part, worn)).map((v) => `${screen}, ${v}`));
  }
  return all;
}

// Debian's libimage-exiftool-perl writes the photographs.
describe.skipIf(!thorough || !exiftool)(
  'what is empty until something was brought in (npm run thorough)',
  () => {
    it.each([
      ['1280 px', { width: 1280, height: 900 }, looks],
      ['360 px', { width: 360, height: 740, touch: true }, firstLook],
    ] as const)(
      '[B131] has nothing that axe finds broken, filled, at %s',
      { timeout: 150_000 },
      async (_, size, worn) => {
        const { page, complaints, done } = await openPage({ map: false, ...size });
        await drop(page, 'filled.geojson', flownSurvey(tenDaysInJune, { windRecord: tenYearsOfWind }));
        await expect.poll(() => surveyName(page).inputValue()).toBe('Tolverby');
        expect(await broken(page, worn, Object.keys(filled), filled)).toEqual([]);
        expect(complaints).toEqual([]);
        await done();
      },
    );
  },
);

describe('every screen in every look', () => {
  it('[B120] has nothing that axe finds broken, at 1280 px', { timeout: 150_000 }, async () => {
    const { page, complaints, done } = await openPage({ map: false, webgl: true });
    expect(await broken(page, thorough ? looks : firstLook)).toEqual([]);
    expect(complaints).toEqual([]);
    await done();
  });

  it.skipIf(!thorough)('[B120] nor on the map (npm run thorough)', { timeout: 150_000 }, async () => {
    const { page, complaints, done } = await openPage();
    expect(await broken(page, firstLook, onTheMap)).toEqual([]);
    expect(complaints).toEqual([]);
    await done();
  });

  it.skipIf(!thorough)(
    '[B121] nor on a phone of 360 px (npm run thorough)',
    { timeout: 150_000 },
    async () => {
      const { page, complaints, done } = await openPage({
        width: 360,
        height: 740,
        touch: true,
        map: false,
        webgl: true,
      });
      expect(await broken(page, firstLook)).toEqual([]);
      expect(complaints).toEqual([]);
      await done();
    },
  );

  it.skipIf(!thorough)(
    '[B509] nor where else is flown, at either size (npm run thorough)',
    { timeout: 150_000 },
    async () => {
      const [width, height] = [360, 740];
      for (const size of [{}, { width, height, touch: true }]) {
        const { page, complaints, done } = await openPage({ ...size, map: false, webgl: true });
        expect(await broken(page, looks, undefined, otherFlying)).toEqual([]);
        expect(complaints).toEqual([]);
        await done();
      }
    },
  );
});
