/**
 * Letters that look like Latin ones, each after the letters that it is read as: the prototypes of
 * UTS #39 (Unicode security mechanisms, confusables), as far as they are letters or signs of money
 * that no decomposition reads, small capitals, and letters that a keyboard without them replaces.
 * What is one stroke stands for a capital I, which is read as i or as l, as it fits.
 */
const LOOKS: readonly (readonly [latin: string, letters: string])[] = [
  ['A', 'АΑⱭᎪᗅꓮ𖽀𐊠'],
  ['a', 'аαɑᴀ'],
  ['AA', 'Ꜳ'],
  ['aa', 'ꜳ'],
  ['AE', 'ÆӔ'],
  ['ae', 'æӕ'],
  ['AO', 'Ꜵ'],
  ['ao', 'ꜵ'],
  ['AU', 'Ꜷ'],
  ['au', 'ꜷ'],
  ['AV', 'ꜸꜺ'],
  ['av', 'ꜹꜻ'],
  ['AY', 'Ꜽ'],
  ['ay', 'ꜽ'],
  ['B', 'ВΒЬꞴᏴᗷꓐ𐊂𐊡𐌁'],
  ['b', 'вьʙƄᏏᖯɓƃƂБƀҍҌѣѢ'],
  ['bl', 'Ы'],
  ['C', 'СⲤᏟꓚ𐊢𐌂𐐕𐔜₡Ҫ'],
  ['c', 'сϲᴄⲥꮯ𐐽¢ȼҫ'],
  ['D', 'ĐÐᏧᎠᗞᗪꓓƉ'],
  ['d', 'ԁđðᴅᑯꓒɗɖƌ₫'],
  ['dz', 'ʣ'],
  ['E', 'ЕΕⴹᎬꓰ𑢦𑢮𐊆Ɇ'],
  ['e', 'еεᴇꬲҽɇҿ€ɛ'],
  ['F', 'ϜꞘᖴꓝ𑣂𑢢𐊇𐊥𐔥Ƒ'],
  ['f', 'ϝꬵꞙẝքƒᵮꜰ'],
  ['G', 'ꞬԌᏀᏳꓖǤ'],
  ['g', 'ɡɢᶃƍցɠǥ'],
  ['H', 'НΗĦᏂⲎᎻᕼꓧ𐋏ᏲⱧҢӉӇ'],
  ['h', 'һнħʜհɦꚕћ'],
  ['I', 'ІΙꞮᎥƖǀⲒߊⵏᛁꓲ𖼨𐊊𐌉Ɨ'],
  ['i', 'іιıɪɩꙇꭵ𑣃ɨᵻᵼ'],
  ['J', 'ЈꞲͿᎫᒍꓙɈ'],
  ['j', 'јϳᴊɉ'],
  ['K', 'КΚⲔᏦᛕꓗ𐔘ⱩҚ₭ꝀҞ'],
  ['k', 'кκᴋƙ'],
  ['L', 'ӀŁⳐᏞᒪꓡ𖼖𑢣𑢲𐐛𐔦'],
  ['l', 'ӏłʟɭƚɫ£'],
  ['ll', 'ǁ'],
  ['lO', 'Ю'],
  ['ls', 'ʪ'],
  ['lt', '₶'],
  ['lz', 'ʫ'],
  ['M', 'МΜϺⲘᎷᗰᛖꓟ𐊰𐌑Ӎ'],
  ['m', 'мᴍ𑜀₥ɱᵯ'],
  ['N', 'ΝՈⲚꓠ𐔓Ɲ'],
  ['n', 'пηɴոռɳƞᵰ₦'],
  ['O', 'ОΟØ০୦ⲞՕⵔዐଠ𐓂ꓳ𑢵𐊒𐊫𐐄𐔖ⵁƟꝊθΘӨѲⴱᎾᏫ'],
  ['o', 'оοøᴏօ०੦૦௦౦೦൦๐ᴑꬽσⲟჿഠဝ𐓪𑣈𑣗𐐬ꬾɵꝋөѳꮎꮻꭴတ'],
  ['OE', 'Œ'],
  ['oe', 'œ'],
  ['OO', 'ꝎꚘ'],
  ['oo', 'ꝏꚙ'],
  ['P', 'РΡÞⲢᏢᑭꓑ𐊕'],
  ['p', 'рρᴘþⲣƥᵽ₱'],
  ['Q', 'ⵕ'],
  ['q', 'ԛգզʠꞯ'],
  ['R', 'ƦᎡᏒ𐒴ᖇꓣ𖼵'],
  ['r', 'гʀꭇꭈᴦⲅꮁɽɼɍғᵲ'],
  ['S', 'ЅՏᏕᏚꓢ𖼺𐊖𐐠'],
  ['s', 'ѕꜱƽꮪ𑣁𐑈ʂᵴ'],
  ['ss', 'ß'],
  ['T', 'ТΤⲦᎢꓔ𖼊𑢼𐊗𐊱𐌕ȾƮҬ₮Ŧ'],
  ['t', 'тτᴛƭŧᵵ'],
  ['tf', 'ꝷ'],
  ['ts', 'ʦ'],
  ['U', 'Սሀ𐓎ᑌꓴ𖽂𑢸ɄᏌ'],
  ['u', 'υᴜսꞟꭎꭒʋ𐓶𑣘ᵾꮜ'],
  ['ue', 'ᵫ'],
  ['uo', 'ꭣ'],
  ['V', 'ѴⴸᏙᐯꛟꓦ𖼈𑢠𐔝'],
  ['v', 'νѵᴠ𑜆ꮩ𑣀'],
  ['W', 'ԜᎳᏔꓪ₩'],
  ['w', 'ԝᴡɯѡա𑜊𑜎𑜏ꮃѽ𑓅ꝡ'],
  ['X', 'ХΧꞳⲬⵝᚷꓫ𐊐𐊴𐌗𐔧Ҳ'],
  ['x', 'хχᕁᕽ'],
  ['Y', 'УΥⲨҮᎩᎽꓬ𖽃𑢤𐊲¥ɎҰ'],
  ['y', 'уγʏɣᶌỿꭚүყ𑣜ƴɏұ'],
  ['Z', 'ΖᏃꓜ𑢩ƵȤ'],
  ['z', 'ᴢꮓ𑣄ʐƶȥᵶ'],
];

/** Capitals in a frame or a flag, which have no decomposition: the first of each run, and its length. */
const FRAMED: readonly (readonly [first: number, count: number])[] = [
  [0x1f150, 26],
  [0x1f170, 26],
  [0x1f1e6, 26],
];

const LATIN: ReadonlyMap<string, string> = new Map([
  ...LOOKS.flatMap(([latin, letters]) => Array.from(letters, (letter) => [letter, latin] as const)),
  ...FRAMED.flatMap(([first, count]) =>
    Array.from(
      { length: count },
      (_, at) => [String.fromCodePoint(first + at), String.fromCharCode(0x41 + at)] as const,
    ),
  ),
]);

/** The Latin letters that one character is read as; itself for all others. Keeps capitals. */
export function latinOf(character: string): string {
  return LATIN.get(character) ?? character;
}
