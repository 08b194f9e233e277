import { Dice } from './dice.js';

/** An invented name, and what of it the slips need. */
export interface InventedName {
  readonly name: string;
  readonly kind: 'character' | 'craft' | 'place';
  readonly exact: boolean;
  /** A form no longer used, if it has one. */
  readonly avoid: string | null;
}

const ONSETS = [
  'b',
  'br',
  'c',
  'd',
  'dr',
  'f',
  'g',
  'gr',
  'h',
  'k',
  'l',
  'm',
  'n',
  'p',
  'qu',
  'r',
  's',
  'st',
  't',
  'th',
  'tr',
  'v',
  'w',
  'z',
];
const VOWELS = ['a', 'e', 'i', 'o', 'u', 'ai', 'ea', 'ou'];
const CODAS = ['ck', 'l', 'ld', 'm', 'n', 'nd', 'nk', 'r', 'rn', 'ss', 't', 'x', 'lph'];
const MARKED: Readonly<Record<string, string>> = {
  a: 'á',
  e: 'é',
  i: 'ï',
  o: 'ö',
  u: 'û',
  c: 'ç',
  n: 'ñ',
};
const TITLES = ['Captain', 'Warden', 'Sister', 'Doctor', 'Magistrate'];
const QUAYS = ['Quay', 'Stairs', 'Row', 'Gate', 'Lane', 'Mill'];

function syllables(dice: Dice, count: number): string {
  let word = '';
  for (let at = 0; at < count; at += 1) {
    word += dice.pick(ONSETS) + dice.pick(VOWELS);
  }
  return word + dice.pick(CODAS);
}

function coined(dice: Dice, count = 1 + dice.below(2)): string {
  const word = syllables(dice, count);
  return word.length < 5 ? coined(dice, count + 1) : word.charAt(0).toUpperCase() + word.slice(1);
}

function marked(word: string, dice: Dice): string {
  const places = [...word.matchAll(/(?<=.)[aeioucn]/g)];
  const { 0: letter, index } = dice.pick(places);
  return word.slice(0, index) + (MARKED[letter] ?? letter) + word.slice(index + 1);
}

const SHAPES: readonly ((dice: Dice) => Omit<InventedName, 'exact'>)[] = [
  (dice) => ({ name: coined(dice, 2), kind: 'character', avoid: null }),
  (dice) => {
    const last = coined(dice);
    return { name: `${coined(dice)} ${last}`, kind: 'character', avoid: `Miss ${last}` };
  },
  (dice) => {
    const last = coined(dice);
    return {
      name: `${dice.pick(TITLES)} ${coined(dice)} ${last}`,
      kind: 'character',
      avoid: `Old ${last}`,
    };
  },
  (dice) => {
    const first = coined(dice);
    return {
      name: `${first} ${coined(dice)}-${coined(dice)}`,
      kind: 'character',
      avoid: `Young ${first}`,
    };
  },
  (dice) => {
    const last = `${dice.pick(['O', 'D'])}’${coined(dice)}`;
    return { name: `${coined(dice)} ${last}`, kind: 'character', avoid: `Mister ${last}` };
  },
  (dice) => {
    const last = marked(coined(dice), dice);
    return { name: `${coined(dice)} ${last}`, kind: 'character', avoid: `Granny ${last}` };
  },
  (dice) => {
    const first = coined(dice);
    return { name: `the ${first} ${dice.pick(QUAYS)}`, kind: 'place', avoid: `${first} Bottom` };
  },
  (dice) => {
    const first = coined(dice);
    return { name: `${first} ${dice.pick(QUAYS)}`, kind: 'place', avoid: `${first} Old Town` };
  },
];

/** A cast of invented names of many shapes, no two with a word in common. */
export function inventedCast(count: number, seed: number): readonly InventedName[] {
  const dice = new Dice(seed);
  const seen = new Set<string>();
  const cast: InventedName[] = [];
  while (cast.length < count) {
    const made = dice.pick(SHAPES)(dice);
    const words = made.name
      .split(/[\s-]/)
      .filter((word) => !TITLES.includes(word) && !QUAYS.includes(word) && word !== 'the');
    if (words.some((word) => seen.has(word))) continue;
    for (const word of words) seen.add(word);
    cast.push({ ...made, exact: false });
  }
  return cast;
}

/** The names as names.yaml has them. */
export function namesFile(cast: readonly InventedName[]): string {
  const lines = cast.map(({ name, kind, avoid }) => {
    const old =
      avoid === null ? '' : `, avoid: [{ form: "${avoid}", use: "${name}", why: retold }]`;
    return `  - { name: "${name}", kind: ${kind}, level: open${old} }`;
  });
  return `names:\n${lines.join('\n')}\n`;
}

/** What is typed for a name by mistake; null where this mistake cannot be made in it. */
export type SlipKind = (name: InventedName, dice: Dice) => string | null;

/** A word of a name in which a letter may go wrong: long enough, coined, and its place. */
function longWord(name: string, dice: Dice): { word: string; at: number } | null {
  const words = [...name.matchAll(/\p{L}{5,}/gu)].filter(
    ({ 0: word }) => ![...TITLES, ...QUAYS].includes(word),
  );
  if (words.length === 0) return null;
  const { 0: word, index } = dice.pick(words);
  return { word, at: index };
}

function inWord(change: (word: string, at: number, dice: Dice) => string): SlipKind {
  return ({ name }, dice) => {
    const found = longWord(name, dice);
    if (!found) return null;
    const { word, at } = found;
    const put = change(word, 1 + dice.below(word.length - 2), dice);
    return put === word ? null : name.slice(0, at) + put + name.slice(at + word.length);
  };
}

const SOUNDS: readonly (readonly [RegExp, string])[] = [
  [/ph/, 'f'],
  [/ck/, 'k'],
  [/qu/, 'kw'],
  [/x/, 'ks'],
  [/ss/, 'ce'],
  [/ai/, 'ay'],
  [/ea/, 'ee'],
  [/(?<=.)k/, 'c'],
  [/(?<=.)i(?=[^aeiou])/, 'y'],
  [/(?<=.)z/, 's'],
  [/(?<=.)(?<![aeiou])c(?=[aou])/, 'k'],
];

const lostMarks: SlipKind = ({ name }) => {
  const put = name.normalize('NFD').replace(/\p{M}/gu, '');
  return put === name.normalize('NFD') ? null : put;
};

const LETTERS = 'bcdfghjklmnpqrstvwz';

export const SLIP_KINDS: Readonly<Record<string, SlipKind>> = {
  'wrong letter': inWord((word, at, dice) => {
    const letter = LETTERS.charAt(dice.below(LETTERS.length));
    return word.slice(0, at) + letter + word.slice(at + 1);
  }),
  'wrong first letter': inWord(
    (word, _, dice) => dice.pick(Array.from('BDFGKLMPRTVZ')) + word.slice(1),
  ),
  'missing letter': inWord((word, at) => word.slice(0, at) + word.slice(at + 1)),
  'doubled letter': inWord((word, at) => word.slice(0, at) + word.slice(at - 1)),
  'letters swapped': inWord(
    (word, at) => word.slice(0, at) + word.charAt(at + 1) + word.charAt(at) + word.slice(at + 2),
  ),
  'two letters wrong': ({ name }, dice) => {
    const words = [...name.matchAll(/\p{L}{8,}/gu)];
    if (words.length === 0) return null;
    const { 0: word, index } = dice.pick(words);
    const put = `${word.slice(0, 2)}${word.slice(3, 5)}v${word.slice(6)}`;
    return put === word ? null : name.slice(0, index) + put + name.slice(index + word.length);
  },
  'marks lost': lostMarks,
  'wrong mark': ({ name }) => {
    const put = name
      .normalize('NFD')
      .replace(/\p{M}/u, (mark) => (mark === '\u0303' ? '\u0300' : '\u0303'))
      .normalize('NFC');
    return put === name ? null : put;
  },
  'small letter first': ({ name }) => {
    const put = name.replace(/(?<![\p{L}’])\p{Lu}(?=\p{L}{4})/u, (letter) => letter.toLowerCase());
    return put === name ? null : put;
  },
  'all capitals': ({ name }) => name.toUpperCase(),
  'capitals in a word': ({ name }) => {
    const put = name.replace(/\p{Lu}\p{Ll}{4,}/u, (word) => word.toUpperCase());
    return put === name ? null : put;
  },
  'same sound': ({ name }, dice) => {
    const found = longWord(name, dice);
    if (!found) return null;
    const ways = SOUNDS.filter(([from]) => from.test(found.word));
    if (ways.length === 0) return null;
    const [from, to] = dice.pick(ways);
    const put = found.word.replace(from, to);
    return name.slice(0, found.at) + put + name.slice(found.at + found.word.length);
  },
  'parts swapped': ({ name, kind }) => {
    const words = name.split(' ');
    if (kind !== 'character' || words.length !== 2) return null;
    return words.toReversed().join(' ');
  },
  'space or hyphen missing': ({ name }) => {
    const put = name.replace(/(?<=\p{Ll})[ -](?=\p{Lu}\p{Ll}+$)/u, '');
    return put === name || (put.startsWith('the') && !put.includes(' ')) ? null : put;
  },
  'space for hyphen': ({ name }) => (name.includes('-') ? name.replace('-', ' ') : null),
  'avoided form': ({ avoid }) => avoid,
  'possessive of a slip': (name, dice) => {
    const put = SLIP_KINDS['missing letter']?.(name, dice) ?? null;
    return put === null ? null : `${put}’s`;
  },
  'possessive of an avoided form': ({ avoid }) => (avoid === null ? null : `${avoid}’s`),
};
