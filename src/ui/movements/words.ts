import type { EndFrom, MovementFigures } from '../../figures/movements/movement-figures';

export const endFromWords: Readonly<Record<EndFrom, string>> = {
  given: 'as listed',
  wind: 'by the wind',
  'in-use': 'as chosen',
  none: '',
};

/** "14:25 arrival A320 ZZ123". */
export const movementTitle = ({ movement }: Pick<MovementFigures, 'movement'>): string =>
  [movement.time, movement.use, movement.type, movement.flight].filter(Boolean).join(' ');
