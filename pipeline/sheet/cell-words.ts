import { typed } from '../out/sheets/index.js';
import type { CellForm } from '../out/sheets/index.js';
import { hiddenCharacters, sayCharacter } from '../text/index.js';
import { paddedForm, writtenForm } from './formats.js';
import type { Cell } from './grid.js';
import { folded, tidy, tidyLine } from './tidy.js';

/**
 * The words of a cell, and as they stand in it, with what speaks against writing them into a card
 * that does not have them yet; or why nobody knows them.
 */
export type CellWords =
  | {
      readonly ok: true;
      readonly text: string;
      readonly raw: string;
      readonly doubt: string | null;
    }
  | { readonly ok: false; readonly why: string };

/** What is asked of the words of a cell. */
export interface WordsWanted {
  readonly form: CellForm;
  /** Whether its words may stand on several lines. */
  readonly lines: boolean;
  readonly values: ReadonlyMap<string, string>;
}

/**
 * What was typed into a cell. A number is taken only where it cannot have been typed in another way,
 * a date never: a program may have made it of `1/2`.
 */
export function cellWords(cell: Cell, { form, lines, values }: WordsWanted): CellWords {
  const meant = cell.kind === 'error' ? undefined : values.get(folded(cell.text));
  if (meant !== undefined) return { ok: true, text: meant, raw: meant, doubt: null };
  if (cell.kind !== 'text') return otherWords(cell, form);
  const raw = typed(cell.text);
  const text = lines ? tidy(raw) : tidyLine(raw);
  return { ok: true, text, raw, doubt: doubtOf(text, lines) };
}

function doubtOf(text: string, lines: boolean): string | null {
  const [hidden] = hiddenCharacters(text);
  if (hidden) return `it holds a character that does not show (${sayCharacter(hidden.character)})`;
  return !lines && text.includes('\n') ? 'it holds a line break' : null;
}

function otherWords({ kind, text, format }: Cell, form: CellForm): CellWords {
  switch (kind) {
    case 'error':
      return refused(`it holds the error ${text}`);
    case 'formula':
      return refused(
        'it is a formula whose result is not in the file: save the file in a spreadsheet program',
      );
    case 'date':
      return refused(
        `it is the date ${text}, which a program may have made of what was typed (1/2, 2-14): make the cell text and type it again`,
      );
    case 'truth':
      return refused(`it is the truth value ${text}: say what it means by \`values\` in a mapping`);
    default: {
      const isWhole = form === 'whole' && !(format ?? '').includes('%');
      const digits = writtenForm(text, isWhole ? undefined : format);
      if (digits !== null) return { ok: true, text: digits, raw: digits, doubt: null };
      const shown = paddedForm(text, format);
      const look = shown === null ? 'and may be shown in another way' : `shown as “${shown}”`;
      return refused(
        `it is the number ${text}, ${look}: make the cell text and type what is printed`,
      );
    }
  }
}

function refused(why: string): CellWords {
  return { ok: false, why };
}
