import { paragraphText, type Paragraph, type SourceFile, type Spot } from '../../model/index.js';
import type { FormMatch } from '../../text/index.js';
import type { NameOwner } from './forms.js';
import type { Remark } from '../rule.js';

interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Words beside a name from which on an emphasis is of a passage, and not of the name. */
const PASSAGE = 3;

/** What is wrong with the emphasis of a name in a paragraph; null if nothing is. */
export function emphasisOf(
  match: FormMatch<NameOwner>,
  paragraph: Paragraph,
  source: SourceFile,
): Omit<Remark, 'found'> | null {
  const { listed } = match.entry.form.of;
  if (!listed || match.slip !== null || match.entry.form.role !== 'right') return null;
  const text = paragraphText(paragraph);
  const name = nameIn(match, text);
  const whole = { from: match.from, to: name.to };
  const italics = italicsIn(paragraph);
  const over = italics.filter((each) => each.from < name.to && name.from < each.to);
  const [first] = over;
  const inItalic = over.length === 1 && first && first.from <= name.from && first.to >= name.to;
  const exact = inItalic && [name, whole].some((each) => isSame(each, first));
  const passage = inItalic && wordsBeside(text, first, name) >= PASSAGE;
  if (listed.style !== 'italic') {
    if (!exact && !(inItalic && !passage && isSame(first, { from: match.from, to: match.to })))
      return null;
    return said(`the name ${listed.name} is set upright, and here it is emphasised`, {
      ...restyled(paragraph, source, text, first, name, false),
      expected: 'the name without emphasis',
    });
  }
  if (passage) {
    return said(`the name ${listed.name} is told from a passage in italics by upright letters`, {
      spot: spotIn(paragraph, source, name),
      expected: 'the name without emphasis, inside what is emphasised',
    });
  }
  if (exact) return null;
  if (over.length === 0) {
    if (italics.some((each) => isPassageBeside(text, each, name))) return null;
    return said(`the name ${listed.name} is set in italics, and here it is not`, {
      ...restyled(paragraph, source, text, name, name, true),
      expected: `\`*${text.slice(name.from, name.to)}*\``,
    });
  }
  const region = {
    from: Math.min(name.from, ...over.map(({ from }) => from)),
    to: Math.max(name.to, ...over.map(({ to }) => to)),
  };
  return said(`the emphasis of ${listed.name} is to be of the whole name and nothing more`, {
    ...restyled(paragraph, source, text, region, name, true),
    expected: `\`*${text.slice(name.from, name.to)}*\``,
  });
}

function said(message: string, rest: Omit<Remark, 'message'>): Omit<Remark, 'found'> {
  return { message, ...rest };
}

/** The name alone: without a possessive ending, and without an article that is no part of it. */
function nameIn({ entry, from, to }: FormMatch<NameOwner>, text: string): Stretch {
  const typed = text.slice(from, to);
  const ending = /['’](?:s|d|ll|ve|re)?$/iu.exec(typed)?.[0].length ?? 0;
  const article = /^(?:the|an?)\s/u.test(entry.form.form)
    ? (/^\S+\s+/u.exec(typed)?.[0].length ?? 0)
    : 0;
  return { from: from + article, to: to - ending };
}

function isSame(a: Stretch, b: Stretch): boolean {
  return a.from === b.from && a.to === b.to;
}

/** The stretches of a paragraph in italics; neighbouring runs are one. */
function italicsIn(paragraph: Paragraph): readonly Stretch[] {
  const found: Stretch[] = [];
  let at = 0;
  for (const { text, italic } of paragraph) {
    const last = found.at(-1);
    if (italic && last?.to === at)
      found[found.length - 1] = { from: last.from, to: at + text.length };
    else if (italic) found.push({ from: at, to: at + text.length });
    at += text.length;
  }
  return found;
}

function countWords(text: string): number {
  return text.match(/[\p{L}\p{N}][\p{L}\p{N}'’-]*/gu)?.length ?? 0;
}

function wordsBeside(text: string, around: Stretch, name: Stretch): number {
  return (
    countWords(text.slice(around.from, name.from)) +
    countWords(text.slice(name.to, around.to).replace(/^['’]s\b/u, ''))
  );
}

/** Whether a passage in italics goes on just beside a name. */
function isPassageBeside(text: string, passage: Stretch, name: Stretch): boolean {
  const between =
    passage.to <= name.from ? text.slice(passage.to, name.from) : text.slice(name.to, passage.from);
  if (/[\p{L}\p{N}]{2}/u.test(between)) return false;
  return countWords(text.slice(passage.from, passage.to)) >= PASSAGE;
}

/** A stretch as it stands in the file; all that it touches, if it is not typed as it reads. */
function spotIn(paragraph: Paragraph, source: SourceFile, { from, to }: Stretch): Spot {
  return {
    source,
    from: offsetOf(paragraph, source, from),
    to: offsetOf(paragraph, source, to - 1) + 1,
  };
}

function offsetOf(paragraph: Paragraph, source: SourceFile, at: number): number {
  let start = 0;
  for (const run of paragraph) {
    if (at < start + run.text.length) {
      const typed = source.text.slice(run.from, run.to) === run.text;
      return typed ? run.from + at - start : run.from;
    }
    start += run.text.length;
  }
  return paragraph.at(-1)?.to ?? 0;
}

const MARK = /[*_]/;

/** The words of a region with the emphasis that they should have, if marks are all that is amiss. */
function restyled(
  paragraph: Paragraph,
  source: SourceFile,
  text: string,
  region: Stretch,
  name: Stretch,
  emphasised: boolean,
): Pick<Remark, 'spot' | 'fix' | 'certain'> {
  const inner = spotIn(paragraph, source, region);
  const isBold = paragraph.some(({ bold }) => bold);
  let { from, to } = inner;
  if (MARK.test(source.text.charAt(from - 1))) from -= 1;
  if (MARK.test(source.text.charAt(to))) to += 1;
  const typed = source.text.slice(from, to);
  const words = text.slice(region.from, region.to);
  if (isBold || typed.replace(/[*_]/g, '') !== words) return { spot: inner };
  const own = text.slice(name.from, name.to);
  const put = emphasised
    ? `${text.slice(region.from, name.from)}*${own}*${text.slice(name.to, region.to)}`
    : words;
  return { spot: { source, from, to }, fix: put, certain: true };
}
