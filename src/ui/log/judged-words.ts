import type { SettingsJudged } from '../../figures/log/judge-settings';
import { pixels } from '../../units/format';
import { apertureWords, shutterWords } from '../viewfinder/words';

/** "f/7.1 would have sufficed": what the figures say of settings that were used. */
export function judgedWords(judged: SettingsJudged): string {
  switch (judged.kind) {
    case 'closed':
      return `${apertureWords(judged.enough)} would have sufficed`;
    case 'shallow':
      return judged.needed === null
        ? 'so near that no aperture covers nose to tail'
        : `${apertureWords(judged.used)} did not cover nose to tail: ${apertureWords(judged.needed)} does`;
    case 'blurred':
      return `${shutterWords(judged.used)} blurs by about ${pixels(Math.round(judged.pixels))} even when followed: ${shutterWords(judged.slowest)} keeps it sharp`;
    case 'frozen':
      return `${shutterWords(judged.used)} froze the blades: ${shutterWords(judged.slowest)} or slower shows them turning`;
  }
}
