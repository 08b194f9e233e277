import { utf8 } from './characters.js';
import { asItStands, changed, rewritten, type Reading } from './reading.js';
import { character, reference } from './references.js';

/** How often escapes are resolved that stand inside each other. */
const PASSES = 3;

/** Tags of pages: the same stand on many. */
export interface Tags {
  /** Tags that were searched: they are left out. */
  readonly known: ReadonlySet<string>;
  /** Tags of this text are added to these. */
  readonly met: Set<string>;
}

const noTags = (): Tags => ({ known: new Set(), met: new Set() });

/**
 * The ways in which a text could be read: with its escapes resolved, and besides that with its tags
 * taken out; as it stands, where what looks like an escape may be none; calendars with their folded
 * lines put together. Of a page what stands between its tags, and each of its tags, since no words
 * go on from one tag into another.
 */
export function readingsOf(text: string, tags: Tags = noTags()): readonly Reading[] {
  const raw = asItStands(text);
  const lines = text.includes('BEGIN:V') ? rewritten(raw, /\r?\n[ \t]/g, () => '') : raw;
  const doubtful = DOUBTFUL.test(text) ? [raw] : [];
  if (isPage(text)) {
    const parts = [withoutTags(lines), newTags(lines, tags)];
    return [...parts.flatMap(unescapedTwice), ...doubtful];
  }
  const tagless = text.includes('<') ? [withoutEscapes(withoutTags(lines))] : [];
  return [...unescapedTwice(lines), ...tagless, ...doubtful];
}

/** Without escapes; and without the tags that this brings up. */
function unescapedTwice(reading: Reading): readonly Reading[] {
  const plain = withoutEscapes(reading);
  return tagsIn(plain.text) === tagsIn(reading.text) ? [plain] : [plain, withoutTags(plain)];
}

/** What may stand for something else, or for itself: an address, a path, a word after an "and". */
const DOUBTFUL =
  /%[0-9a-f]{2}|\\|&(?!(?:quot|apos|nbsp|mdash|ndash|middot|hellip|copy|times);)[a-z]{4,}/i;

/** Markup in which every < begins a tag and no > ends anything else: scripts are left out. */
function isPage(text: string): boolean {
  return /^\s*</.test(text) && !/<(?:script|style)\b|<[^a-z/!?]|<!\[CDATA/i.test(text);
}

function tagsIn(text: string): number {
  let tags = 0;
  for (let at = text.indexOf('<'); at >= 0; at = text.indexOf('<', at + 1)) tags += 1;
  return tags;
}

/**
 * A text with its escapes resolved: character references, percent signs, and the escapes of JSON,
 * scripts and style sheets; again where that brings up more of them.
 */
export function withoutEscapes(reading: Reading): Reading {
  let decoded = reading;
  for (let pass = 0; pass < PASSES; pass += 1) {
    const next = backslashes(percents(references(decoded)));
    if (next === decoded) break;
    decoded = next;
  }
  return decoded;
}

/** Markup taken out; what stands in comments and CDATA stays. Tags within words do not part them. */
export function withoutTags(reading: Reading): Reading {
  return rewritten(withoutComments(reading), /<[^<>]*>/g, (tag) =>
    WITHIN_WORDS.test(tag) ? '' : ' ',
  );
}

/** A tag, whatever its attributes have between quotes; or from a < to a >, where quotes are odd. */
const TAG = /<(?:[^<>"']|"[^"<]*"|'[^'<]*')*>|<[^<>]*>/g;

/** Tags alone, a line each: those that are not known yet, each once. */
function newTags(reading: Reading, { known, met }: Tags): Reading {
  let end = 0;
  return changed(reading, (text) => {
    if (end >= text.length) return null;
    const from = end;
    TAG.lastIndex = from;
    for (let match = TAG.exec(text); match; match = TAG.exec(text)) {
      const [tag] = match;
      if (known.has(tag) || met.has(tag)) continue;
      met.add(tag);
      end = TAG.lastIndex;
      return { from, to: match.index, by: '\n' };
    }
    end = text.length;
    return { from, to: end, by: '' };
  });
}

function withoutComments(reading: Reading): Reading {
  return /<!|\]\]>/.test(reading.text)
    ? rewritten(reading, /<!--|-->|<!\[CDATA\[|\]\]>/g, () => ' ')
    : reading;
}

const WITHIN_WORDS =
  /^<\/?(?:a|abbr|b|bdi|bdo|cite|code|del|dfn|em|font|i|ins|kbd|mark|q|s|samp|small|span|strong|sub|sup|tspan|u|var|wbr)\b/i;

function references(reading: Reading): Reading {
  if (!reading.text.includes('&')) return reading;
  return rewritten(reading, /&(?:#x[0-9a-f]{1,6}|#\d{1,7}|[a-z]{2,12});?/gi, reference);
}

function percents(reading: Reading): Reading {
  if (!reading.text.includes('%')) return reading;
  return rewritten(reading, /(?:%[0-9a-f]{2})+/gi, (run) =>
    utf8(Uint8Array.from(run.slice(1).split('%'), (hex) => Number.parseInt(hex, 16))),
  );
}

function backslashes(reading: Reading): Reading {
  if (!reading.text.includes('\\')) return reading;
  return rewritten(
    reading,
    /\\(?:u[0-9a-f]{4}|u\{[0-9a-f]{1,6}\}|x[0-9a-f]{2}|\d[0-9a-f]{1,5}\s?|[bfnrtv]|[^\p{L}\p{N}])/giu,
    unescaped,
  );
}

/** Two units that make a character come together again by standing side by side. */
function unescaped(found: string): string {
  const [, mark = '', , digits = ''] = /^\\(u|x|)(\{?)([0-9a-f]+)\}?\s?$/i.exec(found) ?? [];
  const code = Number.parseInt(digits, 16);
  if (mark !== '' && code < 0x10000) return String.fromCharCode(code);
  if (digits.length > 1) return character(code);
  return /^\\[a-z]/i.test(found) ? ' ' : found.slice(1);
}
