import { readFileSync } from 'node:fs';

import { describe, expect, test } from 'vitest';

import { check } from '../../pipeline/checks/index.js';
import { keptDictionaries, memoryFolder, readContent } from '../../pipeline/read/index.js';
import type { Finding } from '../../schema/index.js';
import { Dice } from './dice.js';
import { SLIP_KINDS, inventedCast, namesFile, type InventedName } from './name-cast.js';
import { novelSentences } from './planted-names.js';

const RULES = ['name-near', 'name-avoided', 'name-unknown', 'name-varies'];
const EACH = 220;

interface Case {
  readonly kind: string;
  readonly text: string;
  /** What is planted, and what should stand there; null in a text that is right. */
  readonly planted: { readonly words: string; readonly right: string } | null;
}

/** Sentences without a capital but the first, from the novel: no names of its own. */
const PLAIN = novelSentences(2000)
  .filter((sentence) => !/[A-Z]/.test(sentence.slice(1)))
  .slice(0, 400);

/** A text with words between two of its own, never first. */
function around(words: string, dice: Dice): string {
  const sentence = dice.pick(PLAIN).split(' ');
  const places = sentence.flatMap((word, at) =>
    at > 1 && /^[a-z]+$/.test(word) && /^[a-z]+$/.test(sentence[at - 1] ?? '') ? [at] : [],
  );
  const at = places.length === 0 ? sentence.length - 1 : dice.pick(places);
  return [...sentence.slice(0, at), words, ...sentence.slice(at)].join(' ');
}

function slipCases(cast: readonly InventedName[]): readonly Case[] {
  const dice = new Dice(20270416);
  return Object.entries(SLIP_KINDS).flatMap(([kind, slip]) => {
    const cases: Case[] = [];
    for (let tries = 0; cases.length < EACH && tries < EACH * 60; tries += 1) {
      const name = dice.pick(cast);
      const words = slip(name, dice);
      const right = words?.endsWith('’s') === true ? `${name.name}’s` : name.name;
      if (words === null || words === right) continue;
      cases.push({ kind, text: around(words, dice), planted: { words, right } });
    }
    return cases;
  });
}

const RIGHT: Readonly<Record<string, (name: InventedName) => string>> = {
  'a name as it is': ({ name }) => name,
  possessive: ({ name }) => `${name}’s`,
  'straight possessive': ({ name }) => `${name.replaceAll('’', "'")}'s`,
  plural: ({ name }) => (/[sxz]$|[^\p{L}]/u.test(name.slice(-1)) ? name : `${name}s`),
  'in quotation marks': ({ name }) => `‘${name}’`,
  'two of them': ({ name }) => `${name} and ${name}`,
  'decomposed letters': ({ name }) => name.normalize('NFD'),
  'surname alone': ({ name, kind }) =>
    kind === 'character' ? (name.split(' ').at(-1) ?? name) : name,
};

function rightCases(cast: readonly InventedName[]): readonly Case[] {
  const dice = new Dice(20270514);
  const cases: Case[] = Object.entries(RIGHT).flatMap(([kind, way]) =>
    Array.from({ length: EACH }, () => ({
      kind,
      text: around(way(dice.pick(cast)), dice),
      planted: null,
    })),
  );
  for (const text of PLAIN.slice(0, EACH)) cases.push({ kind: 'a novel', text, planted: null });
  for (let at = 0; at < EACH; at += 1) {
    const { name } = dice.pick(cast);
    const raised = name.charAt(0).toUpperCase() + name.slice(1);
    cases.push({
      kind: 'first in its sentence',
      text: `${raised} ${dice.pick(PLAIN).toLowerCase()}`,
      planted: null,
    });
  }
  return cases;
}

function contentOf(cases: readonly Case[], names: string): ReadonlyMap<string, string> {
  const demo = readFileSync(new URL('../../content/property.yaml', import.meta.url), 'utf8');
  const property = demo.replace(/^approvals:\n(?: .*\n)+/mu, 'approvals: none\n');
  const files = new Map([
    ['property.yaml', property],
    ['names.yaml', names],
    [
      'one/plan.yaml',
      `id: one\ntitle: One\nspoiler: open\nstage: writing\nstyle: { english: british }\nstreet: "2027-06-05T09:00:00+01:00[Europe/London]"\nsubsets:\n  - { id: base, title: Base, group: base, numbers: { from: 1, to: ${String(cases.length)} } }\n`,
    ],
  ]);
  for (const [at, { text }] of cases.entries()) {
    const id = String(at).padStart(5, '0');
    files.set(
      `one/cards/base/c${id}.md`,
      `---\nnumber: "${String(at + 1)}"\nname: Card ${id}\nspoiler: open\n---\n${text}\n`,
    );
  }
  return files;
}

/** The findings of each case, by its card. */
function findingsFor(
  cases: readonly Case[],
  names: string,
): ReadonlyMap<number, readonly Finding[]> {
  const content = readContent(memoryFolder(contentOf(cases, names)));
  const { findings } = check(content, {
    fonts: new Map(),
    dictionaries: keptDictionaries,
    only: RULES,
  });
  const found = new Map<number, Finding[]>();
  for (const finding of findings) {
    const at = Number(/c(\d{5})\.md$/.exec(finding.file)?.[1] ?? NaN);
    found.set(at, [...(found.get(at) ?? []), finding]);
  }
  return found;
}

interface Row {
  readonly kind: string;
  readonly cases: number;
  readonly hits: number;
  readonly fixes: number;
  readonly examples: readonly string[];
}

function rowsOf(
  cases: readonly Case[],
  found: ReadonlyMap<number, readonly Finding[]>,
): readonly Row[] {
  const kinds = [...new Set(cases.map(({ kind }) => kind))];
  return kinds.map((kind) => {
    const own = cases.flatMap((each, at) =>
      each.kind === kind ? [{ ...each, found: found.get(at) ?? [] }] : [],
    );
    const isHit = ({ planted, found: findings }: (typeof own)[number]): boolean =>
      planted === null
        ? findings.length > 0
        : findings.some(
            (each) => each.rule !== 'name-unknown' && (each.expected ?? '').includes('`'),
          );
    const fixed = own.filter(({ planted, found: findings }) =>
      findings.some(({ fix }) => fix === planted?.right.replace(/^the (?=\S+$)/u, '')),
    );
    const wrong = own.filter((each) => isHit(each) === (each.planted === null));
    const examples = wrong
      .slice(0, 12)
      .map(({ planted, text, found: findings }) =>
        planted === null
          ? `${findings[0]?.rule ?? ''} ${findings[0]?.found ?? ''} → ${findings[0]?.expected ?? ''}`
          : `${planted.words} / ${planted.right} in ${text.slice(0, 0)}`,
      );
    return {
      kind,
      cases: own.length,
      hits: own.filter(isHit).length,
      fixes: fixed.length,
      examples,
    };
  });
}

function table(title: string, rows: readonly Row[]): string {
  const lines = rows.map(
    ({ kind, cases, hits, fixes }) =>
      `${kind.padEnd(32)}${String(cases).padStart(6)}${String(hits).padStart(6)}${((100 * hits) / cases).toFixed(1).padStart(8)} %${String(fixes).padStart(6)}`,
  );
  return [title.padEnd(32) + ' cases found   share right fix', ...lines].join('\n');
}

describe.each([[1], [2]])('a generated cast, seed %i', (seed) => {
  const cast = inventedCast(90, seed);
  const names = namesFile(cast);

  test('slips are found, by kind', () => {
    const cases = slipCases(cast);
    const rows = rowsOf(cases, findingsFor(cases, names));
    console.log(table('slips', rows));
    for (const row of rows) {
      if (process.env['SHOW'] !== undefined) console.log(row.kind, row.examples);
      expect(row.cases, row.kind).toBeGreaterThanOrEqual(200);
      expect(
        row.hits / row.cases,
        `${row.kind}: ${row.examples.join(' | ')}`,
      ).toBeGreaterThanOrEqual(0.97);
    }
  });

  test('what is right raises no alarm, by kind', () => {
    const cases = rightCases(cast);
    const rows = rowsOf(cases, findingsFor(cases, names));
    console.log(table('right', rows));
    for (const row of rows) {
      if (process.env['SHOW'] !== undefined) console.log(row.kind, row.examples);
      expect(row.cases, row.kind).toBeGreaterThanOrEqual(200);
      expect(row.hits / row.cases, `${row.kind}: ${row.examples.join(' | ')}`).toBeLessThanOrEqual(
        0.01,
      );
    }
  });
});
