import { sayHold, spotOf, type Card } from '../model/index.js';
import type { NameIndex } from '../text/index.js';
import type { Bearer } from './cast.js';
import { knownField } from './known-hold.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { heldBy, namePlaces, surelyTold, type NamePlaces } from './told/early.js';
import { castIndex } from './told/scan.js';
import { valueText } from './told/text.js';

const NAMES = `names:
  - { name: Ysolde Marrack, kind: character, level: later }
`;

function shown(...lines: readonly string[]): Record<string, string | null> {
  return {
    'names.yaml': NAMES,
    'one/art/a2.svg': '<svg/>',
    ...edited('one/cards/base/a2.md', [
      'story: 1/4',
      ['story: 1/4', 'image: { file: art/a2.svg, depicts: [Ysolde Marrack] }', ...lines].join('\n'),
    ]),
  };
}

/** A picture of somebody who opens later than the picture shows. */
export const depictsHeld: Rule = {
  id: 'depicts-held',
  about: 'spoilers',
  severity: 'error',
  why: 'A face in a picture tells as much as a name below it.',
  look: heldFaces,
  examples: {
    passes: [
      { says: 'a picture that is held as long', files: shown('holds: { image: later }') },
      {
        says: 'a card that is',
        files: {
          ...shown(),
          ...edited(
            'one/cards/base/a2.md',
            ['spoiler: open', 'spoiler: later'],
            ['story: 1/4', 'story: 1/4\nimage: { file: art/a2.svg, depicts: [Ysolde Marrack] }'],
          ),
        },
      },
    ],
    fails: [
      {
        says: 'a picture that shows with its card',
        files: shown(),
        gives: {
          at: 'one/cards/base/a2.md:6:38',
          covers: 'Ysolde Marrack',
          message: 'the picture shows somebody or something that opens later than it',
          found: 'Ysolde Marrack is held by later until 16 April 2027, 20:00',
          expected:
            'a picture held as long, as by `holds: { image: later }`, or nobody who opens later',
          related: ['names.yaml:2:13 the name'],
        },
      },
    ],
  },
};

function* heldFaces(subject: Subject): Generator<Remark> {
  const index = castIndex(subject);
  const places = namePlaces(subject);
  for (const card of subject.cards) yield* facesOf(card, { index, places, subject });
}

interface Looking {
  readonly index: NameIndex<Bearer>;
  readonly places: NamePlaces;
  readonly subject: Subject;
}

function* facesOf(card: Card, { index, places, subject }: Looking): Generator<Remark> {
  const { schedule, holds } = subject;
  const around = holds.get(card);
  const hold = around && knownField(card, 'image', around, schedule);
  if (!hold) return;
  for (const [at, who] of (card.front.image?.depicts ?? []).entries()) {
    const path = ['image', 'depicts', at];
    const text = valueText('`depicts`', who, path, { hold, source: card.source, owner: {} });
    const bearer = surelyTold(index.find(who), text);
    if (!bearer?.hold) continue;
    const id = schedule.levels[bearer.hold.level]?.id;
    const by = bearer.hold.level > hold.level && id !== undefined ? id : bearer.hold.embargoes[0];
    yield {
      ...ofCard(card),
      spot: spotOf(card.source, path),
      message: 'the picture shows somebody or something that opens later than it',
      found: `${bearer.name} is held by ${heldBy(bearer.hold, hold, subject)}`,
      expected: `a picture held as long, as by \`holds: { image: ${by ?? sayHold(schedule, hold)} }\`, or nobody who opens later`,
      related: places(bearer),
    };
  }
}
