import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PublicData } from '../../../schema/index.js';
import { siteFiles } from './files.js';
import { loadFonts } from './fonts.js';
import { renderSite } from './render.js';
import { SiteError } from './site-error.js';

export { siteFiles } from './files.js';
export { loadFonts, type FontFace, type FontFile } from './fonts.js';
export { renderSite, type RenderOptions } from './render.js';
export { SiteError } from './site-error.js';

/**
 * Makes a site of public data: nothing else reaches it.
 *
 * @param options.images pictures by the file names that the data give
 * @param options.theme folder of the templates; the theme that comes with the tool if not said
 * @param options.workFolder where the temporary folder is made
 * @returns every file of the site, by path, in the order of the paths; the same data give the same
 *   bytes
 * @throws SiteError if the data or the theme are not fit for a site
 */
export async function buildSite(
  data: PublicData,
  options: {
    readonly images: ReadonlyMap<string, Uint8Array>;
    readonly theme?: string;
    readonly workFolder?: string;
  },
): Promise<ReadonlyMap<string, Uint8Array>> {
  const { images, theme = ownTheme(), workFolder } = options;
  const fonts = await loadFonts();
  const pages = await renderSite(data, {
    theme,
    fonts: fonts.map(({ face }) => face),
    ...(workFolder === undefined ? {} : { workFolder }),
  });
  return siteFiles(
    data,
    pages,
    images,
    new Map(fonts.map(({ face, bytes }) => [face.file, bytes])),
  );
}

/** The folder `site` of this package, found from the source as well as from what is built of it. */
export function ownTheme(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder);
    if (above === folder) throw new SiteError('the templates of the site are not installed');
    folder = above;
  }
  return join(folder, 'site');
}
export { artOf, publicData, type PictureFiles } from './public-data.js';
export { drawPictures, WIDTHS, type Encode, type Pictures } from './pictures.js';
