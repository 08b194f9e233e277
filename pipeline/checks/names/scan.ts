import { foldedWords } from '../../text/index.js';
import type { Card, CardSet } from '../../model/index.js';
import { groundOf, type Ground } from '../ground.js';
import { nameBook, type NameBook, type NameReading } from './book.js';

import type { Subject } from '../subject.js';
import { toldEarly } from '../told/early.js';
import { castIndex } from '../told/scan.js';
import { cardTexts } from '../told/card.js';
import { textsBesideCards, type ToldText } from '../told/texts.js';

/** A text that is read outside, with the names in it. */
export interface NameScan extends NameReading {
  readonly text: ToldText;
}

const scans = new WeakMap<Subject, readonly NameScan[]>();

/** Every text that has a name, or what may be one; several rules ask, so each is read once. */
export function nameScans(subject: Subject): readonly NameScan[] {
  const before = scans.get(subject);
  if (before) return before;
  const book = nameBook(subject);
  const ground = groundOf(subject);
  const found = scansOf(textsBesideCards(subject), book);
  for (const set of subject.sets) {
    for (const card of set.cards) found.push(...cardScans(card, set, { book, ground }, subject));
  }
  scans.set(subject, found);
  return found;
}

/** What the texts of a card are read with. */
interface Reading {
  readonly book: NameBook;
  readonly ground: Ground;
}

/** What was found on a card, and with what beside it. */
interface CardScans extends Reading {
  readonly plan: object;
  readonly found: readonly NameScan[];
}

const ofCards = new WeakMap<Card, CardScans>();

/** A card is read again only when something else than it is has changed. */
function cardScans(
  card: Card,
  set: CardSet,
  { book, ground }: Reading,
  subject: Subject,
): readonly NameScan[] {
  const plan = set.plan.value;
  const before = ofCards.get(card);
  if (before?.book === book && before.ground === ground && before.plan === plan)
    return before.found;
  const found = scansOf(cardTexts(card, set, subject), book);
  ofCards.set(card, { book, ground, plan, found });
  return found;
}

function scansOf(texts: Iterable<ToldText>, book: NameBook): NameScan[] {
  const found: NameScan[] = [];
  for (const text of texts) {
    if (text.kind === 'id' || text.seams) continue;
    const { matches, runs } = book.read(text.text, isTitle(text) ? 'title' : 'copy');
    if (matches.length > 0 || runs.length > 0) found.push({ text, matches, runs });
  }
  return found;
}

/** Whether a text is set as a title, with capitals of its own. */
function isTitle({ kind, what }: ToldText): boolean {
  return kind === 'name' || /title|`short`|`publicName`|^the label|^the name/u.test(what);
}

/** Whether `leak` or `name-held` already speaks of some words of a text, which is enough. */
export function isToldEarly(subject: Subject, text: ToldText, from: number, to: number): boolean {
  const matches = castIndex(subject).findIn(foldedWords(text.text));
  return matches.some(
    (match) => match.from < to && from < match.to && toldEarly(match, text) !== null,
  );
}
