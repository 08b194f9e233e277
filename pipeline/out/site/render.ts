import { copyFile, mkdir, mkdtemp, realpath, rm, symlink, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PublicData } from '../../../schema/index.js';
import { checkAddresses } from './addresses.js';
import type { Download } from './downloads.js';
import type { FontFace } from './fonts.js';
import { jsonText } from './json-text.js';
import { runConfined } from './sandbox.js';
import { copyTheme, readTree } from './tree.js';

/** What the child runs: copied as it is, so that it finds nothing else beside it. */
const SCRIPTS = ['child.js', 'engine.js'] as const;
const MODULES = `${sep}node_modules${sep}`;

export interface RenderOptions {
  /** The folder of the templates. */
  readonly theme: string;
  /** The fonts that pages may ask for. */
  readonly fonts: readonly FontFace[];
  /** What stands beside the pages, which they may link to. */
  readonly downloads: readonly Download[];
  /** Where the temporary folder is made; the system's place for such if not said. */
  readonly workFolder?: string;
  /** Aborted if the pages are no longer wanted. */
  readonly signal?: AbortSignal;
}

/**
 * Makes the pages of a site: Eleventy runs over a copy of the theme in a temporary folder, in a
 * process that sees that folder and the installed packages, and nothing else of the machine.
 * (The network is not closed to it: it is given public data only.)
 *
 * @returns bytes by path below the site, in the order of the paths
 * @throws SiteError if an address is not fit for a site, or the theme fails or oversteps
 */
export async function renderSite(
  data: PublicData,
  options: RenderOptions,
): Promise<ReadonlyMap<string, Uint8Array>> {
  checkAddresses(data);
  const { workFolder = tmpdir(), signal } = options;
  const folder = await realpath(await mkdtemp(join(workFolder, 'site-')));
  try {
    const output = join(folder, 'output');
    await furnish(folder, data, options);
    await runConfined({
      script: join(folder, 'child.js'),
      folder,
      modules: await outermost(installedPackages()),
      output,
      ...(signal && { signal }),
    });
    return await readTree(output);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

async function furnish(
  folder: string,
  data: PublicData,
  { theme, fonts, downloads }: RenderOptions,
): Promise<void> {
  await mkdir(join(folder, 'output'));
  await mkdir(join(folder, 'input'));
  await copyTheme(theme, join(folder, 'input'));
  for (const name of SCRIPTS) {
    await copyFile(fileURLToPath(new URL(name, import.meta.url)), join(folder, name));
  }
  await writeFile(join(folder, 'package.json'), jsonText({ type: 'module' }));
  await writeFile(join(folder, 'data.json'), jsonText(data));
  await writeFile(join(folder, 'fonts.json'), jsonText(fonts));
  await writeFile(join(folder, 'downloads.json'), jsonText(downloads));
  await symlink(installedPackages(), join(folder, 'node_modules'), 'junction');
}

/** The `node_modules` folder in which Eleventy lies. */
function installedPackages(): string {
  const entry = createRequire(import.meta.url).resolve('@11ty/eleventy');
  return entry.slice(0, entry.lastIndexOf(MODULES) + MODULES.length - 1);
}

/** Of nested `node_modules` folders the outermost: some installers keep the files there. */
async function outermost(modules: string): Promise<string> {
  const real = (await realpath(modules)) + sep;
  return real.slice(0, real.indexOf(MODULES) + MODULES.length - 1);
}
