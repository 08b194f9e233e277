import type { Link, Nodes, PhrasingContent, RootContent } from 'mdast';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import { unified } from 'unified';

import {
  fenceOf,
  type Copy,
  type Fault,
  type Paragraph,
  type Run,
  type SourceFile,
} from '../model/index.js';

const parser = unified().use(remarkParse).use(remarkFrontmatter, ['yaml']).freeze();

/** Most characters, and most marks and line ends: the parser takes quadratic time over them. */
const LONGEST = 50_000;
const MOST_MARKS = 1000;

/** The words of a Markdown file with front matter, and what in it is no copy. */
export interface CopyReading {
  readonly copy: Copy;
  readonly faults: readonly Fault[];
}

/**
 * Reads the body of a file. Copy is paragraphs, emphasis, strong, hard line breaks, and links to
 * `held:ID` or `count:ID`; everything else is a fault, and so is a link that does not quite parse.
 */
export function readCopy(source: SourceFile): CopyReading {
  const overload = overloadOf(source);
  if (overload) return { copy: [], faults: [overload] };
  const faults: Fault[] = [];
  const [first, ...blocks] = parser.parse(source.text).children;
  if (first?.type !== 'yaml') {
    return { copy: [], faults: [notCopy(source, first, 'the front matter was not understood')] };
  }
  const copy = blocks.flatMap((block): Paragraph[] => {
    if (block.type !== 'paragraph') {
      faults.push(
        notCopy(source, block, `${NAMES[block.type] ?? 'this markup'} is not used in copy`),
      );
      return [];
    }
    const runs = runsOf(block.children, PLAIN, { source, faults });
    reportLeftovers(runs, { source, faults });
    return [runs];
  });
  return { copy, faults };
}

interface Face {
  readonly italic: boolean;
  readonly bold: boolean;
  readonly hold: string | null;
  readonly count: string | null;
}
interface Reading {
  readonly source: SourceFile;
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
        return [runOf(node, unwrapLines(node.value), face)];
      case 'break':
        return [runOf(node, '\n', face)];
      case 'emphasis':
        return runsOf(node.children, { ...face, italic: true }, reading);
      case 'strong':
        return runsOf(node.children, { ...face, bold: true }, reading);
      case 'link':
        return runsOf(node.children, linkFace(node, face, reading), reading);
      default:
        reading.faults.push(
          notCopy(reading.source, node, `${NAMES[node.type] ?? 'this markup'} is not used in copy`),
        );
        return [];
    }
  });
}

/** A line end inside a paragraph is a space. */
function unwrapLines(text: string): string {
  return text.replace(/\r\n|\n|\r/g, ' ').normalize('NFC');
}

function runOf(node: Nodes, text: string, face: Face): Run {
  const { from, to } = rangeOf(node);
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
  const { from, to } = rangeOf(link);
  const written = reading.source.text.slice(from, to);
  const plainForm = written.startsWith('[') && written.endsWith(`](${link.url})`);
  const nested = (kind === 'held' ? face.hold : face.count) !== null;
  const empty = !link.children.some(holdsWords);
  if (kind === undefined || id === undefined || !plainForm || nested || empty) {
    reading.faults.push({
      ...notCopy(reading.source, link, 'this link is neither a held span nor a count'),
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

const LEFTOVER = /\]\s*\(|\]\[|\b(?:held|count):\S|<!--|<\/?[a-z]/gi;

/** Half-typed markup must never become prose: a held span that fails open would tell. */
function reportLeftovers(runs: readonly Run[], { source, faults }: Reading): void {
  const text = runs.map((run) => run.text).join('');
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
function overloadOf(source: SourceFile): Fault | null {
  const body = fenceOf(source.text)?.bodyFrom ?? 0;
  const marks = [...source.text.slice(body).matchAll(/[*_[<`>]|(?:[-+]|\d[.)])[ \t]|\r\n?|\n/g)];
  const from = body + (marks[MOST_MARKS]?.index ?? LONGEST);
  if (from >= source.text.length) return null;
  return {
    rule: 'copy-markup',
    spot: { source, from, to: from + 1 },
    message: 'this is too much for one file',
    expected: `at most ${String(LONGEST)} characters and ${String(MOST_MARKS)} lines and marks`,
  };
}

function notCopy(source: SourceFile, node: RootContent | undefined, message: string): Fault {
  const { from, to } = node ? rangeOf(node) : { from: 0, to: 0 };
  const firstLine = /^[^\r\n]*/.exec(source.text.slice(from, to))?.[0] ?? '';
  return {
    rule: 'copy-markup',
    spot: { source, from, to: from + firstLine.length },
    message,
    found: firstLine.slice(0, 60),
    expected: 'paragraphs, *emphasis*, **strong**, line breaks, held spans and counts',
  };
}

function rangeOf(node: Nodes): { from: number; to: number } {
  return { from: node.position?.start.offset ?? 0, to: node.position?.end.offset ?? 0 };
}
