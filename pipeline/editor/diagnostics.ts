import type { Finding } from '../../schema/index.js';

/** A finding as the Language Server Protocol 3.17 has it: lines and characters from 0, UTF-16. */
export interface Diagnostic {
  readonly range: {
    readonly start: { readonly line: number; readonly character: number };
    readonly end: { readonly line: number; readonly character: number };
  };
  /** 1 error, 2 warning. */
  readonly severity: 1 | 2;
  readonly code: string;
  readonly source: 'holdback';
  readonly message: string;
}

/** The findings of one file as an editor shows them; accepted ones are left out. */
export function diagnosticsOf(findings: readonly Finding[], file: string): readonly Diagnostic[] {
  return findings
    .filter((finding) => finding.file === file && finding.accepted === undefined)
    .map((finding) => ({
      range: {
        start: { line: finding.line - 1, character: finding.column - 1 },
        end: { line: finding.endLine - 1, character: finding.endColumn - 1 },
      },
      severity: finding.severity === 'error' ? 1 : 2,
      code: finding.rule,
      source: 'holdback',
      message:
        finding.expected === undefined
          ? finding.message
          : `${finding.message}; expected ${finding.expected}`,
    }));
}
