import {
  isIssued,
  paragraphText,
  spotOf,
  startOf,
  type Card,
  type SalesText,
  type Sourced,
} from '../model/index.js';
import type { BackFile, SalesFront } from '../../schema/index.js';
import { foldedWords } from '../text/index.js';
import { SMALL_LAYOUT, WITH_LAYOUT, withLayout } from './fit-sample.js';
import { hasLine } from './legal-form.js';
import { ofCard, type Files, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { castIndex } from './told/scan.js';

/** A sales text of the sample with these words. */
function sales(kind: string, words: string): Files {
  return { 'one/sales/news.md': `---\nkind: ${kind}\ngoes: unset\nspoiler: open\n---\n${words}\n` };
}

const OWED: Files = {
  'names.yaml':
    'names:\n  - { name: Ines Albarran, kind: performer, aliases: [I. Albarran], level: open }\n',
  ...edited('property.yaml', [
    'Oar" }',
    'Oar", depicts: [{ name: Ines Albarran, line: By leave of Ines Albarran. }] }',
  ]),
  'one/art/b.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
};

function depicting(name: string): Files {
  return {
    ...OWED,
    ...edited('one/cards/extra/b1.md', [
      'spoiler: open',
      `spoiler: open\nimage: { file: art/b.svg, depicts: [${name}] }`,
    ]),
  };
}

const LEGAL_ZONE = SMALL_LAYOUT.slice(SMALL_LAYOUT.indexOf('  legal:'));

/** A card, or a text that goes out, without a line that is owed on it. */
export const legalMissing: Rule = {
  id: 'legal-missing',
  about: 'legal',
  severity: 'error',
  why: 'What is printed without its legal line is printed outside the licence.',
  look: missing,
  examples: {
    passes: [
      { says: 'a layout with a zone for it', files: WITH_LAYOUT },
      { says: 'a sales text with it', files: sales('shop', 'Eight charts. © 2027 Lantern & Oar') },
      { says: 'words for a stage, which nobody reads', files: sales('stage', 'Eight charts.') },
      { says: 'a person who is shown, as the line names them', files: depicting('Ines Albarran') },
    ],
    fails: [
      {
        says: 'a layout without a zone for it',
        files: withLayout(LEGAL_ZONE, ''),
        gives: {
          at: 'backs/small.yaml:7:1',
          covers: 'zones',
          message: 'this layout has no zone `legal`, so that its cards print no legal line',
          found: '1 card prints in it, extra/b1 the first',
          expected: 'a zone `legal` on the back, for: © 2027 Lantern & Oar',
        },
      },
      {
        says: 'a sales text without it',
        files: sales('shop', 'Eight charts.'),
        gives: {
          at: 'one/sales/news.md:2:7',
          covers: 'shop',
          message: 'this text goes out without the legal line',
          found: 'no legal line in it',
          expected: '© 2027 Lantern & Oar',
        },
      },
      {
        says: 'a property without it',
        files: edited('property.yaml', ['legal: { line: "© 2027 Lantern & Oar" }\n', '']),
        gives: {
          at: 'property.yaml:2:1',
          covers: 'title',
          message: 'this property has no legal line, and its cards are being written',
          found: 'no `legal`',
          expected: '`legal: { line: … }`, letter by letter as the licence gives it',
        },
      },
      {
        says: 'a person to whom a line is owed, under another form of the name',
        files: depicting('I. Albarran'),
        gives: {
          at: 'one/cards/extra/b1.md:5:37',
          covers: 'I. Albarran',
          message:
            'the line that is owed to Ines Albarran does not print: this is another form of the name',
          found: 'I. Albarran',
          expected: 'Ines Albarran, as `legal.depicts` has it',
          fix: 'Ines Albarran',
          related: ['property.yaml:14:58 owed'],
        },
      },
    ],
  },
};

function* missing(subject: Subject): Generator<Remark> {
  const line = subject.property.legal?.line;
  if (line === undefined) yield* withoutLine(subject);
  else {
    yield* layoutsWithout(subject, line);
    yield* subject.sales.flatMap((text) => salesWithout(text, line));
  }
  yield* owedElsewhere(subject);
}

/** Once one of its sets is being written. */
function* withoutLine({ content, sets }: Subject): Generator<Remark> {
  const source = content.property?.source;
  const isWritten = sets.some(
    ({ plan, cards }) => plan.value.stage !== 'planning' && cards.some(isIssued),
  );
  if (!source || !isWritten) return;
  yield {
    spot: spotOf(source, ['title'], 'key'),
    message: 'this property has no legal line, and its cards are being written',
    found: 'no `legal`',
    expected: '`legal: { line: … }`, letter by letter as the licence gives it',
  };
}

/** Once for each layout, not for each card: the zone is what is missing. */
function* layoutsWithout(subject: Subject, line: string): Generator<Remark> {
  for (const [id, { first, cards }] of usersOf(subject)) {
    const layout = subject.content.layouts.get(id);
    if (!layout || printsLegal(layout)) continue;
    const amount = `${String(cards)} card${cards === 1 ? ' prints' : 's print'} in it`;
    yield {
      spot: spotOf(layout.source, ['zones'], 'key'),
      message: 'this layout has no zone `legal`, so that its cards print no legal line',
      found: `${amount}, ${first.subset}/${first.id} the first`,
      expected: `a zone \`legal\` on the back, for: ${line}`,
    };
  }
}

/** Nothing can print on a blank back; the line may stand on the front. */
function printsLegal({ value: { zones, front, blank } }: Sourced<BackFile>): boolean {
  return blank === true || zones['legal'] !== undefined || front?.['legal'] !== undefined;
}

function usersOf({ subsets }: Subject): ReadonlyMap<string, { first: Card; cards: number }> {
  const users = new Map<string, { first: Card; cards: number }>();
  for (const { plan, cards } of subsets) {
    for (const card of cards) {
      const id = card.front.back ?? plan.back;
      if (id === undefined || !isIssued(card)) continue;
      const known = users.get(id);
      if (known) known.cards += 1;
      else users.set(id, { first: card, cards: 1 });
    }
  }
  return users;
}

/** What is only said aloud needs no line. */
const SPOKEN: readonly SalesFront['kind'][] = ['stage'];

function salesWithout({ set, source, front, words }: SalesText, line: string): Remark[] {
  if (SPOKEN.includes(front.kind) || hasLine(words.map(paragraphText), line)) return [];
  return [
    {
      set,
      spot: spotOf(source, ['kind']),
      message: 'this text goes out without the legal line',
      found: 'no legal line in it',
      expected: line,
    },
  ];
}

/** A line is printed for a name letter by letter: another form of it would print none. */
function* owedElsewhere(subject: Subject): Generator<Remark> {
  const owed = subject.property.legal?.depicts ?? [];
  if (owed.length === 0) return;
  const source = subject.content.property?.source;
  const bearers = new Map<string, { name: string; at: number }>();
  for (const [at, { name }] of owed.entries()) {
    for (const key of bearersOf(name, subject))
      if (!bearers.has(key)) bearers.set(key, { name, at });
  }
  const known = new Set(owed.map(({ name }) => name));
  for (const card of subject.cards.filter(isIssued)) {
    const shown = card.front.image?.depicts ?? [];
    for (const [at, words] of shown.entries()) {
      if (known.has(words)) continue;
      const found = bearersOf(words, subject).flatMap((key) => bearers.get(key) ?? [])[0];
      if (!found || shown.includes(found.name)) continue;
      const spot = spotOf(card.source, ['image', 'depicts', at]);
      const isTyped = spot.source.text.slice(spot.from, spot.to) === words;
      yield {
        ...ofCard(card),
        spot,
        message: `the line that is owed to ${found.name} does not print: this is another form of the name`,
        found: words,
        expected: `${found.name}, as \`legal.depicts\` has it`,
        ...(isTyped && /^[\p{L} .’'-]+$/u.test(found.name) ? { fix: found.name } : {}),
        related: [
          {
            message: 'owed',
            spot: source
              ? spotOf(source, ['legal', 'depicts', found.at, 'name'])
              : startOf(card.source),
          },
        ],
      };
    }
  }
}

/** Whose name this is: of everyone in the cast who bears the whole of it, and the words themselves. */
function bearersOf(words: string, subject: Subject): readonly string[] {
  const folded = foldedWords(words);
  const named = castIndex(subject)
    .findIn(folded)
    .filter(({ doubt, from, to }) => doubt === null && from === 0 && to >= words.trimEnd().length)
    .flatMap(({ of }) => of.map(({ name }) => `name ${name}`));
  return [...named, folded.map((word) => word.folded).join(' ')];
}
