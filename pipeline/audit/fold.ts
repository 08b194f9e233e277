/**
 * A text as it is compared: letters and digits alone, small, without marks, compatibility forms
 * (joined or wide letters) as the letters they stand for. What Unicode calls default ignorable, marks
 * and apostrophes are left out without a trace; everything else parts the letters beside it.
 */
export interface Folded {
  /** UTF-16 units of the letters: the first `length` of them count, here and below. */
  readonly units: Uint16Array;
  /** The place of each in the text. */
  readonly at: Uint32Array;
  /** 1 where something parts a letter from the one before; the first is parted. */
  readonly parted: Uint8Array;
  readonly length: number;
}

const PARTS = 0;
const DROPPED = 0xffff;
/** In the table of units: more letters than one, or half a character. */
const LONGER = 0xfffe;
const UNKNOWN = 0xfffd;

/** What becomes of each UTF-16 unit, worked out when it is first met: a table of plain facts. */
const UNITS = new Uint16Array(0x10000).fill(UNKNOWN);

/** Folds a text; over what was folded before, if that is given and no longer needed. */
export function fold(text: string, over?: Folded): Folded {
  const reused = over && over.units.length >= text.length ? over : undefined;
  const most = over ? 2 * text.length : text.length;
  let units = reused?.units ?? new Uint16Array(most);
  let at = reused?.at ?? new Uint32Array(most);
  let parted = reused?.parted ?? new Uint8Array(most);
  let length = 0;
  let gap = 1;
  for (let place = 0; place < text.length; place += 1) {
    const unit = text.charCodeAt(place);
    let folded = UNITS[unit] ?? PARTS;
    if (folded === UNKNOWN) folded = learn(unit);
    if (folded === DROPPED) continue;
    if (folded === PARTS) {
      gap = 1;
    } else if (folded !== LONGER) {
      units[length] = folded;
      at[length] = place;
      parted[length] = gap;
      length += 1;
      gap = 0;
    } else {
      const character = String.fromCodePoint(text.codePointAt(place) ?? 0);
      const long = foldedCharacter(character);
      if (long === null) gap = 1;
      const more = (long ?? '').length;
      if (length + more + text.length - place > units.length) {
        const room = 2 * (length + more + text.length - place);
        units = grown(units, new Uint16Array(room));
        at = grown(at, new Uint32Array(room));
        parted = grown(parted, new Uint8Array(room));
      }
      for (let index = 0; index < more; index += 1) {
        units[length] = (long ?? '').charCodeAt(index);
        at[length] = place;
        parted[length] = gap;
        length += 1;
        gap = 0;
      }
      place += character.length - 1;
    }
  }
  return { units, at, parted, length };
}

/** The letters of a text in a row. */
export function letters(text: string): string {
  return lettersOf(fold(text));
}

/** The letters of a folded text in a row. */
export function lettersOf({ units, length }: Folded): string {
  let all = '';
  for (let from = 0; from < length; from += 8192) {
    all += String.fromCharCode(...units.subarray(from, Math.min(length, from + 8192)));
  }
  return all;
}

function grown<T extends Uint8Array | Uint16Array | Uint32Array>(old: T, next: T): T {
  next.set(old);
  return next;
}

function learn(unit: number): number {
  const isHalf = unit >= 0xd800 && unit <= 0xdfff;
  const folded = isHalf ? 'half' : foldedCharacter(String.fromCharCode(unit));
  const value =
    folded === null
      ? PARTS
      : folded === ''
        ? DROPPED
        : folded.length === 1
          ? folded.charCodeAt(0)
          : LONGER;
  UNITS[unit] = value;
  return value;
}

/** The letters of one character; empty if it leaves no trace, null if it parts letters. */
function foldedCharacter(character: string): string | null {
  const plain = character.normalize('NFKD').toLowerCase().replace(/ς/g, 'σ');
  const kept = plain.replace(/[^\p{L}\p{N}]+|\p{Default_Ignorable_Code_Point}+/gu, '');
  if (kept !== '') return kept;
  return /^(?:\p{M}|\p{Cf}|\p{Default_Ignorable_Code_Point}|['‘’‛`´])+$/u.test(plain) ? '' : null;
}
