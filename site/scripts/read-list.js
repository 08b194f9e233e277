import { foldedTitle, listedAs, NOTHING, scopesOf, tidy } from './collection.js';
import { readItem } from './read-item.js';
import { countOf, MOST, PLAIN, withChanges, changesBetween } from './ticks.js';

/** @typedef {import('./collection.js').Collection} Collection */
/** @typedef {import('./collection.js').ListCard} ListCard */
/** @typedef {import('./collection.js').Scope} Scope */
/** @typedef {import('./ticks.js').Change} Change */
/** @typedef {import('./ticks.js').Ticks} Ticks */

/**
 * What cannot be read, and where: counted in characters from 1.
 *
 * @typedef {{ readonly at: number, readonly text: string, readonly why: string }} Problem
 *
 * @typedef {{ readonly changes: readonly Change[], readonly problems: readonly Problem[] }} Reading
 */

/** @typedef {{ readonly kind: string, readonly collection: Collection, readonly at: number, readonly text: string }} Section */
/** @typedef {{ readonly scope: Scope, readonly at: number, readonly text: string }} Item */

const HEAD = /^\s*(.*?)\s*,\s*(want|doubles)\s*:/iu;
const COUNT = /^(.*?)\s*[x×]\s*(\d{1,4})$/iu;

/**
 * Reads want lists and lists of doubles, as many as the text holds, against what is had now. A
 * line that has no head of its own goes on with the list before it, as mail breaks lines.
 *
 * @param {string} text
 * @param {readonly Collection[]} collections What a list may be of: that of the page first.
 * @param {Ticks} ticks
 * @returns {Reading | { readonly refused: string }}
 */
export function readLists(text, collections, ticks) {
  const found = sectionsOf(text, collections);
  if ('refused' in found) return found;
  /** @type {Problem[]} */
  const problems = [];
  let after = ticks;
  for (const section of found.sections) {
    const items = itemsOf(section, problems);
    const changes =
      section.kind === 'want'
        ? wantChanges(section.collection, items, after, problems)
        : doublesChanges(items, after, problems);
    after = withChanges(after, changes);
  }
  return { changes: changesBetween(ticks, after), problems: problems.sort((a, b) => a.at - b.at) };
}

/**
 * @param {string} text
 * @param {readonly Collection[]} collections
 * @returns {{ readonly sections: readonly Section[] } | { readonly refused: string }}
 */
function sectionsOf(text, collections) {
  /** @type {Section[]} */
  const sections = [];
  const own = tidy(collections[0]?.head ?? '');
  let at = 0;
  for (const line of text.split(/(?<=\n)/)) {
    const head = headOf(line, collections);
    const last = sections.at(-1);
    if (head !== null && head.collection === null) {
      return { refused: `This is a list of ${head.title}. This page is of ${own}.` };
    }
    if (head?.collection) {
      const { kind, collection, length } = head;
      sections.push({ kind, collection, at: at + length, text: line.slice(length) });
    } else if (last !== undefined) {
      sections[sections.length - 1] = { ...last, text: last.text + line };
    } else if (line.trim() !== '') {
      return {
        refused: `This is no list of ${own}: it should open with “${own}, want:” or “${own}, doubles:”.`,
      };
    }
    at += line.length;
  }
  return sections.length > 0 ? { sections } : { refused: 'There is nothing to read yet.' };
}

/**
 * @param {string} line
 * @param {readonly Collection[]} collections
 */
function headOf(line, collections) {
  const [exact] = ['want', 'doubles']
    .flatMap((kind) =>
      collections.map((collection) => {
        return { kind, collection, opening: `${tidy(collection.head)}, ${kind}:` };
      }),
    )
    .filter(({ opening }) => line.startsWith(opening))
    .sort((a, b) => b.opening.length - a.opening.length);
  if (exact !== undefined) {
    const { kind, collection, opening } = exact;
    return { kind, collection, length: opening.length, title: collection.head };
  }
  const head = HEAD.exec(line);
  if (head === null) return null;
  const [{ length }, title = '', kind = ''] = head;
  const form = foldedTitle(title);
  const collection = collections.find((each) => foldedTitle(each.head) === form) ?? null;
  return { kind: kind.toLowerCase(), collection, length, title };
}

/**
 * The items of a list, each with the scope that it stands in. A label that is not known is a
 * problem with all that it stands before.
 *
 * @param {Section} section
 * @param {Problem[]} problems
 * @returns {readonly Item[]}
 */
function itemsOf({ collection, at, text }, problems) {
  const scopes = scopesOf(collection);
  return piecesOf(text, ';', at).flatMap((chunk) => {
    const colon = chunk.text.lastIndexOf(':');
    const label = tidy(chunk.text.slice(0, Math.max(colon, 0)));
    const scope = colon < 0 ? scopes[0] : scopeNamed(scopes, label);
    if (scope === undefined) {
      problems.push({
        at: chunk.at + 1,
        text: chunk.text,
        why: `nothing here is called “${label}”`,
      });
      return [];
    }
    const pieces = piecesOf(chunk.text.slice(colon + 1), ',', chunk.at + colon + 1);
    return pieces.map((piece) => ({ ...piece, scope }));
  });
}

/**
 * @param {readonly Scope[]} scopes
 * @param {string} label
 */
function scopeNamed(scopes, label) {
  const form = foldedTitle(label);
  const labelled = scopes.filter((scope) => scope.label !== '');
  return (
    labelled.find((scope) => scope.label === label) ??
    labelled.find((scope) => foldedTitle(scope.label) === form)
  );
}

/**
 * The pieces of a text between signs, without spaces around and without empty ones.
 *
 * @param {string} text
 * @param {string} sign
 * @param {number} at
 */
function piecesOf(text, sign, at) {
  let next = at;
  return text.split(sign).flatMap((part) => {
    const start = next + part.length - part.trimStart().length;
    next += part.length + sign.length;
    const words = part.trim();
    return words === '' ? [] : [{ at: start, text: words }];
  });
}

/**
 * @param {Collection} collection
 * @param {readonly Item[]} items
 * @param {Ticks} ticks
 * @param {Problem[]} problems
 * @returns {readonly Change[]}
 */
function wantChanges(collection, items, ticks, problems) {
  /** @type {Map<string, Set<string>>} */
  const wanted = new Map([[PLAIN, new Set()]]);
  for (const { scope, at, text } of items) {
    const keys = wanted.get(scope.printing) ?? new Set();
    wanted.set(scope.printing, keys);
    if (text.toLowerCase() === NOTHING) continue;
    for (const card of meant(scope, at, text, problems)) keys.add(card.key);
  }
  return scopesOf(collection).flatMap((scope) => {
    const keys = wanted.get(scope.printing);
    if (keys === undefined) return [];
    return [...scope.printed.values()]
      .filter(({ can }) => can)
      .map(({ key }) => {
        const from = countOf(ticks, scope.printing, key);
        return { printing: scope.printing, key, from, to: keys.has(key) ? 0 : Math.max(from, 1) };
      });
  });
}

/**
 * @param {readonly Item[]} items
 * @param {Ticks} ticks
 * @param {Problem[]} problems
 * @returns {readonly Change[]}
 */
function doublesChanges(items, ticks, problems) {
  return items.flatMap(({ scope, at, text }) => {
    if (text.toLowerCase() === NOTHING) return [];
    const parts = COUNT.exec(text);
    const spare = parts === null ? 1 : Number(parts[2]);
    if (spare < 1 || spare >= MOST) {
      problems.push({ at: at + 1, text, why: `it should say 1 to ${String(MOST - 1)} spare` });
      return [];
    }
    const { printing } = scope;
    return meant(scope, at, parts?.[1] ?? text, problems).map(({ key }) => {
      return { printing, key, from: countOf(ticks, printing, key), to: 1 + spare };
    });
  });
}

/**
 * @param {Scope} scope
 * @param {number} at
 * @param {string} text
 * @param {Problem[]} problems
 * @returns {readonly ListCard[]}
 */
function meant(scope, at, text, problems) {
  const cards = readItem(scope, tidy(text));
  const ready = cards?.filter(({ can }) => can) ?? [];
  if (ready.length > 0) return ready.filter((card) => listedAs(card) !== null);
  const why = cards === null ? 'no card here has this number' : 'nobody can have this yet';
  problems.push({ at: at + 1, text, why });
  return [];
}
