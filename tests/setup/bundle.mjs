// The two scripts of a packet's page: what runs in a reviewer's browser.
import { build } from 'esbuild';
import { join } from 'node:path';
import { root } from './run.mjs';

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
