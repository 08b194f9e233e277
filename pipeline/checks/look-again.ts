import type { Finding } from '../../schema/index.js';
import type { Card, Content } from '../model/index.js';
import { moverOf } from './moved.js';
import { CARD_RULES, withCardAlone } from './one-card.js';
import type { Rule } from './rule.js';
import { RULES } from './rules.js';
import { findingOf, type CheckOptions, type Looked } from './run.js';
import { subjectOf } from './subject.js';

/** A card in two states of a content that are alike in everything else. */
export interface ChangedCard {
  readonly was: Card;
  readonly is: Card;
}

/**
 * What is found once a card has changed, in the time of one card: its file is looked at again by
 * reading and by `CARD_RULES`; of all the rest what was found before stays, moved along with the
 * words. What it tells of the rest is exact when `check` has looked again.
 */
export function lookAgain(
  before: Looked,
  content: Content,
  { was, is }: ChangedCard,
  options: CheckOptions,
): Looked {
  const subject = subjectOf(content, options);
  const alone = subject && withCardAlone(subject, is);
  if (!alone) return before;
  const { file } = is.source;
  const move = moverOf(was.source, is.source);
  const old = findingsByRule(before.found);
  const found = RULES.flatMap((rule): readonly Finding[] => {
    const stays = old.get(rule.id) ?? [];
    if (rule.lookRaw && !rule.look) return rawFindings(rule, content);
    if (!CARD_RULES.has(rule.id)) return stays.map(move);
    const own = [...(rule.look?.(alone) ?? [])].filter(({ spot }) => spot.source.file === file);
    return [
      ...stays.filter((finding) => finding.file !== file).map(move),
      ...own.map((remark) => findingOf(rule, remark, content)),
    ];
  });
  return { content, found };
}

/** What reading itself found, in every file: it is known as soon as they are read. */
export function readingFindings(content: Content): readonly Finding[] {
  return RULES.flatMap((rule) => rawFindings(rule, content));
}

function rawFindings(rule: Rule, content: Content): readonly Finding[] {
  return [...(rule.lookRaw?.(content) ?? [])].map((remark) => findingOf(rule, remark, content));
}

function findingsByRule(found: readonly Finding[]): ReadonlyMap<string, readonly Finding[]> {
  const byRule = new Map<string, Finding[]>();
  for (const finding of found) {
    const known = byRule.get(finding.rule);
    if (known) known.push(finding);
    else byRule.set(finding.rule, [finding]);
  }
  return byRule;
}
