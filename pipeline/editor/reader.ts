import type { CheckOptions } from '../checks/index.js';
import type { Content } from '../model/index.js';
import {
  KeptReadings,
  approvalsOf,
  keptDictionaries,
  readContent,
  readDigests,
  readFonts,
  readReview,
  type FontReading,
  type Folder,
  type Review,
} from '../read/index.js';
import type { EditedFolder } from './edited-folder.js';

/** What is read of a folder while it is being written in. */
export interface Standing {
  /** With every file that cannot be read as it was when it last could. */
  readonly content: Content;
  readonly options: CheckOptions;
  /** As the files are: the same, where every file can be read. */
  readonly asTyped: Content;
  /** Files that cannot be read now. */
  readonly unreadable: ReadonlySet<string>;
  /** Those of them of which something older stands in `content`. */
  readonly older: ReadonlySet<string>;
}

type Digests = ReturnType<typeof readDigests>;

/** Digests, and the art and fonts that they are of. */
interface DigestsMade {
  readonly of: string;
  readonly fonts: FontReading['fonts'];
  readonly made: Digests;
}

/** Reads a folder again and again: of the files that have not changed, nothing is read twice. */
export class Reader {
  readonly #folder: EditedFolder;
  readonly #readings = new KeptReadings();
  /** The last readable bytes of each file. */
  readonly #good = new Map<string, Uint8Array>();
  #review: Review | null = null;
  #fonts: { readonly of: Content['layouts']; readonly reading: FontReading } | null = null;
  #digests: DigestsMade | null = null;

  constructor(folder: EditedFolder) {
    this.#folder = folder;
  }

  /** What was kept of the files below these folders no longer holds. */
  forget(path: string): void {
    if (path.startsWith('review/') || path === 'review') this.#review = null;
    if (path.startsWith('fonts/') || path === 'fonts') this.#fonts = null;
    if (!/\.(?:md|yaml)$/.test(path)) this.#digests = null;
  }

  /** Nothing that was kept of art, fonts and reviews may hold. */
  forgetAll(): void {
    this.#review = null;
    this.#fonts = null;
    this.#digests = null;
  }

  /** @throws what the folder throws when the disk fails. */
  read(): Standing {
    const folder = this.#folder;
    const typed = readContent(folder, this.#readings);
    const unreadable = this.#unreadable(typed);
    const older = new Set([...unreadable].filter((path) => this.#good.has(path)));
    const seen = older.size === 0 ? typed : readContent(this.#withGood(older), this.#readings);
    const reading = this.#fontsOf(seen.layouts);
    const content = { ...seen, faults: [...seen.faults, ...reading.faults] };
    const review = (this.#review ??= readReview(folder));
    const { fonts } = reading;
    const approvals = approvalsOf(folder, content, fonts, review, this.#digestsOf(content, fonts));
    const asTyped = older.size === 0 ? content : typed;
    return {
      content,
      asTyped,
      unreadable,
      older,
      options: { fonts, dictionaries: keptDictionaries, approvals },
    };
  }

  /** Files that cannot be read. The bytes of all others are noted. */
  #unreadable(typed: Content): ReadonlySet<string> {
    const faulty = new Set(typed.faults.map(({ spot }) => spot.source.file));
    const there = new Set<string>();
    const unreadable = new Set<string>();
    for (const { path, outside } of this.#folder.list()) {
      if (outside || !/\.(?:md|yaml)$/.test(path)) continue;
      there.add(path);
      const bytes = this.#folder.read(path);
      const isBroken = faulty.has(path) && this.#readings.get(path, bytes)?.value === null;
      if (isBroken) unreadable.add(path);
      else this.#good.set(path, bytes);
    }
    for (const path of this.#good.keys()) if (!there.has(path)) this.#good.delete(path);
    return unreadable;
  }

  #withGood(older: ReadonlySet<string>): Folder {
    return {
      list: () => this.#folder.list(),
      read: (path) =>
        (older.has(path) ? this.#good.get(path) : undefined) ?? this.#folder.read(path),
    };
  }

  #fontsOf(layouts: Content['layouts']): FontReading {
    const before = this.#fonts;
    if (before && isSameMap(before.of, layouts)) return before.reading;
    const reading = readFonts(layouts, this.#folder);
    this.#fonts = { of: layouts, reading };
    return reading;
  }

  #digestsOf(content: Content, fonts: FontReading['fonts']): Digests {
    const art = content.sets.flatMap((set) =>
      set.cards.flatMap(({ front: { image } }) =>
        image !== undefined && set.art.has(image.file) ? [`${set.id}/${image.file}`] : [],
      ),
    );
    const key = art.join('\n');
    const before = this.#digests;
    if (before?.of === key && before.fonts === fonts) return before.made;
    const made = readDigests(this.#folder, content, fonts);
    this.#digests = { of: key, fonts, made };
    return made;
  }
}

/** Whether two maps have the same values under the same keys. */
export function isSameMap<K, V>(a: ReadonlyMap<K, V>, b: ReadonlyMap<K, V>): boolean {
  return a.size === b.size && [...a].every(([key, value]) => b.get(key) === value);
}
