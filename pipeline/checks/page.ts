import type { About, Failing, Passing, Rule, Severity, Stage } from './rule.js';
import { sampleWith } from './sample.js';

/** A line of an example, or a gap where lines are left out that are as in the sample. */
export type PageLine =
  | { readonly text: string; readonly at: number }
  /** Marks the columns above it, from 1; `to` is not part of them. */
  | { readonly mark: { readonly from: number; readonly to: number } }
  | { readonly gap: true };

/** A file of an example; null for one that is not there. */
export interface PageFile {
  readonly path: string;
  readonly lines: readonly PageLine[] | null;
}

/** A content that passes. */
export interface PassingPage {
  readonly says: string;
  readonly files: readonly PageFile[];
}

/** A content that does not, and what is found in it. */
export interface FailingPage extends PassingPage {
  readonly finding: Failing['gives'];
  readonly severity: Severity;
}

/** What is told of a rule, in a terminal and in documents. */
export interface RulePage {
  readonly id: string;
  readonly about: About;
  readonly why: string;
  readonly severity: Severity;
  /** Stages of a set in which it is only a warning. */
  readonly lenientIn: readonly Stage[];
  readonly acceptable: boolean;
  /** Whether its findings can say what to write instead, and whether `check --fix` may write it. */
  readonly fix: 'none' | 'offered' | 'certain';
  readonly passes: readonly PassingPage[];
  readonly fails: readonly FailingPage[];
}

/** Longest file that is shown whole, in lines. */
const WHOLE = 12;

/** Lines that are shown before and after what is underlined in a longer one. */
const AROUND = 4;

/** The page of a rule: its examples are what its tests run. */
export function pageOfRule(rule: Rule): RulePage {
  const { passes, fails } = rule.examples;
  const gives = fails.map((example) => example.gives);
  return {
    id: rule.id,
    about: rule.about,
    why: rule.why,
    severity: rule.severity,
    lenientIn: rule.lenientIn ?? [],
    acceptable: rule.acceptable !== false,
    fix: gives.some(({ certain }) => certain === true)
      ? 'certain'
      : gives.some(({ fix }) => fix !== undefined)
        ? 'offered'
        : 'none',
    passes: passes.map((example) => ({ says: example.says, files: filesOf(example, null) })),
    fails: fails.map((example) => ({
      says: example.says,
      files: filesOf(example, example.gives),
      finding: example.gives,
      severity: example.gives.severity ?? rule.severity,
    })),
  };
}

function filesOf({ files }: Passing, gives: Failing['gives'] | null): readonly PageFile[] {
  const all = sampleWith(files);
  const [, found = '', line = '1', column = '1'] = /^(.+):(\d+):(\d+)$/.exec(gives?.at ?? '') ?? [];
  const paths = [...Object.keys(files), found].filter((path, at, list) => {
    const isShown = path !== '' && (at < list.length - 1 || all.has(path));
    return isShown && list.indexOf(path) === at;
  });
  return paths.map((path) => {
    const text = all.get(path);
    if (text === undefined) return { path, lines: null };
    const mark =
      path === found && gives ? { gives, line: Number(line), column: Number(column) } : null;
    return { path, lines: linesOf(text, sampleWith({}).get(path), mark) };
  });
}

interface Mark {
  readonly gives: Failing['gives'];
  readonly line: number;
  readonly column: number;
}

/**
 * Of a long file of the sample only what differs from it, and what is underlined; of any other long
 * file what stands around that, or its beginning.
 */
function linesOf(text: string, sample: string | undefined, mark: Mark | null): PageLine[] {
  const all = text.replace(/\n$/, '').split('\n');
  const isLong = all.length > WHOLE;
  const known = new Set(isLong ? (sample ?? '').split('\n') : []);
  const isNear = (at: number): boolean =>
    mark === null ? at <= WHOLE : Math.abs(at - mark.line) <= AROUND;
  const shown: PageLine[] = [];
  for (const [index, line] of all.entries()) {
    const at = index + 1;
    const isMarked = mark?.line === at;
    const isLeftOut = sample === undefined ? isLong && !isNear(at) : known.has(line) && !isMarked;
    if (isLeftOut) {
      const last = shown.at(-1);
      if (!last || !('gap' in last)) shown.push({ gap: true });
      continue;
    }
    shown.push({ text: line, at });
    if (isMarked) shown.push({ mark: underline(mark, line) });
  }
  return shown;
}

function underline(
  { gives: { covers }, column }: Mark,
  line: string,
): { from: number; to: number } {
  const [first = ''] = covers.split('\n');
  const to = Math.min(column + Math.max(first.length, 1), Math.max(line.length, column) + 1);
  return { from: column, to };
}
