import type { DiscreetReport } from '../../schema/index.js';
import { RULES } from '../checks/index.js';
import { view, type ViewCard, type ViewRun } from '../gate/index.js';
import type { Content, Instant } from '../model/index.js';
import { select } from '../select/index.js';

/** The one sentence for everything that is not public; it is the same whatever that is. */
export const REST =
  'What is not public is not told here. Run the check in private to see all that it finds.';

/**
 * What a check may say where others read the log. Only shown cards are spoken of, and only what
 * follows from the words that the public sees of them; all the rest is one sentence, which is there
 * whenever the check fails, so that it tells no more than the exit code does. If a file cannot be
 * read the sentence is all that is said: nobody knows what that file holds.
 * @param fails whether the check ends with exit code 1.
 */
export function discreetReport(content: Content, now: Instant, fails: boolean): DiscreetReport {
  const released = select(content);
  const seen = released && view(released, { kind: 'public', at: now });
  const findings =
    seen?.sets.flatMap((set) =>
      set.subsets.flatMap((subset) =>
        subset.cards.flatMap((card) =>
          card.state === 'shown' && card.number !== null
            ? publicFindings(card).map((finding) => ({
                ...finding,
                set: set.id,
                subset: subset.id,
                number: `${card.number ?? ''}${card.letter ?? ''}`,
              }))
            : [],
        ),
      ),
    ) ?? [];
  const errors = findings.filter((finding) => finding.severity === 'error').length;
  return {
    ok: !fails,
    counts: { errors, warnings: findings.length - errors },
    findings,
    rest: fails ? REST : null,
  };
}

type PublicFinding = Pick<DiscreetReport['findings'][number], 'rule' | 'severity' | 'line'>;

/** Findings of the rules that look at single words, over the paragraphs that the public sees. */
function publicFindings(card: ViewCard): PublicFinding[] {
  const lines = [card.name, ...card.bio.map((paragraph) => paragraph.map(wordsOf).join(''))];
  return RULES.flatMap((rule) =>
    lines.flatMap((text, line) =>
      rule.offends?.(text) === true ? [{ rule: rule.id, severity: rule.severity, line }] : [],
    ),
  );
}

function wordsOf(run: ViewRun): string {
  return 'held' in run ? ' ' : run.text;
}
