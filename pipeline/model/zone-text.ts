import type { NamesFile } from '../../schema/index.js';

/** A stretch of words in one face; `"\n"` alone is a hard line break. */
export interface ZoneRun {
  readonly text: string;
  readonly italic: boolean;
  readonly bold: boolean;
}

/** The paragraphs that are set in one zone. */
export type ZoneText = readonly (readonly ZoneRun[])[];

/** What a card, or a cut view of one, has to print. */
export interface ZoneWords {
  readonly number: string | null;
  readonly name: string;
  readonly bio: ZoneText;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
  /** By the zone that they fill. */
  readonly texts: Readonly<Record<string, string>>;
  readonly credits: readonly { readonly role: string; readonly name: string }[];
  readonly legal: string | null;
  /** What its subset says of what its cards carry. */
  readonly statement: string | null;
  /** Of the layout, by the zone that they fill. */
  readonly shared: Readonly<Record<string, string>>;
}

/**
 * Which text goes into which zone, by the name of the zone; zones without a text are left out. A
 * card's own `texts` stand before what its layout shares, and nothing stands before the zones that
 * have a meaning of their own. Facts and credits are one a line.
 */
export function zoneTexts(words: ZoneWords): ReadonlyMap<string, ZoneText> {
  const all: readonly (readonly [zone: string, text: ZoneText])[] = [
    ...plainEach(words.shared),
    ...plainEach(words.texts),
    ['number', plainText(words.number ?? '')],
    ['name', plainText(words.name)],
    ['bio', words.bio],
    ['facts', lines(words.facts.map((fact) => factLine(fact)))],
    ['credits', lines(words.credits.map(({ role, name }) => [plain(`${role}: ${name}`)]))],
    ['legal', plainText(words.legal ?? '')],
    ['statement', plainText(words.statement ?? '')],
  ];
  return new Map(all.filter(([, text]) => text.length > 0));
}

/** A line that is owed where someone is shown. */
export interface OwedLine {
  readonly name: string;
  readonly line: string;
}

/** The lines that are owed to whoever is shown, in their own order. */
export function owedFor(owed: readonly OwedLine[], depicts: readonly string[]): readonly string[] {
  return owed.filter(({ name }) => depicts.includes(name)).map(({ line }) => line);
}

/** The legal line of a property and the lines owed to whoever is shown; null if there is none. */
export function legalText(line: string | null, owed: readonly string[]): string | null {
  return line === null ? null : [line, ...owed].join(' ');
}

/** Names in all their forms: words that are never divided at the end of a line. */
export function undividedNames(names: NamesFile | null): readonly string[] {
  return (names?.names ?? []).flatMap(({ name, aliases }) => [
    name,
    ...(aliases ?? []).map((alias) => (typeof alias === 'string' ? alias : alias.form)),
  ]);
}

function plainEach(texts: Readonly<Record<string, string>>): (readonly [string, ZoneText])[] {
  return Object.entries(texts).map(([zone, text]) => [zone, plainText(text)]);
}

/** A text without markup: an empty line parts paragraphs, any other line end is a hard break. */
function plainText(text: string): ZoneText {
  return text
    .replace(/\r\n?/g, '\n')
    .split(/\n[ \t]*\n\s*/)
    .map((paragraph) => paragraph.trim())
    .filter((paragraph) => paragraph !== '')
    .map((paragraph) => brokenLines(paragraph.split('\n').map((line) => [plain(line)])));
}

function factLine({ name, value }: ZoneWords['facts'][number]): ZoneRun[] {
  return [{ text: name, italic: false, bold: true }, plain(`\u00a0 ${value}`)];
}

function lines(each: readonly (readonly ZoneRun[])[]): ZoneText {
  return each.length === 0 ? [] : [brokenLines(each)];
}

function brokenLines(each: readonly (readonly ZoneRun[])[]): ZoneRun[] {
  return each.flatMap((line, at) => (at === 0 ? [...line] : [plain('\n'), ...line]));
}

function plain(text: string): ZoneRun {
  return { text, italic: false, bold: false };
}
