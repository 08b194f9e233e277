import { DOMParser, type Document } from '@xmldom/xmldom';

import { siteLists, type SiteList } from '../../pipeline/out/lists/index.js';
import type { PublicData } from '../../schema/index.js';

export function listAt(data: PublicData, path: string): SiteList {
  const list = siteLists(data).find((each) => each.path === path);
  if (!list) throw new Error(`no list ${path}`);
  return list;
}

/** The text of a list, which must be UTF-8 without a mark. */
export function textAt(data: PublicData, path: string): string {
  const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  return decoder.decode(listAt(data, path).bytes);
}

/**
 * A document of XML.
 * @throws Error for the first thing that a parser finds odd, warnings too.
 */
export function xmlOf(text: string): Document {
  const parser = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  });
  return parser.parseFromString(text, 'text/xml');
}
