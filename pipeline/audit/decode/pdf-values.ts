/** A value of a PDF file (ISO 32000-1, 7.3); strings and streams as characters below 256. */
export type PdfValue =
  | null
  | boolean
  | number
  | PdfName
  | PdfString
  | PdfReference
  | PdfOperator
  | readonly PdfValue[]
  | PdfDictionary;

export interface PdfName {
  readonly is: 'name';
  readonly name: string;
}

export interface PdfString {
  readonly is: 'string';
  readonly bytes: string;
}

export interface PdfReference {
  readonly is: 'reference';
  readonly number: number;
}

/** A bare word: an operator of a content stream, or `obj`, `stream` and the like. */
export interface PdfOperator {
  readonly is: 'operator';
  readonly word: string;
}

export interface PdfDictionary {
  readonly is: 'dictionary';
  readonly entries: ReadonlyMap<string, PdfValue>;
}

const SPACE = /[\0\t\n\f\r ]/;
const END_OF_WORD = /[\0\t\n\f\r ()<>[\]{}/%]/;
/** Arrays and dictionaries in each other, deeper than any that a program makes. */
const DEEPEST = 64;

/** Reads values one after the other. */
export class PdfReader {
  readonly #text: string;
  at: number;

  constructor(text: string, at = 0) {
    this.#text = text;
    this.at = at;
  }

  /** The next value; undefined at the end, or where the array or dictionary that it is in ends. */
  next(depth = 0): PdfValue | undefined {
    this.#skipSpace();
    const text = this.#text;
    const character = text.charAt(this.at);
    if (character === '' || depth > DEEPEST) return undefined;
    if (character === '/') return this.#name();
    if (character === '(') return this.#literal();
    if (character === '[') return this.#array(depth);
    if (text.startsWith('<<', this.at)) return this.#dictionary(depth);
    if (character === '<') return this.#hexadecimal();
    if (character === ']' || text.startsWith('>>', this.at)) {
      if (depth > 0) return undefined;
      this.at += 1;
      return { is: 'operator', word: character };
    }
    if (END_OF_WORD.test(character)) {
      this.at += 1;
      return { is: 'operator', word: character };
    }
    return this.#word();
  }

  #skipSpace(): void {
    for (;;) {
      while (SPACE.test(this.#text.charAt(this.at))) this.at += 1;
      if (this.#text.charAt(this.at) !== '%') return;
      while (!/[\r\n]|^$/.test(this.#text.charAt(this.at))) this.at += 1;
    }
  }

  #rawWord(): string {
    const from = this.at;
    while (this.at < this.#text.length && !END_OF_WORD.test(this.#text.charAt(this.at))) {
      this.at += 1;
    }
    return this.#text.slice(from, this.at);
  }

  #name(): PdfName {
    this.at += 1;
    const name = this.#rawWord().replace(/#([0-9a-f]{2})/gi, (_, hex: string) =>
      String.fromCharCode(Number.parseInt(hex, 16)),
    );
    return { is: 'name', name };
  }

  #word(): PdfValue {
    const word = this.#rawWord();
    if (/^[+-]?(?:\d+\.?\d*|\.\d+)$/.test(word)) return this.#numberOrReference(word);
    if (word === 'true' || word === 'false') return word === 'true';
    return word === 'null' ? null : { is: 'operator', word };
  }

  #numberOrReference(word: string): PdfValue {
    const reference = /^[ \r\n\t]+\d+[ \r\n\t]+R(?![^\0\t\n\f\r ()<>[\]{}/%])/.exec(
      this.#text.slice(this.at, this.at + 24),
    );
    if (!reference || !/^\d+$/.test(word)) return Number(word);
    this.at += reference[0].length;
    return { is: 'reference', number: Number(word) };
  }

  #array(depth: number): readonly PdfValue[] {
    this.at += 1;
    const values: PdfValue[] = [];
    for (let value = this.next(depth + 1); value !== undefined; value = this.next(depth + 1)) {
      values.push(value);
    }
    if (this.#text.charAt(this.at) === ']') this.at += 1;
    return values;
  }

  #dictionary(depth: number): PdfDictionary {
    this.at += 2;
    const entries = new Map<string, PdfValue>();
    for (let key = this.next(depth + 1); key !== undefined; key = this.next(depth + 1)) {
      const value = this.next(depth + 1);
      if (value === undefined) break;
      if (isPdf(key, 'name')) entries.set(key.name, value);
    }
    if (this.#text.startsWith('>>', this.at)) this.at += 2;
    return { is: 'dictionary', entries };
  }

  #hexadecimal(): PdfString {
    const end = this.#text.indexOf('>', this.at);
    const to = end < 0 ? this.#text.length : end;
    const bytes = fromHex(this.#text.slice(this.at + 1, to));
    this.at = to + 1;
    return { is: 'string', bytes };
  }

  #literal(): PdfString {
    let open = 1;
    let bytes = '';
    this.at += 1;
    while (this.at < this.#text.length) {
      const character = this.#text.charAt(this.at);
      this.at += 1;
      if (character === '\\') {
        bytes += this.#escape();
        continue;
      }
      if (character === '(') open += 1;
      if (character === ')') open -= 1;
      if (open === 0) break;
      bytes += character;
    }
    return { is: 'string', bytes };
  }

  #escape(): string {
    const [octal] = /^[0-7]{1,3}/.exec(this.#text.slice(this.at, this.at + 3)) ?? [];
    if (octal !== undefined) {
      this.at += octal.length;
      return String.fromCharCode(Number.parseInt(octal, 8) & 0xff);
    }
    const character = this.#text.charAt(this.at);
    this.at += this.#text.startsWith('\r\n', this.at) ? 2 : 1;
    if (/[\r\n]/.test(character)) return '';
    return ESCAPES.get(character) ?? character;
  }
}

const ESCAPES = new Map([
  ['n', '\n'],
  ['r', '\r'],
  ['t', '\t'],
  ['b', '\b'],
  ['f', '\f'],
]);

/** Bytes out of hexadecimal digits; a last one alone has a 0 after it. */
export function fromHex(hex: string): string {
  const digits = hex.replace(/[^0-9a-f]/gi, '');
  return (digits.length % 2 === 0 ? digits : `${digits}0`).replace(/../g, (pair) =>
    String.fromCharCode(Number.parseInt(pair, 16)),
  );
}

type Kinds = {
  readonly name: PdfName;
  readonly string: PdfString;
  readonly reference: PdfReference;
  readonly operator: PdfOperator;
  readonly dictionary: PdfDictionary;
};

/** Whether a value is of a kind. */
export function isPdf<K extends keyof Kinds>(
  value: PdfValue | undefined,
  kind: K,
): value is Kinds[K] {
  return typeof value === 'object' && value !== null && 'is' in value && value.is === kind;
}

/** Whether a value is an array. */
export function isPdfArray(value: PdfValue | undefined): value is readonly PdfValue[] {
  return Array.isArray(value);
}
