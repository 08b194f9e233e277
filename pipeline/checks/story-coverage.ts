import type { Subset } from '../../schema/index.js';
import { spotOf, type Card } from '../model/index.js';
import type { Beat } from './storyline.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject, SubsetView } from './subject.js';

/** Scenes that a story subset was to tell and does not, or tells and was not to. */
export const storyCoverage: Rule = {
  id: 'story-coverage',
  about: 'spoilers',
  severity: 'error',
  lenientIn: ['planning'],
  why: 'A story told in cards must tell its turns, and none of what comes after.',
  look: (subject) => subject.subsets.flatMap((view) => uncovered(view, subject)),
  examples: {
    passes: [{ says: 'every beat inside the coverage told', files: {} }],
    fails: [
      {
        says: 'a scene outside the coverage',
        files: edited('one/cards/base/a2.md', ['1/4', '2/4']),
        gives: {
          at: 'one/cards/base/a2.md:5:8',
          covers: '2/4',
          message: 'scene 2/4 lies outside what `base` covers',
          found: '2/4',
          expected: '1/1 to 1/9',
        },
      },
      {
        says: 'a beat that no card tells',
        files: edited('one/cards/base/a1.md', ['story: 1/1', 'story: 1/2']),
        gives: {
          at: 'one/plan.yaml:7:86',
          covers: 'coverage',
          message: 'no card of `base` tells the beat at 1/1',
          expected: 'a card with `story` for each beat from 1/1 to 1/9',
          related: ['property.yaml:13:11 The water rises'],
        },
      },
      {
        says: 'a story card without a scene',
        files: edited('one/cards/base/a2.md', ['story: 1/4\n', '']),
        gives: {
          at: 'one/cards/base/a2.md:2:1',
          covers: 'number',
          message: 'this card of `base` names no scene',
          expected: '`story`, such as 2/14',
        },
      },
    ],
  },
};

function uncovered(view: SubsetView, subject: Subject): Remark[] {
  const { storyline } = view;
  if (!storyline) return [];
  if (storyline.backwards) return [backwards(view)];
  return [
    ...outsideOf(view, storyline.outside),
    ...scenelessIn(view, storyline.sceneless),
    ...untoldIn(view, storyline.untold, subject),
  ];
}

function backwards({ set, plan, at }: SubsetView): Remark {
  return {
    spot: spotOf(set.plan.source, ['subsets', at, 'coverage', 'to']),
    message: `the coverage of \`${plan.id}\` ends before it begins`,
    found: sayCoverage(plan),
    expected: 'the earlier scene first',
  };
}

/** One card is told where it stands; several are told once, in the plan, which may be what is wrong. */
function outsideOf(view: SubsetView, cards: readonly Card[]): Remark[] {
  const { set, plan, at } = view;
  const [card, second] = cards;
  if (!card) return [];
  const expected = sayCoverage(plan);
  if (!second) {
    const scene = card.front.story ?? '';
    return [
      {
        ...ofCard(card),
        spot: spotOf(card.source, ['story']),
        message: `scene ${scene} lies outside what \`${plan.id}\` covers`,
        found: scene,
        expected,
      },
    ];
  }
  return [
    {
      spot: spotOf(set.plan.source, ['subsets', at, 'coverage'], 'key'),
      message: `${cards.length} cards of \`${plan.id}\` lie outside what it covers`,
      expected,
      related: placesOf(cards),
    },
  ];
}

function scenelessIn(view: SubsetView, cards: readonly Card[]): Remark[] {
  const { set, plan, at } = view;
  const [card, second] = cards;
  if (!card) return [];
  const expected = '`story`, such as 2/14';
  if (!second) {
    const spot = spotOf(card.source, ['number'], 'key');
    return [
      { ...ofCard(card), spot, message: `this card of \`${plan.id}\` names no scene`, expected },
    ];
  }
  return [
    {
      spot: spotOf(set.plan.source, ['subsets', at, 'id']),
      message: `${cards.length} cards of \`${plan.id}\` name no scene`,
      expected,
      related: placesOf(cards),
    },
  ];
}

function placesOf(cards: readonly Card[]): NonNullable<Remark['related']> {
  return cards.map(({ source, front }) => ({
    message: `card ${front.number}`,
    spot: spotOf(source, [front.story === undefined ? 'number' : 'story']),
  }));
}

function untoldIn(
  view: SubsetView,
  beats: readonly Beat[],
  { content, property }: Subject,
): Remark[] {
  const { set, plan, at } = view;
  const source = content.property?.source;
  if (beats.length === 0 || !source) return [];
  const scenes = beats.map((beat) => beat.at);
  return [
    {
      spot: spotOf(set.plan.source, ['subsets', at, 'coverage'], 'key'),
      message: `no card of \`${plan.id}\` tells the beat${beats.length > 1 ? 's' : ''} at ${scenes.join(', ')}`,
      expected: `a card with \`story\` for each beat from ${sayCoverage(plan)}`,
      related: beats.map((beat) => ({
        message: beat.says,
        spot: spotOf(source, ['beats', property.beats?.indexOf(beat) ?? 0, 'at']),
      })),
    },
  ];
}

function sayCoverage({ coverage }: Subset): string {
  return coverage ? `${coverage.from} to ${coverage.to}` : '';
}
