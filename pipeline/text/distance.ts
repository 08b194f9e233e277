/**
 * Edit distance with neighbouring letters swapped counting as one edit (Damerau 1964), in the
 * unrestricted form of Lowrance and Wagner (1975): CA to ABC is 2. Counts UTF-16 units.
 */
export function editDistance(a: string, b: string): number {
  const width = b.length + 2;
  const most = a.length + b.length;
  const table = new Int32Array((a.length + 2) * width).fill(most);
  const cell = (i: number, j: number): number => table[(i + 1) * width + j + 1] ?? most;
  const put = (i: number, j: number, value: number): void => {
    table[(i + 1) * width + j + 1] = value;
  };
  for (let i = 0; i <= a.length; i++) put(i, 0, i);
  for (let j = 0; j <= b.length; j++) put(0, j, j);
  const lastRowOf = new Map<string, number>();
  for (let i = 1; i <= a.length; i++) {
    let lastMatch = 0;
    for (let j = 1; j <= b.length; j++) {
      const row = lastRowOf.get(b.charAt(j - 1)) ?? 0;
      const column = lastMatch;
      const same = a.charAt(i - 1) === b.charAt(j - 1);
      if (same) lastMatch = j;
      const swapped =
        row > 0 && column > 0 ? cell(row - 1, column - 1) + i - row + j - column - 1 : most;
      put(
        i,
        j,
        Math.min(
          cell(i - 1, j - 1) + (same ? 0 : 1),
          cell(i, j - 1) + 1,
          cell(i - 1, j) + 1,
          swapped,
        ),
      );
    }
    lastRowOf.set(a.charAt(i - 1), i);
  }
  return cell(a.length, b.length);
}
