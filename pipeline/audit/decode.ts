/** How often escapes are resolved that stand inside each other. */
const PASSES = 3;

/**
 * A text with its escapes resolved: character references, percent signs, and the escapes of JSON,
 * scripts and style sheets; again where that brings up more of them.
 */
export function withoutEscapes(text: string): string {
  let decoded = text;
  for (let pass = 0; pass < PASSES; pass += 1) {
    const next = backslashes(percents(references(decoded)));
    if (next === decoded) break;
    decoded = next;
  }
  return decoded;
}

/** Markup taken out; what stands in comments and CDATA stays. Tags within words do not part them. */
export function withoutTags(markup: string): string {
  if (!markup.includes('<')) return markup;
  return markup
    .replace(/<!--|-->|<!\[CDATA\[|\]\]>/g, ' ')
    .replace(/<\/?(?:a|abbr|b|em|i|mark|q|small|span|strong|sub|sup|tspan|u|wbr)\b[^<>]*>/gi, '')
    .replace(/<[^<>]*>/g, ' ');
}

/** Letters with marks by their names in HTML: the mark is left out, as in every comparison here. */
const MARKED =
  /&([a-z])(?:acute|grave|circ|uml|tilde|cedil|ring|caron|macr|breve|ogon|dot|slash|strok);/gi;
const NAMED = new Map([
  ['amp', '&'],
  ['lt', '<'],
  ['gt', '>'],
  ['quot', '"'],
  ['apos', "'"],
  ['lsquo', "'"],
  ['rsquo', "'"],
  ['shy', ''],
  ['zwj', ''],
  ['zwnj', ''],
  ['szlig', 'ß'],
  ['aelig', 'æ'],
  ['oelig', 'œ'],
  ['eth', 'ð'],
  ['thorn', 'þ'],
  ['num', '#'],
  ['percnt', '%'],
  ['bsol', '\\'],
]);

function references(text: string): string {
  if (!text.includes('&')) return text;
  return text
    .replace(/&#x([0-9a-f]{1,6});?/gi, (_, hex: string) => character(Number.parseInt(hex, 16)))
    .replace(/&#(\d{1,7});?/g, (_, digits: string) => character(Number(digits)))
    .replace(MARKED, '$1')
    .replace(/&([a-z]{2,12});/gi, (_, name: string) => NAMED.get(name.toLowerCase()) ?? ' ');
}

function percents(text: string): string {
  return text.replace(/(?:%[0-9a-f]{2})+/gi, (run) =>
    utf8(Uint8Array.from(run.slice(1).split('%'), (hex) => Number.parseInt(hex, 16))),
  );
}

function backslashes(text: string): string {
  if (!text.includes('\\')) return text;
  return text
    .replace(/\\u([0-9a-f]{4})/gi, (_, hex: string) => unit(Number.parseInt(hex, 16)))
    .replace(/\\u\{([0-9a-f]{1,6})\}/gi, (_, hex: string) => character(Number.parseInt(hex, 16)))
    .replace(/\\x([0-9a-f]{2})/gi, (_, hex: string) => character(Number.parseInt(hex, 16)))
    .replace(/\\(\d[0-9a-f]{1,5})\s?/gi, (_, hex: string) => character(Number.parseInt(hex, 16)))
    .replace(/\\[bfnrtv]/g, ' ')
    .replace(/\\(?=[^\p{L}\p{N}])/gu, '');
}

/** One UTF-16 unit; two that make a pair come together again by standing side by side. */
function unit(code: number): string {
  return String.fromCharCode(code);
}

function character(code: number): string {
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : ' ';
}

/** Characters in a row that could be base64, in either alphabet, also in lines. */
const BASE64 = /[\w+/-]{24,}(?:\r?\n[ \t]?[\w+/-]{4,})*/g;

/**
 * What runs of 24 and more characters give as base64. Where a run begins is not known (a folder's
 * name may stand before it), so that each is read from its first four characters on.
 */
export function fromBase64(text: string): Uint8Array[] {
  return (text.match(BASE64) ?? []).flatMap((found) => {
    const run = found.replace(/\s/g, '').replace(/-/g, '+').replace(/_/g, '/');
    return [0, 1, 2, 3].map((skipped) => bytesOf(run.slice(skipped)));
  });
}

function bytesOf(run: string): Uint8Array {
  const whole = run.length % 4 === 1 ? run.slice(0, -1) : run;
  return Uint8Array.from(atob(whole), (byte) => byte.charCodeAt(0));
}

export function utf8(bytes: Uint8Array): string {
  return new TextDecoder('utf-8').decode(bytes);
}
