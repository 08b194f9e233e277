import { createHash } from 'node:crypto';

import type { Finding } from '../../schema/index.js';
import { offsetOf } from '../edit/index.js';
import { yamlPlaceAt } from '../editor/index.js';
import type { CardFile } from './card-files.js';
import type { DeskFinding, FindingPlace } from './protocol.js';
import { copyRange } from './texts.js';

/** What is found in a card's file and about the card elsewhere, with where it belongs on the screen. */
export function findingsOfCard(
  findings: readonly Finding[],
  { path, set, subset, id }: CardFile,
  text: string,
): readonly DeskFinding[] {
  const identity = `${subset}/${id}`;
  return findings
    .filter(({ file, card, set: of }) => file === path || (card === identity && of === set))
    .map((finding) => deskFinding(finding, path, text));
}

/** A finding of a file that is no card. */
export function findingElsewhere(finding: Finding): DeskFinding {
  return deskFinding(finding, null, '');
}

/** Whether it stands in the way of handing in: what is to be approved is approved afterwards. */
export function standsInTheWay({ finding: { severity, accepted, rule } }: DeskFinding): boolean {
  if (accepted !== undefined || rule.startsWith('approval-')) return false;
  return severity === 'error' || rule === 'copy-empty';
}

function deskFinding(finding: Finding, path: string | null, text: string): DeskFinding {
  const isOwn = finding.file === path;
  return {
    id: idOf(finding),
    finding,
    place: isOwn
      ? placeIn(finding, path, text)
      : { in: 'elsewhere', file: finding.file, line: finding.line },
    fixable: isOwn && finding.fix !== undefined && finding.accepted === undefined,
  };
}

function idOf({ rule, file, line, column, endLine, endColumn, message, fix }: Finding): string {
  const words = JSON.stringify([
    rule,
    file,
    line,
    column,
    endLine,
    endColumn,
    message,
    fix ?? null,
  ]);
  return createHash('sha256').update(words).digest('hex').slice(0, 24);
}

function placeIn(finding: Finding, path: string, text: string): FindingPlace {
  const { line, column, endLine, endColumn } = finding;
  const from = offsetOf(text, { line, column });
  const to = offsetOf(text, { line: endLine, column: endColumn });
  const copy = copyRange(text);
  if (copy && from >= copy.from && to <= copy.to) {
    const plain = (at: number): number => at - copy.from - carriesIn(text, copy.from, at);
    return { in: 'copy', from: plain(from), to: plain(to) };
  }
  const place = from === 0 && to === 0 ? null : yamlPlaceAt(path, text, from);
  return place ? { in: 'field', path: place.path } : { in: 'file', line, column };
}

/** Carriage returns before a line feed: the page has none. */
function carriesIn(text: string, from: number, to: number): number {
  return text.slice(from, to).split('\r\n').length - 1;
}
