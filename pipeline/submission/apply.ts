import type { Decision } from '../../schema/index.js';
import { plainBio, rewriteBio, rewriteScalar, splice } from '../edit/index.js';
import { heldSpans, type Card, type SourceFile, type YamlPath } from '../model/index.js';
import { rereadCard } from '../read/index.js';
import { partDigest, type Surroundings } from '../review/index.js';

type Changes = NonNullable<Decision['changes']>;

/** A card with the changes with which it was approved, or why they cannot be made. */
export type Applied =
  { readonly ok: true; readonly card: Card } | { readonly ok: false; readonly why: string };

/** Most UTF-16 units of one text: the words of a card are far fewer. */
const LONGEST = 10_000;

const BARE: Surroundings = { art: null, layout: null, fonts: {}, legal: [], statement: null };

/**
 * Makes changes to the text of a card's file and reads it again: it must have exactly the words that
 * were asked for, all else as it was, and held words as they were.
 */
export function applyChanges(card: Card, changes: Changes): Applied {
  const wrong = wrongWith(card, changes);
  if (wrong !== null) return { ok: false, why: wrong };
  const bio = changes.find(({ field }) => field === 'bio')?.text;
  const rewriting =
    bio === undefined ? { sources: [card.source] } : rewriteBio(card.source, card.bio, bio);
  if ('lost' in rewriting) {
    return { ok: false, why: `the words "${rewriting.lost}" are held and must stay as they are` };
  }
  const faults: string[] = [];
  for (const source of rewriting.sources) {
    const read = rereadCard(card, withScalars(source, changes));
    if ('front' in read) {
      if (isAsAsked(card, read, changes)) return { ok: true, card: read };
    } else faults.push(...read.map(({ message }) => message));
  }
  const said = faults.length === 0 ? '' : ` (${[...new Set(faults)].join('; ')})`;
  return {
    ok: false,
    why: `the new words cannot be put into the file without changing what else stands there${said}`,
  };
}

function wrongWith(card: Card, changes: Changes): string | null {
  for (const [at, { field, text }] of changes.entries()) {
    if (field !== 'bio' && textOf(card, field) === null) return `the card has no field ${field}`;
    if (field === 'bio' && card.bio.length === 0) return 'the card has no bio';
    if (changes.findIndex((other) => other.field === field) < at) {
      return `the field ${field} is changed twice`;
    }
    if (text.trim() === '') return `the field ${field} cannot be empty`;
    if (text.length > LONGEST) {
      return `the field ${field} is longer than ${String(LONGEST)} characters`;
    }
  }
  return null;
}

/** Front-matter values stand before the bio, so that their places are the same in its new source. */
function withScalars(source: SourceFile, changes: Changes): SourceFile {
  return splice(
    source,
    changes.flatMap(({ field, text }) =>
      field === 'bio' ? [] : [rewriteScalar(source, pathOf(field), text)],
    ),
  );
}

function pathOf(field: string): YamlPath {
  const dot = field.indexOf('.');
  return dot < 0 ? [field] : [field.slice(0, dot), field.slice(dot + 1)];
}

/** The text of a field of front matter that can be changed; null if there is none. */
function textOf({ front }: Card, field: string): string | null {
  if (field === 'name') return front.name;
  const [key = '', name = ''] = pathOf(field).map(String);
  if (key !== 'facts' && key !== 'texts') return null;
  const texts: Readonly<Record<string, string>> = front[key] ?? {};
  return Object.hasOwn(texts, name) ? (texts[name] ?? null) : null;
}

/** Whether nothing but the fields differs, and these are what was asked for. */
function isAsAsked(was: Card, now: Card, changes: Changes): boolean {
  const wanted = (field: string, old: string): string =>
    (changes.find((change) => change.field === field)?.text ?? old).normalize('NFC');
  const bio = wanted('bio', plainBio(was.bio));
  const front = {
    ...was.front,
    name: wanted('name', was.front.name),
    ...textsWanted('facts', was, wanted),
    ...textsWanted('texts', was, wanted),
  };
  return (
    plainBio(now.bio).normalize('NFC') === bio &&
    JSON.stringify(now.front) === JSON.stringify(front) &&
    partDigest('web', now, BARE) === partDigest('web', was, BARE) &&
    apart(now) === apart(was)
  );
}

function textsWanted(
  key: 'facts' | 'texts',
  { front }: Card,
  wanted: (field: string, old: string) => string,
): Partial<Pick<Card['front'], 'facts' | 'texts'>> {
  const texts: Readonly<Record<string, string>> | undefined = front[key];
  if (texts === undefined) return {};
  const all = Object.entries(texts).map(
    ([name, text]) => [name, wanted(`${key}.${name}`, text)] as const,
  );
  return { [key]: Object.fromEntries(all) };
}

/** Held words and what is counted, in their order. */
function apart({ bio }: Card): string {
  const counts = bio.flat().flatMap(({ count }) => count ?? []);
  const runs = counts.filter((count, at) => count !== counts[at - 1]);
  return JSON.stringify([heldSpans(bio).map(({ hold, text }) => [hold, text]), runs]);
}
