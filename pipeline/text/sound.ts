const VOWEL = /[AEIOU]/;

/**
 * How a word sounds as a name: the phonetic code of the New York State Identification and
 * Intelligence System (Taft, "Name Search Techniques", 1970), not cut to six letters. Empty for a
 * word without any Latin letter; letters must be without marks.
 */
export function soundOf(word: string): string {
  const start = opening(word.toUpperCase().replace(/[^A-Z]/g, ''));
  const name = start.replace(/(?:EE|IE)$/, 'Y').replace(/(?:DT|RT|RD|NT|ND)$/, 'D');
  let code = name.charAt(0);
  for (let at = 1; at < name.length;) {
    const { sound, length } = soundAt(name, at);
    for (const letter of sound) if (!code.endsWith(letter)) code += letter;
    at += length;
  }
  return closing(code);
}

function opening(name: string): string {
  return name
    .replace(/^MAC/, 'MCC')
    .replace(/^KN/, 'NN')
    .replace(/^K/, 'C')
    .replace(/^P[HF]/, 'FF')
    .replace(/^SCH/, 'SSS');
}

function closing(code: string): string {
  const first = code.charAt(0);
  const rest = code.slice(1).replace(/S$/, '').replace(/AY$/, 'Y').replace(/A$/, '');
  return first + rest;
}

const LETTERS: Readonly<Record<string, string>> = { Q: 'G', Z: 'S', M: 'N', K: 'C' };

function soundAt(name: string, at: number): { sound: string; length: number } {
  const letter = name.charAt(at);
  const before = name.charAt(at - 1);
  const after = name.charAt(at + 1);
  if (name.startsWith('EV', at)) return { sound: 'AF', length: 2 };
  if (VOWEL.test(letter)) return { sound: 'A', length: 1 };
  if (name.startsWith('KN', at)) return { sound: 'N', length: 2 };
  if (name.startsWith('SCH', at)) return { sound: 'S', length: 3 };
  if (name.startsWith('PH', at)) return { sound: 'F', length: 2 };
  if (letter === 'H' && !(VOWEL.test(before) && VOWEL.test(after))) {
    return { sound: VOWEL.test(before) ? 'A' : '', length: 1 };
  }
  if (letter === 'W' && VOWEL.test(before)) return { sound: 'A', length: 1 };
  return { sound: LETTERS[letter] ?? letter, length: 1 };
}

/** Spellings that sound alike in names and that the code keeps apart. */
const RESPELT: readonly (readonly [RegExp, string])[] = [
  [/^(?:ps|pt)/, 's'],
  [/^wr/, 'r'],
  [/^wh/, 'w'],
  [/^x/, 's'],
  [/^gn/, 'n'],
  [/^rh/, 'r'],
  [/tch/g, 'ch'],
  [/qu/g, 'kw'],
  [/q/g, 'k'],
  [/x/g, 'ks'],
  [/ck/g, 'k'],
  [/c(?=[eiy])/g, 's'],
  [/c(?!h)/g, 'k'],
  [/ch(?=[lr])/g, 'k'],
  [/dge?/g, 'j'],
  [/g(?=[ei])/g, 'j'],
  [/gh/g, ''],
  [/y/g, 'i'],
  [/mb$/g, 'm'],
  [/(?<=[a-z]{3})e$/, ''],
];

/** A word spelt as it sounds, before its code is made: in small letters without marks. */
export function respelt(word: string): string {
  return RESPELT.reduce((sum, [from, to]) => sum.replace(from, to), word.toLowerCase());
}

/** What two words have in common if they sound alike: each of these codes of either. */
export function soundsOf(word: string): readonly string[] {
  return [...new Set([soundOf(word), soundOf(respelt(word))])];
}
