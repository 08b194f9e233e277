import type { NamesFile } from '../../../schema/index.js';
import type { FormMatch } from '../../text/index.js';
import { nameBook } from './book.js';
import { formsOf, type ListedName, type NameOwner } from './forms.js';
import { placed } from './placed.js';
import { isToldEarly, nameScans } from './scan.js';
import type { Remark } from '../rule.js';
import { wholeOf, type Subject } from '../subject.js';
import type { ToldText } from '../told/text.js';

type NamingPlace = NonNullable<NamesFile['performers']>[number];

/** Names that are to stand in full and do not, and performers who are named where none may be. */
export function* billingRemarks(subject: Subject): Generator<Remark> {
  const { names = [], performers } = subject.content.names?.value ?? {};
  const billed = names.some(({ billing }) => billing === 'full');
  if (!billed && performers === undefined) return;
  const shared = billed ? sharedWords(wholeOf(subject), names) : new Set<string>();
  for (const { text, matches } of nameScans(subject)) {
    for (const match of matches) {
      const remark =
        (billed ? shortened(match, text, shared, subject) : null) ??
        (performers ? misplaced(match, text, performers) : null);
      if (remark && !isToldEarly(subject, text, match.from, match.to)) yield remark;
    }
  }
}

/** Words that stand in the names of several, and so are short for none. */
function sharedWords(
  { content, cards, sets }: Subject,
  names: readonly ListedName[],
): ReadonlySet<string> {
  const bearers = new Map<string, Set<string>>();
  const bear = (name: string, form: string): void => {
    for (const word of form.split(/\s+/u)) {
      bearers.set(word, (bearers.get(word) ?? new Set<string>()).add(name));
    }
  };
  for (const name of names) for (const form of formsOf(name)) bear(name.name, form);
  for (const { name } of content.people?.value.people ?? []) bear(name, name);
  for (const { front } of cards) {
    for (const { name } of [...(front.signers ?? []), ...(front.credits ?? [])]) bear(name, name);
  }
  for (const { rosters } of sets) {
    for (const { value } of rosters.values())
      for (const { name } of value.artists) bear(name, name);
  }
  return new Set([...bearers].flatMap(([word, of]) => (of.size > 1 ? [word] : [])));
}

function shortened(
  { entry, slip, from, to, put }: FormMatch<NameOwner>,
  text: ToldText,
  shared: ReadonlySet<string>,
  subject: Subject,
): Remark | null {
  const { form, use, role, of } = entry.form;
  const { listed } = of;
  if (listed?.billing !== 'full' || slip !== null || role === 'avoid') return null;
  if (!isShort(form, listed.name) || shared.has(form)) return null;
  const small = form.toLowerCase();
  if (role === 'part' && startsSentence(text.text, from) && nameBook(subject).knows(small))
    return null;
  const full = listed.name + put.slice(use.length);
  return {
    ...text.owner,
    ...placed(text, from, to, full, false),
    message: `${text.what} shortens ${listed.name}, who is named in full`,
    found: text.text.slice(from, to),
    expected: `\`${full}\``,
  };
}

/** Whether a form is a name without some of its words, or with an initial. */
function isShort(form: string, name: string): boolean {
  const words = name.split(/\s+/u);
  const own = form.split(/\s+/u);
  if (form === name || form.includes(',')) return false;
  const left = own.filter((word) => !words.includes(word));
  return (
    (own.length < words.length && left.length === 0) ||
    left.some((word) => /^\p{Lu}\.$/u.test(word))
  );
}

function startsSentence(text: string, from: number): boolean {
  return /(?:^|[.!?…:“"‘(—–]\s*)$/u.test(text.slice(0, from));
}

function misplaced(
  { entry, from, to }: FormMatch<NameOwner>,
  text: ToldText,
  allowed: readonly NamingPlace[],
): Remark | null {
  const { listed } = entry.form.of;
  if (listed?.kind !== 'performer' || entry.form.role === 'part') return null;
  const place = placeOf(text, from, to);
  if (place === null || allowed.includes(place)) return null;
  return {
    ...text.owner,
    spot: text.spotOf(from, to),
    message: `${text.what} names ${listed.name}, and performers are not named here`,
    found: `${text.text.slice(from, to)}: in ${place}`,
    expected: `performers in ${allowed.length === 0 ? 'no place' : allowed.join(', ')} alone`,
  };
}

const PLACES: readonly (readonly [RegExp, NamingPlace])[] = [
  [/^the bio/, 'bio'],
  [/^`(?:name|publicName)`/, 'name'],
  [/^`facts\./, 'facts'],
  [/^`(?:texts\.|variation\.tell|shared\.)|^the statement/, 'texts'],
  [/^`image\.alt/, 'alt'],
  [/^`signers/, 'signers'],
  [/^`credits/, 'credits'],
];

/** The place that a text is, as `performers` calls it; null for what it does not speak of. */
function placeOf({ what, spotOf }: ToldText, from: number, to: number): NamingPlace | null {
  const place = PLACES.find(([pattern]) => pattern.test(what))?.[1];
  if (place !== undefined) return place;
  return /\/sales\//.test(spotOf(from, to).source.file) ? 'sales' : null;
}
