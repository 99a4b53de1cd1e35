import type { PackItem } from '../../figures/plan/pack';
import { lensName } from '../../survey/lens-name';
import { decimal } from '../../units/format';
import { spotName } from '../plan/plan-words';
import { ruleWords } from '../words/access-words';

/** One thing to take along, and why: "Zoom 100–400 mm f/4.5–5.6, for 25 arrival". */
export function packWords(item: PackItem): string {
  switch (item.kind) {
    case 'body':
      return `${item.body.name || item.body.key}, charged, clock set`;
    case 'lens': {
      const extenders = item.extenders.map((times) => ` and ${times}× extender`).join('');
      return `${lensName(item.lens)}${extenders}, for ${item.paths.join(', ')}`;
    }
    case 'cards':
      return `cards with room for about ${decimal(item.frames, 0)} pictures`;
    case 'batteries':
      return `${item.count} batteries`;
    case 'identification':
      return 'identification';
    case 'permission': {
      const { by, reference } = item.permission;
      const from = [by !== null && `from ${by}`, reference !== null && `reference ${reference}`];
      return ['permission', `for ${spotName(item.spot)}`, ...from].filter(Boolean).join(' ');
    }
    case 'ask-first': {
      const { contact } = item.spot.access;
      return `leave for ${spotName(item.spot)}: ask first${contact === null ? '' : ` (${contact})`}`;
    }
    case 'ladder':
      return `ladder for ${spotName(item.spot)}${item.said === null ? '' : `: ${item.said}`}`;
    case 'tripod':
      return `tripod (${item.rule === 'allowed' ? 'allowed' : ruleWords[item.rule ?? 'unknown']})`;
    case 'radio':
      return item.rule === 'allowed' ? 'radio receiver' : 'radio receiver, only if listening is lawful here';
  }
}

/** What an item is known by when it is ticked: the same for the same thing in another wording. */
export const packKey = (item: PackItem): string => {
  switch (item.kind) {
    case 'lens':
      return `lens ${item.lens.key}`;
    case 'permission':
    case 'ask-first':
    case 'ladder':
      return `${item.kind} ${item.spot.id}`;
    default:
      return item.kind;
  }
};
