import { base64Runs, fromBase64 } from './decode/base64.js';
import type { Closed, Purse } from './decode/piece.js';
import { DEEPEST, LARGEST, open, type Opened, type OpenedContent } from './decode/open.js';
import { asItStands, type Reading } from './decode/reading.js';
import { stretchesOf } from './decode/stretches.js';
import { readingsOf } from './decode/text.js';
import { byteAt, findingOf, lineAt, type AuditFinding, type AuditPlace } from './finding.js';
import type { Search } from './search.js';

/** What came of a search: what is held, and all that was opened, for whoever looks at contents. */
export interface Searched {
  readonly findings: readonly AuditFinding[];
  readonly contents: readonly PlacedContent[];
}

/** Bytes that are a file of their own, and where they stand. */
export interface PlacedContent extends OpenedContent {
  readonly file: string;
}

/** The way into a file by what it is called. */
export const NAME = 'its name';

/** A search of files, each with its name, and of whatever is in them. */
export function searchFiles(files: ReadonlyMap<string, Uint8Array>, search: Search): Searched {
  const searcher = new FileSearcher(search);
  const all = [...files].map(([file, bytes]) => searcher.searchFile(file, bytes));
  return {
    findings: all.flatMap(({ findings }) => findings),
    contents: all.flatMap(({ contents }) => contents),
  };
}

/** A text with the way to it. */
interface Passage {
  readonly reading: Reading;
  readonly place: (at: number) => AuditPlace;
}

class FileSearcher {
  readonly #search: Search;
  /** Runs of what may be base64 in which nothing was found: pages have many of them in common. */
  readonly #innocent = new Set<string>();
  /** Tags in which nothing was found. */
  readonly #tags = new Set<string>();

  constructor(search: Search) {
    this.#search = search;
  }

  searchFile(file: string, bytes: Uint8Array): Searched {
    const purse = { left: LARGEST };
    const name = this.#searchText(file, file, [NAME], purse, 0);
    const content = this.#searchOpened(file, open(bytes, purse), purse, 0);
    return {
      findings: firstOfEach([...name.findings, ...content.findings]),
      contents: [...name.contents, ...content.contents],
    };
  }

  #searchOpened(file: string, opened: Opened, purse: Purse, depth: number): Searched {
    const found = opened.pieces.map((piece): Searched => {
      switch (piece.is) {
        case 'text':
          return this.#searchText(file, piece.text, piece.inside, purse, depth);
        case 'stretches':
          return this.#searchStretches(file, piece, purse, depth);
        case 'closed':
          return nothingBut([closedFinding(file, piece)]);
      }
    });
    return {
      findings: found.flatMap(({ findings }) => findings),
      contents: [
        ...opened.contents.map((content) => ({ ...content, file })),
        ...found.flatMap(({ contents }) => contents),
      ],
    };
  }

  #searchText(
    file: string,
    text: string,
    inside: readonly string[],
    purse: Purse,
    depth: number,
  ): Searched {
    const place = (at: number): AuditPlace => lineAt(inside, text, at);
    const met = new Set<string>();
    const readings = readingsOf(text, { known: this.#tags, met });
    const findings = readings.flatMap((reading) => this.#searchReading(file, { reading, place }));
    if (findings.length === 0) for (const tag of met) this.#tags.add(tag);
    const encoded = [asItStands(text), ...readings].map((reading) =>
      this.#searchBase64(file, { reading, place }, inside, purse, depth),
    );
    return together([nothingBut(findings), ...encoded]);
  }

  #searchStretches(
    file: string,
    { bytes, least, inside }: { bytes: Uint8Array; least: number; inside: readonly string[] },
    purse: Purse,
    depth: number,
  ): Searched {
    const stretches = stretchesOf(bytes, least);
    const place = (at: number): AuditPlace => byteAt(inside, at);
    const findings = readingsOf(stretches.text).flatMap(({ text, sourceOf }) => {
      const reading = { text, sourceOf: (at: number) => stretches.sourceOf(sourceOf(at)) };
      return this.#searchReading(file, { reading, place });
    });
    const passage = { reading: stretches, place };
    return together([
      nothingBut(findings),
      this.#searchBase64(file, passage, inside, purse, depth),
    ]);
  }

  #searchReading(file: string, { reading, place }: Passage): AuditFinding[] {
    return this.#search(reading.text).map(({ target, at }) =>
      findingOf(file, place(reading.sourceOf(at)), target),
    );
  }

  #searchBase64(
    file: string,
    { reading, place }: Passage,
    inside: readonly string[],
    purse: Purse,
    depth: number,
  ): Searched {
    if (depth >= DEEPEST) return NOTHING;
    const found = base64Runs(reading.text).map((run): Searched => {
      if (this.#innocent.has(run.text)) return NOTHING;
      const within = together(
        fromBase64(run.text).map((bytes) =>
          this.#searchOpened(file, open(bytes, purse, depth + 1), purse, depth + 1),
        ),
      );
      const contents = within.contents.filter(({ bytes, raster }) => raster || bytes[0] === 0x3c);
      const isInnocent = within.findings.length === 0 && contents.length === 0;
      if (isInnocent) this.#innocent.add(run.text);
      return isInnocent
        ? NOTHING
        : below({ ...within, contents }, [...inside, wayOf(place(reading.sourceOf(run.at)))]);
    });
    return together(found);
  }
}

const NOTHING: Searched = { findings: [], contents: [] };

function nothingBut(findings: readonly AuditFinding[]): Searched {
  return { findings, contents: [] };
}

function together(all: readonly Searched[]): Searched {
  return {
    findings: all.flatMap(({ findings }) => findings),
    contents: all.flatMap(({ contents }) => contents),
  };
}

function wayOf({ line, column, byte }: AuditPlace): string {
  const place = line === null ? `byte ${String(byte)}` : `${String(line)}:${String(column)}`;
  return `base64 at ${place}`;
}

/** The same, but in something else. */
function below({ findings, contents }: Searched, way: readonly string[]): Searched {
  return {
    findings: findings.map((each) => {
      const inside = [...way, ...each.place.inside];
      return { ...each, place: { ...each.place, inside } };
    }),
    contents: contents.map((each) => ({ ...each, inside: [...way, ...each.inside] })),
  };
}

function closedFinding(file: string, { inside, why }: Closed): AuditFinding {
  return {
    file,
    place: byteAt(inside, null),
    card: null,
    from: `something that cannot be opened: ${why}`,
    words: '',
  };
}

/** Of everything that is found, the first place in each part of a file. */
function firstOfEach(findings: readonly AuditFinding[]): AuditFinding[] {
  const first = new Map<string, AuditFinding>();
  for (const finding of findings) {
    const { from, words, place } = finding;
    const key = JSON.stringify([from, words, place.inside]);
    const before = first.get(key);
    if (!before || isBefore(finding, before)) first.set(key, finding);
  }
  return [...first.values()];
}

function isBefore({ place }: AuditFinding, { place: other }: AuditFinding): boolean {
  return (
    ((place.line ?? 0) - (other.line ?? 0) ||
      (place.column ?? 0) - (other.column ?? 0) ||
      (place.byte ?? 0) - (other.byte ?? 0)) < 0
  );
}
