import { spotOf, type SourceFile, type Spot, type YamlPath } from '../model/index.js';
import { nearest, surelyMeant } from '../text/index.js';
import type { Remark } from './rule.js';

/** Most ids that a message lists. */
const MOST_LISTED = 8;

/** Ids of one kind; null where the file that lists them could not be read, so that all may be right. */
export type Known = ReadonlySet<string> | null;

/** A remark if an id, or a key, is not known. */
export function* refer(
  what: string,
  id: string | undefined,
  known: Known,
  source: SourceFile,
  path: YamlPath,
  at: 'key' | 'value' = 'value',
): Generator<Remark> {
  if (id === undefined || known === null || known.has(id)) return;
  yield unknown(what, id, known, spotOf(source, path, at));
}

/** "there is no layout `standrad`", with the nearest one that there is. */
export function unknown(what: string, id: string, known: Iterable<string>, spot: Spot): Remark {
  const ids = [...known];
  const sure = surelyMeant(id, ids);
  const near = sure ?? nearest(id, ids);
  return {
    spot,
    message: `there is no ${what} \`${id}\``,
    found: id,
    expected: near === null ? listed(ids) : `\`${near}\``,
    ...(near === null ? {} : { fix: near }),
    ...(sure === null ? {} : { certain: true }),
  };
}

/** "`a`, `b` or `c`". */
export function listed(ids: readonly string[]): string {
  const quoted = ids.slice(0, MOST_LISTED).map((id) => `\`${id}\``);
  const last = quoted.at(-1);
  if (last === undefined) return 'none: there are none here';
  if (ids.length > MOST_LISTED) return `${quoted.join(', ')} or another of ${ids.length}`;
  return quoted.length === 1 ? last : `${quoted.slice(0, -1).join(', ')} or ${last}`;
}
