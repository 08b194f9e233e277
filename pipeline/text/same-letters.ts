/**
 * The one candidate that differs from what was typed in capitals, spaces, hyphens and underscores
 * alone; null if there is none, or several. Nobody can have meant another.
 */
export function surelyMeant(typed: string, candidates: Iterable<string>): string | null {
  const letters = lettersOf(typed);
  const [only, ...others] = [...candidates].filter((each) => lettersOf(each) === letters);
  return only === undefined || others.length > 0 || letters === '' ? null : only;
}

function lettersOf(word: string): string {
  return word
    .normalize('NFC')
    .replace(/[\s_-]+/gu, '')
    .toLowerCase();
}
