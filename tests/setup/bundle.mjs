// What runs in browsers: the two scripts of a packet's page, and the page of the writers' desk.
import { build } from 'esbuild';
import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { root } from './run.mjs';

const desk = join(root, 'pipeline/desk/page');
const page = join(root, 'pipeline/out/packet/page');

/** Each script with the file that it starts from. */
const SCRIPTS = { page: 'main.ts', setter: 'setter.ts' };

/**
 * The texts of the scripts of a packet's page, as they stand in it.
 * @returns {Promise<{ page: string, setter: string }>}
 */
export async function packetScripts() {
  const [page, setter] = await Promise.all([bundle(SCRIPTS.page), bundle(SCRIPTS.setter)]);
  return { page, setter };
}

/**
 * @param {string} file
 * @returns {Promise<string>}
 */
async function bundle(file) {
  const { outputFiles } = await build({
    entryPoints: [join(page, file)],
    inject: [join(page, 'buffer.ts')],
    absWorkingDir: root,
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    // Named by modules of which nothing is used here; whether that is so is looked at below.
    external: ['node:*'],
    target: 'es2022',
    charset: 'ascii',
    legalComments: 'none',
    logLevel: 'error',
  });
  const text = outputFiles[0]?.text ?? '';
  if (/["'`]node:/.test(text)) throw new Error(`${file} needs a module that no browser has`);
  return text;
}

/**
 * The files of the desk's page by name: `index.html`, `icon.svg`, `page.js`, `page.css` and its fonts.
 * @returns {Promise<ReadonlyMap<string, Uint8Array>>}
 */
export async function deskFiles() {
  const { outputFiles } = await build({
    entryPoints: [
      { in: join(desk, 'main.tsx'), out: 'page' },
      { in: join(desk, 'styles/main.css'), out: 'page' },
    ],
    outdir: desk, // nothing is written: where the names of the files start from
    absWorkingDir: root,
    tsconfig: join(desk, 'tsconfig.json'),
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    legalComments: 'none',
    loader: { '.woff2': 'file' },
    assetNames: '[name]-[hash]',
    logLevel: 'error',
  });
  /** @type {Map<string, Uint8Array>} */
  const files = new Map(['index.html', 'icon.svg'].map((n) => [n, readFileSync(join(desk, n))]));
  for (const { path, contents } of outputFiles) files.set(basename(path), contents);
  return files;
}
