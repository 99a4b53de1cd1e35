import js from '@eslint/js';
import prettier from 'eslint-config-prettier';
import svelte from 'eslint-plugin-svelte';
import { defineConfig, globalIgnores } from 'eslint/config';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

export default defineConfig(
  globalIgnores(['dist', 'src/public']),
  js.configs.recommended,
  ts.configs.recommendedTypeChecked,
  svelte.configs.recommended,
  prettier,
  svelte.configs.prettier,
  {
    languageOptions: {
      globals: { ...globals.browser },
      parserOptions: {
        projectService: true,
        tsconfigRootDir: import.meta.dirname,
        extraFileExtensions: ['.svelte'],
      },
    },
    rules: {
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
  },
  {
    files: ['*.config.*'],
    extends: [ts.configs.disableTypeChecked],
    languageOptions: { globals: globals.node },
  },
  {
    files: ['tests/**', 'src/cli/**'],
    languageOptions: { globals: { ...globals.node, ...globals.browser } },
  },
  {
    // What is read of a page once, right after something was done to it, is what it was before on a busy machine.
    files: ['tests/browser/**/*.test.ts'],
    rules: {
      'no-restricted-syntax': [
        'error',
        {
          selector:
            "CallExpression[callee.name='expect'] AwaitExpression CallExpression[callee.property.name=/^(innerText|allInnerTexts|textContent|inputValue|count|isChecked|isDisabled|isEnabled|isVisible|getAttribute|boundingBox)$/]",
          message: 'Wait for it: await expect.poll(() => ...).',
        },
        {
          selector: "CallExpression[callee.property.name='boundingBox']",
          message: 'It may still be moving: boxAtRest.',
        },
      ],
    },
  },
);
