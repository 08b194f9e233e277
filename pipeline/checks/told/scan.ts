import { OPEN, opensLater, type Card, type CardSet } from '../../model/index.js';
import { NameIndex, foldedWords, type NameMatch } from '../../text/index.js';
import { castForms, castSurnames, type Bearer } from '../cast.js';
import { groundOf, oncePerGround, type Ground } from '../ground.js';
import { entriesOf } from '../secret-entries.js';
import type { Subject } from '../subject.js';
import { cardTexts } from './card.js';
import { textsBesideCards, type ToldText } from './texts.js';

/** A text that is read outside, with the names and the words of secrets that stand in it. */
export interface ToldScan {
  readonly text: ToldText;
  readonly names: readonly NameMatch<Bearer>[];
  /** Words of secrets that are no names: as the secret has them. */
  readonly words: readonly NameMatch<string>[];
}

/** The names of the cast, and surnames alone; several rules ask, so it is made once. */
export const castIndex: (subject: Subject) => NameIndex<Bearer> = oncePerGround(
  (subject) => new NameIndex([...castForms(subject), ...castSurnames(subject)]),
);

const hidesAnything = oncePerGround((subject) => {
  if ((subject.content.names?.value.secrets ?? []).length > 0) return true;
  for (const { of } of castForms(subject)) if (of.hold && opensLater(of.hold, OPEN)) return true;
  return false;
});

const secretWords = oncePerGround((subject) => {
  const entries = entriesOf(subject, castIndex(subject)).flatMap(({ groups }) => groups.flat());
  const forms = entries.flatMap(({ word }) =>
    word === '' ? [] : [{ form: word, exact: false, of: word }],
  );
  return new NameIndex(forms, { slips: false });
});

const scans = new WeakMap<Subject, readonly ToldScan[]>();

/** Every text that is read outside and has a name or a word of a secret; each is read once. */
export function toldScans(subject: Subject): readonly ToldScan[] {
  const before = scans.get(subject);
  if (before) return before;
  const found = hidesAnything(subject) ? [...scanned(subject)] : [];
  scans.set(subject, found);
  return found;
}

function* scanned(subject: Subject): Generator<ToldScan> {
  yield* scansOf(textsBesideCards(subject), subject);
  const ground = groundOf(subject);
  for (const set of subject.sets) {
    for (const card of set.cards) yield* cardScans(card, set, ground, subject);
  }
}

/** What was found on a card, and with what beside it. */
interface CardScans {
  readonly ground: Ground;
  readonly plan: object;
  readonly found: readonly ToldScan[];
}

const ofCards = new WeakMap<Card, CardScans>();

/** A card is read again only when something else than it is has changed. */
function cardScans(
  card: Card,
  set: CardSet,
  ground: Ground,
  subject: Subject,
): readonly ToldScan[] {
  const plan = set.plan.value;
  const before = ofCards.get(card);
  if (before?.ground === ground && before.plan === plan) return before.found;
  const found = [...scansOf(cardTexts(card, set, subject), subject)];
  ofCards.set(card, { ground, plan, found });
  return found;
}

function* scansOf(texts: Iterable<ToldText>, subject: Subject): Generator<ToldScan> {
  const index = castIndex(subject);
  const wordIndex = secretWords(subject);
  for (const text of texts) {
    const read = foldedWords(text.text);
    const names = index.findIn(read);
    const words = wordIndex.findIn(read);
    if (names.length > 0 || words.length > 0) yield { text, names, words };
  }
}
