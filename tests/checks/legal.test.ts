import { describe, expect, test } from 'vitest';

import { SMALL_LAYOUT, WITH_LAYOUT } from '../../pipeline/checks/fit-sample.js';
import type { Files } from '../../pipeline/checks/index.js';
import { nearLines, sayDifference } from '../../pipeline/checks/legal-likeness.js';
import { changed } from './change.js';
import { lookAt, said } from './look.js';

const LEGAL = ['legal-missing', 'legal-form'];
const LINE = '© 2027 Lantern & Oar';

function found(files: Files): string[] {
  return said(lookAt(files, LEGAL).findings);
}

function sales(words: string, kind = 'web'): Files {
  return { 'one/sales/news.md': `---\nkind: ${kind}\ngoes: unset\nspoiler: open\n---\n${words}\n` };
}

function property(line: string): Files {
  return changed('property.yaml', [['line: "© 2027 Lantern & Oar"', line]]);
}

describe('legal-missing', () => {
  const missing = 'legal-missing one/sales/news.md:2:7 this text goes out without the legal line';

  test.each(['wrapper', 'box', 'sell-sheet', 'media', 'web', 'shop'])(
    'a text of kind %s',
    (kind) => {
      expect(found(sales('Eight charts.', kind))).toEqual([missing]);
      expect(found(sales(`Eight charts, ${LINE}.`, kind))).toEqual([]);
    },
  );

  test('a text for a stage needs none, nor one of a property without', () => {
    expect(found(sales('Eight charts.', 'stage'))).toEqual([]);
    const none = changed('property.yaml', [['legal: { line: "© 2027 Lantern & Oar" }\n', '']]);
    const planning = changed('one/plan.yaml', [['stage: locked', 'stage: planning']]);
    expect(found({ ...none, ...planning, ...sales('Eight charts.') })).toEqual([]);
    expect(found(none)).toEqual([
      'legal-missing property.yaml:2:1 this property has no legal line, and its cards are being written',
    ]);
  });

  test('the line of somebody else is not it', () => {
    expect(found(sales('Eight charts. © 2027 Slackwater Cards'))).toEqual([missing]);
  });

  test('a line over two lines of the file is one', () => {
    expect(found(sales('Eight charts. © 2027\nLantern & Oar'))).toEqual([]);
  });

  const bare = SMALL_LAYOUT.replace(/ {2}legal:.*\n/, '');
  const layout = (text: string): Files => ({ ...WITH_LAYOUT, 'backs/small.yaml': text });

  test.each([
    [
      'on the front',
      `${bare}front:\n  legal: { x: 5, y: 80, width: 40, height: 4, font: body, size: 5, leading: 6 }\n`,
    ],
    ['nowhere, on a back that stays blank', `${bare}blank: true\n`],
  ])('a layout may have it %s', (_, text) => {
    expect(found(layout(text))).toEqual([]);
  });

  test('a layout without it is one finding for all its cards, and none without cards', () => {
    const both = changed(
      'one/plan.yaml',
      [['group: base,', 'group: base, back: small,']],
      WITH_LAYOUT,
    );
    expect(lookAt({ ...layout(bare), ...both }, LEGAL).findings).toMatchObject([
      { file: 'backs/small.yaml', found: '3 cards print in it, base/a1 the first' },
    ]);
    const none = changed('one/cards/extra/b1.md', [
      ['spoiler: open', 'spoiler: open\nissued: "no"'],
    ]);
    expect(found({ ...layout(bare), ...none })).toEqual([]);
  });

  describe('a line that is owed', () => {
    const owed = (name: string, depicts: string, cast = true): Files => ({
      ...(cast
        ? {
            'names.yaml': `names:
  - { name: Ines Albarran, kind: performer, aliases: [I. Albarran, Ines], level: open }
  - { name: Ines Albarran Ruiz, kind: performer, level: open }
`,
          }
        : {}),
      ...changed('property.yaml', [
        ['Oar" }', `Oar", depicts: [{ name: ${name}, line: By leave. }] }`],
      ]),
      ...changed('one/cards/extra/b1.md', [
        ['spoiler: open', `spoiler: open\nimage: { file: art/b.svg, depicts: [${depicts}] }`],
      ]),
    });
    const elsewhere = 'the line that is owed to';

    test.each([
      ['an alias', 'Ines Albarran', 'Ines'],
      ['an alias that it is owed under', 'I. Albarran', 'Ines Albarran'],
      ['other capitals', 'Ines Albarran', 'INES ALBARRAN'],
      ['surname first', 'Ines Albarran', '"Albarran, Ines"'],
    ])('to %s', (_, name, depicts) => {
      const { findings } = lookAt(owed(name, depicts), LEGAL);
      expect(findings).toHaveLength(1);
      expect(findings[0]?.message).toContain(`${elsewhere} ${name} does not print`);
      expect(findings[0]?.fix).toBe(depicts.startsWith('"') ? undefined : name);
    });

    test('of nobody in the cast, in other capitals', () => {
      expect(found(owed('Harl Dunnock', 'harl dunnock', false))).toHaveLength(1);
    });

    test.each([
      ['the name itself', 'Ines Albarran'],
      ['somebody with a longer name', 'Ines Albarran Ruiz'],
      ['both forms, of which one prints it', 'Ines, Ines Albarran'],
      ['somebody else', 'Rhosyn Pike'],
    ])('not to %s', (_, depicts) => {
      expect(found(owed('Ines Albarran', depicts))).toEqual([]);
    });
  });
});

/** The line as people mistype it. */
const DISGUISES: readonly (readonly [typed: string, differs: string])[] = [
  ['(c) 2027 Lantern & Oar', '`(c)` for `©`'],
  ['(C) 2027 Lantern & Oar', '`(C)` for `©`'],
  ['Copyright 2027 Lantern & Oar', '`Copyright` for `©`'],
  ['© 2026 Lantern & Oar', '`2026` for `2027`'],
  ['©2027 Lantern & Oar', 'a space is missing'],
  ['© 2027 Lantern&Oar', '`Lantern&Oar` for `Lantern & Oar`'],
  ['© 2027 Lantern and Oar', '`and` for `&`'],
  ['© 2027 Lantern + Oar', '`+` for `&`'],
  ['© 2027\u00a0Lantern & Oar', 'U+00A0 for a space'],
  ['© 2027 Lantern & Oars', '`Oars` for `Oar`'],
  ['© 2027 Lantem & Oar', '`Lantem` for `Lantern`'],
  ['© 2027 LANTERN & OAR', '`LANTERN & OAR` for `Lantern & Oar`'],
  ['© Lantern & Oar 2027', '`Lantern & Oar 2027` for `2027 Lantern & Oar`'],
  ['2027 © Lantern & Oar', '`2027 ©` for `© 2027`'],
  ['© 2027, Lantern & Oar', '`,` too many'],
  ['2027 Lantern & Oar', '`©` is missing'],
];

describe('legal-form', () => {
  test.each(DISGUISES)('%s', (typed, differs) => {
    const text = `Eight charts.\n\n${typed}`;
    expect(nearLines(text, LINE)).toEqual([{ from: 15, to: text.length }]);
    expect(sayDifference(typed, LINE)).toBe(differs);
  });

  test.each([
    'Lantern & Oar makes puppets.',
    'In 2027 Lantern & Oar goes out to sea, and its lamps with it.',
    '© 2027 Slackwater Cards',
    '© 2027 Lantern Press',
    'A chart (c) and a chart (d).',
    'The copyright of the lake is nobody’s.',
    `${LINE}. ${LINE}`,
    `All of it ${LINE}, and so on.`,
  ])('nothing near: %s', (text) => {
    expect(nearLines(text, LINE)).toEqual([]);
  });

  test('in running words, the line alone is pointed at', () => {
    const text = 'All of it (c) 2026 Lantern and Oar. Open over a table.';
    expect(nearLines(text, LINE).map(({ from, to }) => text.slice(from, to))).toEqual([
      '(c) 2026 Lantern and Oar',
    ]);
  });

  test('a wrong one beside the right one is found', () => {
    const text = `${LINE}\n© 2026 Lantern & Oar`;
    expect(nearLines(text, LINE)).toEqual([{ from: 21, to: text.length }]);
  });

  test.each([
    [
      'in what a card has for that zone',
      { 'one/cards/extra/b1.md': 'texts: { legal: 2027 Lantern and Oar }' },
    ],
    [
      'in another text with a mark',
      { 'one/cards/extra/b1.md': 'texts: { foot: (c) 2027 Lantern & Oar }' },
    ],
  ])('%s', (_, cards) => {
    const [[file, front] = ['', '']] = Object.entries(cards);
    const files = changed(file, [['spoiler: open', `spoiler: open\n${front}`]]);
    expect(lookAt(files, LEGAL).findings).toMatchObject([
      { rule: 'legal-form', file, expected: LINE, fix: LINE, certain: true },
    ]);
  });

  test('is one finding: a text with a wrong line does not lack one', () => {
    expect(found(sales('Eight charts.\n\n(c) 2027 Lantern & Oar'))).toEqual([
      'legal-form one/sales/news.md:8:1 this is not the legal line letter by letter: `(c)` for `©`',
    ]);
  });

  test('has no certain fix where the words are typed otherwise, or the line needs quotes', () => {
    const escaped = lookAt(sales('&copy; 2026 Lantern &amp; Oar'), LEGAL).findings;
    expect(escaped).toMatchObject([{ rule: 'legal-form', found: '© 2026 Lantern & Oar' }]);
    expect(escaped[0]).not.toHaveProperty('fix');
    const odd = lookAt(
      { ...property('line: "© 2027 Oar: *all* of it"'), ...sales('© 2026 Oar: \\*all\\* of it') },
      LEGAL,
    );
    expect(odd.findings).toMatchObject([{ rule: 'legal-form' }]);
    expect(odd.findings[0]).not.toHaveProperty('fix');
  });

  test.each([
    ['(c)', 'line: "(c) 2027 Lantern & Oar"', '©', 'letters where the mark'],
    ['two spaces', 'line: "© 2027  Lantern & Oar"', ' ', 'no single plain space'],
    [
      'a space that does not break',
      'line: "©\u00a02027 Lantern & Oar"',
      ' ',
      'no single plain space',
    ],
    ['a space at the end', 'line: "© 2027 Lantern & Oar "', '', 'begins or ends with a space'],
  ])('of the property: %s', (_, line, fix, message) => {
    expect(
      lookAt({ ...property(line), ...sales('Charts.', 'stage') }, LEGAL).findings,
    ).toMatchObject([
      {
        rule: 'legal-form',
        file: 'property.yaml',
        fix,
        certain: true,
        message: expect.stringContaining(message) as unknown,
      },
    ]);
  });

  test('a year, a range or another sign of the property is not guessed at', () => {
    for (const line of ['© 1999 Lantern & Oar', '© 2026–2027 Lantern & Oar™', '© Lantern & Oar']) {
      expect(found(property(`line: "${line}"`))).toEqual([]);
    }
  });

  test('long texts take time that grows with them', () => {
    const started = performance.now();
    nearLines('© 2026 a lake of ink '.repeat(2_000), LINE);
    expect(performance.now() - started).toBeLessThan(4_000);
  });
});
