import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { read, repositoryFiles, root } from './files.js';
import { importsOf, parse } from './imports.js';
import { BUNDLED, FLOORS, PACKAGES, PURE, roomOf, wayIn } from './rooms.js';
import { packageOf, wallsBroken } from './walls.js';

const sources = repositoryFiles().filter(
  (file) => /^(schema|pipeline|site)\//.test(file) && /[.][cm]?[jt]sx?$/.test(file),
);

describe('the walls of the house', () => {
  test('no file breaks one', () => {
    expect(sources.length).toBeGreaterThan(20);
    expect(sources.flatMap((file) => wallsBroken(file, read(file)))).toEqual([]);
  });

  test.each(FLOORS.flat())('the room %s is there, with its one way in', (room) => {
    const file = room === 'cli' ? 'pipeline/cli/bin.ts' : wayIn(room);
    expect(existsSync(join(root, file)), file).toBe(true);
  });

  test('what schema and pipeline need to run is installed for users too', () => {
    const declared: unknown = JSON.parse(read('package.json'));
    const { dependencies } = declared as { dependencies: Record<string, string> };
    const needed = sources
      .filter((file) => !file.endsWith('.d.ts') && !BUNDLED.some((page) => file.startsWith(page)))
      .flatMap((file) => importsOf(parse(file, read(file))))
      .filter((each) => !each.typeOnly && each.from !== undefined)
      .map(({ from }) => packageOf(from ?? ''))
      .filter((name) => !name.startsWith('.') && !name.startsWith('node:'));
    expect(needed.filter((name) => !Object.hasOwn(dependencies, name))).toEqual([]);
  });
});

describe('each kind of breach is seen', () => {
  const breach = (path: string, text: string): string[] =>
    wallsBroken(path, text).map((sentence) => sentence.slice(path.length + 1));

  test.each([
    // A room below, in each way of importing.
    ['model', "import { a } from '../text/index.js';", '1: model may not import text'],
    ['model', "import type { A } from '../text/index.js';", '1: model may not import text'],
    ['model', "import '../text/index.js';", '1: model may not import text'],
    ['model', "\nexport * from '../text/index.js';", '2: model may not import text'],
    ['model', "export { a } from '../text/index.js';", '1: model may not import text'],
    ['model', "const a = await import('../text/index.js');", '1: model may not import text'],
    ['model', 'const a = await import(`../text/index.js`);', '1: model may not import text'],
    ['model', "type A = import('../text/index.js').A;", '1: model may not import text'],
    ['model', "import a = require('../text/index.js');", '1: model may not import text'],
    ['model', "const a = require('../text/index.js');", '1: model may not import text'],
    ['gate', "import { a } from '../read/index.js';", '1: gate may not import read'],
    ['release', "import { a } from '../cli/index.js';", '1: release may not import cli'],
    // Rooms side by side, and the room that may import only one.
    ['out/proof', "import { a } from '../site/index.js';", '1: out/proof may not import out/site'],
    ['out/site', "import { a } from '../proof/index.js';", '1: out/site may not import out/proof'],
    ['audit', "import { a } from '../gate/index.js';", '1: audit may not import gate'],
    ['audit', "import { a } from '../../schema/index.js';", '1: audit may not import schema'],
    // Past the way in.
    [
      'gate',
      "import { a } from '../model/hold.js';",
      '1: pipeline/model/hold.ts is not the way into model',
    ],
    [
      'read',
      "import { a } from '../../schema/files/card.js';",
      '1: schema/files/card.ts is not the way into schema',
    ],
    ['cli', "import { a } from '../model';", '1: pipeline/model is not the way into model'],
    // Out of the house.
    ['cli', "import a from '../../package.json';", '1: cli may not import package.json'],
    ['cli', "import a from '../../site/a.js';", '1: cli may not import site/a.js'],
    ['cli', "import a from '../../../x/a.js';", '1: cli may not import ../x/a.ts'],
    ['cli', "import a from '../shed/index.js';", '1: cli may not import pipeline/shed/index.ts'],
    // Packages that are not on the room's list.
    ['gate', "import a from 'yaml';", '1: gate may not import yaml'],
    ['cli', "import a from 'left-pad/deep/file.js';", '1: cli may not import left-pad'],
    [
      'out/proof',
      "import a from '@11ty/eleventy/x';",
      '1: out/proof may not import @11ty/eleventy',
    ],
    ['release', "import a from 'node:fs';", '1: release may not import node:fs'],
    ['write', "import a from 'fs';", '1: write may not import fs'],
    ['cli', 'await import(name);', '1: imports something that cannot be read from the text'],
    // The world outside, in a pure room.
    ['checks', "import { readFileSync } from 'node:fs';", '1: checks is pure: no node:fs'],
    ['gate', "import { open } from 'node:fs/promises';", '1: gate is pure: no node:fs'],
    ['edit', "import { randomUUID } from 'node:crypto';", '1: edit is pure: no node:crypto'],
    ['review', "import { randomUUID } from 'node:crypto';", '1: review is pure: no node:crypto'],
    ['review', "import * as all from 'node:crypto';", '1: review is pure: no node:crypto'],
    [
      'review',
      "import all, { createHash } from 'node:crypto';",
      '1: review is pure: no node:crypto',
    ],
    [
      'review',
      "import { createHash, randomUUID } from 'node:crypto';",
      '1: review is pure: no node:crypto',
    ],
    [
      'review',
      "import { randomUUID as createHash } from 'node:crypto';",
      '1: review is pure: no node:crypto',
    ],
    ['review', "export { createHash } from 'node:crypto';", '1: review is pure: no node:crypto'],
    ['model', 'const now = Date.now();', '1: model is pure: no Date'],
    ['model', 'const now = new Date();', '1: model is pure: no Date'],
    ['model', 'const now = { Date };', '1: model is pure: no Date'],
    ['text', 'const a = Math.random();', '1: text is pure: no Math.random'],
    ['text', "const a = Math['random']();", '1: text is pure: no Math.random'],
    ['text', 'const a = Temporal.Now.instant();', '1: text is pure: no Temporal.Now'],
    ['select', 'const zone = process.env.TZ;', '1: select is pure: no process'],
    ['select', 'const { env } = process;', '1: select is pure: no process'],
    ['packs', 'const a = globalThis;', '1: packs is pure: no globalThis'],
    ['typeset', 'const here = import.meta.url;', '1: typeset is pure: no import.meta'],
    ['review', 'console.log(1);', '1: review is pure: no console'],
    ['model', 'names.sort((a, b) => a.localeCompare(b));', '1: model is pure: no localeCompare()'],
    ['model', 'new Intl.Collator();', '1: model is pure: no new Intl.Collator()'],
  ])('pipeline/%s: %s', (room, text, sentence) => {
    expect(breach(`pipeline/${room}/a.ts`, text)).toEqual([sentence]);
  });

  test.each([
    ['schema/files/a.ts', "import { a } from '../../pipeline/model/index.js';", 'model'],
    ['site/a.11ty.js', "import { a } from '../schema/index.js';", 'schema'],
    ['site/a.11ty.js', "import { a } from '../pipeline/model/index.js';", 'model'],
    ['site/a.11ty.js', "/** @import { A } from '../pipeline/model/index.js' */", 'model'],
    ['site/a.11ty.js', "/** @type {import('../pipeline/model/index.js').A} */ let a;", 'model'],
    ['site/a.11ty.js', "import { connect } from 'node:net';", 'node:net'],
    ['site/a.11ty.js', "import a from 'yaml';", 'yaml'],
  ])('%s: %s', (path, text, what) => {
    expect(breach(path, text)).toEqual([`1: ${roomOf(path) ?? ''} may not import ${what}`]);
  });

  test('a file in no room', () => {
    expect(wallsBroken('pipeline/a.ts', '')).toEqual(['pipeline/a.ts: stands in no room']);
    expect(wallsBroken('pipeline/shed/a.ts', '')).toHaveLength(1);
    expect(wallsBroken('pipeline/out/a.ts', '')).toHaveLength(1);
    expect(wallsBroken('pipeline/out/shed/a.ts', '')).toHaveLength(1);
  });
});

describe('what is allowed is not called a breach', () => {
  test.each([
    ['pipeline/gate/a.ts', "import { a } from '../model/index.js';"],
    ['pipeline/gate/deep/a.ts', "import { a } from '../b.js'; import c from './c.js';"],
    ['pipeline/read/a.ts', "import { a } from '../../schema/index.js'; import 'node:fs/promises';"],
    ['pipeline/out/site/a.ts', "import { a } from '../../gate/index.js';"],
    ['pipeline/release/a.ts', "import { a } from '../out/site/index.js';"],
    ['pipeline/audit/a.ts', "import { a } from '../model/index.js';"],
    ['pipeline/model/a.ts', "import { Temporal } from 'temporal-polyfill'; // not Date.now()"],
    [
      'pipeline/model/a.ts',
      "type A = { process: Date }; const { process: a } = b.process; const c = 'Date';",
    ],
    ['pipeline/model/a.ts', "a.localeCompare(b, 'en'); new Intl.Collator('en');"],
    ['pipeline/review/a.ts', "import { createHash } from 'node:crypto';"],
    ['pipeline/cli/a.ts', 'const now = Date.now(); process.exitCode = 1;'],
    ['schema/files/a.ts', "import { a } from '../common.js'; import b from 'typebox/value';"],
    ['site/a.11ty.js', "import { a } from './parts/a.js';"],
    ['site/a.11ty.js', "/** @typedef {import('../schema/index.js').A} A */"],
    ['site/a.11ty.js', "/** @import { A } from '../schema/index.js' */"],
  ])('%s: %s', (path, text) => {
    expect(wallsBroken(path, text)).toEqual([]);
  });

  test('every room has a list of packages, and no list is of a room that is not there', () => {
    expect(Object.keys(PACKAGES).sort()).toEqual([...FLOORS.flat(), 'site'].sort());
    const pure = Object.entries(PACKAGES).filter(([room]) => PURE.has(room));
    expect(pure.flatMap(([, list]) => list).filter((name) => /^node:[^#]*$/.test(name))).toEqual(
      [],
    );
    expect(roomOf('pipeline/out/site/a.ts')).toBe('out/site');
  });
});
