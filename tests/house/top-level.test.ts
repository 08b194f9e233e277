import semver from 'semver';
import { describe, expect, test } from 'vitest';
import { ignoredFiles, read, repositoryFiles } from './files.js';

const files = repositoryFiles();

const REQUIRED = [
  'README.md',
  'RULES.md',
  'DEVELOPERS.md',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'content',
  'schema',
  'pipeline',
  'pictures',
  'recipes',
  'site',
  'tests',
];

/** The oldest Node that package.json lets in. */
const OLDEST_NODE = '20.19.0';

type Manifest = {
  license: string;
  engines: { node: string };
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
};
type Locked = { integrity?: string; resolved?: string; engines?: { node?: string } };

const manifest = JSON.parse(read('package.json')) as Manifest;
const lock = JSON.parse(read('package-lock.json')) as { packages: Record<string, Locked> };
const locked = Object.entries(lock.packages).filter(([path]) => path !== '');

describe('the top level', () => {
  test('holds what it should and nothing else, besides settings and dot files', () => {
    const entries = new Set(files.map((file) => file.split('/')[0] ?? ''));
    const named = [...entries].filter((name) => !/^[.]|[.]config[.]ts$/.test(name));
    expect(named.sort()).toEqual([...REQUIRED].sort());
  });

  test('ignores nothing that belongs to the project', () => {
    const folders = ['.ci', 'content', 'pipeline', 'schema', 'site', 'tests'];
    expect(ignoredFiles(folders)).toEqual([]);
  });

  test('has the MIT licence that package.json states', () => {
    expect(manifest.license).toBe('MIT');
    expect(read('LICENSE')).toMatch(/^MIT License\n\nCopyright \(c\) 2026 The Holdback contrib/);
  });
});

describe('the dependencies', () => {
  test('are pinned, each to one version', () => {
    const all = { ...manifest.dependencies, ...manifest.devDependencies };
    expect(Object.entries(all).filter(([, version]) => !isExact(version))).toEqual([]);
  });

  test.each([
    '^1.2.3',
    '~1.2.3',
    '1.2',
    '1.x',
    '*',
    'latest',
    '>=1.2.3',
    'npm:a@^1.2.3',
    'git:a/b',
  ])('%s would not pass as pinned', (version) => expect(isExact(version)).toBe(false));

  test('come by their digests and name no server', () => {
    expect(locked.length).toBeGreaterThan(100);
    expect(locked.filter(([, { integrity }]) => integrity === undefined)).toEqual([]);
    expect(locked.filter(([, { resolved }]) => resolved !== undefined)).toEqual([]);
    expect(read('package-lock.json')).not.toMatch(/https?:\/\/[^"]*registry|[.]tgz"/);
  });

  test(`all run on Node ${OLDEST_NODE}`, () => {
    expect(manifest.engines.node).toBe(`>=${OLDEST_NODE}`);
    expect(locked.filter(([, { engines }]) => !runsOnOldest(engines?.node))).toEqual([]);
    expect(runsOnOldest('>=22')).toBe(false);
    expect(runsOnOldest('^18.0.0 || >=20.20.0')).toBe(false);
  });
});

describe('the text of the repository', () => {
  // Put together here so that this file does not mention one.
  const machinePath = new RegExp(`(^|[\\s"'\`(=:/])/(${['work', 'root', 'home'].join('|')})/`, 'm');

  test('mentions no path of a machine', () => {
    expect(files.filter((file) => machinePath.test(read(file)))).toEqual([]);
    expect(machinePath.test(`see "${['', 'home', 'ines', 'a.ts'].join('/')}"`)).toBe(true);
    expect(machinePath.test(`file://${['', 'root', 'a.ts'].join('/')}`)).toBe(true);
    expect(machinePath.test(['node_modules', 'a', 'root', 'b'].join('/'))).toBe(false);
  });

  test('leaves out what is built', () => {
    expect(files.filter((file) => /^(dist|out|node_modules)\/|[.]tgz$/.test(file))).toEqual([]);
  });
});

/** A version and nothing more, or an alias of one. */
function isExact(version: string): boolean {
  return semver.valid(version.replace(/^npm:(@[^/]+\/)?[^@]+@/, '')) !== null;
}

function runsOnOldest(range: string | undefined): boolean {
  return range === undefined || semver.satisfies(OLDEST_NODE, range);
}
