/** A run of text and what it could be as base64. */
export interface Run {
  readonly at: number;
  readonly text: string;
}

/** Fewer characters than this in a row are passed over. */
const FEWEST = 24;
/** Where base64 stands in lines, the fewest characters of a line after the first. */
const FEWEST_IN_LINE = 4;

/** 1 for each character of either alphabet of base64 (RFC 4648). */
const ALPHABET = Uint8Array.from({ length: 0x80 }, (_, code) =>
  /[\w+/-]/.test(String.fromCharCode(code)) ? 1 : 0,
);

/** Runs of 24 and more characters that could be base64, also in lines. */
export function base64Runs(text: string): readonly Run[] {
  const runs: Run[] = [];
  for (let at = 0; at + FEWEST <= text.length;) {
    // The last character first: where it is none of base64, no run of FEWEST has it.
    const other = lastOther(text, at, at + FEWEST);
    let end = other < 0 ? endOfLine(text, at + FEWEST) : other;
    if (other < 0) {
      for (let next = nextLine(text, end); next > end; next = nextLine(text, end)) {
        const endOfNext = endOfLine(text, next);
        if (endOfNext - next < FEWEST_IN_LINE) break;
        end = endOfNext;
      }
      runs.push({ at, text: text.slice(at, end) });
    }
    at = end + 1;
  }
  return runs;
}

/** The last place from `from` to before `to` that is none of base64; below 0 if there is none. */
function lastOther(text: string, from: number, to: number): number {
  for (let at = to - 1; at >= from; at -= 1) {
    if (ALPHABET[text.charCodeAt(at)] !== 1) return at;
  }
  return -1;
}

function endOfLine(text: string, from: number): number {
  let at = from;
  while (ALPHABET[text.charCodeAt(at)] === 1) at += 1;
  return at;
}

/** Where a line goes on after its end: a line end, and a space or tab where lines are folded. */
function nextLine(text: string, from: number): number {
  let at = from;
  if (text[at] === '\r') at += 1;
  if (text[at] !== '\n') return from;
  at += 1;
  return text[at] === ' ' || text[at] === '\t' ? at + 1 : at;
}

/** Words of six letters, in UTF-8 or UTF-16, or the first bytes of something packed or of a picture. */
const TELLING =
  /(?:[\x20-\x7e\t\r\n]|[\xc2-\xdf][\x80-\xbf]|[\xe0-\xef][\x80-\xbf]{2}){6}|(?:[\x20-\x7e]\0){3}|(?:\0[\x20-\x7e]){3}|\xff\xfe|\xfe\xff|\x1f\x8b|x[\x01^\x9c\xda]|PK[\x03\x05]|\x89PNG|\xff\xd8\xff|RIFF|GIF8/;

/**
 * What a run gives as base64, if that could hold anything. Where the run begins is not known (a
 * folder's name may stand before it), so that it is read from its first four characters on.
 */
export function fromBase64(found: string): readonly Uint8Array[] {
  const run = found.replace(/\s/g, '');
  return [0, 1, 2, 3].flatMap((skipped) => {
    const bytes = Buffer.from(run.slice(skipped), 'base64');
    return TELLING.test(bytes.toString('latin1')) ? [bytes] : [];
  });
}
