import type { CheckReport, Finding } from '../../schema/index.js';
import { placeOf, type Content, type Spot } from '../model/index.js';
import type { Approvals } from '../review/index.js';
import type { Dictionaries } from '../text/index.js';
import type { FontShelf } from '../typeset/index.js';
import { acceptancesOf, markAccepted, unusedAcceptances, unusedRemark } from './accept.js';
import { ownerOf } from './faults.js';
import { RULES } from './rules.js';
import type { Remark, Rule, Severity } from './rule.js';
import { subjectOf } from './subject.js';

export interface CheckOptions {
  readonly fonts: FontShelf;
  readonly dictionaries: Dictionaries;
  /** What is approved; nothing, if it is not said. */
  readonly approvals?: Approvals;
  /** Only these rules, if given. */
  readonly only?: readonly string[];
  /** Told which rule looks now. */
  readonly progress?: (step: string) => void;
}

/** The rule whose findings come from the acceptances themselves, after all others have looked. */
const UNUSED = 'accepted-unused';

/** What rules had to say of a content, before it is told what of it was accepted. */
export interface Looked {
  readonly content: Content;
  readonly found: readonly Finding[];
}

/** Runs every rule over a content. The same content gives the same findings in the same order. */
export function check(content: Content, options: CheckOptions): CheckReport {
  const steps = lookInSteps(content, options);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return reportOf(step.value, options.only);
}

/** Runs rules one by one: whoever asks may stop before the next. */
export function* lookInSteps(
  content: Content,
  options: CheckOptions,
): Generator<undefined, Looked, undefined> {
  const { only, progress } = options;
  const subject = subjectOf(content, options);
  const found: Finding[] = [];
  for (const rule of RULES) {
    if (only !== undefined && !only.includes(rule.id) && !only.includes(UNUSED)) continue;
    yield undefined;
    progress?.(`checking: ${rule.id}`);
    for (const remark of rule.lookRaw?.(content) ?? []) {
      found.push(findingOf(rule, remark, content));
    }
    if (subject === null) continue;
    for (const remark of rule.look?.(subject) ?? []) found.push(findingOf(rule, remark, content));
  }
  return { content, found };
}

/** What was found, in order, with what was accepted marked, and with acceptances that met nothing. */
export function reportOf({ content, found }: Looked, only?: readonly string[]): CheckReport {
  const wants = (id: string): boolean => only === undefined || only.includes(id);
  const acceptances = acceptancesOf(content);
  const { findings, used } = markAccepted(found, acceptances, RULES);
  const unusedRule = RULES.find((rule) => rule.id === UNUSED && wants(rule.id));
  if (unusedRule) {
    for (const acceptance of unusedAcceptances(acceptances, used, content)) {
      findings.push(findingOf(unusedRule, unusedRemark(acceptance, RULES), content));
    }
  }
  const wanted = findings.filter((finding) => wants(finding.rule));
  return countedReport(wanted.sort(byPlace), content);
}

/** A remark of a rule as it is reported. */
export function findingOf(rule: Rule, remark: Remark, content: Content): Finding {
  const { spot, related, set, card, severity, ...words } = remark;
  const owner = ownerOf(spot.source.file);
  const ownSet = set ?? owner.set ?? null;
  return {
    rule: rule.id,
    severity: severity ?? severityOf(rule, content, ownSet),
    ...words,
    set: ownSet,
    card: card ?? owner.card ?? null,
    file: spot.source.file,
    ...rangeOf(spot),
    related: (related ?? []).map((other) => ({
      message: other.message,
      file: other.spot.source.file,
      ...placeOf(other.spot.source.text, other.spot.from),
    })),
  };
}

function severityOf(rule: Rule, content: Content, set: string | null): Severity {
  const stage = content.sets.find((candidate) => candidate.id === set)?.plan.value.stage;
  return stage !== undefined && rule.lenientIn?.includes(stage) ? 'warning' : rule.severity;
}

function rangeOf(spot: Spot): Pick<Finding, 'line' | 'column' | 'endLine' | 'endColumn'> {
  const from = placeOf(spot.source.text, spot.from);
  const to = placeOf(spot.source.text, Math.max(spot.to, spot.from));
  return { ...from, endLine: to.line, endColumn: to.column };
}

/** By file, place and rule: a total order, so that the same content prints the same bytes. */
function byPlace(a: Finding, b: Finding): number {
  return (
    compare(a.file, b.file) ||
    a.line - b.line ||
    a.column - b.column ||
    compare(a.rule, b.rule) ||
    compare(a.message, b.message)
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function countedReport(findings: Finding[], content: Content): CheckReport {
  const standing = findings.filter((finding) => finding.accepted === undefined);
  const errors = standing.filter((finding) => finding.severity === 'error').length;
  return {
    ok: errors === 0,
    counts: {
      sets: content.sets.length,
      cards: content.cardFiles,
      errors,
      warnings: standing.length - errors,
      accepted: findings.length - standing.length,
    },
    findings,
  };
}
