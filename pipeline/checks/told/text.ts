import {
  holdNamed,
  join,
  paragraphText,
  spotOf,
  type Copy,
  type Hold,
  type Paragraph,
  type Schedule,
  type SourceFile,
  type Spot,
  type YamlPath,
} from '../../model/index.js';
import type { Remark } from '../rule.js';
import { spotInParagraph } from '../style/spot.js';

/** A text that somebody outside may read, and when: what it tells must not open later. */
export interface ToldText {
  /** "the bio", "`facts.Berth`". */
  readonly what: string;
  /** `name`: of a card; `id`: of a file or an address, of which `id-tells` speaks. */
  readonly kind: 'text' | 'name' | 'id';
  readonly text: string;
  /** When a part of the text is told, from and to in UTF-16 units. */
  readonly holdOf: (from: number, to: number) => Hold;
  readonly spotOf: (from: number, to: number) => Spot;
  readonly owner: Pick<Remark, 'set' | 'card'>;
  /** Where held spans were taken out of the text: of such a text only what stands over one is new. */
  readonly seams?: readonly number[];
}

/** What the texts of one thing have in common. */
export interface Around {
  readonly hold: Hold;
  readonly source: SourceFile;
  readonly owner: ToldText['owner'];
  readonly kind?: ToldText['kind'];
}

/** A value of a file; its words are pointed at where they stand as they are. */
export function valueText(what: string, text: string, path: YamlPath, around: Around): ToldText {
  const { hold, source, owner, kind = 'text' } = around;
  const place = (from: number, to: number): Spot => wordsIn(spotOf(source, path), text, from, to);
  return { what, kind, text, holdOf: () => hold, spotOf: place, owner };
}

/** A key or a value that is read together with another: "Berth: Lock nine". */
export function pairText(
  what: string,
  [first, second]: readonly [first: string, second: string],
  [spotOfFirst, spotOfSecond]: readonly [first: () => Spot, second: () => Spot],
  { hold, owner }: Around,
): ToldText {
  const start = first.length + 2;
  const place = (from: number, to: number): Spot =>
    from < start
      ? wordsIn(spotOfFirst(), first, from, Math.min(to, first.length))
      : wordsIn(spotOfSecond(), second, from - start, to - start);
  return {
    what,
    kind: 'text',
    text: `${first}: ${second}`,
    holdOf: () => hold,
    spotOf: place,
    owner,
  };
}

/** Where words of a value stand in the file; the whole value, if they are not typed as such. */
function wordsIn(spot: Spot, text: string, from: number, to: number): Spot {
  const typed = spot.source.text.slice(spot.from, spot.to);
  const words = text.slice(from, to);
  let at = typed.indexOf(words);
  // Of words that stand there several times, the ones that are meant.
  for (let seen = text.indexOf(words); at >= 0 && seen >= 0 && seen < from;) {
    at = typed.indexOf(words, at + 1);
    seen = text.indexOf(words, seen + 1);
  }
  return at < 0
    ? spot
    : { source: spot.source, from: spot.from + at, to: spot.from + at + words.length };
}

/** Paragraphs, each with its held spans: words in one open with the span and not with the text. */
export function* copyTexts(
  what: string,
  copy: Copy,
  { hold: around, source, owner }: Around,
  schedule: Schedule,
): Generator<ToldText> {
  for (const paragraph of copy) {
    const told = (runs: Paragraph): ToldText => ({
      what,
      kind: 'text',
      text: paragraphText(runs),
      holdOf: (from, to) => holdInRuns(runs, from, to, around, schedule),
      spotOf: (from, to) => spotInParagraph(runs, from, to, source),
      owner,
    });
    yield told(paragraph);
    const cut = withoutSpans(paragraph);
    if (cut) yield { ...told(cut.runs), seams: cut.seams };
  }
}

type Run = Paragraph[number];

/** A paragraph as it is read while its spans are held, and where each was; null without any. */
function withoutSpans(paragraph: Paragraph): { runs: Run[]; seams: number[] } | null {
  const runs: Run[] = [];
  const seams: number[] = [];
  let length = 0;
  for (const run of paragraph) {
    if (run.hold !== null) {
      if (length > 0 && seams.at(-1) !== length) seams.push(length);
      continue;
    }
    runs.push(run);
    length += run.text.length;
  }
  const inside = seams.filter((at) => at < length);
  return inside.length > 0 ? { runs, seams: inside } : null;
}

/** The runs that a stretch of a paragraph touches, with where each starts in it. */
function runsIn(
  paragraph: Paragraph,
  from: number,
  to: number,
): readonly { readonly run: Run; readonly start: number }[] {
  let start = 0;
  const placed = paragraph.map((run) => {
    const here = { run, start };
    start += run.text.length;
    return here;
  });
  return placed.filter((each) => each.start < to && each.start + each.run.text.length > from);
}

/** A span holds the words of which it has at least half: "Ysol[de]" is read at once. */
function holdInRuns(
  paragraph: Paragraph,
  from: number,
  to: number,
  around: Hold,
  schedule: Schedule,
): Hold {
  const touched = runsIn(paragraph, from, to).filter(({ run }) => run.hold !== null);
  if (touched.length === 0) return around;
  const words = [
    ...paragraphText(paragraph)
      .slice(from, to)
      .matchAll(/[\p{L}\p{M}\p{N}]+/gu),
  ].map(({ 0: word, index }) => ({ from: from + index, to: from + index + word.length }));
  return touched.reduce((hold, { run, start }) => {
    const hidden = words.some((word) => {
      const shared = Math.min(word.to, start + run.text.length) - Math.max(word.from, start);
      return shared * 2 >= word.to - word.from;
    });
    return hidden && run.hold !== null ? join(hold, holdNamed(schedule, run.hold)) : hold;
  }, around);
}
