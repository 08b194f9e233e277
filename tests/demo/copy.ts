import { mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const demo = fileURLToPath(new URL('../../content/', import.meta.url));

/** Which of the demo's files: its pictures, and what was approved of it. */
export interface DemoFiles {
  readonly art: boolean;
  /** Without it nobody is asked to approve anything, so that a test can change what it likes. */
  readonly approvals?: true;
}

/** The demo's files: path with / to text or bytes. */
export function demoFiles(options: DemoFiles): Map<string, string | Uint8Array> {
  const files = allFiles(options);
  if (options.approvals) return files;
  const property = String(files.get('property.yaml'));
  const asked = /^# Who must approve.*\napprovals:\n(?: {2}- .*\n)+/m;
  if (!asked.test(property)) throw new Error('the demo asks for approvals in another way');
  return new Map([...files].filter(([path]) => !path.startsWith('review/'))).set(
    'property.yaml',
    property.replace(asked, 'approvals: none\n'),
  );
}

function allFiles(options: DemoFiles): Map<string, string | Uint8Array> {
  const paths = below(demo).map((path) => relative(demo, path).split(sep).join('/'));
  return new Map(
    paths
      .filter((path) => options.art || !path.endsWith('.svg'))
      .map((path) => [path, path.endsWith('.svg') ? readFileSync(join(demo, path)) : text(path)]),
  );
}

function text(path: string): string {
  return readFileSync(join(demo, path), 'utf8');
}

function below(folder: string): string[] {
  return readdirSync(folder)
    .map((name) => join(folder, name))
    .flatMap((path) => (statSync(path).isDirectory() ? below(path) : [path]));
}

/** The demo's files with one stretch of one of them changed; the stretch must stand there once. */
export function withEdit(
  files: ReadonlyMap<string, string | Uint8Array>,
  path: string,
  from: string,
  to: string,
): Map<string, string | Uint8Array> {
  const old = files.get(path);
  if (typeof old !== 'string') throw new Error(`the demo has no text ${path}`);
  if (old.split(from).length !== 2) throw new Error(`${path} does not have "${from}" just once`);
  return new Map(files).set(
    path,
    old.replace(from, () => to),
  );
}

/** A content folder on the disk, and its removal. */
export interface Placed extends AsyncDisposable {
  /** The folder that holds `content`. */
  readonly root: string;
  readonly content: string;
}

/**
 * Writes files as a content folder in a temporary place: one after another, since a call for each of
 * two thousand files costs more than all their bytes.
 */
export async function placeContent(
  files: ReadonlyMap<string, string | Uint8Array>,
): Promise<Placed> {
  const root = await mkdtemp(join(tmpdir(), 'holdback-content-'));
  const content = join(root, 'content');
  for (const folder of new Set([...files.keys()].map((path) => dirname(join(content, path))))) {
    mkdirSync(folder, { recursive: true });
  }
  for (const [path, bytes] of files) writeFileSync(join(content, path), bytes);
  return { root, content, [Symbol.asyncDispose]: () => rm(root, { recursive: true, force: true }) };
}
