/** Whether bytes hold these characters at a place. */
export function has(bytes: Uint8Array, at: number, characters: string): boolean {
  if (at < 0 || at + characters.length > bytes.length) return false;
  for (let index = 0; index < characters.length; index += 1) {
    if (bytes[at + index] !== characters.charCodeAt(index)) return false;
  }
  return true;
}

/** A whole number of some bytes, the highest first; what lies past the end counts as 0. */
export function highFirst(bytes: Uint8Array, at: number, size: 2 | 4): number {
  let sum = 0;
  for (let index = 0; index < size; index += 1) sum = sum * 256 + (bytes[at + index] ?? 0);
  return sum;
}

/** A whole number of some bytes, the lowest first. */
export function lowFirst(bytes: Uint8Array, at: number, size: 2 | 4): number {
  let sum = 0;
  for (let index = size - 1; index >= 0; index -= 1) sum = sum * 256 + (bytes[at + index] ?? 0);
  return sum;
}

/** Pieces of bytes, one after the other. */
export function joinBytes(pieces: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
