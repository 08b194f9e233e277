import { AnswerFile } from '../../schema/index.js';
import { validate } from '../read/index.js';
import { answerText } from '../review/index.js';

/** Most octets of a decision file. */
export const LARGEST_ANSWER = 5_000_000;

export type AnswerReading =
  { readonly ok: true; readonly answer: AnswerFile } | { readonly ok: false; readonly why: string };

const NO_JSON =
  'this is no decision file: it is no JSON, or it was cut off. Ask the reviewer for the file that the packet saved';
const OTHER_TEXT =
  'this is not the text that the packet saved: it was written anew by another program, in another order, encoding or form. Ask the reviewer for the file itself';

/** Reads a decision file: one text is right for what it says, and no other. */
export function readAnswer(octets: Uint8Array): AnswerReading {
  if (octets.length > LARGEST_ANSWER) {
    const most = String(LARGEST_ANSWER / 1_000_000);
    return { ok: false, why: `this is no decision file: it is larger than ${most} MB` };
  }
  let value: unknown;
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(octets);
    value = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return { ok: false, why: NO_JSON };
  }
  const valid = validate(AnswerFile, value);
  if (!valid.ok) {
    const said = [...new Set(valid.faults.map(({ message }) => message))].join('; ');
    return {
      ok: false,
      why: `this is no decision file as a packet saves it: ${said}. Ask the reviewer for the file that the packet saved`,
    };
  }
  return isWritten(octets, valid.value)
    ? { ok: true, answer: valid.value }
    : { ok: false, why: OTHER_TEXT };
}

function isWritten(octets: Uint8Array, answer: AnswerFile): boolean {
  try {
    return Buffer.from(answerText(answer)).equals(octets);
  } catch {
    return false;
  }
}
