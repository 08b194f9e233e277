import { isIssued, spotOf, type Card, type CardSet } from '../model/index.js';
import { allOf, cutsSince, sayDate, touchesScene, type Cut } from './cut-reach.js';
import { TouchedNames, type NameUse } from './cut-uses.js';
import { ofCard, type Files, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

const NAMES = `names:
  - { name: Tamsin Oakum, kind: character, aliases: [Tamsin], level: open }
`;

/** The sample with three cuts, its second card read against one of them, and with these words. */
function read(against: string, words: string): Files {
  return {
    'names.yaml': NAMES,
    ...edited('property.yaml', [
      'approvals: none',
      'approvals: none\ncuts:\n  - { id: cut-1, received: "2026-07-20", touches: [1/1-1/9] }\n  - { id: cut-2, received: "2026-08-03", touches: [1/3-1/4, 2/1] }\n  - { id: cut-3, received: "2026-09-14", names: [Tamsin] }',
    ]),
    ...edited('one/cards/base/a1.md', ['story: 1/1', 'story: 1/1\ncheckedAgainst: cut-1']),
    ...edited(
      'one/cards/base/a2.md',
      ['story: 1/4', `story: 1/4\n${against}`],
      ['A lamp that nobody lit is burning.', words],
    ),
  };
}

/** Copy that was not read against a cut that touches its scene or a name in it. */
export const cutStale: Rule = {
  id: 'cut-stale',
  about: 'truth',
  severity: 'error',
  lenientIn: ['planning', 'writing'],
  why: 'A card that is true to a cut before the last one tells a story that nobody will see.',
  look: stale,
  examples: {
    passes: [
      {
        says: 'cuts since that touch neither its scene nor a name on it',
        files: read('checkedAgainst: cut-2', 'A lamp that nobody lit is burning.'),
      },
      {
        says: 'read against the current cut',
        files: read('checkedAgainst: cut-3', 'A lamp that Tamsin lit is burning.'),
      },
    ],
    fails: [
      {
        says: 'a cut that touches its scene',
        files: read('checkedAgainst: cut-1', 'A lamp that nobody lit is burning.'),
        gives: {
          at: 'one/cards/base/a2.md:6:17',
          covers: 'cut-1',
          message: 'the copy was not read against cut-2, which touches it',
          found: 'read against cut-1; cut-2, received on 3 August 2026, touches scene 1/4',
          expected:
            'read against cut-3: `holdback checked one/base/a2 --cut cut-3 --by PERSON` says so',
          related: ['property.yaml:14:11 cut-2', 'one/cards/base/a2.md:5:8 scene 1/4'],
        },
      },
      {
        says: 'a cut that touches its scene and another that touches a name on it, in another form',
        files: read('checkedAgainst: cut-1', 'A lamp that Tamsin Oakum lit is burning.'),
        gives: {
          at: 'one/cards/base/a2.md:6:17',
          covers: 'cut-1',
          message: 'the copy was not read against cut-2 and cut-3, which touch it',
          found:
            'read against cut-1; cut-2, received on 3 August 2026, touches scene 1/4; cut-3, received on 14 September 2026, touches Tamsin Oakum in the bio',
          expected:
            'read against cut-3: `holdback checked one/base/a2 --cut cut-3 --by PERSON` says so',
          related: [
            'property.yaml:14:11 cut-2',
            'one/cards/base/a2.md:5:8 scene 1/4',
            'property.yaml:15:11 cut-3',
            'one/cards/base/a2.md:8:13 the name',
          ],
        },
      },
    ],
  },
};

function* stale(subject: Subject): Generator<Remark> {
  const { property, sets } = subject;
  const cuts = property.cuts ?? [];
  const current = cuts.at(-1)?.id;
  if (current === undefined) return;
  const names = new TouchedNames(subject);
  for (const set of sets) {
    for (const card of set.cards) {
      if (card.front.checkedAgainst === current || !isIssued(card)) continue;
      const reaches = cutsSince(cuts, card.front.checkedAgainst).flatMap((cut) =>
        reachOf(cut, card, set, names),
      );
      if (reaches.length > 0) yield remarkOn(card, reaches, current, subject);
    }
  }
}

/** A cut that touches a card, and by what. */
interface Reach {
  readonly cut: Cut;
  readonly scene: string | null;
  readonly uses: readonly NameUse[];
}

function reachOf(cut: Cut, card: Card, set: CardSet, names: TouchedNames): readonly Reach[] {
  const { story } = card.front;
  const scene = story !== undefined && touchesScene(cut, story) ? story : null;
  const uses = names.on(card, set, cut);
  return scene === null && uses.length === 0 ? [] : [{ cut, scene, uses }];
}

function remarkOn(
  card: Card,
  reaches: readonly Reach[],
  current: string,
  { property, content }: Subject,
): Remark {
  const { checkedAgainst } = card.front;
  const ids = allOf(reaches.map(({ cut }) => cut.id));
  const place = ofCard(card);
  const source = content.property?.source;
  return {
    ...place,
    spot: spotOf(card.source, [checkedAgainst === undefined ? 'name' : 'checkedAgainst']),
    message: `the copy was not read against ${ids}, which ${reaches.length === 1 ? 'touches' : 'touch'} it`,
    found: [`read against ${checkedAgainst ?? 'no cut'}`, ...reaches.map(sayReach)].join('; '),
    expected: `read against ${current}: \`holdback checked ${place.set}/${place.card} --cut ${current} --by PERSON\` says so`,
    related: reaches.flatMap(({ cut, scene, uses }) => [
      ...(source
        ? [
            {
              message: cut.id,
              spot: spotOf(source, ['cuts', (property.cuts ?? []).indexOf(cut), 'id']),
            },
          ]
        : []),
      ...(scene === null
        ? []
        : [{ message: `scene ${scene}`, spot: spotOf(card.source, ['story']) }]),
      ...uses.map(({ spot }) => ({ message: 'the name', spot: spot() })),
    ]),
  };
}

function sayReach({ cut: { id, received }, scene, uses }: Reach): string {
  const touched = [
    ...(scene === null ? [] : [`scene ${scene}`]),
    ...uses.map(({ words, what }) => `${words} in ${what}`),
  ];
  return `${id}, received on ${sayDate(received)}, touches ${allOf(touched)}`;
}
