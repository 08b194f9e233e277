import { amount } from './amount.js';
import { SMALL_LAYOUT, WITH_LAYOUT } from './fit-sample.js';
import { fittedZones, sayZone, type FittedZone } from './fitted.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

const LONG = 'Ink, and a thumbprint of the lake, kept under glass since the old harbour went down.';

/** A text that is longer, or a word that is wider, than its zone on the card. */
export const overset: Rule = {
  id: 'overset',
  about: 'fit',
  severity: 'error',
  why: 'What does not fit its zone is cut, shrunk or lost by whoever makes the sheet.',
  look: oversetTexts,
  examples: {
    passes: [{ says: 'a bio that fits', files: WITH_LAYOUT }],
    fails: [
      {
        says: 'a bio of too many lines',
        files: {
          ...WITH_LAYOUT,
          ...edited('one/cards/extra/b1.md', ['Ink, and a thumbprint of the lake.', LONG]),
        },
        gives: {
          at: 'one/cards/extra/b1.md:6:1',
          covers: LONG,
          message: '`bio` is overset by 1 line: about 4 words to cut',
          found: 'bio: 3 lines',
          expected: 'at most 2 lines',
        },
      },
      {
        says: 'a word wider than its zone',
        files: {
          ...WITH_LAYOUT,
          'backs/small.yaml': `${SMALL_LAYOUT}  name: { x: 5, y: 60, width: 6, height: 12, font: body, size: 10, leading: 12 }\n`,
        },
        gives: {
          at: 'one/cards/extra/b1.md:3:7',
          covers: 'The Chart',
          message: '`name` has 1 line wider than its zone',
          found: 'Chart',
          expected: 'words that are no wider than the zone',
        },
      },
      {
        says: 'a legal line too long for the zone of a layout: told once',
        files: {
          ...WITH_LAYOUT,
          ...edited('property.yaml', [
            '© 2027 Lantern & Oar',
            '© 2027 Lantern & Oar, and all who ever sailed with them on the lake',
          ]),
        },
        gives: {
          at: 'backs/small.yaml:9:3',
          covers: 'legal',
          message: '`legal` is overset by 1 line: about 3 words to cut',
          found: 'legal: 2 lines',
          expected: 'at most 1 line',
        },
      },
    ],
  },
};

function* oversetTexts(subject: Subject): Generator<Remark> {
  for (const fitted of fittedZones(subject)) {
    if (fitted.fit.fits) continue;
    const wording = fitted.fit.overset > 0 ? tooLong : tooWide;
    yield { ...fitted.place(), ...wording(fitted) };
  }
}

type Wording = Pick<Remark, 'message' | 'found' | 'expected'>;

function tooLong(zone: FittedZone): Wording {
  const { overset, wordsToCut, lineCount } = zone.fit;
  return {
    message: `${sayZone(zone)} is overset by ${amount(overset, 'line')}: about ${amount(wordsToCut, 'word')} to cut`,
    found: `${zone.name}: ${amount(lineCount, 'line')}`,
    expected: `at most ${amount(lineCount - overset, 'line')}`,
  };
}

function tooWide(zone: FittedZone): Wording {
  const widest = [...zone.set().lines].sort(
    (a, b) => b.width - b.measure - (a.width - a.measure),
  )[0];
  return {
    message: `${sayZone(zone)} has ${amount(zone.fit.wide, 'line')} wider than its zone`,
    found: (widest?.words ?? []).map(({ text }) => text).join(' '),
    expected: 'words that are no wider than the zone',
  };
}
