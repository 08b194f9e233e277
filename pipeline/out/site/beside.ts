import { PublicChecklist, PublicData } from '../../../schema/index.js';
import { shareImage, siteLists } from '../lists/index.js';
import { printedSheets } from '../print/index.js';
import type { Download } from './downloads.js';
import { jsonText } from './json-text.js';
import type { Draw } from './pictures.js';
import { letteringOf } from './print-faces.js';

type Files = ReadonlyMap<string, Uint8Array>;

/** What stands beside the pages, and how pages link to it. */
export interface Beside {
  readonly files: Files;
  readonly downloads: readonly Download[];
}

/** Which parts are made besides the lists for programs. */
export interface BesideOptions {
  /** Left out, there is no picture for links. */
  readonly drawShare?: Draw['share'];
  /** Whether there are sheets to print. */
  readonly printed: boolean;
}

/** Everything beside the pages, of the public data alone: lists, sheets, the picture for links. */
export async function besidePages(data: PublicData, options: BesideOptions): Promise<Beside> {
  const files = new Map<string, Uint8Array>();
  const downloads: Download[] = [];
  const add = (download: Download, bytes: Uint8Array): void => {
    files.set(download.path, bytes);
    downloads.push(download);
  };
  if (options.printed) await addSheets(data, add);
  for (const { bytes, ...list } of siteLists(data)) add(list, bytes);
  downloads.push(jsonFile('data.json', 'Everything that these pages say, for programs'));
  for (const [path, title, schema] of SCHEMAS) {
    add(jsonFile(path, title), new TextEncoder().encode(jsonText({ $schema: DIALECT, ...schema })));
  }
  if (options.drawShare) {
    const svg = shareImage(data, ...(await letteringOf(data.property.look.type)).picture);
    const drawn = await options.drawShare(new TextEncoder().encode(svg));
    add(SHARE, drawn);
  }
  return { files, downloads };
}

const DIALECT = 'https://json-schema.org/draft/2020-12/schema';

const SCHEMAS = [
  ['data.schema.json', 'The shape of data.json, as JSON Schema', PublicData],
  ['checklist.schema.json', 'The shape of the checklist.json of each set', PublicChecklist],
] as const;

function jsonFile(path: string, title: string): Download {
  return { path, set: null, kind: 'json', title, type: 'application/json' };
}

const SHARE: Download = {
  path: 'share.png',
  set: null,
  kind: 'share image',
  title: 'The picture of links to this site',
  type: 'image/png',
};

const SHEETS = [
  ['checklist-a4', 'checklist to print, A4'],
  ['checklist-letter', 'checklist to print, Letter'],
  ['counter-a4', 'counter sheet for shops, A4'],
  ['counter-letter', 'counter sheet for shops, Letter'],
] as const;

async function addSheets(
  data: PublicData,
  add: (download: Download, bytes: Uint8Array) => void,
): Promise<void> {
  const { sheets } = await letteringOf(data.property.look.type);
  const printed = await printedSheets(data, sheets);
  for (const set of data.sets) {
    for (const [name, title] of SHEETS) {
      const path = `${set.id}/${name}.pdf`;
      const bytes = printed.get(path);
      if (bytes === undefined) throw new RangeError(`${path} was not drawn`);
      const type = 'application/pdf';
      add({ path, set: set.id, kind: 'sheet', title: `${set.short}: ${title}`, type }, bytes);
    }
  }
}
