import type { Content } from '../../model/index.js';
import { runningWords } from '../../text/index.js';
import { castNames } from '../cast.js';
import type { Subject } from '../subject.js';

/** Words that stand in no dictionary and are right all the same, in small letters. */
export interface Lexicon {
  /** With the titles that the plans give. */
  readonly all: ReadonlySet<string>;
  readonly withoutTitles: ReadonlySet<string>;
  /** Each name of the cast as its words, in small letters. */
  readonly names: readonly (readonly string[])[];
}

/** Units, and what is said in writing and stands in few dictionaries. */
const COMMON = 'mm cm km kg mg ml cl oz lb lbs ft yd mph kph dpi px pt pts hz kb mb gb tv uk us ok';

/** Endings that a word of this world may take: plural, possessive, and those of verbs. */
const ENDINGS = ['', 's', 'es', 'ed', 'd', 'ing', 'er', 'ers', 'like', 'ish', 'ly', 'less'];

let last: Lexicon | null = null;

/** The words that a property adds. An equal lexicon is the same object, so that it may be a key. */
export function lexiconOf(subject: Subject): Lexicon {
  const made = makeLexicon(subject);
  if (last && equal(last.all, made.all) && equal(last.withoutTitles, made.withoutTitles)) {
    return last;
  }
  last = made;
  return made;
}

function makeLexicon(subject: Subject): Lexicon {
  const names = [...nameForms(subject)].map(wordsOf);
  const withoutTitles = new Set(COMMON.split(' '));
  for (const words of names) for (const word of words) addForms(withoutTitles, word);
  for (const text of subject.content.names?.value.words ?? []) {
    for (const word of wordsOf(text)) addForms(withoutTitles, word);
  }
  const all = new Set(withoutTitles);
  for (const title of titles(subject.content)) {
    for (const word of wordsOf(title)) addForms(all, word);
  }
  return { all, withoutTitles, names };
}

function* nameForms(subject: Subject): Generator<string> {
  const { content } = subject;
  for (const { name, forms } of castNames(subject)) {
    for (const { form } of forms) yield form;
    for (const { form } of name.avoid ?? []) yield form;
    yield* name.except ?? [];
  }
  for (const { name } of content.people?.value.people ?? []) yield name;
  for (const { rosters } of content.sets) {
    for (const { value } of rosters.values()) for (const { name } of value.artists) yield name;
  }
  const seen = new Set<string>();
  const fresh = (name: string): boolean => seen.size < seen.add(name).size;
  for (const { front } of content.sets.flatMap(({ cards }) => cards)) {
    for (const { name, as } of front.signers ?? []) {
      if (fresh(name)) yield name;
      if (as !== undefined && fresh(as)) yield as;
    }
    for (const { name } of front.credits ?? []) if (fresh(name)) yield name;
  }
}

function* titles({ sets }: Content): Generator<string> {
  for (const { value: plan } of sets.map((set) => set.plan)) {
    yield plan.title;
    if (plan.short !== undefined) yield plan.short;
    for (const { title } of plan.subsets) yield title;
    for (const { title } of plan.parallels ?? []) yield title;
    for (const { title } of plan.products ?? []) yield title;
    for (const total of Object.values(plan.totals ?? {})) {
      if (typeof total !== 'number' && total.title !== undefined) yield total.title;
    }
  }
}

function wordsOf(text: string): readonly string[] {
  return runningWords(text).map(({ text: word }) => smallLetters(word));
}

function addForms(to: Set<string>, word: string): void {
  const bare = word.replace(/'s$|'$/, '');
  const stems = [bare, ...doubled(bare)];
  if (bare.endsWith('e')) stems.push(bare.slice(0, -1));
  for (const stem of stems) for (const end of ENDINGS) addWord(to, stem + end);
  if (bare.endsWith('y')) for (const end of ['ies', 'ied']) addWord(to, bare.slice(0, -1) + end);
  addWord(to, word);
}

/** Without its marks too: that a mark is missing from a name is for the rules about names to say. */
function addWord(to: Set<string>, word: string): void {
  to.add(word);
  const plain = withoutMarks(word);
  if (plain !== word) to.add(plain);
}

/** "sculled" of "scull" is regular; "punted" needs none, "hummed" of "hum" has its last letter twice. */
function doubled(word: string): string[] {
  return /[^aeiou][aeiou][bdgklmnprt]$/.test(word) ? [word + word.slice(-1)] : [];
}

/** A word as the lexicon has it: no ligatures, straight apostrophes, no soft hyphens. */
export function smallLetters(word: string): string {
  return /^[a-z]+$/.test(word) ? word : plainLetters(word).toLowerCase();
}

/** A word as a dictionary takes it, with its capitals. */
export function plainLetters(word: string): string {
  if (/^[A-Za-z]+$/.test(word)) return word;
  return word
    .replace(/\u00ad/g, '')
    .replace(/[\ufb00-\ufb06]/g, (ligature) => ligature.normalize('NFKC'))
    .replace(/[’ʼ＇]/g, "'")
    .normalize('NFC');
}

export function withoutMarks(word: string): string {
  return word
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/ø/g, 'o')
    .replace(/æ/g, 'ae')
    .replace(/œ/g, 'oe');
}

function equal(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  if (a.size !== b.size) return false;
  for (const word of a) if (!b.has(word)) return false;
  return true;
}
