import { spotOf, type CardSet, type YamlPath } from '../model/index.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import { partsOf } from './totals.js';
import { unknown } from './unknown.js';

/** A total that does not say what it counts. */
export const totalUndefined: Rule = {
  id: 'total-undefined',
  about: 'counts',
  severity: 'error',
  why: 'A total of nobody knows what can neither be checked nor kept.',
  look: ({ sets }) => sets.flatMap(undefinedTotals),
  examples: {
    passes: [{ says: 'totals of subsets, groups and totals', files: {} }],
    fails: [
      {
        says: 'a total under a name that is no group',
        files: edited('one/plan.yaml', ['inserts: 1', 'insets: 1']),
        gives: {
          at: 'one/plan.yaml:9:20',
          covers: 'insets',
          message: 'the total `insets` does not say what it counts',
          found: 'insets',
          expected: 'the id of a subset or a group, or `of` with a list of them',
        },
      },
      {
        says: 'a total of something that there is not',
        files: edited('one/plan.yaml', ['of: [base, inserts]', 'of: [base, insert]']),
        gives: {
          at: 'one/plan.yaml:9:69',
          covers: 'insert',
          message: 'there is no subset, group or total `insert`',
          found: 'insert',
          expected: '`inserts`',
          fix: 'inserts',
        },
      },
      {
        says: 'a total of itself',
        files: edited('one/plan.yaml', ['of: [base, inserts]', 'of: [base, all]']),
        gives: {
          at: 'one/plan.yaml:9:32',
          covers: 'all',
          message: 'the total `all` counts itself',
          found: 'all',
          expected: 'a list of subsets and groups',
        },
      },
    ],
  },
};

function undefinedTotals(set: CardSet): Remark[] {
  const keys = Object.keys(set.plan.value.totals ?? {});
  const circular = keys.find((key) => {
    const parts = partsOf(set, key);
    return !parts.ok && parts.why === 'circular';
  });
  return keys.flatMap((key) => remarkOn(set, key, circular) ?? []);
}

/** Of totals that count one another in a ring, only the first is told. */
function remarkOn(set: CardSet, key: string, circular: string | undefined): Remark | null {
  const parts = partsOf(set, key);
  if (parts.ok || parts.why === 'elsewhere') return null;
  if (parts.why === 'circular' && key !== circular) return null;
  if (parts.why === 'unknown') {
    const spot = spotOf(set.plan.source, ['totals', key, 'of', parts.at]);
    return unknown('subset, group or total', parts.name, countables(set, key), spot);
  }
  const [message, expected] = wording(key, parts.why);
  const path: YamlPath = ['totals', key];
  return { spot: spotOf(set.plan.source, path, 'key'), message, found: key, expected };
}

function wording(key: string, why: 'undefined' | 'doubled' | 'circular'): [string, string] {
  switch (why) {
    case 'undefined':
      return [
        `the total \`${key}\` does not say what it counts`,
        'the id of a subset or a group, or `of` with a list of them',
      ];
    case 'doubled':
      return [
        `\`${key}\` is a subset or a group already, so its \`of\` counts nothing`,
        'another name for this total, or no `of`',
      ];
    case 'circular':
      return [`the total \`${key}\` counts itself`, 'a list of subsets and groups'];
  }
}

function countables(set: CardSet, except: string): string[] {
  const { subsets, totals } = set.plan.value;
  const names = [
    ...subsets.map((subset) => subset.group),
    ...subsets.map((subset) => subset.id),
    ...Object.keys(totals ?? {}),
  ];
  return [...new Set(names)].filter((name) => name !== except);
}
