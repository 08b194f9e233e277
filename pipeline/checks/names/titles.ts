/** Words that stand before a name with a capital and are no part of it. */
const TITLES = `the captain mr mrs ms miss mister doctor dr professor sir lady lord dame madam madame king queen
prince princess emperor empress duke duchess count countess baron baroness saint st sister brother mother father
aunt uncle granny grandma grandpa gran nan mum dad mummy daddy pope bishop admiral general colonel major sergeant
lieutenant commander officer inspector constable judge justice president chancellor minister mayor governor
director reverend master mistress young old poor dear little big`;

/** Words that may have a capital for what they are, beside a name or alone. */
const COMMON = `i god heaven hell lord earth sun moon internet web bible christmas easter north south east west
northern southern eastern western new great upper lower saint mount lake river sea ocean island isle street road
lane bridge square park bay cape city town county valley hill avenue quay eve day sunday week year spring summer
autumn winter morning night noon midnight evening episode series season chapter part volume act scene card cards
set book page number no vol edition version january february march april may june july august september october
november december yes okay ok french polish welsh scotch swiss danish dutch irish turkish german roman china
turkey japan jersey morocco`;

const TITLE_WORDS = wordsOf(TITLES);
const COMMON_WORDS = wordsOf(`${TITLES} ${COMMON}`);

function wordsOf(list: string): ReadonlySet<string> {
  return new Set(list.split(/\s+/u));
}

/** "Captain", "Old": what goes before a name. */
export function isTitleWord(word: string): boolean {
  return TITLE_WORDS.has(word.toLowerCase());
}

/** A word that names nobody by its capital alone: "the North", "Sir". */
export function isPlainCapital(word: string): boolean {
  return COMMON_WORDS.has(word.toLowerCase());
}

/** What stands between the words of a name in small letters. */
export const PARTICLES: ReadonlySet<string> = new Set(
  'van von de der den del della la le du da di dos al el bin ibn ap ten ter zu'.split(' '),
);
