import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const files = readdirSync(import.meta.dirname, { recursive: true, encoding: 'utf8' }).filter((file) =>
  file.endsWith('.test.ts'),
);
const numbers = (text: string): string[] => [...new Set(text.match(/\b[A-Z]\d+\b/g))];

/** Rule numbers, each with how many files have a test that carries it. */
const carried = new Map<string, number>();
for (const file of files) {
  const text = readFileSync(`${import.meta.dirname}/${file}`, 'utf8');
  for (const number of numbers((text.match(/\[[A-Z]\d+\]/g) ?? []).join(' ')))
    carried.set(number, (carried.get(number) ?? 0) + 1);
}

test('[A2] a new rule has a number of its own: the list of those that several files carry is whole', () => {
  const rules = readFileSync(`${import.meta.dirname}/RULES.md`, 'utf8');
  const [, listed = ''] = rules.split('## Carried by several files\n');
  const several = [...carried].filter(([, count]) => count > 1).map(([number]) => number);
  expect(several.sort()).toEqual(numbers(listed).sort());
});
