import { placed } from './names/placed.js';
import { isToldEarly } from './names/scan.js';
import { spellingsOf, type Varied } from './names/spellings.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

function credits(quay: string, lamp: string, chart: string): Record<string, string | null> {
  const credited = (name: string): string =>
    `spoiler: open\ncredits: [{ role: Ink, name: ${name} }]`;
  return {
    ...edited('one/cards/base/a1.md', ['spoiler: open', credited(quay)]),
    ...edited('one/cards/base/a2.md', ['spoiler: open', credited(lamp)]),
    ...edited('one/cards/extra/b1.md', ['spoiler: open', credited(chart)]),
  };
}

/** A name that no list has, spelt in more than one way. */
export const nameVaries: Rule = {
  id: 'name-varies',
  about: 'names',
  severity: 'warning',
  why: 'Of two spellings one is wrong, and whoever bears the name knows which.',
  look: varyingNames,
  examples: {
    passes: [
      {
        says: 'one spelling throughout',
        files: credits('Anselm Birk', 'Anselm Birk', 'Perpetua Wray'),
      },
      { says: 'two people', files: credits('Tim Birk', 'Tom Birk', 'Perpetua Wray') },
    ],
    fails: [
      {
        says: 'one letter in one place',
        files: credits('Anselm Birk', 'Anselm Burk', 'Anselm Birk'),
        gives: {
          at: 'one/cards/base/a2.md:5:30',
          covers: 'Anselm Burk',
          message: 'a name is spelt in more than one way, and this is the rarer',
          found: 'Anselm Burk: 1 time',
          expected: '`Anselm Birk`, which stands 2 times, or both in names.yaml if they are two',
          fix: 'Anselm Birk',
          related: ['one/cards/base/a1.md:5:30 the commoner spelling'],
        },
      },
    ],
  },
};

/** How often a spelling must stand, and how much oftener than the other, to be surely meant. */
const MAJORITY = 3;

function* varyingNames(subject: Subject): Generator<Remark> {
  for (const varied of spellingsOf(subject).varieties) {
    for (const mention of varied.rare.mentions) {
      if (isToldEarly(subject, mention.text, mention.from, mention.to)) continue;
      yield remarkOn(mention, varied);
    }
  }
}

function remarkOn(
  { text, from, to }: Varied['rare']['mentions'][number],
  { rare, common }: Varied,
): Remark {
  const often = common.mentions.length;
  const certain = often >= MAJORITY && often >= MAJORITY * rare.mentions.length;
  const [first] = common.mentions;
  return {
    ...text.owner,
    ...placed(text, from, to, common.name, certain),
    message: 'a name is spelt in more than one way, and this is the rarer',
    found: `${rare.name}: ${times(rare.mentions.length)}`,
    expected: `\`${common.name}\`, which stands ${times(often)}, or both in names.yaml if they are two`,
    related: first
      ? [{ message: 'the commoner spelling', spot: first.text.spotOf(first.from, first.to) }]
      : [],
  };
}

function times(count: number): string {
  return `${String(count)} time${count === 1 ? '' : 's'}`;
}
