import { ESLint } from 'eslint';
import { describe, expect, test } from 'vitest';
import { repositoryFiles, root } from './files.js';

/** The first text waits for the type checker to read the whole project. */
const LONGEST = { timeout: 180_000 };

const eslint = new ESLint({ cwd: root });

/** The rules that a text breaks where it stands in place of the first file of a folder. */
async function rulesBroken(folder: string, text: string): Promise<(string | null)[]> {
  const place = repositoryFiles().find((file) => file.startsWith(folder) && file.endsWith('.ts'));
  if (place === undefined) throw new Error(`there is no file in ${folder}`);
  const [result] = await eslint.lintText(text, { filePath: `${root}${place}` });
  return result?.messages.map(({ ruleId }) => ruleId) ?? [];
}

const CAST = '@typescript-eslint/consistent-type-assertions';
const FLOATING = 'export const save = () => Promise.resolve();\nsave();\n';

describe('the linter stops', LONGEST, () => {
  test.each(['pipeline/model/', 'pipeline/read/', 'schema/', 'tests/house/'])(
    'a promise that nobody waits for, in %s',
    async (folder) => {
      expect(await rulesBroken(folder, FLOATING)).toEqual([
        '@typescript-eslint/no-floating-promises',
      ]);
    },
  );

  test.each([
    ['a cast', 'pipeline/model/', 'export const a = JSON.parse("1") as number;', CAST],
    ['a cast', 'pipeline/gate/', 'export const a = <number>JSON.parse("1");', CAST],
    ['a cast', 'schema/', 'export const a = JSON.parse("1") as number;', CAST],
    [
      'the word that nothing is missing',
      'pipeline/model/',
      'export const a = (b: string[]): string => b[0]!;',
      '@typescript-eslint/no-non-null-assertion',
    ],
    ['any', 'pipeline/read/', 'export type A = any;', '@typescript-eslint/no-explicit-any'],
    [
      'a cast to any',
      'tests/house/',
      'export const a = 1 as any;',
      '@typescript-eslint/no-explicit-any',
    ],
    ['the console', 'pipeline/model/', 'console.log(1);', 'no-console'],
    ['a long file', 'pipeline/model/', `${'\n'.repeat(300)}export const a = 1;`, 'max-lines'],
  ])('%s in %s', async (_what, folder, text, rule) => {
    expect(await rulesBroken(folder, text)).toEqual([rule]);
  });
});

describe('the linter lets pass', LONGEST, () => {
  test.each([
    ['pipeline/read/', 'export const a = JSON.parse("1") as number;'],
    ['tests/house/', 'export const a = JSON.parse("1") as number;'],
    ['pipeline/model/', 'export const a = ["b"] as const;'],
    ['pipeline/model/', 'export const a = { b: 1 } satisfies Record<string, number>;'],
    ['pipeline/model/', 'export const a = (n: number): string => `${n} cards`;'],
    ['pipeline/model/', 'export const a = /[\\u0000-\\u001f]/u;'],
    ['pipeline/cli/', 'console.log(1);'],
  ])('in %s: %s', async (folder, text) => {
    expect(await rulesBroken(folder, text)).toEqual([]);
  });
});
