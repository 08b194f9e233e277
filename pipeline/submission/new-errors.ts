import type { Finding } from '../../schema/index.js';
import { check } from '../checks/index.js';
import { identityOf, type Card } from '../model/index.js';
import type { Ground } from './ground.js';
import { keptDictionaries } from '../read/index.js';

/** What `check` finds wrong with changed cards and did not find before, a line each. */
export function newErrors({ content, fonts }: Ground, changed: readonly Card[]): readonly string[] {
  if (changed.length === 0) return [];
  const fresh = new Map(changed.map((card) => [keyOf(card), card]));
  const sets = content.sets.map((set) => ({
    ...set,
    cards: set.cards.map((card) => fresh.get(keyOf(card)) ?? card),
  }));
  const known = new Set(
    errorsOf(check(content, { fonts, dictionaries: keptDictionaries }).findings).map(sameness),
  );
  return errorsOf(check({ ...content, sets }, { fonts, dictionaries: keptDictionaries }).findings)
    .filter((finding) => !known.has(sameness(finding)))
    .map(sayFinding);
}

function keyOf(card: Card): string {
  return `${card.set}/${identityOf(card)}`;
}

/** Approvals are no matter here: what is about to be approved is not approved yet. */
function errorsOf(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(
    ({ severity, accepted, rule }) =>
      severity === 'error' && accepted === undefined && !rule.startsWith('approval-'),
  );
}

/** Not by its place: that moves when words above it change. */
function sameness({ rule, set, card, message, found, expected }: Finding): string {
  return JSON.stringify([rule, set, card, message, found ?? null, expected ?? null]);
}

function sayFinding({ rule, file, line, column, message, found, expected }: Finding): string {
  const more = [
    ...(found === undefined ? [] : [`found ${found}`]),
    ...(expected === undefined ? [] : [`expected ${expected}`]),
  ].join('; ');
  const place = `${file}:${String(line)}:${String(column)}`;
  return `${place}  ${rule}: ${message}${more === '' ? '' : ` (${more})`}`;
}
