import type { Link, Nodes, PhrasingContent, RootContent } from 'mdast';
import remarkParse from 'remark-parse';
import { unified } from 'unified';

import type { Copy, Fault, Paragraph, Run, SourceFile } from '../model/index.js';

const parser = unified().use(remarkParse).freeze();

/** The parser takes one off the start of what it is given: this one, and none that was typed. */
const BYTE_ORDER_MARK = '\ufeff';

/** Most characters, and most marks and line ends: the parser takes quadratic time over them. */
const LONGEST = 50_000;
const MOST_MARKS = 1000;

/** The words of a Markdown file, and what in it is no copy. */
export interface CopyReading {
  readonly copy: Copy;
  readonly faults: readonly Fault[];
}

/**
 * Reads the body of a file. Copy is paragraphs, emphasis, strong, hard line breaks, and links to
 * `held:ID` or `count:ID`; everything else is a fault, and so is a link that does not quite parse.
 * @param bodyFrom where the body starts, below the front matter.
 */
export function readCopy(source: SourceFile, bodyFrom: number): CopyReading {
  const body = source.text.slice(bodyFrom);
  const overload = overloadOf(source, bodyFrom, body);
  if (overload) return { copy: [], faults: [overload] };
  const reading: Reading = { source, bodyFrom, faults: [] };
  const copy = parser.parse(BYTE_ORDER_MARK + body).children.flatMap((block): Paragraph[] => {
    if (block.type !== 'paragraph') {
      reading.faults.push(notUsed(block, reading));
      return [];
    }
    const runs = runsOf(block.children, PLAIN, reading);
    reportLeftovers(runs, reading);
    return [runs];
  });
  return { copy, faults: reading.faults };
}

interface Face {
  readonly italic: boolean;
  readonly bold: boolean;
  readonly hold: string | null;
  readonly count: string | null;
}
interface Reading {
  readonly source: SourceFile;
  readonly bodyFrom: number;
  readonly faults: Fault[];
}

const PLAIN: Face = { italic: false, bold: false, hold: null, count: null };

const NAMES: Partial<Record<Nodes['type'], string>> = {
  heading: 'a heading',
  thematicBreak: 'a rule across the page',
  blockquote: 'a block quotation',
  list: 'a list',
  code: 'a code block',
  html: 'HTML',
  definition: 'a reference definition',
  inlineCode: 'code',
  image: 'an image',
  imageReference: 'an image',
  linkReference: 'a reference link',
};

function runsOf(nodes: readonly PhrasingContent[], face: Face, reading: Reading): Run[] {
  return nodes.flatMap((node): Run[] => {
    switch (node.type) {
      case 'text':
        return [runOf(node, unwrapLines(node.value), face, reading)];
      case 'break':
        return [runOf(node, '\n', face, reading)];
      case 'emphasis':
        return runsOf(node.children, { ...face, italic: true }, reading);
      case 'strong':
        return runsOf(node.children, { ...face, bold: true }, reading);
      case 'link':
        return runsOf(node.children, linkFace(node, face, reading), reading);
      default:
        reading.faults.push(notUsed(node, reading));
        return [];
    }
  });
}

/** A line end inside a paragraph is a space. */
function unwrapLines(text: string): string {
  return text.replace(/\r\n|\n|\r/g, ' ').normalize('NFC');
}

function runOf(node: Nodes, text: string, face: Face, reading: Reading): Run {
  const { from, to } = rangeOf(node, reading);
  return {
    text,
    italic: face.italic,
    bold: face.bold,
    hold: face.hold,
    count: face.count,
    from,
    to,
  };
}

function linkFace(link: Link, face: Face, reading: Reading): Face {
  const [, kind, id] = /^(held|count):([a-z0-9]+(?:-[a-z0-9]+)*)$/.exec(link.url) ?? [];
  const { from, to } = rangeOf(link, reading);
  const written = reading.source.text.slice(from, to);
  const plainForm = written.startsWith('[') && written.endsWith(`](${link.url})`);
  const nested = (kind === 'held' ? face.hold : face.count) !== null;
  const empty = !link.children.some(holdsWords);
  if (kind === undefined || id === undefined || !plainForm || nested || empty) {
    reading.faults.push({
      ...notCopy(link, 'this link is neither a held span nor a count', reading),
      expected: '[words](held:LEVEL) or [number](count:SUBSET), without a title',
    });
    return face;
  }
  return kind === 'held' ? { ...face, hold: id } : { ...face, count: id };
}

function holdsWords(node: PhrasingContent): boolean {
  if (node.type === 'text') return /\S/u.test(node.value);
  return 'children' in node && node.children.some(holdsWords);
}

/** A sign that every leftover has: most copy has none and is not searched. */
const MAY_BE_MARKUP = /[\]<:]/;
const LEFTOVER = /\]\s*\(|\]\[|\b(?:held|count):\S|<!--|<\/?[a-z]/gi;

/** Half-typed markup must never become prose: a held span that fails open would tell. */
function reportLeftovers(runs: readonly Run[], { source, faults }: Reading): void {
  const text = runs.map((run) => run.text).join('');
  if (!MAY_BE_MARKUP.test(text)) return;
  const told = new Set<Run>();
  for (const { 0: leftover, index } of text.matchAll(LEFTOVER)) {
    const run = runAt(runs, index);
    if (!run || told.has(run)) continue;
    told.add(run);
    const at = source.text.indexOf(leftover, run.from);
    const from = at >= 0 && at < run.to ? at : run.from;
    faults.push({
      rule: 'copy-markup',
      spot: { source, from, to: Math.min(from + leftover.length, run.to) },
      ...(leftover.startsWith('<') ? LIKE_HTML : HALF_TYPED),
      found: leftover,
    });
  }
}

/** The run that a character of the joined text belongs to. */
function runAt(runs: readonly Run[], index: number): Run | undefined {
  let end = 0;
  return runs.find((run) => (end += run.text.length) > index);
}

const HALF_TYPED = {
  message: 'this looks like a held span or a count that was not closed',
  expected: '[words](held:LEVEL) or [number](count:SUBSET)',
};
const LIKE_HTML = { message: 'this looks like HTML', expected: 'words; HTML is not used in copy' };

/** What is no bio by its size alone is not parsed at all. */
function overloadOf(source: SourceFile, bodyFrom: number, body: string): Fault | null {
  if (body.length <= MOST_MARKS) return null;
  const marks = [...body.matchAll(/[*_[<`>]|(?:[-+]|\d[.)])[ \t]|\r\n?|\n/g)];
  const from = bodyFrom + (marks[MOST_MARKS]?.index ?? LONGEST);
  if (from >= source.text.length) return null;
  return {
    rule: 'copy-markup',
    spot: { source, from, to: from + 1 },
    message: 'this is too much for one file',
    expected: `at most ${String(LONGEST)} characters and ${String(MOST_MARKS)} lines and marks`,
  };
}

function notUsed(node: RootContent, reading: Reading): Fault {
  return notCopy(node, `${NAMES[node.type] ?? 'this markup'} is not used in copy`, reading);
}

function notCopy(node: RootContent, message: string, reading: Reading): Fault {
  const { source } = reading;
  const { from, to } = rangeOf(node, reading);
  const firstLine = /^[^\r\n]*/.exec(source.text.slice(from, to))?.[0] ?? '';
  return {
    rule: 'copy-markup',
    spot: { source, from, to: from + firstLine.length },
    message,
    found: firstLine.slice(0, 60),
    expected: 'paragraphs, *emphasis*, **strong**, line breaks, held spans and counts',
  };
}

function rangeOf({ position }: Nodes, { bodyFrom }: Reading): { from: number; to: number } {
  return {
    from: bodyFrom + (position?.start.offset ?? 0),
    to: bodyFrom + (position?.end.offset ?? 0),
  };
}
