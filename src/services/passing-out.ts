import { linkFragment } from '../exports/pass-on/link-fragment';
import { aboutSurvey, fileName, messageOf, surveyFile } from '../keeping/survey-files';
import type { PassingOutside } from '../ports/passing';
import { packText } from '../storage/archive';
import { saveFile } from '../storage/files';
import type { Survey } from '../survey/document';
import { saveSurvey, surveyMediaType } from '../survey/save';
import type { PassingNeeds } from './passing.svelte';

/** A survey that leaves this device: by link, file, share sheet. */
export class PassingOut implements PassingOutside {
  readonly #needs: Pick<PassingNeeds, 'device' | 'page'>;

  constructor(needs: Pick<PassingNeeds, 'device' | 'page'>) {
    this.#needs = needs;
  }

  async link(survey: Survey): Promise<string | null> {
    const fragment = linkFragment(await packText(JSON.stringify(survey)));
    return fragment === null ? null : `${this.#needs.page()}${fragment}`;
  }

  async save(survey: Survey): Promise<string | null> {
    try {
      await saveFile(saveSurvey(survey), fileName(aboutSurvey(survey).name), surveyFile, null);
      return null;
    } catch (error) {
      return `The file could not be saved: ${messageOf(error)}.`;
    }
  }

  get canShare(): boolean {
    const { device } = this.#needs;
    const probe = new File(['{}'], 'survey.geojson', { type: surveyMediaType });
    return device.share !== undefined && device.canShare?.({ files: [probe] }) === true;
  }

  async share(survey: Survey): Promise<string | null> {
    const { name } = aboutSurvey(survey);
    const file = new File([saveSurvey(survey)], fileName(name), { type: surveyMediaType });
    try {
      await this.#needs.device.share?.({ files: [file], title: name });
      return null;
    } catch (error) {
      // Whoever closes the share sheet has thought better of it.
      if (error instanceof DOMException && error.name === 'AbortError') return null;
      return `It could not be handed over: ${messageOf(error)}. Save a file instead.`;
    }
  }

  async copy(text: string): Promise<string | null> {
    try {
      const { clipboard } = this.#needs.device;
      if (!clipboard) return 'This browser does not let the page copy: choose the text and copy it yourself.';
      await clipboard.writeText(text);
      return null;
    } catch (error) {
      return `It could not be copied: ${messageOf(error)}.`;
    }
  }
}
