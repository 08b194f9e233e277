import type { FailingPage, PageFile, RulePage } from '../checks/index.js';

/** "error; a warning while a set is in planning or writing". */
export function saySeverity({ severity, lenientIn }: RulePage): string {
  if (lenientIn.length === 0) return severity;
  return `${severity}; a warning while a set is in ${lenientIn.join(' or ')}`;
}

/** Whether a finding may be let stand, in a sentence. */
export function sayAcceptable({ acceptable }: RulePage): string {
  return acceptable
    ? 'A finding may be accepted, with a reason, in `accepted` of the card or the plan.'
    : 'A finding is never accepted: what it speaks of has to be mended.';
}

/** What the tool offers to write instead, in a sentence. */
export function sayFixes({ fix }: RulePage): string {
  if (fix === 'certain') {
    return 'A finding says what to write instead where that can be told; `check --fix` writes it where nobody would write anything else.';
  }
  return fix === 'offered'
    ? 'A finding says what to write instead where that can be told; you decide.'
    : 'What to write instead is yours to say.';
}

/** A file of an example, its marks as carets below what is found; each a line. */
export function fileLines({ lines }: PageFile): readonly string[] {
  if (lines === null) return ['(no such file)'];
  return lines.map((line) => {
    if ('gap' in line) return '…';
    if ('text' in line) return visible(line.text);
    return `${' '.repeat(line.mark.from - 1)}${'^'.repeat(line.mark.to - line.mark.from)}`;
  });
}

/** What is found, and what was expected, as labels and words. */
export function findingLines({ finding, severity }: FailingPage): readonly string[] {
  const { at, message, found, expected, fix, related = [] } = finding;
  return [
    `${at}  ${severity}  ${message}`,
    ...(found === undefined ? [] : [`found ${found}`]),
    ...(expected === undefined ? [] : [`expected ${expected}`]),
    ...(fix === undefined ? [] : [`instead: ${fix === '' ? 'nothing; it is taken out' : fix}`]),
    ...related,
  ].map((line) => visible(line.replaceAll('\n', ' ⏎ ')));
}

/** A line with what does not show, or turns the text, as its code. */
export function visible(line: string): string {
  return line.replace(
    /[\p{Cc}\p{Cf}\u2028\u2029]/gu,
    (sign) => `\\u{${(sign.codePointAt(0) ?? 0).toString(16)}}`,
  );
}
