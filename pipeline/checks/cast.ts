import type { NamesFile } from '../../schema/index.js';
import type { Hold, YamlPath } from '../model/index.js';
import type { NamedForm } from '../text/index.js';
import { knownHold } from './known-hold.js';
import type { Subject } from './subject.js';

/** Whose a form is, and from when it may be told; a phrase in which it is innocent is always open. */
export interface Bearer {
  readonly name: string;
  readonly hold: Hold | null;
  readonly path: YamlPath;
  /** The form is a surname alone, which nobody listed. */
  readonly surname: boolean;
}

type Name = NamesFile['names'][number];

/** Every form of every name of the cast, forms to avoid too, and the phrases in which they are innocent. */
export function* castForms(subject: Subject): Generator<NamedForm<Bearer>> {
  for (const { name, of, forms } of castNames(subject)) {
    const exact = name.match === 'exact';
    for (const { form, hold } of forms) {
      for (const way of waysToWrite(form, name)) yield { form: way, exact, of: { ...of, hold } };
    }
    for (const { form } of name.avoid ?? []) yield { form, exact, of };
    for (const phrase of name.except ?? []) {
      yield { form: phrase, exact: false, of: { ...of, name: phrase, hold: null } };
    }
  }
}

/** A name of the cast with its aliases, and from when each may be told. */
export interface CastName {
  readonly name: Name;
  readonly of: Bearer;
  readonly forms: readonly { readonly form: string; readonly hold: Hold | null }[];
}

export function* castNames({ content, schedule }: Subject): Generator<CastName> {
  for (const [at, name] of (content.names?.value.names ?? []).entries()) {
    const own = knownHold(schedule, name);
    const aliases = (name.aliases ?? []).map((alias) =>
      typeof alias === 'string'
        ? { form: alias, hold: own }
        : { form: alias.form, hold: knownHold(schedule, name, alias) },
    );
    const of = { name: name.name, hold: own, path: ['names', at, 'name'], surname: false };
    yield { name, of, forms: [{ form: name.name, hold: own }, ...aliases] };
  }
}

/** The least letters of a surname that is told from other words by its capital. */
const SURNAME_LETTERS = 5;

/**
 * Surnames alone of people whom the cast has no such form of: they tell of the bearer, though less
 * surely. A word that stands in the names of several tells of nobody.
 */
export function* castSurnames(subject: Subject): Generator<NamedForm<Bearer>> {
  const cast = [...castNames(subject)];
  const known = new Set(cast.flatMap(({ forms }) => forms.map(({ form }) => form)));
  const bearers = new Map<string, Set<string>>();
  for (const { of, forms } of cast) {
    for (const word of forms.flatMap(({ form }) => form.split(/\s+/u))) {
      bearers.set(word, (bearers.get(word) ?? new Set<string>()).add(of.name));
    }
  }
  for (const { name, of, forms } of cast) {
    if (!isPerson(name) || name.match === 'exact') continue;
    for (const { form, hold } of forms) {
      const surname = /^\p{Lu}\S* (?:\S+ )*(\p{Lu}\S+)$/u.exec(form)?.[1];
      if (surname === undefined || surname.length < SURNAME_LETTERS || known.has(surname)) continue;
      if (bearers.get(surname)?.size !== 1) continue;
      known.add(surname);
      yield { form: surname, exact: true, of: { ...of, hold, surname: true } };
    }
  }
}

function isPerson({ kind }: Name): boolean {
  return kind === 'character' || kind === 'performer' || kind === 'maker';
}

/** A form, without its article, and for a person surname first and with the initial alone. */
function waysToWrite(form: string, name: Name): readonly string[] {
  // An article is left out where two words are left: "the Ninth Gate", "Ninth Gate".
  const bare = /^(?:the|a|an)\s+(\S+\s+\S.*)$/iu.exec(form)?.[1];
  if (bare !== undefined) return [form, bare];
  const words = form.split(/\s+/u);
  const last = words.at(-1);
  const first = words.slice(0, -1).join(' ');
  if (!isPerson(name) || last === undefined || first === '') return [form];
  if (/^(?:the|a|an)$/iu.test(words[0] ?? '') || !words.every((each) => /^\p{Lu}/u.test(each))) {
    return [form];
  }
  const initial = Array.from(first)[0] ?? '';
  return [
    form,
    `${last}, ${first}`,
    `${last} ${first}`,
    `${initial}. ${last}`,
    `${initial} ${last}`,
  ];
}
