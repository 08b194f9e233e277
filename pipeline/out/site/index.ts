import type { PublicData } from '../../../schema/index.js';
import { besidePages } from './beside.js';
import type { Download } from './downloads.js';
import { siteFiles } from './files.js';
import { loadFonts, type FontFace } from './fonts.js';
import { ownTheme } from './own-theme.js';
import type { Draw } from './pictures.js';
import { renderHere } from './render-here.js';
import { renderSite } from './render.js';

export type { Download } from './downloads.js';
export { siteFiles } from './files.js';
export { loadFonts, type FontFace, type FontFile } from './fonts.js';
export { jsonText } from './json-text.js';
export { STEPS_TOLD } from './news.js';
export { ownTheme } from './own-theme.js';
export { drawPictures, WIDTHS, type Draw, type Encode, type Pictures } from './pictures.js';
export { artOf, pageOf, publicData, type PictureFiles } from './public-data.js';
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

/** What a site is made with, besides its data. */
export interface SiteParts {
  /** Pictures by the file names that the data give. */
  readonly images: Files;
  /** Draws the picture for links; without it there is none. */
  readonly drawShare?: Draw['share'];
  /** Whether there are sheets to print; yes, if it is not said. */
  readonly printed?: boolean;
  /** Told what is being made, in a few words. */
  readonly progress?: (step: string) => void;
  /** Aborted if the site is no longer wanted: the child that makes its pages ends then. */
  readonly signal?: AbortSignal;
}

/**
 * Makes a site of public data: nothing else reaches it.
 *
 * @returns every file of the site, by path, in the order of the paths; the same data give the same
 *   bytes, in this process and in one of its own
 * @throws SiteError if the data or the theme are not fit for a site
 */
export async function buildSite(
  data: PublicData,
  { images, drawShare, printed = true, progress, signal, ...rendering }: SiteParts & Rendering,
): Promise<Files> {
  const fonts = await loadFonts(data.property.look.type);
  progress?.('making lists and sheets');
  const beside = await besidePages(data, {
    printed,
    ...(drawShare === undefined ? {} : { drawShare }),
  });
  progress?.('making pages');
  const faces = fonts.map(({ face }) => face);
  const pages = await pagesOf(data, faces, beside.downloads, rendering, signal);
  return siteFiles(data, pages, [
    images,
    new Map(fonts.map(({ face, bytes }) => [face.file, bytes])),
    beside.files,
  ]);
}

function pagesOf(
  data: PublicData,
  fonts: readonly FontFace[],
  downloads: readonly Download[],
  rendering: Rendering,
  signal: AbortSignal | undefined,
): Promise<Files> {
  if (rendering.inThisProcess === true) return renderHere(data, fonts, downloads);
  const { theme = ownTheme(), workFolder } = rendering;
  const where = workFolder === undefined ? {} : { workFolder };
  return renderSite(data, { theme, fonts, downloads, ...where, ...(signal && { signal }) });
}
