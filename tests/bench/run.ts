import { bringInCity } from './bring-in.bench.ts';
import { airfieldCatalogue } from './catalogue.bench.ts';
import { dragSpot } from './drag-spot.bench.ts';
import { learnFromFlights } from './flown.bench.ts';
import { frames } from './frame.bench';
import { historyHeld } from './history.bench.ts';
import { inBrowser } from './in-browser.ts';
import { readPhotographs } from './photos.bench.ts';
import { openLargeSurvey } from './open-survey.bench.ts';
import { sweep } from './sweep.bench.ts';
import { sweepAsked } from './sweep-asked.bench.ts';
import { sweepPage } from './sweep-page.bench.ts';
import { viewshed } from './viewshed.bench.ts';
import { whichField } from './which-field.bench.ts';
import { yearOfLight } from './year-of-light.bench.ts';

/** Prints what the budgets of the design are measured by. Not a test: nothing here passes or fails. */
const benches: Readonly<Record<string, () => void | Promise<void>>> = {
  drag: dragSpot,
  open: openLargeSurvey,
  year: yearOfLight,
  history: historyHeld,
  flown: learnFromFlights,
  frames,
  'which-field': whichField,
  sweep,
  'sweep-asked': sweepAsked,
  viewshed,
  photos: readPhotographs,
  catalogue: airfieldCatalogue,
  'bring-in': bringInCity,
  browser: inBrowser,
  'sweep-page': sweepPage,
};

/** Those that are named behind `npm run bench --`, else all. */
const named = process.argv.slice(2);
const unknown = named.filter((name) => !(name in benches));
if (unknown.length > 0)
  console.error(`no bench is called ${unknown.join(', ')}: there are ${Object.keys(benches).join(', ')}`);
for (const [name, bench] of Object.entries(benches))
  if (named.length === 0 || named.includes(name)) await bench();
