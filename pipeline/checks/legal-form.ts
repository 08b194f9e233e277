import { OPEN, isIssued, type Card } from '../model/index.js';
import { hiddenCharacters } from '../text/index.js';
import { WITH_LAYOUT, SMALL_LAYOUT } from './fit-sample.js';
import { exactIn, hasMark, nearLines, sayDifference } from './legal-likeness.js';
import { ofCard, type Files, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { copyTexts, valueText, type ToldText } from './told/text.js';

/** A sales text of the sample with these words. */
function sales(words: string): Files {
  return { 'one/sales/news.md': `---\nkind: web\ngoes: unset\nspoiler: open\n---\n${words}\n` };
}

/** A legal line that somebody typed, and that is not the licence's letter by letter. */
export const legalForm: Rule = {
  id: 'legal-form',
  about: 'legal',
  severity: 'error',
  why: 'A licence is kept letter by letter, and its legal line is read by a lawyer.',
  look: badForms,
  examples: {
    passes: [
      {
        says: 'the line as the licence gives it, and somebody else’s',
        files: sales('Eight charts.\n\n© 2027 Lantern & Oar. © 2027 Slackwater Cards'),
      },
    ],
    fails: [
      {
        says: 'letters for a sign in a sales text',
        files: sales('Eight charts.\n\n© 2027 Lantern and Oar'),
        gives: {
          at: 'one/sales/news.md:8:1',
          covers: '© 2027 Lantern and Oar',
          message: 'this is not the legal line letter by letter: `and` for `&`',
          found: '© 2027 Lantern and Oar',
          expected: '© 2027 Lantern & Oar',
          fix: '© 2027 Lantern & Oar',
          certain: true,
        },
      },
      {
        says: 'another year in what a layout shares',
        files: {
          ...WITH_LAYOUT,
          'backs/small.yaml': `${SMALL_LAYOUT}shared: { bio: Made of paper. (c) 2026 Lantern & Oar }\n`,
        },
        gives: {
          at: 'backs/small.yaml:10:31',
          covers: '(c) 2026 Lantern & Oar',
          message: 'this is not the legal line letter by letter: `(c) 2026` for `© 2027`',
          found: '(c) 2026 Lantern & Oar',
          expected: '© 2027 Lantern & Oar',
          fix: '© 2027 Lantern & Oar',
          certain: true,
        },
      },
      {
        says: 'letters for the mark in the property itself',
        files: edited('property.yaml', ['© 2027', '(c) 2027']),
        gives: {
          at: 'property.yaml:14:17',
          covers: '(c)',
          message: 'the legal line has letters where the mark of copyright belongs',
          found: '(c)',
          expected: '©, if the licence has it',
          fix: '©',
          certain: true,
        },
      },
    ],
  },
};

function* badForms(subject: Subject): Generator<Remark> {
  yield* propertyForms(subject);
  const line = subject.property.legal?.line;
  if (line === undefined || faultsIn(line).length > 0) return;
  for (const text of typedTexts(subject)) yield* typedForms(text, line);
}

/** Texts in which a legal line may have been typed by hand. */
function* typedTexts({ content, sales: outward, cards, schedule }: Subject): Generator<ToldText> {
  for (const { source, value } of content.layouts.values()) {
    for (const [zone, text] of Object.entries(value.shared ?? {})) {
      const around = { hold: OPEN, source, owner: {} };
      yield valueText(`shared.${zone}`, text, ['shared', zone], around);
    }
  }
  for (const card of cards) if (isIssued(card)) yield* typedOnCard(card);
  for (const { set, source, words } of outward) {
    const around = { hold: OPEN, source, owner: { set } };
    for (const text of copyTexts('the text', words, around, schedule)) if (!text.seams) yield text;
  }
}

/** Of a card: what fills the zone `legal`, and any other text with a mark of copyright in it. */
function* typedOnCard(card: Card): Generator<ToldText> {
  for (const [zone, text] of Object.entries(card.front.texts ?? {})) {
    if (zone !== 'legal' && !hasMark(text)) continue;
    const around = { hold: OPEN, source: card.source, owner: ofCard(card) };
    yield valueText(`texts.${zone}`, text, ['texts', zone], around);
  }
}

function* typedForms({ text, spotOf, owner }: ToldText, line: string): Generator<Remark> {
  for (const { from, to } of nearLines(text, line)) {
    const words = text.slice(from, to);
    const spot = spotOf(from, to);
    const isTyped = spot.source.text.slice(spot.from, spot.to) === words;
    yield {
      ...owner,
      spot,
      message: `this is not the legal line letter by letter: ${sayDifference(words, line)}`,
      found: words,
      expected: line,
      ...(isTyped && isPlain(line) ? { fix: line, certain: true } : {}),
    };
  }
}

/** Words that mean themselves wherever they are typed: in YAML in any quotes, and in a sales text. */
function isPlain(line: string): boolean {
  return /^[\p{L}©(](?:[\p{L}\p{M}\p{N} .’()©®™–—-]|,|& )*$/u.test(line) && !/^\w+[.)] /.test(line);
}

/** Faults of a line that are sure, whatever the licence says. */
interface Fault {
  readonly from: number;
  readonly to: number;
  readonly message: string;
  readonly expected: string;
  readonly fix: string;
}

function faultsIn(line: string): readonly Fault[] {
  if (hiddenCharacters(line).length > 0) return [];
  const marks = [...line.matchAll(/\(\s?c\s?\)/giu)].map(({ 0: mark, index }): Fault => ({
    from: index,
    to: index + mark.length,
    message: 'has letters where the mark of copyright belongs',
    expected: '©, if the licence has it',
    fix: '©',
  }));
  const spaces = [...line.matchAll(/^\s+|\s+$|\s{2,}|[^\S ]/gu)].map(({ 0: gap, index }): Fault => {
    const isEdge = index === 0 || index + gap.length === line.length;
    return {
      from: index,
      to: index + gap.length,
      message: isEdge ? 'begins or ends with a space' : 'has a space that is no single plain space',
      expected: isEdge ? 'no space' : 'a plain space',
      fix: isEdge ? '' : ' ',
    };
  });
  return [...marks, ...spaces];
}

function* propertyForms({ content, property }: Subject): Generator<Remark> {
  const source = content.property?.source;
  const { legal } = property;
  if (!source || !legal) return;
  const lines = [
    { what: 'the legal line', line: legal.line, path: ['legal', 'line'] },
    ...(legal.depicts ?? []).map(({ name, line }, at) => ({
      what: `the line owed to ${name}`,
      line,
      path: ['legal', 'depicts', at, 'line'],
    })),
  ];
  for (const { what, line, path } of lines) {
    const { spotOf } = valueText(what, line, path, { hold: OPEN, source, owner: {} });
    for (const { from, to, message, expected, fix } of faultsIn(line)) {
      const spot = spotOf(from, to);
      const found = line.slice(from, to);
      const isTyped = source.text.slice(spot.from, spot.to) === found;
      yield {
        spot,
        message: `${what} ${message}`,
        found: found.trim() === '' ? sayDifference(found, '') : found,
        expected,
        ...(isTyped ? { fix, certain: true } : {}),
      };
    }
  }
}

/** Whether a text has the line as it should be, or nearly: then its form is what is wrong. */
export function hasLine(paragraphs: readonly string[], line: string): boolean {
  return paragraphs.some(
    (text) => exactIn(text, line).length > 0 || nearLines(text, line).length > 0,
  );
}
