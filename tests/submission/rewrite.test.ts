import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { plainBio, rewriteBio } from '../../pipeline/edit/index.js';
import { heldSpans, type Card } from '../../pipeline/model/index.js';
import { rereadCard } from '../../pipeline/read/index.js';
import { applyChanges } from '../../pipeline/submission/index.js';

const FRONT = '---\nnumber: "1"\nname: The Quay\nspoiler: open\nfacts: { Berth: Lock nine }\n---\n';

function cardOf(text: string): Card {
  const file = 'one/cards/base/a1.md';
  const empty: Card = {
    set: 'one',
    subset: 'base',
    id: 'a1',
    source: { file, text: '' },
    front: { number: '1', name: 'x', spoiler: 'open' },
    bio: [],
  };
  const read = rereadCard(empty, { file, text });
  if (!('front' in read)) throw new Error(read.map(({ message }) => message).join('; '));
  return read;
}

function applied(body: string, text: string, front = FRONT): string {
  const outcome = applyChanges(cardOf(front + body), [{ field: 'bio', text }]);
  return outcome.ok ? outcome.card.source.text.slice(front.length) : `refused: ${outcome.why}`;
}

describe('new words in a bio', () => {
  it.each<[string, string, string, string]>([
    [
      'a word',
      'She rows *the boat* home.\n',
      'She rows the raft home.',
      'She rows *the raft* home.\n',
    ],
    ['the last word', 'She rows.', 'She sings.', 'She sings.'],
    ['added words', 'She rows.\n', 'Now she rows.', 'Now she rows.\n'],
    ['a line end inside', 'She rows\nthe boat.\n', 'She rows the raft.', 'She rows\nthe raft.\n'],
    [
      'what is escaped stays so',
      'A \\*star\\* &amp; a boat.\n',
      'A *star* & a raft.',
      'A \\*star\\* &amp; a raft.\n',
    ],
    ['what would be markup', 'A boat.\n', 'A *boat* [9].', 'A \\*boat\\* \\[9\\].\n'],
    ['a hard break', 'One\\\ntwo.\n', 'One\nthree.', 'One\\\nthree.\n'],
    ['a new break', 'One two.\n', 'One\ntwo.', 'One\\\ntwo.\n'],
    ['a new paragraph', 'One. Two.\n', 'One.\n\nTwo.', 'One.\n\nTwo.\n'],
    ['one paragraph less', 'One.\n\nTwo.\n\nThree.\n', 'One.\n\nThree.', 'One.\n\nThree.\n'],
    ['two become one', 'One.\n\nTwo.\n', 'One. Two.', 'One. Two.\n'],
    ['an emphasised word goes', 'The *slow* boat.\n', 'The boat.', 'The boat.\n'],
    ['a count', 'All [six](count:base).\n', 'All [seven](count:base).', 'refused'],
    ['a count in words', 'All [six](count:base).\n', 'All seven.', 'All [seven](count:base).\n'],
    [
      'beside held words',
      'Day. [Night falls](held:later). End.\n',
      'A day. Night falls. The end.',
      'A day. [Night falls](held:later). The end.\n',
    ],
    [
      'after held words at the end',
      'Day. [Night falls.](held:later)\n',
      'Day. Night falls. End.',
      'Day. [Night falls.](held:later) End.\n',
    ],
    ['what would be a list', 'Foo - bar.\n', '- bar.', '\\- bar.\n'],
    ['a number and a stop', 'In 1927. She rows.\n', '1927. She rows.', '1927\\. She rows.\n'],
  ])('%s', (_, body, text, expected) => {
    expect(applied(body, text)).toEqual(
      expected === 'refused' ? expect.stringMatching(/^refused: /) : expected,
    );
  });

  it.each<[string, string, string]>([
    ['changed', 'Day. [Night falls](held:later).\n', 'Day. Night fell.'],
    ['gone', 'Day. [Night falls](held:later).\n', 'Day.'],
    ['in another paragraph', 'Day. [Night falls](held:later).\n', 'Day.\n\nNight falls.'],
    ['twice, and which is held cannot be told', 'A [to](held:later) b c d e.\n', 'to x y z to q'],
  ])('is refused where held words are %s', (_, body, text) => {
    expect(applied(body, text)).toMatch(/^refused: /);
  });

  it('stays in Windows line ends', () => {
    const front = FRONT.replaceAll('\n', '\r\n');
    const body = 'One two.\r\n\r\nThree.\r\n';
    expect(applied(body, 'One\ntwo.\n\nThree.\n\nFour.', front)).toBe(
      'One\\\r\ntwo.\r\n\r\nThree.\r\n\r\nFour.\r\n',
    );
  });
});

describe('new values of front matter', () => {
  it.each<[string, string, string]>([
    ['facts: { Berth: Lock nine }', 'Lock ten', 'facts: { Berth: Lock ten }'],
    ['facts: { Berth: Lock nine }', 'Lock, ten', 'facts: { Berth: "Lock, ten" }'],
    ["facts: { Berth: 'Lock nine' }", "Pell's: #1", "facts: { Berth: 'Pell''s: #1' }"],
    ['facts: { Berth: "Lock nine" }', 'A "b"', 'facts: { Berth: "A \\"b\\"" }'],
    ['facts:\n  Berth: Lock nine', '- x', 'facts:\n  Berth: "- x"'],
    ['facts:\n  Berth: |-\n    Lock nine', 'Lock\nten', 'facts:\n  Berth: "Lock\\nten"'],
    ['facts: { Berth: Lock nine }', 'yes', 'facts: { Berth: yes }'],
    ['facts: { Berth: Lock nine }', '007', 'facts: { Berth: "007" }'],
    ['facts: { Berth: Lock nine }', '*x', 'facts: { Berth: "*x" }'],
  ])('%s → %s', (was, text, now) => {
    const front = FRONT.replace('facts: { Berth: Lock nine }', was);
    const outcome = applyChanges(cardOf(`${front}A.\n`), [{ field: 'facts.Berth', text }]);
    const file = outcome.ok ? outcome.card.source.text : outcome.why;
    expect(file).toBe(`${front.replace(was, now)}A.\n`);
    expect(outcome.ok && outcome.card.front.facts?.['Berth']).toBe(text);
  });

  it('takes any text that a file may have', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, unit: 'grapheme' }), (typed) => {
        const text = typed.normalize('NFC');
        fc.pre(text.trim() === text && !/\p{C}/u.test(text));
        const card = cardOf(`${FRONT}A.\n`);
        const outcome = applyChanges(card, [
          { field: 'name', text },
          { field: 'facts.Berth', text },
        ]);
        expect(outcome.ok ? outcome.card.front : outcome.why).toEqual({
          ...card.front,
          name: text,
          facts: { Berth: text },
        });
      }),
    );
  });
});

const word = fc.constantFrom(
  'She',
  'rows',
  'the',
  'boat',
  'home',
  'a',
  '*',
  '_',
  'x_y',
  '[9]',
  '&',
  '&amp;',
  '#',
  '1.',
  '-',
  '<b',
  '\\',
  'é',
  '🛶',
  '`',
);
const words = fc.array(word, { minLength: 1, maxLength: 6 }).map((all) => all.join(' '));
const safe = fc
  .array(fc.constantFrom('She', 'rows', 'the', 'boat', 'é', '🛶'), { minLength: 1, maxLength: 4 })
  .map((all) => all.join(' '));
const run = fc.oneof(
  safe,
  safe.map((text) => `*${text}*`),
  safe.map((text) => `**${text}**`),
  safe.map((text) => `[${text}](count:base)`),
);
const held = safe.map((text) => `[kept ${text}](held:later)`);
const paragraph = fc
  .tuple(
    fc.array(run, { minLength: 1, maxLength: 3 }),
    fc.option(held),
    fc.array(run, { maxLength: 2 }),
  )
  .map(([before, kept, after]) =>
    [...before, ...(kept === null ? [] : [kept]), ...after].join(' '),
  );
const body = fc
  .array(paragraph, { minLength: 1, maxLength: 3 })
  .map((all) => `${all.join('\n\n')}\n`);

describe('whatever words are put in', () => {
  it('they come out exactly, held words stay, and what did not change has its bytes', () => {
    let done = 0;
    let tried = 0;
    fc.assert(
      fc.property(body, words, fc.nat(), fc.nat(5), (text, added, where, taken) => {
        const card = cardOf(FRONT + text);
        const old = plainBio(card.bio).split(' ');
        const at = where % (old.length + 1);
        const wanted = [...old.slice(0, at), added, ...old.slice(at + taken)].join(' ').trim();
        const outcome = applyChanges(card, [{ field: 'bio', text: wanted }]);
        tried += 1;
        if (!outcome.ok) {
          expect(outcome.why).toMatch(/are held and must stay|cannot be put into the file/);
          return;
        }
        done += 1;
        expect(plainBio(outcome.card.bio)).toBe(wanted.normalize('NFC'));
        const spans = (of: Card) => heldSpans(of.bio).map(({ hold, text: kept }) => [hold, kept]);
        expect(spans(outcome.card)).toEqual(spans(card));
        expect(outcome.card.source.text.startsWith(FRONT)).toBe(true);
        const before = plainBio(card.bio).split('\n\n');
        const paragraphs = text.trimEnd().split('\n\n');
        const after = outcome.card.source.text.slice(FRONT.length).trimEnd().split('\n\n');
        const now = wanted.split('\n\n');
        if (now.length !== before.length) return;
        before.forEach((own, index) => {
          if (own === now[index]) expect(after[index]).toBe(paragraphs[index]);
        });
      }),
      { numRuns: 500 },
    );
    // Enough can be done, or nothing is shown.
    expect(done / tried).toBeGreaterThan(0.35);
  });

  it('the same words change no byte', () => {
    fc.assert(
      fc.property(body, (text) => {
        const card = cardOf(FRONT + text);
        const { source } = card;
        expect(rewriteBio(source, card.bio, plainBio(card.bio))).toEqual({ sources: [source] });
      }),
    );
  });
});
