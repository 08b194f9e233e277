/**
 * Letters that look like Latin ones, each after the letters that it is read as: from the prototypes
 * of UTS #39 (Unicode security mechanisms, confusables), for the scripts that share most shapes with
 * Latin, and letters that a keyboard without them replaces.
 */
const LOOKS: readonly (readonly [latin: string, letters: string])[] = [
  ['a', 'аαАΑɑᴀ'],
  ['b', 'вВΒЬьʙ'],
  ['c', 'сСϲᴄ'],
  ['d', 'ԁđðᴅ'],
  ['e', 'еЕΕεᴇ'],
  ['f', 'Ϝϝ'],
  ['g', 'ɡɢ'],
  ['h', 'һНнΗħʜ'],
  ['i', 'іІιΙıɪ'],
  ['j', 'јЈϳᴊ'],
  ['k', 'кКκΚᴋ'],
  ['l', 'ӏӀłʟ'],
  ['m', 'мМΜᴍ'],
  ['n', 'ΝпηɴՈ'],
  ['o', 'оОοΟøᴏօ'],
  ['p', 'рРρΡᴘþ'],
  ['q', 'ԛ'],
  ['r', 'гʀ'],
  ['s', 'ѕЅꜱ'],
  ['t', 'тТτΤᴛ'],
  ['u', 'υᴜս'],
  ['v', 'νѵᴠ'],
  ['w', 'ԝᴡ'],
  ['x', 'хХχΧ'],
  ['y', 'уУΥγʏ'],
  ['z', 'Ζᴢ'],
  ['ae', 'æӕ'],
  ['oe', 'œ'],
  ['ss', 'ß'],
];

const LATIN: ReadonlyMap<string, string> = new Map(
  LOOKS.flatMap(([latin, letters]) =>
    Array.from(letters).flatMap((letter) => [
      [letter, latin] as const,
      ...(isOneCase(letter) ? [] : [[letter.toUpperCase(), latin.toUpperCase()] as const]),
    ]),
  ),
);

/** A capital of another script may look like another letter than its small one: it stands for itself. */
function isOneCase(letter: string): boolean {
  return !/[\p{Script=Latin}]/u.test(letter) || letter.toUpperCase() === letter;
}

/** The Latin letters that one character is read as; itself for all others. Keeps capitals of Latin. */
export function latinOf(character: string): string {
  return LATIN.get(character) ?? character;
}
