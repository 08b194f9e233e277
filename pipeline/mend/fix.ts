import type { Finding } from '../../schema/index.js';
import { apart, fixOf, patchText, splice, type FindingFix } from '../edit/index.js';
import type { Folder } from '../read/index.js';
import { laidOver, look, type Looked, type LookOptions } from './look.js';
import { bytesOf, textOf } from './texts.js';
import { newErrors } from './worse.js';
import type { FileChange } from './write.js';

/** What is asked of `check --fix`. */
export interface FixOrder {
  readonly folder: Folder;
  /** Whether a finding is among those that are asked about. */
  readonly wants: (finding: Finding) => boolean;
  /** Whether a file may be written: a link may not. */
  readonly mayWrite: (file: string) => boolean;
  readonly progress?: LookOptions['progress'];
}

/** What the certain fixes would change, and what stands in the way of others. */
export interface Fixing {
  readonly files: ReadonlyMap<string, FileChange>;
  /** Unified diffs of the files, in their order. */
  readonly patch: string;
  /** How many fixes are made. */
  readonly made: number;
  /** Certain fixes that overlap or touch another one, so that nobody knows what comes out. */
  readonly crowded: readonly Finding[];
  /** Certain fixes in files that are links. */
  readonly linked: readonly Finding[];
  /** Errors that the next fixes would bring, which are therefore not made. */
  readonly worse: readonly Finding[];
  /** The content as it is, and as it would be. */
  readonly was: Looked;
  readonly now: Looked;
}

/** Most times that what was mended shows something more to mend. */
const MOST_ROUNDS = 10;

/**
 * Makes the certain fixes in memory and looks at what comes out, until there is nothing left to fix:
 * what is mended may let rules see more. A round that would bring an error is not made.
 */
export function fixContent({ folder, wants, mayWrite, progress }: FixOrder): Fixing {
  const options = progress === undefined ? {} : { progress };
  const was = look(folder, options);
  let now = was;
  let made = 0;
  let worse: readonly Finding[] = [];
  const files = new Map<string, Uint8Array>();
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { alone } = certainFixes(laidOver(folder, files), now, { wants, mayWrite });
    if (alone.length === 0) break;
    const next = new Map([...files, ...spliced(laidOver(folder, files), alone)]);
    const then = look(laidOver(folder, next), options);
    worse = newErrors(now, then, new Set(alone.map(({ finding }) => finding.file)));
    if (worse.length > 0) break;
    for (const [path, bytes] of next) files.set(path, bytes);
    made += alone.length;
    now = then;
  }
  const { crowded, linked } = certainFixes(laidOver(folder, files), now, { wants, mayWrite });
  const paths = [...files.keys()].sort();
  return {
    files: new Map(
      paths.map((path) => [
        path,
        { before: folder.read(path), after: files.get(path) ?? folder.read(path) },
      ]),
    ),
    patch: paths.map((path) => patchOf(path, folder, laidOver(folder, files))).join(''),
    made,
    crowded,
    linked,
    worse,
    was,
    now,
  };
}

interface Certain {
  readonly alone: readonly FindingFix[];
  readonly crowded: readonly Finding[];
  readonly linked: readonly Finding[];
}

function certainFixes(
  folder: Folder,
  { report }: Looked,
  { wants, mayWrite }: Pick<FixOrder, 'wants' | 'mayWrite'>,
): Certain {
  const certain = report.findings.filter(
    (finding) =>
      finding.certain === true &&
      finding.fix !== undefined &&
      finding.accepted === undefined &&
      wants(finding),
  );
  const [linked, own] = [
    certain.filter(({ file }) => !mayWrite(file)),
    certain.filter(({ file }) => mayWrite(file)),
  ];
  const files = [...grouped(own, ({ file }) => file)].map(([file, findings]) => {
    const { source } = textOf(folder, file);
    return apart(findings.flatMap((finding) => fixOf(source, finding) ?? []));
  });
  return {
    alone: files.flatMap(({ alone }) => alone),
    crowded: files.flatMap(({ crowded }) => crowded.map(({ finding }) => finding)),
    linked,
  };
}

function spliced(folder: Folder, fixes: readonly FindingFix[]): Map<string, Uint8Array> {
  return new Map(
    [...grouped(fixes, ({ finding }) => finding.file)].map(([file, own]) => {
      const { source, isMarked } = textOf(folder, file);
      const changes = own.map(({ change }) => change);
      return [file, bytesOf(splice(source, changes), isMarked)];
    }),
  );
}

function patchOf(path: string, before: Folder, after: Folder): string {
  return patchText(path, textOf(before, path).source.text, textOf(after, path).source.text);
}

function grouped<T>(all: readonly T[], keyOf: (each: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const each of all) {
    const own = groups.get(keyOf(each));
    if (own) own.push(each);
    else groups.set(keyOf(each), [each]);
  }
  return groups;
}
