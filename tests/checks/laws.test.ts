import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { RULES, check, sampleWith, type Files } from '../../pipeline/checks/index.js';
import { memoryFolder, readContent, keptDictionaries } from '../../pipeline/read/index.js';
import { contentWith, lookAt } from './look.js';
import { shelfOf } from './shelf.js';

/** The rules of the groups that are checked here. */
const IDS: Readonly<Record<string, readonly string[]>> = {
  files: [
    'schema',
    'unknown-key',
    'front-matter',
    'misplaced-card',
    'art-missing',
    'path-outside',
    'id-unknown',
    'accepted-unused',
  ],
  levels: ['level-unknown', 'level-order', 'lift-missing'],
  numbers: ['number-gap', 'number-duplicate', 'number-range', 'number-form', 'number-order'],
  counts: ['subset-count', 'total', 'total-undefined'],
  copy: [
    'copy-empty',
    'copy-words',
    'copy-characters',
    'copy-markup',
    'control-character',
    'mixed-script',
  ],
  fit: ['overset'],
  spoilers: ['early-print', 'story-order', 'story-coverage', 'held-span', 'absent-gap'],
};

const examples = RULES.flatMap((rule) =>
  [...rule.examples.passes, ...rule.examples.fails].map((example) => ({
    title: `${rule.id}: ${example.says}`,
    files: example.files,
  })),
);

describe('every rule', () => {
  test('is silent on the sample', () => {
    expect(lookAt({})).toStrictEqual({
      ok: true,
      counts: { sets: 1, cards: 3, errors: 0, warnings: 0, accepted: 0 },
      findings: [],
    });
  });

  test('is silent on a property without sets', () => {
    const { findings } = lookAt(
      Object.fromEntries(
        [...sampleWith({}).keys()]
          .filter((file) => file.startsWith('one/'))
          .map((file) => [file, null]),
      ),
    );
    expect(findings).toStrictEqual([]);
  });

  test('has an id of its own, in the order of its group', () => {
    const ids = RULES.map((rule) => rule.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [about, expected] of Object.entries(IDS)) {
      const own = RULES.filter((rule) => rule.about === about).map((rule) => rule.id);
      expect(own.filter((id) => expected.includes(id))).toStrictEqual(expected);
    }
  });

  test('says why in one sentence, and looks', () => {
    for (const rule of RULES) {
      expect(rule.why, rule.id).toMatch(/^[A-Z][^\n]*\.$/);
      const looks = rule.look !== undefined || rule.lookRaw !== undefined;
      expect(looks, rule.id).toBe(rule.id !== 'accepted-unused');
    }
  });

  test('says what is wrong without a full stop or a capital', () => {
    for (const { gives } of RULES.flatMap((rule) => rule.examples.fails)) {
      expect(gives.message).not.toMatch(/^[A-Z][a-z]|[.!]$|\n/);
    }
  });
});

describe.each(examples)('$title', ({ files }) => {
  test('every finding has rule and place', () => {
    const all = sampleWith(files);
    for (const finding of lookAt(files).findings) {
      expect(RULES.map((rule) => rule.id)).toContain(finding.rule);
      const lines = (all.get(finding.file) ?? '').split('\n');
      for (const [line, column] of [
        [finding.line, finding.column],
        [finding.endLine, finding.endColumn],
      ] as const) {
        expect(line).toBeLessThanOrEqual(lines.length);
        expect(column).toBeLessThanOrEqual((lines[line - 1] ?? '').length + 1);
      }
      const ends = [finding.endLine - finding.line, finding.endColumn - finding.column];
      expect(ends[0] === 0 ? ends[1] : ends[0]).toBeGreaterThanOrEqual(0);
    }
  });
});

describe('the order of files', () => {
  const spoilt: Files = {
    'one/cards/base/a3.md': '---\nnumber: "1"\nname: A\nspoiler: lost\n---\n<b>\n',
    'one/cards/base/a4.md': '---\nnumber: "1"\nname: A\nspoiler: open\nstory: 9/9\n---\nA.\n',
    'one/cards/extra/b2.md': '---\nnumber: x-2\nname: B\nspoiler: lost\n---\nA.\n',
    'one/cards/other/c1.md': 'x',
    'one/sales/x.md': '---\nkind: web\ngoes: unset\nspoiler: lots\n---\n',
    'one/rosters/x.yaml': 'artists: []',
    'two/plan.yaml': 'id: too',
  };

  test('changes nothing', () => {
    const all = [...sampleWith(spoilt)];
    const report = (files: typeof all) => {
      const content = readContent(memoryFolder(new Map(files)));
      return JSON.stringify(
        check(content, { fonts: shelfOf(content), dictionaries: keptDictionaries }),
      );
    };
    const expected = report(all);
    expect(expected).toContain('number-duplicate');
    fc.assert(
      fc.property(fc.shuffledSubarray(all, { minLength: all.length }), (files) => {
        expect(report(files)).toBe(expected);
      }),
      { numRuns: 30 },
    );
  });

  test('findings stand by file and place', () => {
    const { findings } = lookAt(spoilt);
    expect(findings.length).toBeGreaterThan(6);
    const places = findings.map(({ file, line, column }) => [file, line, column] as const);
    const sorted = places.toSorted(
      (a, b) => (a[0] < b[0] ? -1 : a[0] > b[0] ? 1 : 0) || a[1] - b[1] || a[2] - b[2],
    );
    expect(places).toStrictEqual(sorted);
  });
});

test('without a readable property.yaml only what reading found is told', () => {
  const content = contentWith({ 'property.yaml': 'id: lake\n', 'one/cards/base/a1.md': null });
  const { findings } = check(content, { fonts: new Map(), dictionaries: keptDictionaries });
  expect(new Set(findings.map(({ rule, file }) => `${rule} ${file}`))).toStrictEqual(
    new Set(['schema property.yaml']),
  );
});
