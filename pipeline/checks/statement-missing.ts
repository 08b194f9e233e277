import { isIssued, spotOf, type Card, type YamlPath } from '../model/index.js';
import { SMALL_LAYOUT, WITH_LAYOUT } from './fit-sample.js';
import { ofCard, type Files, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import { CALLED, carriedBy } from './statement-carried.js';
import type { Subject, SubsetView } from './subject.js';

/** The sample with these keys on its inserts, and these on their card. */
function inserts(plan: string, card: string): Files {
  return {
    ...edited('one/plan.yaml', ['group: inserts,', `group: inserts, ${plan}`]),
    ...edited('one/cards/extra/b1.md', ['spoiler: open', `spoiler: open\n${card}`]),
  };
}

const RELIC = 'relic: { piece: A sliver of wood, from: A model boat, record: timber book 1 }';
const SAID = 'statement: Cut from a model boat.';
const IN_WORDS = 'in the words that your licence and counsel give';

/** Cards with an autograph, a relic or a sketch on which nothing says what it is. */
export const statementMissing: Rule = {
  id: 'statement-missing',
  about: 'legal',
  severity: 'error',
  why: 'Whoever buys a card for what it carries is owed a plain word on what that is.',
  look: ({ subsets, content }) => subsets.flatMap((view) => unsaid(view, content)),
  examples: {
    passes: [
      { says: 'relics, each with its record', files: inserts(`carries: relic, ${SAID},`, RELIC) },
      {
        says: 'a layout with a zone for it',
        files: {
          ...WITH_LAYOUT,
          ...inserts(`back: small, carries: relic, ${SAID},`, RELIC),
          'backs/small.yaml': `${SMALL_LAYOUT}  statement: { x: 5, y: 60, width: 40, height: 8, font: body, size: 6, leading: 8 }\n`,
        },
      },
    ],
    fails: [
      {
        says: 'autographs without a statement',
        files: inserts('carries: autograph,', 'signers: [{ name: Ines Albarran, state: signed }]'),
        gives: {
          at: 'one/plan.yaml:8:11',
          covers: 'extra',
          message: '`extra` carries autographs, and no statement says what they are',
          found: 'no `statement`',
          expected: `\`statement: …\`, ${IN_WORDS}`,
        },
      },
      {
        says: 'signers in a subset that does not say what it carries',
        files: inserts(`${SAID},`, 'signers: [{ name: Ines Albarran, state: signed }]'),
        gives: {
          at: 'one/plan.yaml:8:11',
          covers: 'extra',
          message: '`extra` has cards with `signers`, and does not say what its cards carry',
          found: 'no `carries`',
          expected: '`carries: autograph`',
        },
      },
      {
        says: 'a layout without a zone for it',
        files: { ...WITH_LAYOUT, ...inserts(`back: small, carries: relic, ${SAID},`, RELIC) },
        gives: {
          at: 'one/plan.yaml:8:54',
          covers: 'small',
          message: 'the layout `small` has no zone `statement`, so that `extra` prints none',
          found: 'zones `bio` and `legal`',
          expected: 'a zone `statement`, or another layout',
        },
      },
      {
        says: 'a relic that nobody vouches for',
        files: inserts(`carries: relic, ${SAID},`, 'relic: { piece: A sliver, from: A boat }'),
        gives: {
          at: 'one/cards/extra/b1.md:5:1',
          covers: 'relic',
          message: 'nothing says who vouches for this relic',
          found: 'A sliver, from A boat',
          expected: '`record`: the paper that says so',
        },
      },
      {
        says: 'an autograph card that nobody signs',
        files: inserts(`carries: autograph, ${SAID},`, 'writer: jonah'),
        gives: {
          at: 'one/cards/extra/b1.md:3:7',
          covers: 'The Chart',
          message: 'this card of a subset of autographs has no signer',
          found: 'no `signers`',
          expected: '`signers: [{ name: …, state: … }]`',
        },
      },
    ],
  },
};

function unsaid(view: SubsetView, content: Subject['content']): Remark[] {
  const { plan, cards } = view;
  const carried = carriedBy(plan, cards);
  if (plan.carries === undefined && carried) return [uncarried(view, carried)];
  return [
    ...unstated(view),
    ...(plan.statement === undefined ? [] : unprinted(view, content)),
    ...cards.filter(isIssued).flatMap((card) => bare(plan.carries, card)),
  ];
}

function at({ set, at: index }: SubsetView, key: string): Pick<Remark, 'spot' | 'set'> {
  return { set: set.id, spot: spotOf(set.plan.source, ['subsets', index, key]) };
}

function uncarried(view: SubsetView, carried: NonNullable<ReturnType<typeof carriedBy>>): Remark {
  const { id, statement } = view.plan;
  const missing = statement === undefined ? 'no `carries` and no `statement`' : 'no `carries`';
  const more = statement === undefined ? `, and \`statement: …\`, ${IN_WORDS}` : '';
  return {
    ...at(view, 'id'),
    message: `\`${id}\` has ${carried.by}, and does not say what its cards carry`,
    found: missing,
    expected: `\`carries: ${carried.what}\`${more}`,
  };
}

function unstated(view: SubsetView): Remark[] {
  const { id, carries, statement } = view.plan;
  if (carries === undefined || statement !== undefined) return [];
  return [
    {
      ...at(view, 'id'),
      message: `\`${id}\` carries ${CALLED[carries]}, and no statement says what they are`,
      found: 'no `statement`',
      expected: `\`statement: …\`, ${IN_WORDS}`,
    },
  ];
}

/** Of the layout of the subset, whose cards need not be there yet, and of cards with one of their own. */
function unprinted(view: SubsetView, content: Subject['content']): Remark[] {
  const { plan, cards } = view;
  const own = cards.filter((card) => isIssued(card) && card.front.back !== undefined);
  const others = cards.length === 0 || cards.some((card) => isIssued(card) && !own.includes(card));
  const say = (back: string, place: Pick<Remark, 'spot' | 'set' | 'card'>): Remark[] => {
    const layout = content.layouts.get(back)?.value;
    if (!layout) return [];
    const zones = [...(layout.blank === true ? [] : Object.keys(layout.zones))];
    zones.push(...Object.keys(layout.front ?? {}).filter((zone) => !zones.includes(zone)));
    if (zones.includes('statement')) return [];
    return [
      {
        ...place,
        message: `the layout \`${back}\` has no zone \`statement\`, so that ${place.card === undefined ? `\`${plan.id}\`` : 'this card'} prints none`,
        found: layout.blank === true ? 'nothing is printed on its back' : sayZones(zones),
        expected: 'a zone `statement`, or another layout',
      },
    ];
  };
  return [
    ...(plan.back === undefined || !others ? [] : say(plan.back, at(view, 'back'))),
    ...own.flatMap((card) =>
      say(card.front.back ?? '', { ...ofCard(card), spot: spotOf(card.source, ['back']) }),
    ),
  ];
}

function sayZones(zones: readonly string[]): string {
  const quoted = zones.map((zone) => `\`${zone}\``);
  const last = quoted.pop();
  if (last === undefined) return 'no zones';
  return quoted.length === 0 ? `zone ${last}` : `zones ${quoted.join(', ')} and ${last}`;
}

function bare(carries: SubsetView['plan']['carries'], card: Card): Remark[] {
  const { relic, signers } = card.front;
  const say = (path: YamlPath, words: Omit<Remark, 'spot' | 'set' | 'card'>): Remark[] => [
    {
      ...ofCard(card),
      spot: spotOf(card.source, path, path[0] === 'relic' ? 'key' : 'value'),
      ...words,
    },
  ];
  if (carries === 'relic' && !relic) {
    return say(['name'], {
      message: 'this card of a subset of relics does not say what is set into it',
      found: 'no `relic`',
      expected: '`relic: { piece: …, from: …, record: … }`',
    });
  }
  if (relic && relic.record === undefined) {
    return say(['relic'], {
      message: 'nothing says who vouches for this relic',
      found: `${relic.piece}, from ${relic.from}`,
      expected: '`record`: the paper that says so',
    });
  }
  if (carries === 'autograph' && !signers) {
    return say(['name'], {
      message: 'this card of a subset of autographs has no signer',
      found: 'no `signers`',
      expected: '`signers: [{ name: …, state: … }]`',
    });
  }
  return [];
}
