import type { Finding } from '../../schema/index.js';
import { spotOf, type CardSet, type Content, type SourceFile, type Spot } from '../model/index.js';
import { nearest } from '../text/index.js';
import type { Remark, Rule } from './rule.js';

/** A finding that somebody let stand, as it is written on a card, a sales text or in a plan. */
export interface Acceptance {
  readonly rule: string;
  readonly words: string;
  readonly why: string;
  readonly by: string;
  readonly source: SourceFile;
  /** Its position in the list. */
  readonly at: number;
  readonly set: string;
  /** Null for one in the plan, which covers the whole set. */
  readonly file: string | null;
}

/** Every acceptance of a content. */
export function acceptancesOf(content: Content): Acceptance[] {
  return content.sets.flatMap((set) => [
    ...entriesOf(set, set.plan.source, set.plan.value.accepted, null),
    ...[...set.cards, ...set.sales].flatMap(({ source, front }) =>
      entriesOf(set, source, front.accepted, source.file),
    ),
  ]);
}

type Entries = CardSet['plan']['value']['accepted'];

function entriesOf(
  set: CardSet,
  source: SourceFile,
  entries: Entries,
  file: string | null,
): Acceptance[] {
  return (entries ?? []).map((entry, at) => ({ ...entry, source, at, set: set.id, file }));
}

/** Findings with those marked that somebody accepted, and the acceptances that met one. */
export function markAccepted(
  findings: readonly Finding[],
  acceptances: readonly Acceptance[],
  rules: readonly Rule[],
): { readonly findings: Finding[]; readonly used: ReadonlySet<Acceptance> } {
  const never = new Set(rules.filter((rule) => rule.acceptable === false).map((rule) => rule.id));
  const byWords = new Map<string, Acceptance[]>();
  for (const acceptance of acceptances) {
    const key = keyOf(acceptance.rule, acceptance.words);
    byWords.set(key, [...(byWords.get(key) ?? []), acceptance]);
  }
  const used = new Set<Acceptance>();
  const marked = findings.map((finding) => {
    const candidates = byWords.get(keyOf(finding.rule, finding.found ?? finding.message)) ?? [];
    const match = candidates.find((candidate) => covers(candidate, finding));
    if (!match || never.has(finding.rule)) return finding;
    used.add(match);
    return { ...finding, accepted: `${match.why} (${match.by})` };
  });
  return { findings: marked, used };
}

function keyOf(rule: string, words: string): string {
  return `${rule} ${words}`;
}

function covers(acceptance: Acceptance, finding: Finding): boolean {
  return (
    acceptance.set === finding.set && (acceptance.file === null || acceptance.file === finding.file)
  );
}

/**
 * Acceptances that met no finding. Where reading found something wrong, rules have kept silent, so
 * nothing is said of that set, or of any if the fault is one that all sets share.
 */
export function unusedAcceptances(
  acceptances: readonly Acceptance[],
  used: ReadonlySet<Acceptance>,
  content: Content,
): Acceptance[] {
  const faulty = new Set(content.faults.map((fault) => fault.spot.source.file.split('/')[0]));
  const sets = new Set(content.sets.map((set) => set.id));
  const shared = [...faulty].some((folder) => folder === undefined || !sets.has(folder));
  if (shared) return [];
  return acceptances.filter((candidate) => !used.has(candidate) && !faulty.has(candidate.set));
}

/** What `accepted-unused` says of one. */
export function unusedRemark(acceptance: Acceptance, rules: readonly Rule[]): Remark {
  const rule = rules.find((candidate) => candidate.id === acceptance.rule);
  const spot = spotOf(acceptance.source, ['accepted', acceptance.at, 'rule']);
  if (!rule) return unknownRule(acceptance.rule, spot, rules);
  const never = rule.acceptable === false;
  return {
    spot,
    message: never
      ? `a finding of \`${acceptance.rule}\` can never be accepted`
      : 'this accepts a finding that is not there',
    found: acceptance.words,
    expected: never ? 'the text, the hold or the name mended' : 'no such entry',
  };
}

function unknownRule(id: string, spot: Spot, rules: readonly Rule[]): Remark {
  const near = nearest(
    id,
    rules.map((rule) => rule.id),
  );
  return {
    spot,
    message: `there is no rule \`${id}\``,
    found: id,
    expected: near === null ? 'the rule that a finding names' : `\`${near}\``,
    ...(near === null ? {} : { fix: near }),
  };
}
