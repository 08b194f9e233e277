import { gzipSync, deflateSync } from 'node:zlib';

/** A held span of the demo: the end of `high-water/cards/letters/le01.md`, held until the finale. */
export const HELD = 'The lake can fall as well as rise. I opened the gate by a finger, and it did.';

/** A way to hide a text in a finished file. */
export interface Hiding {
  readonly way: string;
  readonly file: string;
  readonly hide: (text: string) => string | Uint8Array;
}

const upper = (text: string): string => text.toUpperCase();
const page = (body: string): string =>
  `<!doctype html><html lang="en"><title>Cards</title><body>${body}</body></html>`;
const codes = (text: string, write: (code: number) => string): string =>
  Array.from(text, (letter) => write(letter.codePointAt(0) ?? 0)).join('');
const hex = (code: number, width: number): string => code.toString(16).padStart(width, '0');
const base64 = (bytes: string | Uint8Array): string => Buffer.from(bytes).toString('base64');
const words = (text: string): string[] => text.split(' ');
const joined = (...parts: (string | Uint8Array)[]): Uint8Array =>
  Buffer.concat(parts.map((part) => Buffer.from(part)));

/** Each way writes a text so that a reader, a browser or a tool gets it back. */
export const HIDINGS: readonly Hiding[] = [
  { way: 'HTML text', file: 'a.html', hide: (text) => page(`<p>${text}</p>`) },
  { way: 'other case', file: 'a.html', hide: (text) => page(upper(text)) },
  { way: 'no punctuation', file: 'a.txt', hide: (text) => text.replace(/[.,]/g, ' –') },
  { way: 'line ends', file: 'a.txt', hide: (text) => words(text).join('\r\n  ') },
  { way: 'soft hyphens', file: 'a.txt', hide: (text) => text.replace(/e/g, '\u00ade\u200b') },
  { way: 'marks', file: 'a.txt', hide: (text) => text.replace(/a/g, 'a\u0301') },
  {
    way: 'markup in words',
    file: 'a.html',
    hide: (text) => page(text.replace(/e/g, '<b class="x">e</b>')),
  },
  {
    way: 'a table cell a word',
    file: 'a.html',
    hide: (text) => page(`<td>${words(text).join('</td><td class="cell">')}</td>`),
  },
  { way: 'an attribute', file: 'a.html', hide: (text) => page(`<img alt="${text}">`) },
  { way: 'a comment', file: 'a.html', hide: (text) => page(`<!-- ${text} -->`) },
  {
    way: 'markup in a comment',
    file: 'a.html',
    hide: (text) => page(`<!-- <p>${words(text).join('<br class="x"> ')} -->`),
  },
  {
    way: 'markup of words in a comment',
    file: 'a.html',
    hide: (text) => page(`<!-- ${text.replace(/e/g, '<i>e</i>')} -->`),
  },
  {
    way: 'between signs that are no tags',
    file: 'a.html',
    hide: (text) => page(`1 &lt; 2. ${text.replace(/e/g, '<i>e</i>')} 2 &gt; 1`),
  },
  {
    way: 'references of references',
    file: 'a.html',
    hide: (text) => page(codes(text, (code) => `&amp;#${String(code)};`)),
  },
  {
    way: 'decimal references',
    file: 'a.html',
    hide: (text) => page(codes(text, (code) => `&#${String(code)};`)),
  },
  {
    way: 'hexadecimal references',
    file: 'a.html',
    hide: (text) => page(codes(text, (code) => `&#x${hex(code, 2)};`)),
  },
  {
    way: 'named references',
    file: 'a.html',
    hide: (text) => page(text.replace(/ /g, '&nbsp;').replace(/e/g, '&eacute;&shy;')),
  },
  {
    way: 'a page in an attribute',
    file: 'a.html',
    hide: (text) =>
      page(`<iframe srcdoc="&lt;p&gt;${text.replace(/e/g, '&lt;b&gt;e&lt;/b&gt;')}">`),
  },
  {
    way: 'percent signs',
    file: 'a.html',
    hide: (text) => page(`<a href="?q=${encodeURIComponent(text)}">`),
  },
  {
    way: 'every byte percent',
    file: 'a.txt',
    hide: (text) => codes(text, (code) => `%${hex(code, 2)}`),
  },
  { way: 'JSON', file: 'a.json', hide: (text) => JSON.stringify({ note: text }) },
  {
    way: 'JSON escapes',
    file: 'a.json',
    hide: (text) => `{"note":"${codes(text, (code) => `\\u${hex(code, 4)}`)}"}`,
  },
  {
    way: 'JSON line ends',
    file: 'a.json',
    hide: (text) => JSON.stringify(words(text).join('\n')),
  },
  {
    way: 'JSON with HTML with references',
    file: 'a.json',
    hide: (text) => JSON.stringify(codes(text, (code) => `&#${String(code)};`)),
  },
  {
    way: 'script escapes',
    file: 'a.js',
    hide: (text) => `const a = '${codes(text, (code) => `\\x${hex(code, 2)}`)}';`,
  },
  {
    way: 'joined strings',
    file: 'a.js',
    hide: (text) => `const a = '${words(text).join("' +\n  '")}';`,
  },
  {
    way: 'style sheet escapes',
    file: 'a.css',
    hide: (text) => `p::after { content: '${codes(text, (code) => `\\${hex(code, 6)}`)}' }`,
  },
  { way: 'XML', file: 'feed.xml', hide: (text) => `<feed><b><![CDATA[${text}]]></b></feed>` },
  {
    way: 'SVG',
    file: 'a.svg',
    hide: (text) => `<svg><text>${words(text).join(' </text><text y="9">')}</text></svg>`,
  },
  { way: 'CSV', file: 'a.csv', hide: (text) => `number,note\r\n17,"${text}"\r\n` },
  { way: 'CSV cells', file: 'a.csv', hide: (text) => words(text).join('","') },
  {
    way: 'calendar lines',
    file: 'a.ics',
    hide: (text) =>
      `BEGIN:VCALENDAR\r\nDESCRIPTION:${text.replace(/[.,]/g, '\\$&')}`.replace(
        /(.{41})/g,
        '$1\r\n ',
      ),
  },
  { way: 'base64', file: 'a.js', hide: (text) => `const a = "${base64(text)}";` },
  {
    way: 'base64 in lines',
    file: 'a.txt',
    hide: (text) => base64(text).replace(/(.{28})/g, '$1\r\n'),
  },
  {
    way: 'base64 for addresses',
    file: 'a.html',
    hide: (text) => `<a href="/cards/${Buffer.from(upper(text)).toString('base64url')}">`,
  },
  {
    way: 'a page as base64',
    file: 'a.css',
    hide: (text) => `url(data:text/html;base64,${base64(page(text))})`,
  },
  { way: 'base64 twice', file: 'a.txt', hide: (text) => base64(base64(text)) },
  { way: 'gzip', file: 'a.json.gz', hide: (text) => gzipSync(JSON.stringify({ text })) },
  { way: 'gzip twice', file: 'a.bin', hide: (text) => gzipSync(gzipSync(text)) },
  { way: 'gzip as base64', file: 'a.js', hide: (text) => `"${base64(gzipSync(text))}"` },
  {
    way: 'a packed chunk of a picture',
    file: 'a.png',
    hide: (text) => joined(Buffer.from([0x89, 0x50, 0, 0xff]), deflateSync(text), 'IEND'),
  },
  {
    way: 'a plain chunk of a picture',
    file: 'a.webp',
    hide: (text) => joined(Buffer.from([0xff, 0, 0x80]), text, Buffer.from([0, 0xfe])),
  },
  { way: 'UTF-16', file: 'a.txt', hide: (text) => Buffer.from(`\ufeff${text}`, 'utf16le') },
  { way: 'a file without a kind', file: 'LICENSE', hide: (text) => text },
];

/** A file's path that tells a text. */
export const PATHS: readonly { readonly way: string; readonly path: (text: string) => string }[] = [
  { way: 'a file name', path: (text) => `cards/${text.replace(/\W+/g, '-')}.html` },
  { way: 'folder names', path: (text) => `${text.replace(/\W+/g, '/')}/index.html` },
  { way: 'percent signs', path: (text) => `${encodeURIComponent(text)}.html` },
  {
    way: 'base64',
    path: (text) => `assets/${Buffer.from(text).toString('base64url')}.css`,
  },
];
