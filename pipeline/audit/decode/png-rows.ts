/**
 * Rows of pixels as they were before each was written as its difference from its neighbours (W3C PNG,
 * third edition, clause 9). Null if a row is of an unknown kind.
 * @param width bytes of a row, without the one before it that names its kind
 * @param step bytes from a pixel to the one before it, at least 1
 */
export function unfiltered(bytes: Uint8Array, width: number, step: number): Uint8Array | null {
  const height = Math.floor(bytes.length / (width + 1));
  const rows = new Uint8Array(height * width);
  for (let row = 0; row < height; row += 1) {
    const kind = bytes[row * (width + 1)] ?? 0;
    if (kind > 4) return null;
    const start = row * width;
    for (let column = 0; column < width; column += 1) {
      const left = column < step ? 0 : (rows[start + column - step] ?? 0);
      const up = row === 0 ? 0 : (rows[start + column - width] ?? 0);
      const corner = row === 0 || column < step ? 0 : (rows[start + column - width - step] ?? 0);
      const stored = bytes[row * (width + 1) + 1 + column] ?? 0;
      rows[start + column] = stored + guess(kind, left, up, corner);
    }
  }
  return rows;
}

function guess(kind: number, left: number, up: number, corner: number): number {
  if (kind === 0) return 0;
  if (kind === 1) return left;
  if (kind === 2) return up;
  return kind === 3 ? (left + up) >> 1 : nearest(left, up, corner);
}

/** Whichever of three is nearest to left + up - corner; the first of equals (Paeth). */
function nearest(left: number, up: number, corner: number): number {
  const sum = left + up - corner;
  const [byLeft, byUp, byCorner] = [left, up, corner].map((each) => Math.abs(sum - each));
  if ((byLeft ?? 0) <= (byUp ?? 0) && (byLeft ?? 0) <= (byCorner ?? 0)) return left;
  return (byUp ?? 0) <= (byCorner ?? 0) ? up : corner;
}
