import { expect, test } from 'vitest';

import { RULES, check, lookAgain, lookInSteps, sampleWith } from '../../pipeline/checks/index.js';
import { CARD_RULES, withCardAlone } from '../../pipeline/checks/one-card.js';
import type { Remark } from '../../pipeline/checks/rule.js';
import { edited } from '../../pipeline/checks/sample.js';
import { subjectOf } from '../../pipeline/checks/subject.js';
import {
  approvalsOf,
  keptDictionaries,
  memoryFolder,
  readProperty,
  readReview,
} from '../../pipeline/read/index.js';

function readingOf(files: ReadonlyMap<string, string>) {
  const folder = memoryFolder(files);
  const { content, fonts } = readProperty(folder);
  const approvals = approvalsOf(folder, content, fonts, readReview(folder));
  return { content, options: { fonts, dictionaries: keptDictionaries, approvals } };
}

function plain({ spot, related = [], ...rest }: Remark): string {
  const others = related.map(({ message, spot: { source, from } }) => [message, source.file, from]);
  return JSON.stringify([spot.source.file, spot.from, spot.to, rest, others]);
}

/** Somebody whom another card credits is no slip of a name of the cast. */
const CREDITED = {
  says: 'an illustrator who is called nearly like somebody of the cast',
  files: {
    'names.yaml': 'names:\n  - { name: Odalys Thrane, kind: character, level: open }\n',
    ...edited('one/cards/base/a1.md', [
      'story: 1/1',
      'story: 1/1\ncredits: [{ role: Illustration, name: Odalis Thrane }]',
    ]),
    ...edited('one/cards/base/a2.md', ['nobody lit', 'Odalis Thrane drew']),
  },
};

const examples = [
  CREDITED,
  ...RULES.flatMap((rule) => [...rule.examples.fails, ...rule.examples.passes]),
];

test('rules that look at one card are rules', () => {
  const ids = RULES.map(({ id }) => id);
  expect([...CARD_RULES].filter((id) => !ids.includes(id))).toEqual([]);
});

test('they find of a card alone what they find of it among all', () => {
  let met = 0;
  for (const { files, says } of examples) {
    const { content, options } = readingOf(sampleWith(files));
    const subject = subjectOf(content, options);
    if (!subject) continue;
    const cards = new Set(subject.cards.map(({ source }) => source.file));
    for (const rule of RULES.filter(({ id }) => CARD_RULES.has(id))) {
      const look = rule.look ?? (() => []);
      const whole = [...look(subject)].filter(({ spot }) => cards.has(spot.source.file)).map(plain);
      const alone = subject.cards.flatMap((card) => {
        const one = withCardAlone(subject, card);
        const remarks = one ? [...look(one)] : [];
        return remarks.filter(({ spot }) => spot.source.file === card.source.file).map(plain);
      });
      expect(alone.sort(), `${rule.id}: ${says}`).toEqual(whole.sort());
      met += whole.length;
    }
  }
  expect(met).toBeGreaterThan(20);
});

test('a card that has changed is looked at again without the others', () => {
  const file = 'one/cards/base/a2.md';
  const before = readingOf(sampleWith({}));
  const text = sampleWith({}).get(file)?.replace('nobody', 'no\u202ebody') ?? '';
  const after = readingOf(sampleWith({ [file]: text }));
  const steps = lookInSteps(before.content, before.options);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  const cardIn = ({ content }: typeof before) =>
    content.sets.flatMap(({ cards }) => cards).find(({ source }) => source.file === file);
  const [was, is] = [cardIn(before), cardIn(after)];
  if (!was || !is) throw new Error('the sample has no such card');
  const { found } = lookAgain(step.value, after.content, { was, is }, after.options);
  expect(found).toEqual(check(after.content, after.options).findings);
  expect(found.map(({ rule }) => rule)).toContain('control-character');
});
