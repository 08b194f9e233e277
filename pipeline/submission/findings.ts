import type { Finding } from '../../schema/index.js';
import { RULES, check, type About } from '../checks/index.js';
import { approvalsOf, keptDictionaries } from '../read/index.js';
import type { Chosen } from './choose.js';
import type { Ground } from './ground.js';

/** Rules that speak of the words and the look of a card alone, and of nothing beside it. */
const OF_ITSELF: readonly About[] = ['copy', 'fit'];

/**
 * What `check` has to say of each card, as far as a person may know it. Whoever may not know
 * everything is told only what a card that they are shown whole says of itself.
 */
export function findingsFor(
  ground: Ground,
  chosen: readonly Chosen[],
  isCleared: boolean,
): ReadonlyMap<string, readonly string[]> {
  const { folder, content, fonts, review } = ground;
  const told = RULES.filter(({ about }) => isCleared || OF_ITSELF.includes(about));
  const ids = new Set(told.map(({ id }) => id));
  const { findings } = check(content, {
    fonts,
    dictionaries: keptDictionaries,
    approvals: approvalsOf(folder, content, fonts, review),
    only: [...ids],
  });
  return new Map(
    chosen.map(({ key, parts, card }) => {
      const own = findings.filter(
        (finding) =>
          card !== null &&
          finding.accepted === undefined &&
          !finding.rule.startsWith('approval-') &&
          `${finding.set ?? ''}/${finding.card ?? ''}` === key,
      );
      return [key, isCleared || parts.includes('copy') ? own.map(sayFinding) : []];
    }),
  );
}

function sayFinding({ message, found, expected }: Finding): string {
  const more = [
    ...(found === undefined ? [] : [`found ${found}`]),
    ...(expected === undefined ? [] : [`expected ${expected}`]),
  ].join('; ');
  return more === '' ? message : `${message} (${more})`;
}
