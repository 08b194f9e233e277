import type { Finding } from '../../schema/index.js';
import { placeOf, type Place, type SourceFile } from '../model/index.js';

/** Where a finding of an older text of a file stands in a newer one: what was typed moves it along. */
export function moverOf(before: SourceFile, after: SourceFile): (finding: Finding) => Finding {
  const move = placeMover(before.text, after.text);
  const { file } = after;
  return (finding) => {
    const related = finding.related.map((other) =>
      other.file === file ? { ...other, ...move(other) } : other,
    );
    if (finding.file !== file) return { ...finding, related };
    const end = move({ line: finding.endLine, column: finding.endColumn });
    return { ...finding, ...move(finding), endLine: end.line, endColumn: end.column, related };
  };
}

function placeMover(before: string, after: string): (place: Place) => Place {
  const starts = lineStarts(before);
  const shorter = Math.min(before.length, after.length);
  let same = 0;
  while (same < shorter && before[same] === after[same]) same += 1;
  let tail = 0;
  while (tail < shorter - same && before.at(-1 - tail) === after.at(-1 - tail)) tail += 1;
  const end = before.length - tail;
  return ({ line, column }) => {
    const at = (starts[line - 1] ?? before.length) + column - 1;
    if (at <= same) return placeOf(after, at);
    return placeOf(after, Math.max(same, at < end ? at : at + after.length - before.length));
  };
}

function lineStarts(text: string): readonly number[] {
  return [0, ...[...text.matchAll(/\r\n|\n|\r/g)].map(({ 0: end, index }) => index + end.length)];
}
