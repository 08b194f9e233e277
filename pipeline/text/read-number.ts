/** What number words say, where they stand in a text: UTF-16 units from its start. */
export interface SpokenNumber {
  readonly from: number;
  readonly to: number;
  readonly value: number;
}

const SMALL = new Map(
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'
    .split(' ')
    .map((word, value) => [word, value] as const),
);
const TENS = new Map(
  'twenty thirty forty fifty sixty seventy eighty ninety'
    .split(' ')
    .map((word, at) => [word, 20 + 10 * at] as const),
);

const WORD = /\p{L}+/gu;

/** Whole numbers below a million that are written in words, "a hundred and six" too. */
export function spokenNumbers(text: string): readonly SpokenNumber[] {
  const found: SpokenNumber[] = [];
  let run: { word: string; from: number; to: number }[] = [];
  const finish = (): void => {
    while (run.at(-1)?.word === 'and') run.pop();
    const [first] = run;
    const last = run.at(-1);
    const value = valueOf(run.map(({ word }) => word));
    if (first && last && value !== null) found.push({ from: first.from, to: last.to, value });
    run = [];
  };
  for (const { 0: typed, index } of text.matchAll(WORD)) {
    const word = typed.toLowerCase();
    const last = run.at(-1);
    const joins = last !== undefined && /^(?: |-| )$/.test(text.slice(last.to, index));
    if (last && (!joins || !mayFollow(last.word, word, text.charAt(last.to)))) finish();
    const isNumber = SMALL.has(word) || TENS.has(word);
    const article = isPower(word) && run.length === 0 ? /\ba $/i.exec(text.slice(0, index)) : null;
    if (article) run.push({ word: 'one', from: article.index, to: index - 1 });
    if (isNumber || (run.length > 0 && /^(?:hundred|thousand|and)$/.test(word))) {
      run.push({ word, from: index, to: index + typed.length });
    } else {
      finish();
    }
  }
  finish();
  return found;
}

/** Whether a number word goes on with another: "forty two" does, "two or three" and "two two" do not. */
function mayFollow(last: string, next: string, between: string): boolean {
  const small = SMALL.get(next);
  if (TENS.has(last)) return (small !== undefined && small > 0 && small < 10) || isPower(next);
  if (last === 'hundred') return next === 'and' || next === 'thousand' || isBelow(next);
  if (last === 'thousand') return next === 'and' || isBelow(next);
  if (last === 'and') return isBelow(next);
  return between !== '-' && isPower(next);
}

function isPower(word: string): boolean {
  return word === 'hundred' || word === 'thousand';
}

function isBelow(word: string): boolean {
  return SMALL.has(word) || TENS.has(word);
}

function valueOf(words: readonly string[]): number | null {
  if (words.length === 0) return null;
  let total = 0;
  let part = 0;
  for (const word of words) {
    if (word === 'hundred') part *= 100;
    else if (word === 'thousand') {
      total += part * 1000;
      part = 0;
    } else part += SMALL.get(word) ?? TENS.get(word) ?? 0;
  }
  return total + part;
}
