import { editDistance } from './distance.js';
import { isArticle, type FormEntry } from './form-entry.js';
import { endKeys, isJoint, type FormText, type NearForm } from './form-match.js';
import { putFor } from './form-put.js';
import { isCapital, type NameToken } from './name-tokens.js';

/** The least letters that the words with capitals have together. */
const LEAST_LETTERS = 6;

/** Names with small words in them, of which one is wrong: "van den" for "van der", "off the". */
export class ParticleForms<T> {
  readonly #byFirst = new Map<string, FormEntry<T>[]>();

  add(entry: FormEntry<T>): void {
    const [first] = entry.tokens;
    const capitals = entry.tokens.filter(({ base }) => isCapital(base));
    const letters = capitals.reduce((sum, { key }) => sum + key.length, 0);
    if (!first || capitals.length < 2 || letters < LEAST_LETTERS) return;
    if (!isCapital(first.base) || capitals.length === entry.tokens.length) return;
    const known = this.#byFirst.get(first.whole);
    if (known) known.push(entry);
    else this.#byFirst.set(first.whole, [entry]);
  }

  /** Every form that begins with a word of a text and has one small word wrong. */
  at(at: number, text: FormText): readonly NearForm<T>[] {
    const first = text.tokens[at];
    const entries = first && this.#byFirst.get(first.whole);
    if (!entries) return NONE;
    return entries.flatMap((entry) => {
      const match = matchAt(entry, at, text);
      return match ? [match] : [];
    });
  }
}

const NONE: readonly never[] = [];

function matchAt<T>(entry: FormEntry<T>, at: number, text: FormText): NearForm<T> | null {
  const length = entry.tokens.length;
  const here = text.tokens.slice(at, at + length);
  if (here.length !== length) return null;
  let distance = 0;
  let plural = '';
  for (const [index, token] of here.entries()) {
    const due = entry.tokens[index];
    if (!due || (index > 0 && !isJoint(token.gap))) return null;
    if (token.whole === due.whole && isCapital(token.base) === isCapital(due.base)) continue;
    const ending = index === length - 1 ? endOf(token, due) : null;
    if (ending !== null) plural = ending;
    else if (distance === 0 && isWrong(token, due)) distance = editDistance(token.key, due.key);
    else return null;
  }
  const from = here[0]?.from ?? 0;
  return distance === 0
    ? null
    : {
        entry,
        at,
        length,
        from,
        to: here.at(-1)?.to ?? from,
        slip: 'letters',
        clear: distance === 1,
        put: putFor(entry, at, length, plural, text),
        distance,
      };
}

/** The plural ending with which a last word stands; null if it is another word. */
function endOf(token: NameToken, due: NameToken): string | null {
  if (!isCapital(token.base)) return null;
  return endKeys(token).find(([key]) => key === due.key)?.[1] ?? null;
}

/** Whether a small word is nearly the one that is due. */
function isWrong(token: NameToken, due: NameToken): boolean {
  if (isCapital(due.base) || isCapital(token.base)) return false;
  const most = due.key.length < 3 ? 1 : 2;
  const far = editDistance(token.key, due.key);
  return far > 0 && far <= most && (far === 1 || !isArticle(due.base));
}
