import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Answer, Jobs } from '../../src/imports/bring-in/messages';
import { noQuestions, type Proposal } from '../../src/imports/bring-in/types';
import { ImportDesk } from '../../src/services/bring-in.svelte';
import { SurveyDocument } from '../../src/state/document.svelte';
import { View } from '../../src/state/view.svelte';
import { readContents } from '../../src/survey/contents';
import { bringIn } from '../../src/survey/edits/bring-in';
import { newSurvey } from '../../src/survey/new-survey';
import { later } from '../support/later';

vi.mock('../../src/storage/files', () => ({ pickFiles: () => Promise.resolve([]) }));

type Asked = { readonly id: number; readonly job: keyof Jobs; readonly request: Jobs[keyof Jobs][0] };

/** The worker of an import: what it is asked stands here, and it says what the test wants. */
class WorkerDouble extends EventTarget {
  static all: WorkerDouble[] = [];
  readonly asked: Asked[] = [];
  ended = false;
  constructor() {
    super();
    WorkerDouble.all.push(this);
  }
  postMessage(message: Asked): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.ended = true;
  }
  async answer(i: number, response: unknown, pieces: readonly Proposal['candidates'][] = []): Promise<void> {
    const id = await vi.waitFor(() => {
      const asked = this.asked[i];
      if (!asked) throw new Error(`expected question ${i}, got ${this.asked.length}`);
      return asked.id;
    });
    const answers = [...pieces.map((candidates) => ({ id, candidates })), { id, response } as Answer];
    for (const data of answers) if (!this.ended) this.dispatchEvent(new MessageEvent('message', { data }));
  }
  fail(message: string): void {
    this.dispatchEvent(Object.assign(new Event('error'), { message }));
  }
}
const worker = (i: number) =>
  vi.waitFor(() => {
    const found = WorkerDouble.all[i];
    if (!found) throw new Error(`expected worker ${i}, got ${WorkerDouble.all.length}`);
    return found;
  });

beforeEach(() => {
  WorkerDouble.all = [];
  vi.stubGlobal('Worker', WorkerDouble);
});
afterEach(() => vi.unstubAllGlobals());

const proposal = (name: string): Proposal => ({
  candidates: [
    {
      group: 'standing spots',
      source: `test/${name}`,
      kind: 'standing-spot',
      properties: { name },
      shape: { type: 'Point', coordinates: [8.5, 47.5] },
    },
  ],
  leftOut: [],
  remarks: [],
  credits: [],
  site: {},
  asks: noQuestions,
  middle: null,
  placeName: '',
});

const map = (name: string) => new File(['<?xml version="1.0"?><osm version="0.6"></osm>'], name);
/** Looked into only when the test says so. */
function heldFile(file: File) {
  const { promise, answer } = later<null>();
  const slice = file.slice.bind(file);
  Object.defineProperty(file, 'slice', {
    value: (from: number, to?: number) => {
      const part = slice(from, to);
      return { text: async () => (await promise, part.text()) };
    },
  });
  return { file, look: () => answer(null) };
}

function setUp() {
  const view = new View();
  const opened: string[] = [];
  /** While it is held, the figures of what comes in are not worked out yet. */
  const figures = { held: false };
  const document = new SurveyDocument(
    { id: 'mine', survey: newSurvey({}), problems: [], readOnly: false },
    () => undefined,
  );
  const desk = new ImportDesk({
    document,
    view,
    derived: {
      get contents() {
        return readContents(document.survey);
      },
      *ahead() {
        while (figures.held) yield;
      },
    },
    files: { openFile: (file) => (opened.push(file.name), Promise.resolve()) },
    airfields: { startEmpty: () => Promise.resolve() },
    now: () => 0,
  });
  const names = () => readContents(document.survey).spots.map(({ name }) => name);
  return { view, opened, document, desk, names, figures };
}

describe('bringing in', () => {
  test('[I200] previews what is read, and takes it over in one step', async () => {
    const { document, desk, names } = setUp();
    await desk.drop([map('field.osm')]);
    const first = await worker(0);
    await first.answer(0, { refused: [] });
    await first.answer(1, proposal('Bank'));
    await vi.waitFor(() => expect(desk.underWay?.preview?.groups).toHaveLength(1));
    desk.underWay?.take();
    await vi.waitFor(() => expect(desk.underWay).toBeNull());
    expect([names(), document.undoLabel, desk.underWay, first.ended]).toEqual([
      ['Bank'],
      'bring in field.osm',
      null,
      true,
    ]);
  });

  /** Taking over what the first proposal has, its figures not there yet. */
  async function taking(candidates: readonly string[] = ['Bank']) {
    const scene = setUp();
    await scene.desk.drop([map('field.osm')]);
    const first = await worker(0);
    await first.answer(0, { refused: [] });
    const pieces = candidates.map((name) => proposal(name).candidates);
    await first.answer(1, { ...proposal(''), candidates: [] }, pieces);
    await vi.waitFor(() => expect(scene.desk.underWay?.preview?.groups).toHaveLength(1));
    scene.figures.held = true;
    scene.desk.underWay?.take();
    return scene;
  }
  /** Some more slices are done. */
  const slices = () => new Promise((done) => setTimeout(done));

  test('[I1040] candidates come in pieces, in their order', async () => {
    const { figures, names } = await taking(['Bank', 'Hill', 'Gate']);
    figures.held = false;
    await vi.waitFor(() => expect(names()).toEqual(['Bank', 'Hill', 'Gate']));
  });

  test('[I1041] nothing is shown before its figures are there, and pressing again brings in nothing twice', async () => {
    const { document, desk, figures, names } = await taking();
    await slices();
    desk.underWay?.take();
    expect([names(), document.undoLabel, desk.underWay?.taking]).toEqual([[], null, true]);
    figures.held = false;
    await vi.waitFor(() => expect(names()).toEqual(['Bank']));
    document.undo();
    expect([names(), document.undoLabel, desk.underWay]).toEqual([[], null, null]);
  });

  test('[I1042] a survey that was changed meanwhile keeps the change', async () => {
    const { document, figures, names } = await taking();
    await slices();
    const ours = proposal('Ours').candidates;
    document.perform('draw', (survey) => bringIn(survey, { features: ours, credits: [] }));
    figures.held = false;
    await vi.waitFor(() => expect(names()).toEqual(['Ours', 'Bank']));
    document.undo();
    expect(names()).toEqual(['Ours']);
  });

  test.each([
    ['cancelled', (desk: ImportDesk) => desk.underWay?.close()],
    ['another answer given', (desk: ImportDesk) => desk.underWay?.answer({ radius: 500 })],
    ['something left out', (desk: ImportDesk) => desk.underWay?.tick('standing spots', false)],
  ])('[I1043] %s meanwhile: nothing comes in', async (_, act) => {
    const { document, desk, figures, names } = await taking();
    await slices();
    act(desk);
    figures.held = false;
    await slices();
    await slices();
    expect([names(), document.undoLabel, desk.underWay?.taking ?? false]).toEqual([[], null, false]);
  });

  test.each([
    ['the first one is looked into last', [1, 0]],
    ['in order', [0, 1]],
  ])('[I201] of two quick drops the second is previewed and no worker is left over: %s', async (_, order) => {
    const { desk } = setUp();
    const held = [heldFile(map('first.osm')), heldFile(map('second.osm'))];
    const drops = held.map(({ file }) => desk.drop([file]));
    for (const i of order) held[i]?.look();
    await Promise.all(drops);
    expect(desk.underWay?.files).toEqual(['second.osm']);
    expect(WorkerDouble.all.filter(({ ended }) => !ended)).toHaveLength(1);
    desk.underWay?.close();
    expect(WorkerDouble.all.filter(({ ended }) => !ended)).toHaveLength(0);
  });

  test('[I201] two at the very same moment as well', async () => {
    const { desk } = setUp();
    await Promise.all([desk.drop([map('first.osm')]), desk.drop([map('second.osm')])]);
    expect(desk.underWay?.files).toEqual(['second.osm']);
    expect(WorkerDouble.all.filter(({ ended }) => !ended)).toHaveLength(1);
  });

  test('[I202] files dropped while others are read take their place', async () => {
    const { desk } = setUp();
    await desk.drop([map('first.osm')]);
    const first = await worker(0);
    await desk.drop([map('second.osm')]);
    expect(first.ended).toBe(true);
    expect(desk.underWay?.files).toEqual(['second.osm']);
  });

  test('[I203] a survey dropped after a map is opened, and the map is not previewed over it', async () => {
    const { opened, desk } = setUp();
    const slow = heldFile(map('slow.osm'));
    const text = JSON.stringify({ type: 'FeatureCollection', sunside: { version: 1 }, features: [] });
    const drops = [desk.drop([slow.file]), desk.drop([new File([text], 'field.geojson')])];
    await drops[1];
    slow.look();
    await drops[0];
    expect([opened, desk.underWay, WorkerDouble.all.length]).toEqual([['field.geojson'], null, 0]);
  });

  test('[I204] what is previewed for one survey does not come into another that was opened under it', async () => {
    const { document, desk, names } = setUp();
    await desk.drop([map('field.osm')]);
    const first = await worker(0);
    await first.answer(0, { refused: [] });
    await first.answer(1, proposal('Bank'));
    await vi.waitFor(() => expect(desk.underWay?.preview).not.toBeNull());
    document.open({ id: 'other', survey: newSurvey({}), problems: [], readOnly: false });
    desk.underWay?.take();
    expect(names()).toEqual([]);
    await first.answer(2, proposal('Bank by the other field'));
    await vi.waitFor(() =>
      expect(desk.underWay?.preview?.groups[0]?.names).toEqual(['Bank by the other field']),
    );
    desk.underWay?.take();
    await vi.waitFor(() => expect(names()).toEqual(['Bank by the other field']));
  });

  test('[I205] an answer to an earlier question comes too late', async () => {
    const { desk } = setUp();
    await desk.drop([map('field.osm')]);
    const first = await worker(0);
    await first.answer(0, { refused: [] });
    await first.answer(1, proposal('A'));
    await vi.waitFor(() => expect(desk.underWay?.preview).not.toBeNull());
    desk.underWay?.answer({ radius: 500 });
    desk.underWay?.answer({ radius: 900 });
    await first.answer(3, proposal('within 900'));
    await first.answer(2, proposal('within 500'));
    await vi.waitFor(() => expect(desk.underWay?.preview?.groups[0]?.names).toEqual(['within 900']));
    expect(desk.underWay?.answers.radius).toBe(900);
  });

  test('[I206] a worker that fails is said, whatever it was asked', async () => {
    const { desk } = setUp();
    await desk.drop([map('field.osm')]);
    const first = await worker(0);
    await vi.waitFor(() => expect(first.asked).toHaveLength(1));
    first.fail('out of memory');
    await vi.waitFor(() =>
      expect(desk.underWay?.refused).toEqual(['The files could not be read: out of memory']),
    );
    expect(desk.underWay?.progress).toBeNull();
  });

  test('[I207] what nobody knows is said, but not after something else was dropped', async () => {
    const { view, desk } = setUp();
    await desk.drop([new File(['\u0000\u0001'], 'thing.bin')]);
    expect(view.notice).toMatch(/^thing\.bin: /);
    view.notice = null;
    const slow = heldFile(new File(['\u0000\u0001'], 'slow.bin'));
    const drops = [desk.drop([slow.file]), desk.drop([map('field.osm')])];
    await drops[1];
    slow.look();
    await drops[0];
    expect(view.notice).toBeNull();
  });
});
