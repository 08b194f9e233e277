/**
 * Everything that a file could be read as, by decoders of the audit's own: HTML with its tags taken
 * out, its attributes, references resolved; JSON with escapes resolved; other text as it is.
 */
export function readable(file: string, bytes: Uint8Array): readonly string[] {
  const text = new TextDecoder('utf-8').decode(bytes);
  if (/\.(?:html?|xml|svg)$/.test(file)) return [references(text), references(withoutTags(text))];
  if (file.endsWith('.json')) return [unescapeJson(text), text];
  if (/\.(?:css|js|txt|csv|ics|webmanifest)$/.test(file)) return [text];
  return [printable(text)];
}

function withoutTags(html: string): string {
  return html.replace(/<\/?(?:em|strong|i|b|span|a)\b[^>]*>/gi, '').replace(/<[^>]*>/g, ' ');
}

function references(text: string): string {
  return text
    .replace(/&#x([0-9a-f]{1,6});/gi, (_, hex: string) => codePoint(Number.parseInt(hex, 16)))
    .replace(/&#(\d{1,7});/g, (_, digits: string) => codePoint(Number(digits)))
    .replace(/&(amp|lt|gt|quot|apos|nbsp);/g, (_, name: string) => NAMED[name] ?? ' ');
}

const NAMED: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
};

function unescapeJson(text: string): string {
  return text
    .replace(/\\u([0-9a-f]{4})/gi, (_, hex: string) => codePoint(Number.parseInt(hex, 16)))
    .replace(/\\n/g, ' ')
    .replace(/\\(["\\/])/g, '$1');
}

function codePoint(code: number): string {
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : ' ';
}

/** The stretches of a binary file that could be words: metadata, text chunks. */
function printable(text: string): string {
  return (text.match(/[\p{L}\p{N}\p{P} ]{6,}/gu) ?? []).join('\n');
}
