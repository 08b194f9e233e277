import type { Hold, YamlPath } from '../model/index.js';
import type { NamedForm } from '../text/index.js';
import { knownHold } from './known-hold.js';
import type { Subject } from './subject.js';

/** Whose a form is, and from when it may be told; a phrase in which it is innocent is always open. */
export interface Bearer {
  readonly name: string;
  readonly hold: Hold | null;
  readonly path: YamlPath;
}

/** Every form of every name of the cast, forms to avoid too, and the phrases in which they are innocent. */
export function* castForms({ content, schedule }: Subject): Generator<NamedForm<Bearer>> {
  for (const [at, name] of (content.names?.value.names ?? []).entries()) {
    const own = knownHold(schedule, name);
    const exact = name.match === 'exact';
    const path = ['names', at, 'name'];
    const of = { name: name.name, hold: own, path };
    for (const form of withoutArticle(name.name)) yield { form, exact, of };
    for (const alias of name.aliases ?? []) {
      const form = typeof alias === 'string' ? alias : alias.form;
      const hold = typeof alias === 'string' ? own : knownHold(schedule, name, alias);
      yield { form, exact, of: { name: name.name, hold, path } };
    }
    for (const { form } of name.avoid ?? []) {
      yield { form, exact, of: { name: name.name, hold: own, path } };
    }
    for (const phrase of name.except ?? []) {
      yield { form: phrase, exact: false, of: { name: phrase, hold: null, path } };
    }
  }
}

/** A name, and without its article where two words are left: "the Ninth Gate", "Ninth Gate". */
function withoutArticle(name: string): readonly string[] {
  const rest = /^(?:the|a|an)\s+(\S+\s+\S.*)$/iu.exec(name)?.[1];
  return rest === undefined ? [name] : [name, rest];
}
