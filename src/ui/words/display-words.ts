import type { ProgrammeLight } from '../../figures/display/display-figures';
import type { DisplayPass } from '../../survey/schema/flying';

/** The passes along a display line, as a list asks for them. */
export const passLabels: Readonly<Record<DisplayPass, string>> = {
  level: 'Level, along the line',
  climbing: 'Climbing from the middle on',
  'turning-away': 'Turning away from the crowd',
  topside: 'Round the crowd, topside, banked 60°',
  underside: 'Past the crowd, underside, banked 60°',
};

/** Where the sun stands for somebody at the crowd line. */
export const sunWords: Readonly<Record<NonNullable<ProgrammeLight['light']>, string>> = {
  dark: 'sun down',
  overhead: 'sun overhead',
  'behind-you': 'sun behind you',
  'from-the-side': 'sun from the side',
  'in-your-eyes': 'against the sun',
};
