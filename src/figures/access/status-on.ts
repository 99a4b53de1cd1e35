import type { Access } from '../../survey/schema/standing-spot';
import { holdsOn } from './holds-on';

/** A spot's status on a local date, after what was asked and answered. Where the spot itself is forbidden, waiting or an expired permission does not open it. */
export function statusOn({ status, permission }: Access, date: string): NonNullable<Access['status']> {
  if (!permission) return status ?? 'unknown';
  if (permission.answer === 'refused') return 'forbidden';
  if (holdsOn(permission, date)) return 'permitted';
  return status === 'forbidden' ? 'forbidden' : 'ask';
}
