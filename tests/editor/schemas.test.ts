import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';

import { demoFiles } from '../demo/copy.js';

const root = fileURLToPath(new URL('../../', import.meta.url));

function read(path: string): string {
  return readFileSync(join(root, path), 'utf8');
}

/** Which files of a project each schema is for, as the settings of an editor have it. */
type Mapping = Readonly<Record<string, string>>;

function isMapping(value: unknown): value is Mapping {
  return (
    typeof value === 'object' &&
    value !== null &&
    Object.values(value).every((each) => typeof each === 'string')
  );
}

function inSettings(): Mapping {
  const settings: unknown = JSON.parse(read('recipes/editors/vscode/settings.json'));
  const [mapping] = Object.values(settings ?? {});
  if (!isMapping(mapping)) throw new Error('no mapping');
  return mapping;
}

function inNeovim(): Mapping {
  const lines = read('recipes/editors/neovim.lua').matchAll(/\['([^']+\.json)'\] = '([^']+)'/g);
  return Object.fromEntries([...lines].map(([, schema = '', glob = '']) => [schema, glob]));
}

/** A path with * for what has no / in it. */
function matches(glob: string, path: string): boolean {
  const parts = glob.split('/');
  const names = path.split('/');
  return (
    parts.length === names.length &&
    parts.every((part, at) => {
      const [before = '', after = ''] = part.split('*');
      const name = names[at] ?? '';
      return part.includes('*') ? name.startsWith(before) && name.endsWith(after) : name === part;
    })
  );
}

const OUR_FOLDER = './node_modules/holdback/';
const shipped: unknown = JSON.parse(read('package.json'));

function validatorOf(schema: string): ValidateFunction {
  const ajv = new Ajv2020({ strict: false, allErrors: true });
  const shape: unknown = JSON.parse(read(schema.slice(OUR_FOLDER.length)));
  if (typeof shape !== 'object' || shape === null) throw new Error(`${schema} is no schema`);
  return ajv.compile(shape);
}

const demo = new Map(
  [...demoFiles({ art: false })].flatMap(([path, text]) =>
    typeof text === 'string' && path.endsWith('.yaml') ? [[`content/${path}`, text] as const] : [],
  ),
);

describe.each([
  ['the settings of one editor', inSettings()],
  ['the configuration of the other', inNeovim()],
])('%s', (_which, mapping) => {
  test('name schemas that the package has', () => {
    expect(shipped).toMatchObject({ files: expect.arrayContaining(['schema/json']) as unknown });
    for (const schema of Object.keys(mapping)) {
      expect(schema.startsWith(`${OUR_FOLDER}schema/json/`), schema).toBe(true);
      expect(existsSync(join(root, schema.slice(OUR_FOLDER.length))), schema).toBe(true);
    }
  });

  test('map every YAML file of the demo to one schema, which it matches', () => {
    const met = new Set<string>();
    for (const [path, text] of demo) {
      const own = Object.entries(mapping).filter(([, glob]) => matches(glob, path));
      expect(own, path).toHaveLength(1);
      for (const [schema] of own) {
        const validate = validatorOf(schema);
        validate(parse(text));
        expect(validate.errors ?? [], path).toEqual([]);
        met.add(schema);
      }
    }
    expect([...met].sort()).toEqual(Object.keys(mapping).sort());
  });

  test('refuse a file with a key that there is none of', () => {
    for (const [schema, glob] of Object.entries(mapping)) {
      const [, text] = [...demo].find(([path]) => matches(glob, path)) ?? [];
      const value: unknown = parse(text ?? '');
      if (typeof value !== 'object' || value === null) throw new Error(`${glob} has no file`);
      const validate = validatorOf(schema);
      expect(validate({ ...value, noSuchKey: 1 }), glob).toBe(false);
    }
  });
});

test('both map the same files', () => {
  expect(inNeovim()).toEqual(inSettings());
});
