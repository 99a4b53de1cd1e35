import { choiceField, notesField, readFields, textField, type Read } from '../fields';
import { dateField } from './when';

export const ruleStates = ['allowed', 'ask', 'forbidden', 'unknown'] as const;

/**
 * What the field itself says of photographing, listening to its radio, ladders and tripods, whom to ask, and when that
 * was last checked. A spot's own word goes before it.
 */
const rulesFields = {
  photography: choiceField(ruleStates, 'unknown'),
  radio: choiceField(ruleStates, 'unknown'),
  ladders: choiceField(ruleStates, 'unknown'),
  tripods: choiceField(ruleStates, 'unknown'),
  office: textField(null),
  phone: textField(null),
  email: textField(null),
  hours: textField(null),
  notes: notesField(null),
  checkedOn: dateField,
  source: textField(null),
};
export type Rules = Read<typeof rulesFields>;

export const readRules = (value: unknown, doubt: (reason: string) => void): Rules =>
  readFields(rulesFields, value ?? undefined, 'sunside.rules', doubt);
