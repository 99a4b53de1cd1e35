import { fileName, messageOf } from '../keeping/survey-files';
import type { Files } from '../ports/files';
import type { Merging } from '../ports/merging';
import type { Arrived, Passing } from '../ports/passing';
import type { PassingOut } from './passing-out';
import type { ReadLink } from './read-link';
import { Turns } from '../state/turns';
import type { View } from '../state/view.svelte';
import { surveyMediaType } from '../survey/save';

/** The part of the browser's navigator that is used; a test stands in for it. */
export interface Device {
  readonly clipboard?: Pick<Clipboard, 'writeText'>;
  canShare?(data: ShareData): boolean;
  share?(data: ShareData): Promise<void>;
}

export interface PassingNeeds {
  readonly files: Pick<Files, 'openFile'>;
  readonly merging: Pick<Merging, 'withFile'>;
  readonly view: Pick<View, 'notice'>;
  readonly device: Device;
  /** Address of the page without its fragment. */
  readonly page: () => string;
}

/** Surveys on their way out and in. The fragment of a link is never sent to a server (RFC 3986, section 3.5). */
export class SurveyPassing implements Passing {
  #arrived = $state.raw<Arrived | null>(null);
  readonly #needs: PassingNeeds;
  readonly #turns = new Turns();

  constructor(needs: PassingNeeds) {
    this.#needs = needs;
  }

  get arrived(): Arrived | null {
    return this.#arrived;
  }

  async out(): Promise<PassingOut> {
    const { PassingOut } = await import('./passing-out');
    return new PassingOut(this.#needs);
  }

  /** A fragment came with the page's address. What it holds is shown before anything is kept. */
  async take(fragment: string): Promise<void> {
    if (!ours.test(fragment)) return;
    const { view } = this.#needs;
    const isLast = this.#turns.begin();
    this.#arrived = null;
    try {
      const { readLink } = await import('./read-link');
      const read = await readLink(fragment);
      if (!isLast() || !read) return;
      if (!read.ok) view.notice = read.reason;
      else this.#arrived = this.#arriving(read);
    } catch (error) {
      if (isLast()) view.notice = `The link could not be read: ${messageOf(error)}. Open it again.`;
    }
  }

  #arriving({ name, counts, text }: Extract<ReadLink, { ok: true }>): Arrived {
    const { files, merging } = this.#needs;
    const end = () => void (this.#arrived = null);
    const file = () => new File([text], fileName(name), { type: surveyMediaType });
    return {
      name,
      counts,
      open: async () => {
        end();
        await files.openFile(file());
      },
      merge: async () => {
        end();
        await merging.withFile(file());
      },
      leave: end,
    };
  }
}

/** As `readFragment` knows them, which comes when there is one. */
const ours = /^#survey-\d/;

/** The fragment that the page was opened with, out of the address bar at once and out of the way back. */
export function fragmentTaken(): string {
  const { hash, pathname, search } = location;
  if (ours.test(hash)) history.replaceState(history.state, '', `${pathname}${search}`);
  return hash;
}
