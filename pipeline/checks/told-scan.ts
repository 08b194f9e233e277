import { OPEN, opensLater } from '../model/index.js';
import { NameIndex, foldedWords, type NameMatch } from '../text/index.js';
import { castForms, castSurnames, type Bearer } from './cast.js';
import { entriesOf } from './secret-entries.js';
import type { Subject } from './subject.js';
import { toldTexts, type ToldText } from './told-texts.js';

/** A text that is read outside, with the names and the words of secrets that stand in it. */
export interface ToldScan {
  readonly text: ToldText;
  readonly names: readonly NameMatch<Bearer>[];
  /** Words of secrets that are no names: as the secret has them. */
  readonly words: readonly NameMatch<string>[];
}

const indexes = new WeakMap<Subject, NameIndex<Bearer>>();
const scans = new WeakMap<Subject, readonly ToldScan[]>();

/** The names of the cast, and surnames alone; several rules ask, so it is made once. */
export function castIndex(subject: Subject): NameIndex<Bearer> {
  const before = indexes.get(subject);
  if (before) return before;
  const index = new NameIndex([...castForms(subject), ...castSurnames(subject)]);
  indexes.set(subject, index);
  return index;
}

/** Every text that is read outside and has a name or a word of a secret; each is read once. */
export function toldScans(subject: Subject): readonly ToldScan[] {
  const before = scans.get(subject);
  if (before) return before;
  const found = hidesAnything(subject) ? [...scanned(subject)] : [];
  scans.set(subject, found);
  return found;
}

function hidesAnything(subject: Subject): boolean {
  if ((subject.content.names?.value.secrets ?? []).length > 0) return true;
  for (const { of } of castForms(subject)) if (of.hold && opensLater(of.hold, OPEN)) return true;
  return false;
}

function* scanned(subject: Subject): Generator<ToldScan> {
  const index = castIndex(subject);
  const entries = entriesOf(subject, index).flatMap(({ groups }) => groups.flat());
  const forms = entries.flatMap(({ word }) =>
    word === '' ? [] : [{ form: word, exact: false, of: word }],
  );
  const wordIndex = new NameIndex(forms, { slips: false });
  for (const text of toldTexts(subject)) {
    const read = foldedWords(text.text);
    const names = index.findIn(read);
    const words = wordIndex.findIn(read);
    if (names.length > 0 || words.length > 0) yield { text, names, words };
  }
}
