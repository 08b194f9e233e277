import { withValue } from '../edit/index.js';
import { CARD_KEYS } from './card-keys.js';
import { copyRange, lineEndIn, withOwnEnds, withPlainEnds } from './texts.js';
import type { DraftAnswer, Edit, FieldChange } from './protocol.js';

/** A file with an edit made, and what of it could not be. */
export interface Edited {
  readonly text: string;
  readonly unwritten: DraftAnswer['unwritten'];
}

/** Makes an edit: what it does not name stays as it is, to the byte. */
export function applyEdit(file: string, base: string, edit: Edit): Edited {
  if ('text' in edit) {
    return { text: withOwnEnds(base, edit.text, lineEndIn(base)), unwritten: [] };
  }
  const fields = withFields(file, base, edit.fields ?? []);
  if (edit.copy === undefined) return fields;
  return { ...fields, text: withCopy(fields.text, edit.copy) };
}

function withFields(file: string, base: string, changes: readonly FieldChange[]): Edited {
  let text = base;
  const unwritten: { path: FieldChange['path']; why: string }[] = [];
  for (const { path, value } of changes) {
    try {
      ({ text } = withValue({ file, text }, path, value, CARD_KEYS));
    } catch (error) {
      unwritten.push({
        path,
        why: error instanceof RangeError ? error.message : 'it cannot be written',
      });
    }
  }
  return { text, unwritten };
}

/** A copy that is not there yet begins below the fence, and ends its line. */
function withCopy(text: string, copy: string): string {
  const range = copyRange(text);
  if (!range) return text;
  const { from, to } = range;
  const old = text.slice(from, to);
  if (withPlainEnds(old) === withPlainEnds(copy)) return text;
  const lineEnd = lineEndIn(text);
  const ended = to === text.length && old === '' && copy !== '' ? lineEnd : '';
  return text.slice(0, from) + withOwnEnds(old, copy, lineEnd) + ended + text.slice(to);
}
