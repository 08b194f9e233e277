import { expect, test } from 'vitest';

import { RULES, check, sampleWith } from '../../pipeline/checks/index.js';
import { CARD_RULES } from '../../pipeline/checks/one-card.js';
import { Checker, EditedFolder, Reader } from '../../pipeline/editor/index.js';
import {
  approvalsOf,
  keptDictionaries,
  memoryFolder,
  readProperty,
  readReview,
} from '../../pipeline/read/index.js';
import type { Finding } from '../../schema/index.js';

const CARD = /^one\/cards\/.+\.md$/;

/** What the rules that look at one card find in a file, as `check` runs them. */
function checked(files: ReadonlyMap<string, string>, path: string): readonly Finding[] {
  const folder = memoryFolder(files);
  const { content, fonts } = readProperty(folder);
  const approvals = approvalsOf(folder, content, fonts, readReview(folder));
  const { findings } = check(content, { fonts, dictionaries: keptDictionaries, approvals });
  return ofCard(findings, path);
}

function ofCard(findings: readonly Finding[], path: string): readonly Finding[] {
  return findings.filter(({ file, rule }) => file === path && CARD_RULES.has(rule));
}

function settle(checker: Checker): void {
  const steps = checker.settle();
  let step = steps.next();
  while (step.done !== true) step = steps.next();
}

/** The examples that change the words of one card of the sample, and what stands beside it. */
const examples = RULES.flatMap((rule) => rule.examples.fails).flatMap(({ files, says }) => {
  const typed = Object.entries(files).filter(
    ([path, text]) => CARD.test(path) && text !== null && sampleWith({}).has(path),
  );
  const [first] = typed;
  return first ? [{ says, files, path: first[0], text: first[1] ?? '' }] : [];
});

test('what rules find in the card that is typed in is told before all is looked at', () => {
  let met = 0;
  for (const { says, files, path, text } of examples) {
    const before = sampleWith({ ...files, [path]: sampleWith({}).get(path) ?? null });
    const edit = new EditedFolder(memoryFolder(before));
    const checker = new Checker(new Reader(edit));
    checker.read();
    settle(checker);
    edit.show(path, text);
    const early = ofCard(checker.read().findings, path);
    expect(checker.isSettled).toBe(false);
    const whole = checked(sampleWith(files), path);
    // A file that cannot be read shows its faults alone.
    if (checker.known?.standing.unreadable.has(path) === true) continue;
    expect(early, says).toEqual(whole);
    met += whole.length;
  }
  expect(met).toBeGreaterThan(20);
});
