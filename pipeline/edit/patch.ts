import { structuredPatch } from 'diff';

/** Lines of context around a change. */
const CONTEXT = 2;

/**
 * A unified diff of a file, as people read it: what does not show in a line is written out as its
 * code. Empty if nothing differs.
 * @param file relative to the content folder.
 */
export function patchText(file: string, old: string, text: string): string {
  const { hunks } = structuredPatch(file, file, old, text, undefined, undefined, {
    context: CONTEXT,
  });
  if (hunks.length === 0) return '';
  const blocks = hunks.map(({ oldStart, oldLines, newStart, newLines, lines }) =>
    [
      `@@ -${rangeOf(oldStart, oldLines)} +${rangeOf(newStart, newLines)} @@`,
      ...lines.map(shown),
    ].join('\n'),
  );
  return [`--- ${shown(file)}`, `+++ ${shown(file)}`, ...blocks]
    .map((line) => `${line}\n`)
    .join('');
}

function rangeOf(start: number, lines: number): string {
  return lines === 1 ? String(start) : `${String(start)},${String(lines)}`;
}

/** A line without its carriage return, with what does not show or turns the text as its code. */
function shown(line: string): string {
  return line
    .replace(/\r$/, '')
    .replace(
      /[\p{Cc}\p{Cf}\p{Default_Ignorable_Code_Point}\u2028\u2029\p{Cs}]/gu,
      (sign) => `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`,
    );
}
