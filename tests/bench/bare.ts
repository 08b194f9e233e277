import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const modules = fileURLToPath(new URL('../../node_modules', import.meta.url));

const BARE_TEMPLATE = `export default class {
  data() {
    return { pagination: { data: 'files', size: 1, alias: 'file' }, permalink: ({ file }) => file.path };
  }
  render({ file }) {
    return file.text;
  }
}
`;

const BARE_RUN = `import Eleventy from '@11ty/eleventy';
import { readFileSync } from 'node:fs';
const files = JSON.parse(readFileSync('files.json', 'utf8'));
const eleventy = new Eleventy('input', 'output', {
  configPath: false,
  quietMode: true,
  config: (config) => config.addGlobalData('files', files),
});
eleventy.disableLogger();
await eleventy.write();
`;

/** A folder in which a bare Eleventy writes these pages, and nothing else, from finished strings. */
export function prepareBare(pages: ReadonlyMap<string, Uint8Array>): string {
  const folder = mkdtempSync(join(tmpdir(), 'bare-'));
  const files = [...pages].map(([path, bytes]) => ({
    path,
    text: new TextDecoder().decode(bytes),
  }));
  mkdirSync(join(folder, 'input'));
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
  writeFileSync(join(folder, 'files.json'), JSON.stringify(files));
  writeFileSync(join(folder, 'run.js'), BARE_RUN);
  writeFileSync(join(folder, 'input', 'all.11ty.js'), BARE_TEMPLATE);
  symlinkSync(modules, join(folder, 'node_modules'));
  return folder;
}

/** Runs it once. */
export function runBare(folder: string): void {
  rmSync(join(folder, 'output'), { recursive: true, force: true });
  const run = spawnSync(process.execPath, ['run.js'], {
    cwd: folder,
    env: { ELEVENTY_SKIP_ESM_RESOLVER: '1' },
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(run.stderr);
}
