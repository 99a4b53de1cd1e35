import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, it } from 'vitest';

const src = join(import.meta.dirname, '../../src');
/** What one component can be handed at once. */
const atMost = 7;

function parsed(file: string): ts.SourceFile {
  return ts.createSourceFile(file, readFileSync(join(src, file), 'utf8'), ts.ScriptTarget.Latest, true);
}

/** Public members of a class or an interface, or of a type that picks some of another's. */
function membersOf(node: ts.Statement): readonly string[] | null {
  if (ts.isTypeAliasDeclaration(node)) {
    const picked = ts.isTypeReferenceNode(node.type) ? node.type.typeArguments?.[1] : undefined;
    if (!picked) return null;
    const keys = ts.isUnionTypeNode(picked) ? picked.types : [picked];
    return keys.map((key) => key.getText());
  }
  if (!ts.isInterfaceDeclaration(node) && !ts.isClassDeclaration(node)) return null;
  return [...node.members].flatMap((member) => {
    const { name } = member;
    return name && !ts.isPrivateIdentifier(name) && !ts.isConstructorDeclaration(member)
      ? [name.getText()]
      : [];
  });
}

const declared = (file: string): ReadonlyMap<string, readonly string[]> =>
  new Map(
    parsed(file).statements.flatMap((node) => {
      const members = membersOf(node);
      const { name } = node as ts.DeclarationStatement;
      return members && name ? [[name.text, [...new Set(members)]] as const] : [];
    }),
  );

const contexts = declared('ui/contexts.ts');

it('[U900] hands a component no more than a few things at once', () => {
  const tooMany = [...contexts].filter(([name, { length }]) => name !== 'Contexts' && length > atMost);
  expect(tooMany).toEqual([]);
  expect(contexts.get('Figures')).toContain("'sights'");
});

it('[U901] keeps each group of figures and of the view to a few members', () => {
  const files = ['day', 'sunlight', 'airfield', 'flow', 'sights'].map((f) => `state/derived/${f}.svelte.ts`);
  const groups = [...files, 'state/view.svelte.ts'].flatMap((file) => [...declared(file)]);
  expect(groups.length).toBeGreaterThan(9);
  const large = groups.filter(
    ([name, { length }]) => name !== 'CameraChoice' && name !== 'View' && length > atMost,
  );
  expect(large).toEqual([]);
});

it('[U902] leaves the list of all contexts to the component above the page', () => {
  const whole = readdirSync(join(src, 'ui'), { recursive: true, encoding: 'utf8' }).filter(
    (file) =>
      /\.(ts|svelte)$/.test(file) &&
      file !== 'contexts.ts' &&
      /\bContexts\b|\bcontexts\.provide\b/.test(readFileSync(join(src, 'ui', file), 'utf8')),
  );
  expect(whole).toEqual(['Root.svelte']);
});
