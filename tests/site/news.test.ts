import { describe, expect, test } from 'vitest';

import type { PublicData } from '../../schema/index.js';
import { earlierViews, view } from '../../pipeline/gate/index.js';
import { publicData, STEPS_TOLD } from '../../pipeline/out/site/index.js';
import { DAYS, cardOf, example, exampleWith, say } from '../law/example.js';
import { START, DAY, instantText } from '../law/generate-words.js';
import { releasedOf } from '../law/outputs.js';
import type { Plain } from '../law/plain.js';

function dataOf(plain: Plain, day: number): PublicData {
  const released = releasedOf(plain);
  const seen = view(released, { kind: 'public', at: START + day * DAY });
  if (!seen) throw new Error(`nothing is public on day ${String(day)}`);
  return publicData(seen, earlierViews(released, seen, STEPS_TOLD), new Map(), false);
}

/** What is new, step by step: "shops: 4 revealed, 1 more (bio)". */
function told(plain: Plain, day: number): string[] {
  const { news, sets } = dataOf(plain, day);
  const stepOf = new Map(Object.entries(DAYS).map(([name, at]) => [instantText(at), name]));
  return news.map(({ at, cards, parallels }) => {
    const lines = cards.map((each) => {
      const subset = sets
        .find(({ id }) => id === each.set)
        ?.subsets.find(({ id }) => id === each.subset);
      const number = subset?.cards[each.at]?.number ?? 'none';
      const fields = each.fields.length === 0 ? '' : ` (${each.fields.join(', ')})`;
      return `${number} ${each.what}${fields}`;
    });
    return `${stepOf.get(at) ?? at}: ${[...lines, ...parallels.map(({ id }) => id)].join(', ')}`;
  });
}

describe('what is new', () => {
  test('is told step by step, the newest first', () => {
    expect(told(example(), DAYS.finale)).toEqual([
      'finale: 48 revealed',
      'spring: 1 more (bio), 2 revealed',
      'shops: 4 revealed',
    ]);
  });

  test('is nothing where nothing was held', () => {
    expect(told(exampleWith(cardOf('crew', 'c001', { number: '1' })), DAYS.finale)).toEqual([]);
  });

  test('is nothing on the first day, and at a step that told nothing', () => {
    expect(dataOf(example(), 0).news).toEqual([]);
    expect(dataOf(example(), DAYS.fair).news).toEqual([]);
  });

  test('is told of parallels and of fields that were held apart', () => {
    const plain = exampleWith(
      cardOf('crew', 'c001', {
        number: '1',
        facts: { Berth: 'Lock nine', Depth: 'two' },
        holds: { 'facts.Depth': 'shops', name: 'spring' },
        publicName: 'The pilot',
      }),
    );
    for (const { plan } of plain.sets) {
      plan.parallels?.push({ id: 'tarred', title: 'Tarred', of: ['crew'], spoiler: 'shops' });
    }
    expect(told(plain, DAYS.spring)).toEqual([
      'spring: 1 more (name)',
      'shops: 1 more (facts), tarred',
    ]);
  });

  test('has no part of a card that is still held, whatever held it before', () => {
    const held = (spoiler: string): Plain =>
      exampleWith(
        cardOf('crew', 'c001', { number: '1', spoiler, embargo: ['undated'] }),
        cardOf('crew', 'c002', { number: '2' }),
      );
    expect(dataOf(held('shops'), DAYS.shops)).toEqual(dataOf(held('open'), DAYS.shops));
  });

  test('has no part of what told more of a card that was pulled since', () => {
    const pulled = (facts: Record<string, string>): Plain =>
      exampleWith(
        cardOf('crew', 'c001', {
          number: '1',
          facts,
          issued: 'no',
          holds: { facts: 'shops', issued: 'spring' },
        }),
      );
    expect(told(pulled({ Berth: 'Lock nine' }), DAYS.shops)).toEqual(['shops: 1 more (facts)']);
    expect(told(pulled({ Berth: 'Lock nine' }), DAYS.spring)).toEqual([]);
  });

  test('does not tell of words that are still held in a bio that told more', () => {
    const bio = (hold: string): Plain =>
      exampleWith(
        cardOf('crew', 'c001', { number: '1' }, [
          say('A bell.'),
          say('It rings.', 'shops'),
          say('Nobody hears it.', hold),
        ]),
      );
    expect(told(bio('spring'), DAYS.shops)).toEqual(['shops: 1 more (bio)']);
    expect(dataOf(bio('spring'), DAYS.shops)).toEqual(dataOf(bio('undated'), DAYS.shops));
  });

  test('goes back some steps and no further', () => {
    const plain = example();
    const days = [11, 12, 13, 14, 15, 16, 17];
    for (const day of days) {
      (plain.property.embargoes ??= []).push({ id: `e${String(day)}`, lift: instantText(day) });
      plain.sets[0]?.cards.push(
        cardOf('crew', `n${String(day)}`, { number: String(day), embargo: [`e${String(day)}`] }),
      );
    }
    expect(dataOf(plain, 17).news).toHaveLength(STEPS_TOLD);
  });
});

describe('the public data', () => {
  test('have the sets newest first, and one without a day before all', () => {
    const plain = example();
    const [set] = plain.sets;
    if (!set) throw new Error('there is a set');
    const more = (id: string, street: string | undefined) => {
      const plan = { ...set.plan, id };
      if (street === undefined) delete plan.street;
      else plan.street = street;
      return { ...set, id, plan };
    };
    plain.sets = [more('a', instantText(1)), more('b', instantText(3)), more('c', undefined)];
    expect(dataOf(plain, 5).sets.map(({ id }) => id)).toEqual(['c', 'b', 'a']);
  });

  test('have the labels of the levels that have lifted', () => {
    expect(dataOf(example(), 5).property.levels).toEqual(['Known from the trailers']);
    expect(dataOf(example(), DAYS.shops).property.levels).toEqual([
      'Known from the trailers',
      'First cards',
    ]);
  });

  test('are made of the public’s views alone', () => {
    const house = view(releasedOf(example()), { kind: 'house' });
    if (!house) throw new Error('the house sees all');
    expect(() => publicData(house, [], new Map(), false)).toThrow(RangeError);
    const seen = view(releasedOf(example()), { kind: 'public', at: START + DAY });
    if (!seen) throw new Error('day 1 is public');
    expect(() => publicData(seen, [house], new Map(), false)).toThrow(RangeError);
  });
});
