import eslint from '@eslint/js';
import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';

export default defineConfig(
  globalIgnores([
    'dist/',
    'out/',
    'content/',
    'schema/json/',
    'tests/oracles/',
    'recipes/editors/', // an editor loads it as it stands, without our types
  ]),
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  eslint.configs.recommended,
  tseslint.configs.strictTypeChecked,
  {
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname },
    },
    rules: {
      'no-control-regex': 'off', // control characters are part of the matter here
      '@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'never' }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/no-unnecessary-condition': [
        'error',
        { allowConstantLoopConditions: 'only-allowed-literals' },
      ],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
    },
  },
  {
    // Content becomes typed values in one room, behind the schemas; nowhere else is a cast needed.
    files: ['pipeline/read/**/*.ts'],
    rules: { '@typescript-eslint/consistent-type-assertions': 'off' },
  },
  {
    files: ['schema/**/*.ts', 'pipeline/**/*.ts'],
    ignores: ['pipeline/cli/**'],
    rules: { 'no-console': 'error' },
  },
  {
    files: ['schema/**', 'pipeline/**', 'site/**'],
    rules: { 'max-lines': ['error', { max: 300 }] },
  },
  {
    // Tests build odd values on purpose; `any` stays banned (no-explicit-any).
    files: ['tests/**/*.ts', '*.config.ts'],
    rules: {
      '@typescript-eslint/consistent-type-assertions': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/require-await': 'off',
    },
  },
  {
    // TypeScript checks these by their JSDoc, undefined names included.
    files: ['**/*.js', '**/*.mjs'],
    extends: [tseslint.configs.disableTypeChecked],
    rules: { 'no-undef': 'off' },
  },
);
