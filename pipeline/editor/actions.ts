import { apart, fixOf, type Change } from '../edit/index.js';
import type { SourceFile } from '../model/index.js';
import type { Finding } from '../../schema/index.js';
import { acceptance, isAcceptable } from './accepting.js';

/** Something that an editor offers to do about findings. */
export interface Action {
  readonly title: string;
  readonly kind: 'quickfix' | 'source.fixAll';
  /** Nobody would do anything else. */
  readonly preferred: boolean;
  readonly finding: Finding | null;
  readonly changes: readonly Change[];
}

/** What can be done about findings of a file that stand at a place. */
export function actionsFor(
  source: SourceFile,
  here: readonly Finding[],
  ofFile: readonly Finding[],
): readonly Action[] {
  return [
    ...here.flatMap((finding) => fixing(source, finding)),
    ...here.flatMap((finding) => accepting(source, finding)),
    ...fixingAll(source, ofFile),
  ];
}

function fixing(source: SourceFile, finding: Finding): readonly Action[] {
  const fix = fixOf(source, finding);
  if (!fix) return [];
  const preferred = finding.certain === true;
  return [{ title: sayFix(finding), kind: 'quickfix', preferred, finding, changes: [fix.change] }];
}

function sayFix({ fix = '' }: Finding): string {
  if (fix === '') return 'Take this out';
  const line = fix.replace(/\s+/g, ' ');
  return `Write ${line.length > 60 ? `${line.slice(0, 59)}…` : line}`;
}

function accepting(source: SourceFile, finding: Finding): readonly Action[] {
  const change = isAcceptable(finding) ? acceptance(source, finding) : null;
  if (!change) return [];
  const title = `Accept this finding of ${finding.rule}: fill in why and by`;
  return [{ title, kind: 'quickfix', preferred: false, finding, changes: [change] }];
}

/** Certain fixes that stand apart: of two that touch, one may change what the other is about. */
export function fixingAll(source: SourceFile, findings: readonly Finding[]): readonly Action[] {
  const fixes = findings.flatMap((finding) =>
    finding.certain === true ? (fixOf(source, finding) ?? []) : [],
  );
  const changes = apart(fixes).alone.map(({ change }) => change);
  if (changes.length === 0) return [];
  const title = 'Write every certain fix of this file';
  return [{ title, kind: 'source.fixAll', preferred: false, finding: null, changes }];
}
