import { NearWords, lettersOnly } from '../../text/index.js';
import { nameBook } from './book.js';
import { nameScans } from './scan.js';
import type { Subject } from '../subject.js';
import type { ToldText } from '../told/text.js';

/** A place where an unlisted name stands. */
export interface Mention {
  readonly text: ToldText;
  readonly from: number;
  readonly to: number;
}

/** One way in which an unlisted name is spelt. */
export interface Spelling {
  readonly name: string;
  /** In the order in which the content is read. */
  readonly mentions: readonly Mention[];
  /** How well whoever keeps the list in which it stands must know it; 0 for running copy. */
  readonly kept: number;
}

/** A spelling, and the commoner one that is meant. */
export interface Varied {
  readonly rare: Spelling;
  readonly common: Spelling;
}

export interface Spellings {
  readonly varieties: readonly Varied[];
  /** Every name that is spelt in more than one way. */
  readonly varied: ReadonlySet<string>;
}

const known = new WeakMap<Subject, Spellings>();

/** The unlisted names of all sets that are spelt in several ways. */
export function spellingsOf(subject: Subject): Spellings {
  const before = known.get(subject);
  if (before) return before;
  const { knows } = nameBook(subject);
  const varieties = varietiesOf(mentioned(subject), knows);
  const varied = new Set(varieties.flatMap(({ rare, common }) => [rare.name, common.name]));
  const found = { varieties, varied };
  known.set(subject, found);
  return found;
}

function mentioned(subject: Subject): readonly Spelling[] {
  const all = new Map<string, { mentions: Mention[]; kept: number }>();
  const mention = (name: string, place: Mention): void => {
    const spelling = all.get(name) ?? { mentions: [], kept: 0 };
    all.set(name, spelling);
    spelling.mentions.push(place);
    spelling.kept = Math.max(spelling.kept, keptBy(place.text));
  };
  for (const { text, matches, runs } of nameScans(subject)) {
    for (const { entry, from, to } of matches) {
      if (!entry.form.of.unlisted) continue;
      const name = text.text.slice(from, to).replace(/['’](?:s|d|ll|ve|re)?$/u, '');
      mention(name, { text, from, to: from + name.length });
    }
    for (const { from, to, name } of runs) mention(name, { text, from, to });
  }
  return [...all].map(([name, each]) => ({ name, ...each }));
}

/** A contract has the name of who signs or draws; a credit is written by hand. */
function keptBy({ what }: ToldText): number {
  if (/^`signers|^the name of an artist/u.test(what)) return 2;
  return what.startsWith('`credits') ? 1 : 0;
}

type Knows = (word: string) => boolean;

function varietiesOf(spellings: readonly Spelling[], knows: Knows): readonly Varied[] {
  const near = new NearWords();
  const byLetters = new Map<string, Spelling[]>();
  for (const spelling of spellings) {
    const letters = lettersOf(spelling.name);
    near.add(letters);
    byLetters.set(letters, [...(byLetters.get(letters) ?? []), spelling]);
  }
  return spellings.flatMap((rare) => {
    const letters = lettersOf(rare.name);
    const others = near
      .near(letters)
      .filter(({ word, distance, alike }) => isNear(letters, word, distance, alike))
      .flatMap(({ word }) => byLetters.get(word) ?? []);
    const same = byLetters.get(letters) ?? [];
    const common = [...same, ...others]
      .filter((other) => other !== rare && isCommoner(other, rare) && isVariety(other, rare, knows))
      .sort((a, b) => (isCommoner(a, b) ? -1 : 1))[0];
    return common ? [{ rare, common }] : [];
  });
}

function lettersOf(name: string): string {
  return lettersOnly(name).replace(/[^a-z0-9]/gu, '');
}

function isNear(a: string, b: string, distance: number, alike: boolean): boolean {
  const length = Math.min(a.length, b.length);
  if (length < 4) return false;
  const most = length < 8 ? 1 : 2;
  return distance <= most || (alike && distance <= most + 1);
}

/** By how often it stands, then by whether a list has it, then by which was read first. */
function isCommoner(a: Spelling, b: Spelling): boolean {
  const by = a.mentions.length - b.mentions.length || a.kept - b.kept;
  return by !== 0 ? by > 0 : placeIn(a) < placeIn(b);
}

function placeIn({ mentions, name }: Spelling): string {
  const [first] = mentions;
  const spot = first?.text.spotOf(first.from, first.to);
  return spot ? `${spot.source.file}\n${String(spot.from).padStart(9, '0')}` : name;
}

/** Not where each has a word of its own that is right: Tim and Tom are two, and so are all and one. */
function isVariety(a: Spelling, b: Spelling, knows: Knows): boolean {
  const one = a.name.split(/[\s-]+/u);
  const two = b.name.split(/[\s-]+/u);
  if (one.length !== two.length) return lettersOf(a.name) === lettersOf(b.name);
  return one.every((word, at) => {
    const other = two[at] ?? '';
    if (word === other) return true;
    if (word + 's' === other || other + 's' === word) return false;
    return !(knows(word) && knows(other));
  });
}
