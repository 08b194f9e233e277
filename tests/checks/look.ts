import { check, sampleWith, type Files } from '../../pipeline/checks/index.js';
import type { Content } from '../../pipeline/model/index.js';
import {
  approvalsOf,
  memoryFolder,
  readContent,
  readReview,
  keptDictionaries,
} from '../../pipeline/read/index.js';
import type { CheckReport, Finding } from '../../schema/index.js';
import { shelfOf } from './shelf.js';

/** The sample with files laid over it, read. */
export function contentWith(files: Files): Content {
  return readContent(memoryFolder(sampleWith(files)));
}

/** Every rule, or one of them, over the sample with files laid over it. */
export function lookAt(files: Files, only?: readonly string[]): CheckReport {
  const folder = memoryFolder(sampleWith(files));
  const content = readContent(folder);
  const fonts = shelfOf(content);
  const approvals = approvalsOf(folder, content, fonts, readReview(folder));
  const options = { fonts, dictionaries: keptDictionaries, approvals };
  return check(content, only === undefined ? options : { ...options, only });
}

/** Findings as `rule at place: message`, shortest to compare. */
export function said(findings: readonly Finding[]): string[] {
  return findings.map(
    ({ rule, file, line, column, message }) =>
      `${rule} ${file}:${String(line)}:${String(column)} ${message}`,
  );
}
