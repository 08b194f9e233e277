import type { Finding } from '../../schema/index.js';

/** A place in a file as the Language Server Protocol 3.17 has it: from 0, in UTF-16 units. */
interface Position {
  readonly line: number;
  readonly character: number;
}

/** A finding as the Language Server Protocol 3.17 has it: lines and characters from 0, UTF-16. */
export interface Diagnostic {
  readonly range: { readonly start: Position; readonly end: Position };
  /** 1 error, 2 warning. */
  readonly severity: 1 | 2;
  readonly code: string;
  readonly source: 'holdback';
  readonly message: string;
  readonly relatedInformation?: {
    readonly location: { readonly uri: string; readonly range: Diagnostic['range'] };
    readonly message: string;
  }[];
}

/**
 * The findings of one file as an editor shows them; accepted ones are left out.
 * @param uriOf gives the addresses of other places; without it these are not told.
 */
export function diagnosticsOf(
  findings: readonly Finding[],
  file: string,
  uriOf?: (file: string) => string,
): readonly Diagnostic[] {
  return findings
    .filter((finding) => finding.file === file && finding.accepted === undefined)
    .map((finding) => ({
      range: rangeOf(finding),
      severity: finding.severity === 'error' ? 1 : 2,
      code: finding.rule,
      source: 'holdback',
      message: sayFinding(finding),
      ...(uriOf && finding.related.length > 0
        ? { relatedInformation: others(finding, uriOf) }
        : {}),
    }));
}

function rangeOf({ line, column, endLine, endColumn }: Finding): Diagnostic['range'] {
  return {
    start: { line: line - 1, character: column - 1 },
    end: { line: endLine - 1, character: endColumn - 1 },
  };
}

/** What is wrong, what was found, what was expected. */
function sayFinding({ message, found, expected }: Finding): string {
  const what = found === undefined ? message : `${message}; found ${found}`;
  return expected === undefined ? what : `${what}; expected ${expected}`;
}

function others(
  { related }: Finding,
  uriOf: (file: string) => string,
): NonNullable<Diagnostic['relatedInformation']> {
  return related.map(({ message, file, line, column }) => {
    const at = { line: line - 1, character: column - 1 };
    return { location: { uri: uriOf(file), range: { start: at, end: at } }, message };
  });
}
