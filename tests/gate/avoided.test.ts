import { describe, expect, test } from 'vitest';

import type { NamesFile } from '../../schema/index.js';
import type { Audience } from '../../pipeline/gate/index.js';
import { example } from '../law/example.js';
import type { Plain } from '../law/plain.js';
import { HOUSE, dayAt, personAt, publicAt, seen } from './support.js';

type Name = NamesFile['names'][number];

const DAY = 20;

/** The example with these names. Amara is cleared for `spring`, and `finale` is held from her. */
function cast(...names: readonly Partial<Name>[]): Plain {
  const plain = example();
  plain.names = {
    names: names.map((name) => ({ name: 'Old Pell', kind: 'character', level: 'open', ...name })),
  };
  return plain;
}

function avoidedIn(plain: Plain, audience: Audience = personAt(plain, 'amara', DAY)): string[] {
  return seen(plain, audience).avoided.map(({ name, form, use }) => `${name}: ${form}, ${use}`);
}

const HELD: Partial<Name> = { name: 'Ysolde Marrack', aliases: ['the Ropewalk'], level: 'finale' };

describe('forms that are no longer used', () => {
  const avoid = [
    { form: 'Pellam', use: 'Old Pell', why: 'Ysolde renamed him' },
    { form: 'Mister Pell', use: 'Old Pell' },
  ];

  test('are told to house and persons, in order and without the reason, and not to the public', () => {
    const plain = cast({ avoid });
    const told = ['Old Pell: Mister Pell, Old Pell', 'Old Pell: Pellam, Old Pell'];
    expect(avoidedIn(plain)).toEqual(told);
    expect(avoidedIn(plain, HOUSE)).toEqual(told);
    expect(avoidedIn(plain, publicAt(DAY))).toEqual([]);
    expect(JSON.stringify(seen(plain, personAt(plain, 'amara', DAY)))).not.toContain('renamed');
  });

  test('are held with their name', () => {
    expect(avoidedIn(cast({ avoid, level: 'spring' }))).toHaveLength(2);
    expect(avoidedIn(cast({ avoid, level: 'finale' }))).toEqual([]);
  });

  test('are told for a form that is told alone', () => {
    const strood = { form: 'Pell', use: 'Pellam Strood' };
    const alias = (level: string) => ({
      avoid: [strood],
      aliases: [{ form: 'Pellam Strood', level }],
    });
    expect(avoidedIn(cast(alias('spring')))).toEqual(['Old Pell: Pell, Pellam Strood']);
    expect(avoidedIn(cast(alias('finale')))).toEqual([]);
    expect(avoidedIn(cast({ avoid: [strood] }))).toEqual([]);
  });

  test.each([
    ['a held name', 'Ysolde Marrack'],
    ['a part of one', 'Miss Marrack'],
    ['a longer form', 'Ysolde Marrack of the lock'],
    ['a possessive', 'Marrack’s man'],
    ['letters that look alike', 'YSОLDE'],
    ['a form written in two words', 'the Rope Walk'],
    ['nothing that could be read', '…'],
  ])('are left out where they may tell: %s', (_, form) => {
    const plain = cast({ avoid: [{ form, use: 'Old Pell' }] }, HELD);
    expect(avoidedIn(plain)).toEqual([]);
    expect(avoidedIn(plain, HOUSE)).toHaveLength(1);
  });

  test('have words in common with an open name, though a held one has them too', () => {
    const ropes = { name: 'the Long Ropes', level: 'open', kind: 'place' } as const;
    const forms = ['the Pell', 'the Long Pell'].map((form) => ({ form, use: 'Old Pell' }));
    const plain = cast({ avoid: forms }, ropes, { ...HELD, name: 'the Long Night' });
    expect(avoidedIn(plain)).toHaveLength(2);
    expect(avoidedIn(cast({ avoid: forms }, { ...HELD, name: 'the Long Night' }))).toEqual([]);
  });
});

describe('the bounds of a bio', () => {
  const bounded = (spoiler: string, bio: 'none' | { words?: { min?: number } }): Plain => {
    const plain = example();
    const [subset] = plain.sets[0]?.plan.subsets ?? [];
    Object.assign(subset ?? {}, { spoiler, bio });
    return plain;
  };
  const words = (plain: Plain, audience: Audience = personAt(plain, 'amara', DAY)) =>
    seen(plain, audience).sets[0]?.subsets[0]?.words;

  test('are told to house and persons of what is open to them', () => {
    const open = bounded('open', { words: { min: 20 } });
    expect(words(open)).toEqual({ min: 20, max: null });
    expect(words(open, HOUSE)).toEqual({ min: 20, max: null });
    expect(words(open, publicAt(DAY))).toBeNull();
    expect(words(open, publicAt(999))).toBeNull();
  });

  test('are none of a subset that is held, and where the plan says none', () => {
    const orrin = (): Audience => {
      const person = { id: 'orrin', name: 'O', role: 'writer', clearance: 'open' } as const;
      return { kind: 'person', person, at: dayAt(DAY) };
    };
    const held = bounded('spring', { words: { min: 20 } });
    expect(seen(held, orrin()).sets[0]?.subsets[0]).toMatchObject({ id: 'crew', words: null });
    expect(words(bounded('open', 'none'))).toBeNull();
    expect(words(bounded('open', {}))).toBeNull();
  });
});
