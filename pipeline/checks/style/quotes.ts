import type { HouseStyle } from '../../../schema/index.js';
import type { Slip } from './slip.js';

type Style = Pick<HouseStyle, 'quotes' | 'speech'>;

/** A quotation mark, an apostrophe, or a mark of feet, inches, minutes. */
interface Mark {
  readonly at: number;
  readonly sign: string;
  readonly isDouble: boolean;
  /** What it is by what stands around it. */
  readonly role: 'open' | 'close' | 'either' | 'apostrophe' | 'measure';
}

/** Words stand between two marks. */
interface Pair {
  readonly open: Mark;
  readonly close: Mark;
  readonly depth: number;
}

const MARK = /["“”„‟'‘’‚‛]/gu;
/** What is said with its beginning left out. */
const HEADLESS =
  /^(?:tis|twas|twill|twere|twould|twixt|em|til|cause|round|bout|neath|gainst|n|cos|cuz|fraid|tween|cept)(?![\p{L}])/iu;
const YEARS = /^\d0s(?!\p{L})/u;

/** Marks of the wrong shape, that turn the wrong way, or that stand around speech in another style. */
export function quoteSlips(text: string, style: Style): Slip[] {
  if (style.quotes === undefined && style.speech === undefined) return [];
  if (!/["“”„‟'‘’‚‛]/u.test(text)) return [];
  const marks = marksIn(text);
  const pairs = pairsOf(marks, text);
  const right = new Map(marks.map((mark) => [mark.at, rightSign(mark, pairs, style)]));
  const turned = pairs.filter(({ open, depth }) => depth === 0 && isWrongSpeech(open, style));
  const written = (from: number, to: number): string =>
    Array.from(
      { length: to - from },
      (_, step) => right.get(from + step) ?? text.charAt(from + step),
    ).join('');
  return [
    ...turned.map(({ open, close }): Slip => ({
      from: open.at,
      to: close.at + 1,
      message: `what is said stands in ${open.isDouble ? 'double' : 'single'} marks`,
      expected: `${style.speech ?? ''} marks`,
      fix: written(open.at, close.at + 1),
      certain: false,
    })),
    ...marks
      .filter(({ at, sign }) => (right.get(at) ?? sign) !== sign)
      .filter(({ at }) => !turned.some(({ open, close }) => open.at <= at && at <= close.at))
      .map((mark) => markSlip(mark, right.get(mark.at) ?? mark.sign)),
  ];
}

function markSlip({ at, sign, role }: Mark, right: string): Slip {
  const what = role === 'apostrophe' ? 'an apostrophe' : 'a quotation mark';
  const isCurly = !/["']/.test(sign);
  const shape =
    isCurly && !/["']/.test(right)
      ? 'that turns the wrong way'
      : isCurly
        ? 'that is curly'
        : 'that is straight';
  return {
    from: at,
    to: at + 1,
    message: `${what} ${shape}`,
    expected: right,
    fix: right,
    certain: true,
  };
}

function marksIn(text: string): Mark[] {
  let isOpen = false;
  let isOpenSingle = false;
  return Array.from(text.matchAll(MARK), ({ 0: sign, index: at }): Mark => {
    const isDouble = /["“”„‟]/u.test(sign);
    const before = text.charAt(at - 1);
    const after = text.slice(at + 1, at + 10);
    const opens = /^$|[\s([{—–/“‘"'-]/u.test(before) && /^[^\s.,;:!?)\]]/u.test(after);
    const role = ((): Mark['role'] => {
      if (/\d/.test(before) && /["']/.test(sign) && !(isDouble ? isOpen : isOpenSingle)) {
        return /^s(?!\p{L})/u.test(after) ? 'apostrophe' : 'measure';
      }
      if (!isDouble && /[\p{L}\p{N}]/u.test(before) && /^[\p{L}\p{N}]/u.test(after))
        return 'apostrophe';
      if (!isDouble && opens && (HEADLESS.test(after) || YEARS.test(after))) return 'apostrophe';
      if (isDouble && opens && /^[\s([{—–]?$/u.test(before)) return 'open';
      if (!isDouble && opens) return 'open';
      if (isDouble) return opens && !isOpen ? 'open' : 'close';
      return 'either';
    })();
    if (role === 'open' || role === 'close') {
      if (isDouble) isOpen = role === 'open';
      else isOpenSingle = true;
    }
    return { at, sign, isDouble, role };
  });
}

/** Marks that belong together. Of several that may close single marks, one after a stop does, else the last. */
function pairsOf(marks: readonly Mark[], text: string): readonly Pair[] {
  const pairs: Pair[] = [];
  const open: Mark[] = [];
  for (const [index, mark] of marks.entries()) {
    if (mark.role === 'open') open.push(mark);
    if (mark.role !== 'close' && mark.role !== 'either') continue;
    const last = open.at(-1);
    if (!last || last.isDouble !== mark.isDouble) continue;
    if (mark.role === 'either' && !closesHere(mark, marks.slice(index + 1), text)) continue;
    open.pop();
    pairs.push({ open: last, close: mark, depth: open.length });
  }
  return pairs;
}

function closesHere({ at }: Mark, later: readonly Mark[], text: string): boolean {
  if (/[.,!?…—–]/u.test(text.charAt(at - 1))) return true;
  const until = later.findIndex(({ role }) => role === 'open' || role === 'close');
  const rivals = later.slice(0, until < 0 ? later.length : until);
  return !rivals.some(({ role }) => role === 'either');
}

function isWrongSpeech({ isDouble }: Mark, { speech }: Style): boolean {
  return speech !== undefined && isDouble !== (speech === 'double');
}

/** The sign that a mark is to be. */
function rightSign(mark: Mark, pairs: readonly Pair[], style: Style): string {
  if (mark.role === 'measure') return mark.sign;
  const pair = pairs.find(({ open, close }) => open === mark || close === mark);
  const outer = pairs.find(
    ({ open, close, depth }) => depth === 0 && open.at <= mark.at && mark.at <= close.at,
  );
  const isTurned = pair !== undefined && outer !== undefined && isWrongSpeech(outer.open, style);
  const isDouble = isTurned ? !mark.isDouble : mark.isDouble;
  const isCurly = style.quotes === undefined ? !/["']/.test(mark.sign) : style.quotes === 'curly';
  if (!isCurly) return isDouble ? '"' : "'";
  const isOpening = pair ? pair.open === mark : mark.role === 'open';
  if (isDouble) return isOpening ? '“' : '”';
  // A single mark that nothing closes is an apostrophe: "‘Ere we go".
  return isOpening && (pair !== undefined || mark.sign === '‘') ? '‘' : '’';
}
