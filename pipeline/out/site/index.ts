import type { PublicData } from '../../../schema/index.js';
import { siteFiles } from './files.js';
import { loadFonts, type FontFace } from './fonts.js';
import { ownTheme } from './own-theme.js';
import { renderHere } from './render-here.js';
import { renderSite } from './render.js';

export { siteFiles } from './files.js';
export { loadFonts, type FontFace, type FontFile } from './fonts.js';
export { jsonText } from './json-text.js';
export { ownTheme } from './own-theme.js';
export { renderSite, type RenderOptions } from './render.js';
export { SiteError } from './site-error.js';

type Files = ReadonlyMap<string, Uint8Array>;

/** Whose templates make the pages, and in which process. */
export type Rendering =
  | {
      readonly inThisProcess?: false;
      /** Folder of the templates; the theme that comes with the tool if not said. */
      readonly theme?: string;
      /** Where the temporary folder is made. */
      readonly workFolder?: string;
    }
  /** No walls, so no theme but the one that comes with the tool. */
  | { readonly inThisProcess: true };

/**
 * Makes a site of public data: nothing else reaches it.
 *
 * @param options.images pictures by the file names that the data give
 * @returns every file of the site, by path, in the order of the paths; the same data give the same
 *   bytes, in this process and in one of its own
 * @throws SiteError if the data or the theme are not fit for a site
 */
export async function buildSite(
  data: PublicData,
  options: { readonly images: Files } & Rendering,
): Promise<Files> {
  const fonts = await loadFonts();
  const pages = await pagesOf(
    data,
    fonts.map(({ face }) => face),
    options,
  );
  return siteFiles(
    data,
    pages,
    options.images,
    new Map(fonts.map(({ face, bytes }) => [face.file, bytes])),
  );
}

function pagesOf(
  data: PublicData,
  fonts: readonly FontFace[],
  rendering: Rendering,
): Promise<Files> {
  if (rendering.inThisProcess === true) return renderHere(data, fonts);
  const { theme = ownTheme(), workFolder } = rendering;
  return renderSite(data, { theme, fonts, ...(workFolder === undefined ? {} : { workFolder }) });
}

export { artOf, publicData, type PictureFiles } from './public-data.js';
export { drawPictures, WIDTHS, type Encode, type Pictures } from './pictures.js';
