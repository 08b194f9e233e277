import { keysAt, optionsAt } from '../read/index.js';
import { choicesOf, type Choice } from './choices.js';
import type { Ground } from './ground.js';
import { bodyFrom } from './links.js';
import { wordsOf } from './schema-words.js';
import { kindOfKeys, kindOfValue } from './value-kinds.js';
import { keysThere, typingPlaceAt, type TypingPlace } from './yaml-place.js';

/** Something that an editor offers to write in place of a stretch of the file. */
export interface Offer {
  readonly text: string;
  readonly what: 'key' | 'word' | 'id' | 'name' | 'file';
  readonly detail: string | null;
  /** Other words by which it may be found. */
  readonly label: string | null;
  /** What it is for; of keys alone. */
  readonly about: string | null;
  readonly from: number;
  readonly to: number;
  /** What is written, if it is not the text itself. */
  readonly written: string;
}

/** Everything that may be written at an offset. */
export function offersAt(ground: Ground, offset: number): readonly Offer[] {
  const { path, text, shape } = ground;
  const start = bodyFrom(path, text);
  if (start !== null && offset >= start) return offersInCopy(ground, start, offset);
  const place = typingPlaceAt(path, text, offset, shape.schema);
  if (!place) return [];
  return place.what === 'key' ? keyOffers(ground, place) : valueOffers(ground, place);
}

function keyOffers(ground: Ground, place: TypingPlace): readonly Offer[] {
  const { path, text, shape } = ground;
  const map = place.path.slice(0, -1);
  const there = keysThere(path, text, map);
  const open = (key: string): boolean => !there.has(key) || key === place.text;
  const colon = /^[ \t]*:/.test(text.slice(place.to)) ? '' : ': ';
  const offer = (key: string, detail: string | null, about: string | null): Offer => ({
    text: key,
    what: 'key',
    detail,
    label: null,
    about,
    from: place.from,
    to: place.to,
    written: `${plainKey(key)}${colon}`,
  });
  const named = kindOfKeys(shape.kind, map);
  const own = named === null ? [] : choicesOf(named, ground);
  return [
    ...[...new Set(keysAt(place.schemas))].filter(open).map((key) => {
      const { description, expected, choices } = wordsOf(optionsAt(place.schemas, key));
      const detail = choices.length > 0 ? choices.join(', ') : expected;
      return offer(key, detail, description);
    }),
    ...own.filter((each) => open(each.text)).map((each) => offer(each.text, each.detail, null)),
  ];
}

function plainKey(key: string): string {
  return /^[\p{L}\p{N}][\p{L}\p{N} ._-]*$/u.test(key) ? key : JSON.stringify(key);
}

function valueOffers(ground: Ground, place: TypingPlace): readonly Offer[] {
  const kind = kindOfValue(ground.shape.kind, place.path);
  const { description, choices } = wordsOf(place.schemas);
  const words = choices.map((text): Choice => ({ text, detail: description ?? '' }));
  const things = kind === null ? [] : choicesOf(kind, ground);
  const what = kind === 'name' || kind === 'public name' ? 'name' : kind === 'art' ? 'file' : 'id';
  return [
    ...words.map((each) => valueOffer(each, 'word', place, ground.text)),
    ...things.map((each) => valueOffer(each, what, place, ground.text)),
  ];
}

/** A value that is in quotes stays in them; another gets them where it needs them. */
function valueOffer(
  { text, detail, label }: Choice,
  what: Offer['what'],
  { from, to }: TypingPlace,
  source: string,
): Offer {
  const quote = source.charAt(from);
  const isQuoted = quote === '"' || quote === "'";
  const written = isQuoted ? inQuotes(text, quote) : isPlain(text) ? text : inQuotes(text, '"');
  return { text, what, detail, label: label ?? null, about: null, from, to, written };
}

function inQuotes(text: string, quote: string): string {
  return quote === "'" ? `'${text.replaceAll("'", "''")}'` : JSON.stringify(text);
}

/** Words that mean themselves in YAML, in brackets too. */
function isPlain(text: string): boolean {
  return /^[\p{L}\p{N}][\p{L}\p{M}\p{N} .;’'()!?&/_-]*$/u.test(text) && text.trim() === text;
}

/** In a bio: what a link may name, and names. */
function offersInCopy(ground: Ground, start: number, offset: number): readonly Offer[] {
  const before = ground.text.slice(start, offset);
  const link = /\]\(([a-z]*:?)([a-z0-9-]*)$/.exec(before);
  if (!link) return nameOffers(ground, start, offset);
  const [, kind = '', typed = ''] = link;
  const to = offset + (/^[a-z0-9-]*/.exec(ground.text.slice(offset))?.[0].length ?? 0);
  if (kind === 'held:') return linkOffers(choicesOf('hold', ground), offset - typed.length, to);
  if (kind === 'count:') {
    const none = { text: 'none', detail: 'A number of the story, which counts nothing of the set' };
    return linkOffers([...choicesOf('countable', ground), none], offset - typed.length, to);
  }
  const kinds = [
    { text: 'held:', detail: 'Words that stay off the site until a level or an embargo lifts' },
    { text: 'count:', detail: 'A number that is held to the plan' },
  ];
  return linkOffers(kinds, offset - kind.length - typed.length, to);
}

function linkOffers(choices: readonly Choice[], from: number, to: number): readonly Offer[] {
  return choices.map(({ text, detail, label = null }) => ({
    text,
    what: 'id',
    detail,
    label,
    about: null,
    from,
    to,
    written: text,
  }));
}

/** Least letters of a word in small letters that may become a name: shorter ones are words. */
const SMALL_LETTERS = 4;

/** Names that begin as the last words do; all of them where no word is begun. */
function nameOffers(ground: Ground, start: number, offset: number): readonly Offer[] {
  const line = /[^\r\n]*$/.exec(ground.text.slice(start, offset))?.[0] ?? '';
  const tails = tailsOf(line);
  return choicesOf('name', ground).flatMap(({ text, detail, label = null }): readonly Offer[] => {
    const typed = tails.find((tail) => beginsLike(text, tail));
    if (typed === undefined) return [];
    const from = offset - typed.length;
    return [{ text, what: 'name', detail, label, about: null, from, to: offset, written: text }];
  });
}

/** The last words of a line, the most of them first; nothing, where no word is begun. */
function tailsOf(line: string): readonly string[] {
  const starts = [...line.matchAll(/(?<![\p{L}\p{M}\p{N}’'])[\p{L}\p{N}]/gu)].map(
    ({ index }) => index,
  );
  const tails = starts.slice(-4).map((at) => line.slice(at));
  return /[\p{L}\p{M}\p{N}’'-]$/u.test(line) ? tails : [...tails, ''];
}

function beginsLike(name: string, typed: string): boolean {
  if (typed === '') return true;
  if (!name.toLowerCase().startsWith(typed.toLowerCase())) return false;
  return /^\p{Lu}/u.test(typed) || typed.length >= SMALL_LETTERS;
}
