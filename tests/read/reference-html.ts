import type { Copy } from '../../pipeline/model/index.js';

/** Text in one face; `\n` is a hard line break. */
export interface Piece {
  readonly text: string;
  readonly italic: boolean;
  readonly bold: boolean;
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' };

/** The paragraphs of HTML that has nothing but p, em, strong, br and text; null for any other. */
export function readHtml(html: string): Piece[][] | null {
  const paragraphs: Piece[][] = [];
  const open: string[] = [];
  for (const [token, closing, name] of html.matchAll(/<(\/?)(p|em|strong|br)(?: \/)?>|<|[^<]+/g)) {
    if (token === '<') return null;
    if (name === undefined) {
      if (open[0] === 'p') add(paragraphs, textOf(token), open);
      else if (token.trim() !== '') return null;
    } else if (name === 'br') {
      if (open[0] !== 'p') return null;
      add(paragraphs, '\n', open);
    } else if (closing === '/') {
      if (open.pop() !== name) return null;
    } else {
      if ((name === 'p') !== (open.length === 0)) return null;
      if (name === 'p') paragraphs.push([]);
      open.push(name);
    }
  }
  return open.length === 0 ? paragraphs.map(merged) : null;
}

function add(paragraphs: readonly Piece[][], text: string, open: readonly string[]): void {
  const italic = open.includes('em');
  paragraphs.at(-1)?.push({ text, italic, bold: open.includes('strong') });
}

/** The renderer writes a line end after `<br />`, which is none of the text. */
function textOf(html: string): string {
  return html.replace(/&(amp|lt|gt|quot);/g, (_, name: string) => ENTITIES[name] ?? '');
}

/** Runs as pieces, to compare with those of HTML. */
export function piecesOf(copy: Copy): Piece[][] {
  return copy.map((runs) => merged(runs.map(({ text, italic, bold }) => ({ text, italic, bold }))));
}

/** Neighbours in one face are one piece; a line end is a space, and nothing after a break. */
function merged(pieces: readonly Piece[]): Piece[] {
  const result: Piece[] = [];
  let afterBreak = false;
  for (const { text: raw, italic, bold } of pieces) {
    const unwrapped = afterBreak ? raw.replace(/^\n/, '') : raw;
    const text = raw === '\n' && !afterBreak ? raw : unwrapped.replaceAll('\n', ' ');
    afterBreak = raw === '\n' && !afterBreak;
    if (text === '') continue;
    const last = result.at(-1);
    if (last?.italic === italic && last.bold === bold) {
      result[result.length - 1] = { ...last, text: last.text + text };
    } else result.push({ text, italic, bold });
  }
  return result;
}
