import type { ClaimsReport, ListedNumber } from '../../schema/index.js';
import { listClaims } from '../checks/index.js';
import { keptDictionaries, readProperty, type Folder } from '../read/index.js';
import { count, plain } from './report-text.js';

/** What is said where others read the log: every number of a text that is held tells something. */
export const NO_CLAIMS_HERE =
  'the list of claims shows words that are not public: run it in private, or with --no-discreet\n';

/** The list of a content's numbers, of one set if it is named. */
export function claimsIn(folder: Folder, set: string | undefined, ok: boolean): ClaimsReport {
  const { content, fonts } = readProperty(folder);
  const all = listClaims(content, { fonts, dictionaries: keptDictionaries });
  const asked = all.filter((number) => set === undefined || number.set === set);
  return claimsReport(asked, ok);
}

function claimsReport(numbers: readonly ListedNumber[], ok: boolean): ClaimsReport {
  const claims = numbers.filter(({ taken }) => taken === 'claim');
  const story = numbers.filter(({ taken }) => taken === 'story').length;
  return {
    ok,
    counts: {
      claims: claims.length,
      holding: claims.filter(({ stands }) => stands === 'holds').length,
      wrong: claims.filter(({ stands }) => stands === 'wrong' || stands === 'tells').length,
      story,
      others: numbers.length - claims.length - story,
    },
    numbers: [...numbers],
  };
}

/** The list of numbers for people, by file. */
export function claimsText({ counts, numbers }: ClaimsReport): string {
  const files = new Map<string, string[]>();
  for (const number of numbers) {
    const lines = files.get(number.file);
    if (lines) lines.push(lineOf(number));
    else files.set(number.file, [lineOf(number)]);
  }
  const blocks = [...files].map(([file, lines]) => [plain(file), ...lines].join('\n'));
  const summary =
    `${count(counts.claims, 'claim')}: ${String(counts.holding)} hold, ` +
    `${String(counts.wrong)} do not; ${count(counts.story, 'number')} of story, ` +
    count(counts.others, 'other');
  return `${[...blocks, summary].join('\n\n')}\n`;
}

function lineOf(number: ListedNumber): string {
  const place = `${String(number.line)}:${String(number.column)}`;
  return `  ${place.padEnd(8)} ${plain(number.words)}: ${plain(meaningOf(number))}`;
}

const OTHERS = {
  claim: 'a claim',
  story: 'story',
  odds: 'odds',
  number: 'a number as printed, or the end of a range',
  share: 'a share of the cards, compared with nothing',
} as const;

const HEDGES: Readonly<Record<string, string>> = {
  more: 'more than',
  least: 'at least',
  fewer: 'fewer than',
  most: 'at most',
  nearly: 'nearly',
  about: 'about, within a tenth',
  average: 'on average',
};

function meaningOf({ taken, stands, real = [], hedge }: ListedNumber): string {
  if (taken !== 'claim') return OTHERS[taken];
  const hedged = hedge === undefined ? '' : ` (${HEDGES[hedge] ?? hedge})`;
  const counts = real.map(({ count: each, of }) => `${of} (${String(each)})`);
  const about = counts.length === 0 ? '' : ` about ${[...new Set(counts)].join(' or ')}`;
  return `a claim${hedged}${about}: ${sayStands(stands)}`;
}

function sayStands(stands: ListedNumber['stands']): string {
  switch (stands) {
    case 'holds':
      return 'it holds';
    case 'wrong':
      return 'it does not hold';
    case 'tells':
      return 'it tells of what is held';
    case 'doubtful':
      return 'another rule doubts what it counts';
    default:
      return 'the plan has nothing to compare it with';
  }
}
