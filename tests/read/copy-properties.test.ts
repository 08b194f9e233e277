import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { copyText, placeOf } from '../../pipeline/model/index.js';
import { bodyOf } from './copy-bodies.js';
import { readCard } from './support.js';

const LETTERS = 'abcdeéèñøœßçÅāЖдλ漢字日本🚢🏮’“”–—…,.;:!?()';
/** A word of prose that is no markup anywhere: no mark of CommonMark, no number before a full stop. */
const word = fc
  .array(fc.constantFrom(...Array.from(LETTERS), 'e\u0301', 'A\u030a'), {
    minLength: 1,
    maxLength: 9,
  })
  .map((letters) => `a${letters.join('')}`)
  .filter((text) => !/\b(held|count):\S/i.test(text));
const line = fc.array(word, { minLength: 1, maxLength: 8 }).map((words) => words.join(' '));
const paragraph = fc.array(line, { minLength: 1, maxLength: 4 });
const prose = fc.array(paragraph, { minLength: 1, maxLength: 4 });
const lineEnd = fc.constantFrom('\n', '\r\n');

const inSource = (text: string, from: number, to: number): string =>
  text
    .slice(from, to)
    .replace(/\s*(\r\n|\n|\r)\s*/g, ' ')
    .normalize('NFC');

describe('plain prose', () => {
  test('reads as the prose it is', () => {
    fc.assert(
      fc.property(prose, lineEnd, fc.boolean(), (paragraphs, end, bom) => {
        const body = paragraphs.map((lines) => lines.join(end)).join(end + end);
        const file = `${bom ? '\ufeff' : ''}---${end}number: "1"${end}name: Pim${end}spoiler: open${end}---${end}${body}${end}`;
        const { card, faults } = readCard(new TextEncoder().encode(file));
        expect(faults).toStrictEqual([]);
        expect(copyText(card?.bio ?? [])).toBe(
          paragraphs.map((lines) => lines.join(' ').normalize('NFC')).join('\n\n'),
        );
      }),
      { numRuns: 60 },
    );
  });

  test('runs stand where they say, in every line end, after a mark and beside wide letters', () => {
    const piece = fc
      .tuple(line, fc.constantFrom('plain', 'italic', 'bold', 'held', 'count', 'break'))
      .map(([text, kind]) => ({ text, kind }));
    const wrap: Readonly<Record<string, (text: string) => string>> = {
      plain: (text) => text,
      italic: (text) => `*${text}*`,
      bold: (text) => `**${text}**`,
      held: (text) => `[${text}](held:later)`,
      count: (text) => `[${text}](count:base)`,
      break: (text) => `${text}\\`,
    };
    fc.assert(
      fc.property(
        fc.array(fc.array(piece, { minLength: 1, maxLength: 5 }), { minLength: 1, maxLength: 3 }),
        lineEnd,
        fc.boolean(),
        (paragraphs, end, bom) => {
          const written = paragraphs.map((pieces) =>
            pieces
              .map(({ text, kind }) => `${wrap[kind]?.(text) ?? ''}${kind === 'break' ? end : ' '}`)
              .concat('z')
              .join(''),
          );
          const file = `${bom ? '\ufeff' : ''}---${end}number: "1"${end}name: Pim${end}spoiler: open${end}---${end}${written.join(end + end)}`;
          const { card, faults } = readCard(new TextEncoder().encode(file));
          expect(faults).toStrictEqual([]);
          const source = card?.source.text ?? '';
          expect(card?.bio).toHaveLength(paragraphs.length);
          for (const runs of card?.bio ?? []) {
            let before = 0;
            for (const { text, from, to } of runs) {
              expect(from).toBeGreaterThanOrEqual(before);
              before = to;
              if (text === '\n') expect(source.slice(from, to)).toBe(`\\${end}`);
              else expect(inSource(source, from, to)).toBe(text);
              const { line: row, column } = placeOf(source, from);
              expect(source.split(/\r\n|\n/)[row - 1]?.slice(column - 1)).toBe(
                source.slice(from).split(/\r\n|\n/)[0],
              );
            }
          }
          const kinds = paragraphs.flat().map(({ kind }) => kind);
          const held = card?.bio.flat().filter((run) => run.hold === 'later').length;
          expect(held).toBe(kinds.filter((kind) => kind === 'held').length);
        },
      ),
      { numRuns: 100 },
    );
  });

  test('any text at all is copy or has a finding, and holds no half-typed mark', () => {
    const bits = fc.constantFrom(
      ...[
        '[',
        ']',
        '(',
        ')',
        'held:',
        'count:',
        'x',
        ' ',
        '\n',
        '*',
        '\\',
        '<',
        '>',
        '`',
        '!',
        '&',
        '"',
      ],
    );
    fc.assert(
      fc.property(fc.array(bits, { maxLength: 24 }), (parts) => {
        const { copy, faults } = bodyOf(parts.join(''));
        if (faults.length > 0) return;
        const text = copyText(copy);
        expect(text).not.toMatch(/\]\(|\b(held|count):x/);
        expect(text.replace(/[^x]/g, '').length).toBeLessThanOrEqual(
          parts.filter((part) => part === 'x').length,
        );
        // No x is lost but those that name what holds: nothing hides.
        const named = parts.join('').match(/\]\((?:held|count):x+\)/g) ?? [];
        const lost = parts.filter((part) => part === 'x').length - text.replace(/[^x]/g, '').length;
        expect(lost).toBeLessThanOrEqual(named.join('').replace(/[^x]/g, '').length);
      }),
      { numRuns: 2000 },
    );
  });
});
