import { isAddress } from '../spell/words.js';
import { slipsOf, type Slip } from './slip.js';

/** Signs of which one in a text is needed for any of these slips. */
const TWO_SPACES = /[ \u00a0]{2,}/gu;
const BEFORE_STOP =
  /(?<=\S)[ \u00a0]+(?=[,;](?![.,\d)(])|[:!?](?![.,\d)(A-Za-z]))|(?<=[^\s.])[ \u00a0]+(?=\.(?![.,\d)(A-Za-z]))/gu;
const AFTER_STOP = /(?<=[\p{L}\p{N})”’"'])[,;:!?…](?=\p{L})|(?<=[\p{L}\p{N}] )[,;](?=\p{L})/gu;
const IN_BRACKETS = /(?<=\()[ \u00a0]+(?=\S)|(?<=[^\s(])[ \u00a0]+(?=\))/gu;
const AFTER_FULL_STOP = /(?<=\p{Ll}{2}[”’)]?)\.(?=\p{Lu}\p{Ll}|\p{Lu} )/gu;

/** Spaces that are too many, stand before a stop, or are missing after one: wrong in every style. */
export function spaceSlips(text: string): Slip[] {
  return [
    ...slipsOf(text, TWO_SPACES, ({ 0: spaces, index }) =>
      before(text, index + spaces.length)
        ? null
        : slip(index, spaces, 'two spaces stand where there is to be one', 'one space', ' '),
    ),
    ...slipsOf(text, BEFORE_STOP, ({ 0: spaces, index }) =>
      slip(
        index,
        spaces,
        `a space stands before \`${text.charAt(index + spaces.length)}\``,
        'no space before it',
        '',
      ),
    ),
    ...slipsOf(text, IN_BRACKETS, ({ 0: spaces, index }) =>
      slip(index, spaces, 'a space stands inside a bracket', 'no space there', ''),
    ),
    ...afterStops(text),
    ...edges(text),
  ];
}

/** Whether a stop follows, so that the spaces before it are told already. */
function before(text: string, at: number): boolean {
  if (at >= text.length || text.charAt(at) === ')') return true;
  return /^(?:[,;](?![.,\d)(])|[.:!?](?![.,\d)(A-Za-z]))/.test(text.slice(at, at + 2));
}

function afterStops(text: string): Slip[] {
  const missing = (pattern: RegExp): Slip[] =>
    slipsOf(text, pattern, ({ 0: stop, index }) => {
      const chunk = chunkAt(text, index);
      if (isAddress(chunk) && stop !== ',' && stop !== ';' && stop !== '!') return null;
      const what = `no space stands after \`${stop}\``;
      return slip(index, stop, what, 'a space after it', `${stop} `);
    });
  return [...missing(AFTER_STOP), ...missing(AFTER_FULL_STOP)].filter(
    ({ from }) => !/^…\p{Ll}/u.test(text.slice(from, from + 2)),
  );
}

/** A value that begins or ends with a space. */
function edges(text: string): Slip[] {
  const [start = ''] = /^[ \u00a0]+/u.exec(text) ?? [];
  const [end = ''] = /(?<=\S)[ \u00a0]{1,200}$/u.exec(text) ?? [];
  return [
    ...(start === '' || start.length === text.length
      ? []
      : [slip(0, start, 'the text begins with a space', 'no space there', '')]),
    ...(end === ''
      ? []
      : [slip(text.length - end.length, end, 'the text ends with a space', 'no space there', '')]),
  ];
}

function slip(from: number, words: string, message: string, expected: string, fix: string): Slip {
  return { from, to: from + words.length, message, expected, fix, certain: true };
}

function chunkAt(text: string, at: number): string {
  const from = text.slice(0, at).search(/\S+$/u);
  const rest = /^\S*/u.exec(text.slice(at))?.[0] ?? '';
  return (from < 0 ? '' : text.slice(from, at)) + rest;
}

/** Spaces at the end of a line of copy that make no hard line break there, as offsets of a file. */
export function lineEndSpaces(source: string, bodyFrom: number): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  let from = bodyFrom;
  for (const line of source.slice(bodyFrom).split(/\r\n|\n|\r/)) {
    const bare = line.replace(/[ \t]+$/, '');
    const to = from + line.length;
    const end = /^(?:\r\n|\n|\r)/.exec(source.slice(to, to + 2))?.[0].length ?? 0;
    const next = /^[^\r\n]*/.exec(source.slice(to + end, to + end + 200))?.[0] ?? '';
    const isBreak = /^ {2,}$/.test(line.slice(bare.length)) && bare !== '' && next.trim() !== '';
    if (bare.length < line.length && !isBreak) found.push({ from: from + bare.length, to });
    from = to + end;
  }
  return found;
}
