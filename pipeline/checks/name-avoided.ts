import type { FormMatch } from '../text/index.js';
import type { NameOwner } from './names/forms.js';
import { placed } from './names/placed.js';
import { isToldEarly, nameScans } from './names/scan.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import type { ToldText } from './told/text.js';

const NAMES = `names:
  - { name: Odalys Thrane, kind: character, aliases: [Captain Thrane], avoid: [{ form: Miss Thrane, use: Captain Thrane, why: retitled in script 5 }], level: open }
  - { name: Miss Thrane Lane, kind: place, level: open }
  - { name: the Sunk Orchard, kind: place, avoid: [{ form: the Sunken Orchard, use: the Sunk Orchard }], level: open, except: [a sunken orchard wall] }
`;

function told(words: string): Record<string, string | null> {
  return {
    'names.yaml': NAMES,
    ...edited('one/cards/base/a2.md', ['A lamp that nobody lit is burning.', words]),
  };
}

/** A form of a name that is no longer used. */
export const nameAvoided: Rule = {
  id: 'name-avoided',
  about: 'names',
  severity: 'error',
  why: 'A name that the licensor gave up comes back with the proof, and with a week of delay.',
  look: avoided,
  examples: {
    passes: [
      { says: 'the form in use', files: told('Captain Thrane lit a lamp.') },
      { says: 'a longer name that has the form in it', files: told('A lamp in Miss Thrane Lane.') },
      { says: 'an innocent phrase', files: told('A lamp on a sunken orchard wall is lit.') },
    ],
    fails: [
      {
        says: 'possessive',
        files: told('Miss Thrane’s lamp is burning.'),
        gives: {
          at: 'one/cards/base/a2.md:7:1',
          covers: 'Miss Thrane’s',
          message: 'the bio has a form of Odalys Thrane that is no longer used',
          found: 'Miss Thrane’s',
          expected: '`Captain Thrane’s`: retitled in script 5',
          fix: 'Captain Thrane’s',
          certain: true,
        },
      },
      {
        says: 'at the start of a sentence',
        files: told('The Sunken Orchard has a lamp.'),
        gives: {
          at: 'one/cards/base/a2.md:7:1',
          covers: 'The Sunken Orchard',
          message: 'the bio has a form of the Sunk Orchard that is no longer used',
          found: 'The Sunken Orchard',
          expected: '`The Sunk Orchard`',
          fix: 'The Sunk Orchard',
          certain: true,
        },
      },
    ],
  },
};

function* avoided(subject: Subject): Generator<Remark> {
  for (const { text, matches } of nameScans(subject)) {
    for (const match of matches) {
      const { role } = match.entry.form;
      if (role !== 'avoid' || match.slip === 'letters' || match.slip === 'swapped') continue;
      if (!isToldEarly(subject, text, match.from, match.to)) yield remarkOn(match, text);
    }
  }
}

function remarkOn({ entry, from, to, put }: FormMatch<NameOwner>, text: ToldText): Remark {
  const { listed, why } = entry.form.of;
  return {
    ...text.owner,
    ...placed(text, from, to, put, true),
    message: `${text.what} has a form of ${listed?.name ?? put} that is no longer used`,
    found: text.text.slice(from, to),
    expected: `\`${put}\`${why === undefined ? '' : `: ${why}`}`,
  };
}
