import { expect, test } from 'vitest';

import type { Files } from '../../pipeline/checks/index.js';
import { changed } from './change.js';
import { lookAt, said } from './look.js';

const MORE_BEATS = changed('property.yaml', [
  ['level: open }\n', 'level: open }\n  - { at: 1/6, says: A bell, level: open }\n'],
]);

function staged(stage: string, ...changes: readonly (readonly [string, string])[]): Files {
  return changed('one/plan.yaml', [['stage: locked', `stage: ${stage}`], ...changes]);
}

test('in planning, cards that are not there yet are one warning for each subset', () => {
  const files: Files = {
    ...MORE_BEATS,
    ...staged('planning', ['to: 2', 'to: 40'], ['base: 2', 'base: 40'], ['is: 3', 'is: 48']),
    'one/cards/extra/b1.md': null,
  };
  const report = lookAt(files);
  expect(report.ok).toBe(true);
  expect(report.findings.map(({ severity }) => severity)).toStrictEqual(['warning', 'warning']);
  expect(said(report.findings)).toStrictEqual([
    'number-gap one/plan.yaml:7:54 no card of `base` has the numbers 3 to 40',
    'subset-count one/plan.yaml:8:11 `extra` has no cards at all',
  ]);
});

test.each<readonly [string, Files]>([
  ['number-gap', staged('planning', ['to: 2', 'to: 3'])],
  ['subset-count', { ...staged('planning'), 'one/cards/extra/b1.md': null }],
  ['total', staged('planning', ['base: 2', 'base: 3'])],
  ['story-coverage', { ...MORE_BEATS, ...staged('planning') }],
  ['copy-empty', { ...staged('planning'), 'one/cards/base/a1.md': emptied() }],
  ['copy-empty', { ...staged('writing'), 'one/cards/base/a1.md': emptied() }],
])('%s is a warning while the set is young', (rule, files) => {
  expect(lookAt(files).findings).toMatchObject([{ rule, severity: 'warning' }]);
  const locked = changed(
    'one/plan.yaml',
    [[/stage: \w+/.exec(files['one/plan.yaml'] ?? '')?.[0] ?? '', 'stage: locked']],
    files,
  );
  expect(lookAt({ ...files, ...locked }).findings).toMatchObject([{ rule, severity: 'error' }]);
});

test.each(['number-gap', 'total', 'story-coverage'])(
  '%s is an error while the set is written',
  (rule) => {
    const files: Files =
      {
        'number-gap': staged('writing', ['to: 2', 'to: 3']),
        total: staged('writing', ['base: 2', 'base: 3']),
        'story-coverage': { ...MORE_BEATS, ...staged('writing') },
      }[rule] ?? {};
    expect(lookAt(files).findings).toMatchObject([{ rule, severity: 'error' }]);
  },
);

function emptied(): string {
  return '---\nnumber: "1"\nname: The Quay\nspoiler: open\nstory: 1/1\n---\n';
}
