import type { Content, FaultRule } from '../model/index.js';
import type { Remark } from './rule.js';

/** What reading found under a rule's name. */
export function faultsOf(content: Content, rule: FaultRule): readonly Remark[] {
  return content.faults.filter((fault) => fault.rule === rule);
}

/** Top folders that are no sets. */
const NO_SETS: ReadonlySet<string> = new Set(['backs', 'review', 'fonts']);

/** The set and card that a path belongs to. */
export function ownerOf(file: string): { set?: string; card?: string } {
  const [, set, card] = /^([^/]+)\/(?:cards\/([^/]+\/[^/]+)\.md$)?/.exec(file) ?? [];
  if (set === undefined || NO_SETS.has(set)) return {};
  return card === undefined ? { set } : { set, card };
}

/** The files in which reading found something wrong: what they hold is not known. */
export function faultyFiles(content: Content): ReadonlySet<string> {
  return new Set(content.faults.map((fault) => fault.spot.source.file));
}
