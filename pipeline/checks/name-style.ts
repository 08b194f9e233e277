import { paragraphText, type Copy, type SourceFile } from '../model/index.js';
import { billingRemarks } from './names/billing.js';
import { nameBook } from './names/book.js';
import { emphasisOf } from './names/italics.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

const NAMES = `performers: [signers, bio]
names:
  - { name: Patient Heron, kind: craft, style: italic, level: open }
  - { name: Odalys Thrane, kind: character, level: open }
  - { name: Ines Albarran, kind: performer, billing: full, level: open }
`;

function told(words: string): Record<string, string | null> {
  return {
    'names.yaml': NAMES,
    ...edited('one/cards/base/a2.md', ['A lamp that nobody lit is burning.', words]),
  };
}

/** How names are set: in italics or not, in full, and where performers may be named. */
export const nameStyle: Rule = {
  id: 'name-style',
  about: 'names',
  severity: 'error',
  why: 'How a name stands on a card is in the licence: its italics, its billing, its place.',
  look: misset,
  examples: {
    passes: [
      { says: 'a boat in italics', files: told('The *Patient Heron*’s lamp is burning.') },
      {
        says: 'a boat upright in a passage of italics',
        files: told('*A lamp that the* Patient Heron *carries is burning.*'),
      },
      { says: 'somebody in full', files: told('A lamp that Ines Albarran lit is burning.') },
    ],
    fails: [
      {
        says: 'a boat without italics',
        files: told('The Patient Heron’s lamp is burning.'),
        gives: {
          at: 'one/cards/base/a2.md:7:5',
          covers: 'Patient Heron',
          message: 'the name Patient Heron is set in italics, and here it is not',
          found: 'Patient Heron’s',
          expected: '`*Patient Heron*`',
          fix: '*Patient Heron*',
          certain: true,
        },
      },
      {
        says: 'italics of more than the name',
        files: told('*The Patient Heron* has a lamp.'),
        gives: {
          at: 'one/cards/base/a2.md:7:1',
          covers: '*The Patient Heron*',
          message: 'the emphasis of Patient Heron is to be of the whole name and nothing more',
          found: 'Patient Heron',
          expected: '`*Patient Heron*`',
          fix: 'The *Patient Heron*',
          certain: true,
        },
      },
      {
        says: 'somebody in italics',
        files: told('A lamp that *Odalys Thrane* lit is burning.'),
        gives: {
          at: 'one/cards/base/a2.md:7:13',
          covers: '*Odalys Thrane*',
          message: 'the name Odalys Thrane is set upright, and here it is emphasised',
          found: 'Odalys Thrane',
          expected: 'the name without emphasis',
          fix: 'Odalys Thrane',
          certain: true,
        },
      },
      {
        says: 'a surname alone of somebody who is named in full',
        files: told('A lamp that Albarran lit is burning.'),
        gives: {
          at: 'one/cards/base/a2.md:7:13',
          covers: 'Albarran',
          message: 'the bio shortens Ines Albarran, who is named in full',
          found: 'Albarran',
          expected: '`Ines Albarran`',
          fix: 'Ines Albarran',
        },
      },
      {
        says: 'a performer among the credits',
        files: {
          'names.yaml': NAMES,
          ...edited('one/cards/base/a2.md', [
            'story: 1/4',
            'story: 1/4\ncredits: [{ role: Voice, name: Ines Albarran }]',
          ]),
        },
        gives: {
          at: 'one/cards/base/a2.md:6:32',
          covers: 'Ines Albarran',
          message: '`credits.0` names Ines Albarran, and performers are not named here',
          found: 'Ines Albarran: in credits',
          expected: 'performers in signers, bio alone',
        },
      },
    ],
  },
};

function* misset(subject: Subject): Generator<Remark> {
  for (const card of subject.cards) {
    for (const remark of emphases(card.bio, card.source, subject))
      yield { ...ofCard(card), ...remark };
  }
  for (const { set, words, source } of subject.sales) {
    for (const remark of emphases(words, source, subject)) yield { set, ...remark };
  }
  yield* billingRemarks(subject);
}

function* emphases(copy: Copy, source: SourceFile, subject: Subject): Generator<Remark> {
  const book = nameBook(subject);
  for (const paragraph of copy) {
    const text = paragraphText(paragraph);
    for (const match of book.read(text, 'copy').matches) {
      const remark = emphasisOf(match, paragraph, source);
      if (remark) yield { ...remark, found: text.slice(match.from, match.to) };
    }
  }
}
