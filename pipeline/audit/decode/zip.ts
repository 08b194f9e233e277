import { eightBit } from './characters.js';
import { closedPiece, textPiece, type Format, type Piece, type Purse } from './piece.js';
import { inflate } from './unpack.js';
import { has, joinBytes, lowFirst } from './view.js';

const LOCAL = 'PK\x03\x04';
const CENTRAL = 'PK\x01\x02';
const END = 'PK\x05\x06';
const END_SIZE = 22;
/** Stands for a size that another record gives: archives of more than 4 GB. */
const ELSEWHERE = 0xffffffff;

/** An archive as .ZIP File Format Specification 6.3 of PKWARE has it, and all that is made of one. */
export const zip: Format = (bytes, purse) => {
  if (!has(bytes, 0, LOCAL) && !has(bytes, 0, END)) return null;
  const end = endOf(bytes);
  if (end === null) return [closedPiece('it is damaged')];
  const entries = entriesOf(bytes, end);
  if (entries === null) return [closedPiece('it is damaged')];
  return [
    textPiece('comment', eightBit(bytes.subarray(end + END_SIZE))),
    ...entries.flatMap((entry) => [...entryPieces(bytes, entry, purse)]),
    between(bytes, entries, end),
  ];
};

interface Entry {
  readonly name: string;
  readonly remarks: string;
  readonly method: number;
  readonly encrypted: boolean;
  readonly packed: number;
  readonly local: number;
}

function endOf(bytes: Uint8Array): number | null {
  for (let at = bytes.length - END_SIZE; at >= 0 && at >= bytes.length - 0x10000; at -= 1) {
    if (has(bytes, at, END)) return at;
  }
  return null;
}

function entriesOf(bytes: Uint8Array, end: number): Entry[] | null {
  const entries: Entry[] = [];
  let at = lowFirst(bytes, end + 16, 4);
  const count = lowFirst(bytes, end + 10, 2);
  for (let index = 0; index < count; index += 1) {
    if (!has(bytes, at, CENTRAL)) return null;
    const [name, extra, comment] = [28, 30, 32].map((place) => lowFirst(bytes, at + place, 2));
    const from = at + 46;
    const named = from + (name ?? 0);
    const next = named + (extra ?? 0) + (comment ?? 0);
    entries.push({
      name: eightBit(bytes.subarray(from, named)),
      remarks: eightBit(bytes.subarray(named, next)),
      method: lowFirst(bytes, at + 10, 2),
      encrypted: (lowFirst(bytes, at + 8, 2) & 1) === 1,
      packed: lowFirst(bytes, at + 20, 4),
      local: lowFirst(bytes, at + 42, 4),
    });
    at = next;
  }
  return entries;
}

function entryPieces(bytes: Uint8Array, entry: Entry, purse: Purse): Piece[] {
  const { name, remarks, method, encrypted } = entry;
  const named = [textPiece('names', name), textPiece('remarks', remarks)];
  const data = dataOf(bytes, entry);
  if (encrypted) return [...named, closedPiece('it is encrypted', name)];
  if (data === null) return [...named, closedPiece('it is damaged', name)];
  if (method === 0) return [...named, { is: 'file', inside: [name], bytes: data }];
  if (method !== 8) return [...named, closedPiece('it is packed in an unknown way', name)];
  const stream = inflate(data, purse);
  if (stream.ok) return [...named, { is: 'file', inside: [name], bytes: stream.bytes }];
  return [
    ...named,
    closedPiece(stream.tooLarge ? 'it unpacks to too much' : 'it is damaged', name),
  ];
}

/** The packed bytes of an entry; null if its head is not where it should be. */
function dataOf(bytes: Uint8Array, { local, packed }: Entry): Uint8Array | null {
  if (packed === ELSEWHERE || local === ELSEWHERE || !has(bytes, local, LOCAL)) return null;
  const from = dataFrom(bytes, local);
  return from + packed <= bytes.length ? bytes.subarray(from, from + packed) : null;
}

function dataFrom(bytes: Uint8Array, local: number): number {
  return local + 30 + lowFirst(bytes, local + 26, 2) + lowFirst(bytes, local + 28, 2);
}

/** What lies between the entries: an entry that the list leaves out, for one. */
function between(bytes: Uint8Array, entries: readonly Entry[], end: number): Piece {
  const sorted = [...entries].sort((one, other) => one.local - other.local);
  const rests: Uint8Array[] = [];
  let at = 0;
  for (const { local, packed } of sorted) {
    if (local > at) rests.push(bytes.subarray(at, local));
    at = Math.max(at, dataFrom(bytes, local) + (packed === ELSEWHERE ? 0 : packed));
  }
  rests.push(bytes.subarray(at, Math.max(at, lowFirst(bytes, end + 16, 4))));
  return { is: 'file', inside: ['between entries'], bytes: joinBytes(rests) };
}
