import type { KeeperGroup } from '../../figures/log/keepers';
import type { LightClass } from '../../figures/types';
import type { Contents } from '../../survey/contents';
import type { Formats } from '../formats';
import { lightWords } from '../words/sample-words';

export const keeperTitles: Record<KeeperGroup, string> = {
  spot: 'By spot',
  hour: 'By hour',
  light: 'By light',
  lens: 'By lens',
};

const isLight = (key: string): key is LightClass => Object.hasOwn(lightWords, key);

/** What a row of a group is called. */
export function keeperName(
  group: KeeperGroup,
  key: string,
  { spots }: Pick<Contents, 'spots'>,
  format: Pick<Formats, 'clock'>,
): string {
  switch (group) {
    case 'spot':
      return spots.find(({ id }) => id === key)?.name || 'A spot that is gone';
    case 'hour':
      return `from ${format.clock(`${key.padStart(2, '0')}:00`)}`;
    case 'light':
      return isLight(key) ? lightWords[key] : key;
    case 'lens':
      return key;
  }
}
