import { expect, test } from 'vitest';
import { Look } from '../../src/state/look.svelte';
import { readPreferences, type PreferenceValues } from '../../src/state/preferences.svelte';

function device() {
  const asks = { '(prefers-color-scheme: dark)': false, '(prefers-contrast: more)': false };
  const heard: (() => void)[] = [];
  const media = (query: string) => ({
    get matches() {
      return asks[query as keyof typeof asks];
    },
    addEventListener: (_: string, listener: unknown) => void heard.push(listener as () => void),
  });
  return {
    media,
    ask: (more: Partial<typeof asks>) => {
      Object.assign(asks, more);
      for (const listener of heard) listener();
    },
  };
}

test('[U15] the device decides on the look, live, until one is preferred', () => {
  const { media, ask } = device();
  const preferences: { values: PreferenceValues } = { values: readPreferences(null) };
  const look = new Look(preferences, media);
  expect(look.name).toBe('day');
  ask({ '(prefers-color-scheme: dark)': true });
  expect(look.name).toBe('night');
  // Whoever asks for contrast gets it, dark or not.
  ask({ '(prefers-contrast: more)': true });
  expect(look.name).toBe('contrast');
  preferences.values = { ...preferences.values, look: 'day' };
  expect(look.name).toBe('day');
});
