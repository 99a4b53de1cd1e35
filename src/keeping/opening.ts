import type { OpeningAnswer, OpeningRequest } from './opening-messages';
import { messageOf } from './survey-files';
import { readContents } from '../survey/contents';
import type { SurveyFeature } from '../survey/document';
import { openSurvey, type Opened } from '../survey/open';
import { readFeature } from '../survey/read-feature';

/** From this length on (bytes or UTF-16 units) a text is read beside the page: parsing 1 MB takes some 20 ms. */
const longFrom = 1_000_000;
/** Bytes. Longer than any text that the page can hold several times over. */
const longest = 300_000_000;

export interface Reading {
  /** What was read; null when it was given up. */
  readonly opened: Promise<Opened | null>;
  cancel(): void;
}

const sizeOf = (source: OpeningRequest) => (typeof source === 'string' ? source.length : source.size);

export const isLong = (source: OpeningRequest): boolean => sizeOf(source) >= longFrom;

/** Reads a survey's text, a long one in a worker. `told`: the share that is here, 0 to 1. */
export function readSurvey(source: OpeningRequest, told: (share: number) => void): Reading {
  if (sizeOf(source) > longest)
    return settled({
      ok: false,
      reason: `It has ${Math.round(sizeOf(source) / 1e6)} MB; up to ${longest / 1e6} MB can be opened.`,
    });
  if (isLong(source) && typeof Worker !== 'undefined') return readBeside(source, told);
  return readHere(source);
}

const settled = (opened: Opened): Reading => ({ opened: Promise.resolve(opened), cancel: () => undefined });

function readHere(source: OpeningRequest): Reading {
  let cancel = () => undefined as void;
  const opened = new Promise<Opened | null>((resolve, reject) => {
    cancel = () => resolve(null);
    void Promise.resolve(typeof source === 'string' ? source : source.text())
      .then(openSurvey)
      .then(resolve, reject);
  });
  return { opened, cancel: () => cancel() };
}

/**
 * What was read, or why it cannot be shown: a file that has gone since, and what no reader of ours was ready for. All
 * that it says has been understood once.
 */
export async function readSafely(reading: Reading): Promise<Opened | null> {
  try {
    const opened = await reading.opened;
    if (opened?.ok) readContents(opened.survey);
    return opened;
  } catch (error) {
    return { ok: false, reason: `It could not be read: ${messageOf(error)}.` };
  }
}

function readBeside(source: OpeningRequest, told: (share: number) => void): Reading {
  const worker = new Worker(new URL('./opening-worker.ts', import.meta.url), { type: 'module' });
  let cancel = () => undefined as void;
  const opened = new Promise<Opened | null>((resolve) => {
    const end = (result: Opened | null) => {
      worker.terminate();
      worker.onmessage = null;
      resolve(result);
    };
    cancel = () => end(null);
    let head: Extract<OpeningAnswer, { part: 'head' }> | null = null;
    const features: SurveyFeature[] = [];
    worker.onmessage = ({ data }: MessageEvent<OpeningAnswer>) => {
      if (data.part === 'refused') return end({ ok: false, reason: data.reason });
      if (data.part === 'head') head = data;
      else
        for (const feature of data.features) {
          features.push(feature);
          // Here and now, piece by piece: whoever reads the whole survey next finds it read.
          readFeature(feature);
        }
      if (!head) return;
      told(head.count === 0 ? 1 : features.length / head.count);
      if (features.length < head.count) return;
      const { survey, problems, newer } = head;
      end({ ok: true, survey: { ...survey, features }, problems, newer });
    };
    worker.onerror = () => end({ ok: false, reason: 'The browser could not read it: it may be too large.' });
    worker.postMessage(source);
  });
  return { opened, cancel: () => cancel() };
}
