import { undividedNames } from '../model/index.js';
import { fitText } from '../typeset/index.js';
import { amount } from './amount.js';
import { fittedZones, sayZone, type FittedZone } from './fitted.js';
import { WITH_LAYOUT, withLayout } from './fit-sample.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

const HAT = 'He is younger than Dorrit by one minute and taller by one hat.';

/** A text that fits in one way of breaking lines and not in the other. */
export const fitTight: Rule = {
  id: 'fit-tight',
  about: 'fit',
  severity: 'warning',
  why: 'The page-layout program may break lines in the other way, and then it is overset.',
  look: tightTexts,
  examples: {
    passes: [{ says: 'a bio that fits in both ways', files: WITH_LAYOUT }],
    fails: [
      {
        says: 'a bio that fits by whole paragraph alone, by closing up its spaces',
        files: {
          'names.yaml': 'names:\n  - { name: Dorrit, kind: character, level: open }\n',
          ...withLayout(
            'size: 7, leading: 9',
            'size: 7, leading: 9, align: justify, breaks: whole-paragraph',
          ),
          ...edited('one/cards/extra/b1.md', ['Ink, and a thumbprint of the lake.', HAT]),
        },
        gives: {
          at: 'one/cards/extra/b1.md:6:1',
          covers: HAT,
          message: '`bio` fits by whole paragraph, but not line by line',
          found: '2 lines',
          expected: 'at most 2 lines both ways; broken the other way it is 3 lines',
          severity: 'warning',
        },
      },
    ],
  },
};

function* tightTexts(subject: Subject): Generator<Remark> {
  const undivided = undividedNames(subject.content.names?.value ?? null);
  for (const fitted of fittedZones(subject)) {
    if (!isNear(fitted)) continue;
    const other = fitText(fitted.text, otherWay(fitted.zone), fitted.faces, { undivided });
    if (other.fits) continue;
    yield {
      ...fitted.place(),
      message: `${sayZone(fitted)} fits ${wayOf(fitted.zone)}, but not ${wayOf(otherWay(fitted.zone))}`,
      found: amount(fitted.fit.lineCount, 'line'),
      expected: `at most ${amount(other.lineCount - other.overset, 'line')} both ways; broken the other way it is ${amount(other.lineCount, 'line')}`,
    };
  }
}

/** Only a full zone can be lost by the other way, and only a text of several lines has two ways. */
function isNear({ fit }: FittedZone): boolean {
  return fit.fits && fit.free <= 1 && fit.capacity - fit.free > 1;
}

function otherWay(zone: FittedZone['zone']): FittedZone['zone'] {
  return {
    ...zone,
    breaks: zone.breaks === 'whole-paragraph' ? 'line-by-line' : 'whole-paragraph',
  };
}

function wayOf(zone: FittedZone['zone']): string {
  return zone.breaks === 'whole-paragraph' ? 'by whole paragraph' : 'line by line';
}
