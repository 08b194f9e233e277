import type { Finding, ImportReport, MappingFile } from '../../schema/index.js';
import { RULES } from '../checks/index.js';
import type { CardSet, Content } from '../model/index.js';
import { readContent, type Folder } from '../read/index.js';
import {
  planRows,
  readSheets,
  type Rejected,
  type SheetPlan,
  type Table,
  type TableReading,
} from '../sheet/index.js';
import { changedFile, newFiles, type RowFile } from './import-files.js';
import { importReport } from './import-report.js';
import { look, type LookOptions } from './look.js';
import { noSuch } from './renumber.js';
import { fallenApprovals, moreErrors, newErrors } from './worse.js';
import type { FileChange } from './write.js';

/** What is asked of `import`. */
export interface ImportOrder {
  readonly folder: Folder;
  readonly set: string;
  readonly table: Table;
  readonly mapping: MappingFile | null;
  /** The sheets to read; all that are not hidden, if none is named. */
  readonly sheets: readonly string[];
  /** The subset of rows that do not say their own. */
  readonly into: string | null;
  readonly overwrite: boolean;
  readonly mayWrite: (file: string) => boolean;
  readonly progress?: LookOptions['progress'];
}

/** What a file would change. Empty `files` where nothing can or need be written. */
export interface Importing {
  readonly report: ImportReport;
  readonly files: ReadonlyMap<string, FileChange>;
}

/** Most times that rows are left out for what `check` would find of their files. */
const MOST_ROUNDS = 4;
const ABOUT_FILES: ReadonlySet<string> = new Set(
  RULES.filter(({ about }) => about === 'files').map(({ id }) => id),
);

/**
 * Works out what the rows of a spreadsheet would do to the cards of a set, and looks at what comes
 * out: a row whose card would be an error of files is rejected. Writes nothing.
 */
export function importSheet(order: ImportOrder): Importing {
  const content = readContent(order.folder);
  const set = content.sets.find(({ id }) => id === order.set);
  const reading = set ? readSheets(order.table, { ...order, set }) : nothingRead(order);
  const refused = [...standInWay(content, set, order), ...reading.refused];
  if (!set || refused.length > 0) return importReport({ ...reading, refused }, null, [], []);
  const { overwrite } = order;
  const plan = planRows(reading.rows, { content, set, overwrite });
  const written = plan.changes.filter(({ edits }) => edits.length > 0);
  let files: readonly RowFile[] = [
    ...newFiles(plan.adds, { ...order, set }),
    ...written.map((change) => changedFile(change, { ...order, set })),
  ];
  let findings: readonly Finding[] = [];
  let rejected = files.flatMap(({ sheet, row, why }): Rejected[] =>
    why.length === 0 ? [] : [{ sheet, row, reasons: why }],
  );
  files = files.filter(({ why }) => why.length === 0);
  for (let round = 0; files.length > 0; round += 1) {
    findings = foundAnew(order, files);
    const faulty = rejectedFor(findings, files);
    const others = findings.filter(
      ({ rule, file }) => ABOUT_FILES.has(rule) && !files.some((each) => each.file === file),
    );
    if (round === MOST_ROUNDS || (faulty.length === 0 && others.length > 0)) {
      const why = 'with these rows `check` would find errors of files that it does not find now';
      return importReport({ ...reading, refused: [why] }, plan, [], findings);
    }
    if (faulty.length === 0) break;
    const left = new Set(faulty.map(placeOf));
    rejected = [...rejected, ...faulty];
    files = files.filter((file) => !left.has(placeOf(file)));
    if (files.length === 0) findings = [];
  }
  return importReport(reading, withoutRows(plan, rejected), files, findings);
}

function nothingRead(order: ImportOrder): TableReading {
  const mapping = order.mapping ?? { format: 1, columns: [] };
  return { sheets: [], mapping, rows: [], rejected: [], skipped: [], refused: [] };
}

function standInWay(
  content: Content,
  set: CardSet | undefined,
  order: ImportOrder,
): readonly string[] {
  if (!content.property) return ['property.yaml cannot be read: run `holdback check` first'];
  if (!set) {
    const known = content.sets.map(({ id }) => id);
    return known.includes(order.set) ? [] : [noSuch('set', order.set, known)];
  }
  return [...set.unread].map(
    (subset) =>
      `a card of \`${subset}\` cannot be read, so nobody knows what it is: run \`holdback check\` first`,
  );
}

/** Errors that `check` would find and does not find now, and then the approvals that would fall. */
function foundAnew(
  { folder, progress }: ImportOrder,
  files: readonly RowFile[],
): readonly Finding[] {
  const options = progress === undefined ? {} : { progress };
  const after = new Map(
    files.flatMap(({ file, change }) => (change ? [[file, change.after] as const] : [])),
  );
  const was = look(folder, options);
  const now = look(withFiles(folder, after), options);
  // What was wrong before may be said in other words now: a gap that got smaller is no new one.
  const keyOf = ({ rule, set }: Finding): string => `${rule} ${set ?? ''}`;
  const more = new Set(moreErrors(was, now).map(keyOf));
  const errors = newErrors(was, now, new Set()).filter(
    (finding) => ABOUT_FILES.has(finding.rule) || more.has(keyOf(finding)),
  );
  return [...errors, ...fallenApprovals(was, now)];
}

/** A folder with some files as they would be, new ones too. */
function withFiles(folder: Folder, files: ReadonlyMap<string, Uint8Array>): Folder {
  return {
    list: () => {
      const there = folder.list().filter(({ path }) => !files.has(path));
      const all = [...there, ...[...files.keys()].map((path) => ({ path, outside: false }))];
      return all.sort((a, b) => (a.path < b.path ? -1 : 1));
    },
    read: (path) => files.get(path) ?? folder.read(path),
  };
}

function rejectedFor(findings: readonly Finding[], files: readonly RowFile[]): readonly Rejected[] {
  const byFile = new Map<string, string[]>();
  for (const { rule, file, message, found, expected } of findings) {
    if (!ABOUT_FILES.has(rule)) continue;
    const more = [
      ...(found === undefined ? [] : [`found ${found}`]),
      ...(expected === undefined ? [] : [`expected ${expected}`]),
    ];
    const said = [`\`check\` would find ${rule}: ${message}`, ...more].join(', ');
    byFile.set(file, [...(byFile.get(file) ?? []), said]);
  }
  return files.flatMap(({ sheet, row, file }) => {
    const reasons = byFile.get(file);
    return reasons ? [{ sheet, row, reasons }] : [];
  });
}

function placeOf({ sheet, row }: { readonly sheet: string; readonly row: number }): string {
  return `${sheet}\n${String(row)}`;
}

function withoutRows(plan: SheetPlan, rejected: readonly Rejected[]): SheetPlan {
  const left = new Set(rejected.map(placeOf));
  return {
    ...plan,
    adds: plan.adds.filter((add) => !left.has(placeOf(add))),
    changes: plan.changes.filter((change) => !left.has(placeOf(change))),
    rejected: [...plan.rejected, ...rejected],
  };
}
