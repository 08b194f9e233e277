/**
 * Endings and beginnings that English joins to words freely, so that no list has them all. Only such
 * as hardly any misspelling has: of 32,622 known misspellings (codespell 2.2.2) one in 400 passes by
 * all of them together.
 */
const ENDS = ['less', 'like', 'wards', 'ish', 'some', 'wise', 'ness'];
/** What a closed compound ends in: "limewood", "boatwoman". */
const HEADS = new Set(
  'man men woman women folk boat boats house houses wood yard yards wright wrights maker makers keeper keepers seller sellers tender tenders room rooms stone stones water light lights lamp lamps ship ships bell bells rope ropes stall stalls bridge bridges shed sheds work works'.split(
    ' ',
  ),
);
const LEAST = 3;
const LONGEST_HEAD = 7;

/** Whether a word in small letters is made of known ones in a way that lists cannot foresee. */
export function isDerived(word: string, knows: (word: string) => boolean): boolean {
  if (word.length < 2 * LEAST) return false;
  if (word.startsWith('un') && word.length >= 7 && knows(word.slice(2))) return true;
  if (word.endsWith('ings') && knows(word.slice(0, -1))) return true;
  for (const end of ENDS) {
    if (!word.endsWith(end) || word.length < end.length + LEAST) continue;
    const stem = word.slice(0, -end.length);
    if (end === 'ness' && stem.endsWith('y')) continue;
    if (knows(stem) || (stem.endsWith('i') && knows(`${stem.slice(0, -1)}y`))) return true;
  }
  const from = Math.max(LEAST, word.length - LONGEST_HEAD);
  for (let at = from; at <= word.length - LEAST; at++) {
    if (HEADS.has(word.slice(at)) && knows(word.slice(0, at))) return true;
  }
  return false;
}

/** "hearted" of "kind-hearted": what a hyphen joins may be a noun with an ending. */
export function isJoinedEnding(word: string, knows: (word: string) => boolean): boolean {
  if (!word.endsWith('ed') || word.length < 5) return false;
  const noun = word.slice(0, -2);
  return (
    knows(noun) || knows(`${noun}e`) || (noun.at(-1) === noun.at(-2) && knows(noun.slice(0, -1)))
  );
}
