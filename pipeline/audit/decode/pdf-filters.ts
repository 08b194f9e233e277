import { bytesOf, latin1 } from './characters.js';
import type { Purse } from './piece.js';
import { entryOf, nameOf, resolved, type PdfObject } from './pdf-file.js';
import { fromHex, isPdfArray, type PdfValue } from './pdf-values.js';
import { unfiltered } from './png-rows.js';
import { unpack } from './unpack.js';

/** The bytes of a stream; where a filter cannot be undone, what is left and its name. */
export type Decoded =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly filter: string; readonly bytes: Uint8Array };

/** Undoes the filters of a stream (ISO 32000-1, 7.4), one after the other. */
export function decodeStream(
  { value, stream }: PdfObject,
  byNumber: ReadonlyMap<number, PdfObject>,
  purse: Purse,
): Decoded {
  const look = (key: string): readonly (PdfValue | undefined)[] => {
    const found = resolved(entryOf(value, key), byNumber);
    return (isPdfArray(found) ? found : [found]).map((each) => resolved(each, byNumber));
  };
  const parms = look('DecodeParms');
  let bytes: Uint8Array = stream ?? new Uint8Array();
  for (const [index, name] of look('Filter').entries()) {
    const filter = nameOf(name);
    if (filter === null) continue;
    const next = undone(filter, bytes, parms[index], purse);
    if (next === null) return { ok: false, filter, bytes };
    bytes = next;
  }
  return { ok: true, bytes };
}

function undone(
  filter: string,
  bytes: Uint8Array,
  parms: PdfValue | undefined,
  purse: Purse,
): Uint8Array | null {
  switch (filter) {
    case 'FlateDecode':
    case 'Fl': {
      const stream = unpack(bytes, purse, false);
      return stream.ok ? predicted(stream.bytes, parms) : null;
    }
    case 'ASCIIHexDecode':
    case 'AHx':
      return bytesOf(fromHex(latin1(bytes).split('>')[0] ?? ''));
    case 'ASCII85Decode':
    case 'A85':
      return ascii85(latin1(bytes));
    case 'RunLengthDecode':
    case 'RL':
      return runLength(bytes);
    default:
      return null;
  }
}

/** Rows that say only how they differ from the row before, as in PNG (7.4.4.4). */
function predicted(bytes: Uint8Array, parms: PdfValue | undefined): Uint8Array | null {
  const number = (key: string, otherwise: number): number => {
    const found = entryOf(parms, key);
    return typeof found === 'number' ? found : otherwise;
  };
  const predictor = number('Predictor', 1);
  if (predictor === 1) return bytes;
  const bits = number('Colors', 1) * number('BitsPerComponent', 8);
  return predictor < 10
    ? null
    : unfiltered(bytes, Math.ceil((bits * number('Columns', 1)) / 8), Math.ceil(bits / 8));
}

function ascii85(text: string): Uint8Array {
  const digits = (text.replace(/\s/g, '').split('~')[0] ?? '').replace(/z/g, '!!!!!');
  const bytes: number[] = [];
  for (let at = 0; at < digits.length; at += 5) {
    const group = digits.slice(at, at + 5);
    const sum = Array.from(group.padEnd(5, 'u')).reduce(
      (total, digit) => total * 85 + digit.charCodeAt(0) - 33,
      0,
    );
    const all = [sum / 2 ** 24, sum / 2 ** 16, sum / 2 ** 8, sum].map((part) => part & 0xff);
    bytes.push(...all.slice(0, group.length - 1));
  }
  return Uint8Array.from(bytes);
}

function runLength(bytes: Uint8Array): Uint8Array {
  const out: number[] = [];
  let at = 0;
  while (at < bytes.length) {
    const length = bytes[at] ?? 128;
    if (length === 128) break;
    if (length < 128) out.push(...bytes.subarray(at + 1, at + 2 + length));
    else out.push(...new Uint8Array(257 - length).fill(bytes[at + 1] ?? 0));
    at += length < 128 ? length + 2 : 2;
  }
  return Uint8Array.from(out);
}
