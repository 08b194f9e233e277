import { createHash } from 'node:crypto';
import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs';
import { join } from 'node:path';

import { realDisk, thisProcess, writeWhole, type Asker, type Disk } from '../write/index.js';
import type { CardKey } from './protocol.js';
import type { FileText } from './texts.js';

/** Words of a card that were typed and are not saved. */
export interface Draft {
  /** The file that they were typed against. */
  readonly base: FileText;
  /** The whole file as it would be. */
  readonly text: string;
  readonly sequence: number;
}

/** Where drafts are kept, and whose they are. */
export interface DraftPlace {
  /** A folder of the user's own, outside of the content. */
  readonly folder: string;
  /** The process that keeps them; this one, if it is not said. */
  readonly asker?: Asker;
  /** A few letters that no other session of the desk has. */
  readonly session: string;
  readonly now: () => number;
  /** Told where a disk failed with nobody waiting; what was typed is kept in memory all the same. */
  readonly fail?: (error: unknown) => void;
  readonly disk?: Disk;
}

/** Milliseconds without a change after which what was typed is put on the disk for good. */
const REST = 400;

/**
 * What was typed, a file for each card, which only its owner can read. It is there before the page
 * hears that it was taken, so that the end of the process loses nothing, and on the disk for good as
 * soon as typing rests. A desk that opens the same content later takes up what one that has ended left.
 */
export class Drafts {
  readonly #place: DraftPlace;
  readonly #quick: Disk;
  readonly #synced: Disk;
  readonly #known = new Map<CardKey, Draft>();
  readonly #unsynced = new Set<CardKey>();
  #rest: NodeJS.Timeout | null = null;

  constructor(place: DraftPlace) {
    this.#place = place;
    this.#synced = place.disk ?? privateDisk(true);
    this.#quick = place.disk ?? privateDisk(false);
    this.#synced.makePrivateFolder(place.folder);
    this.#takeUp();
  }

  get all(): ReadonlyMap<CardKey, Draft> {
    return this.#known;
  }

  of(card: CardKey): Draft | null {
    return this.#known.get(card) ?? null;
  }

  /** @throws what the disk throws: then it is not kept. */
  keep(card: CardKey, draft: Draft): void {
    this.#write(this.#quick, card, draft);
    this.#known.set(card, draft);
    this.#unsynced.add(card);
    if (this.#rest) clearTimeout(this.#rest);
    this.#rest = setTimeout(() => {
      try {
        this.sync();
      } catch (error) {
        this.#place.fail?.(error);
      }
    }, REST);
    this.#rest.unref();
  }

  drop(card: CardKey): void {
    if (!this.#known.delete(card)) return;
    this.#unsynced.delete(card);
    this.#synced.remove(this.#fileOf(card));
  }

  /** Puts everything on the disk for good. */
  sync(): void {
    if (this.#rest) clearTimeout(this.#rest);
    this.#rest = null;
    for (const card of this.#unsynced) {
      const draft = this.#known.get(card);
      if (draft) this.#write(this.#synced, card, draft);
    }
    this.#unsynced.clear();
  }

  #write(disk: Disk, card: CardKey, { base, text, sequence }: Draft): void {
    const { asker = thisProcess, now } = this.#place;
    const words = {
      format: 1,
      card,
      base: base.text,
      marked: base.isMarked,
      digest: base.digest,
      text,
      sequence,
      at: now(),
      pid: asker.pid,
      host: asker.host,
    };
    writeWhole(disk, this.#fileOf(card), new TextEncoder().encode(JSON.stringify(words)));
  }

  #fileOf(card: CardKey): string {
    const { folder, session } = this.#place;
    const name = createHash('sha256').update(card).digest('hex').slice(0, 24);
    return join(folder, `${name}.${session}.json`);
  }

  /** Of several drafts of a card the latest; the others stay for the next time. */
  #takeUp(): void {
    const { folder, asker = thisProcess } = this.#place;
    const left = this.#synced
      .list(folder)
      .flatMap((name) => (name.endsWith('.json') ? (this.#read(join(folder, name)) ?? []) : []))
      .filter(({ pid, host }) => host === asker.host && !(pid !== asker.pid && asker.runs(pid)))
      .sort((a, b) => b.at - a.at);
    for (const { card, draft, file } of left) {
      if (this.#known.has(card)) continue;
      this.#write(this.#synced, card, draft);
      this.#known.set(card, draft);
      if (file !== this.#fileOf(card)) this.#synced.remove(file);
    }
  }

  #read(file: string): Left | null {
    try {
      return leftIn(file, JSON.parse(new TextDecoder().decode(this.#synced.read(file))));
    } catch {
      return null;
    }
  }
}

interface Left {
  readonly file: string;
  readonly card: CardKey;
  readonly draft: Draft;
  readonly at: number;
  readonly pid: number;
  readonly host: string;
}

function leftIn(file: string, value: unknown): Left | null {
  if (typeof value !== 'object' || value === null) return null;
  const all = new Map<string, unknown>(Object.entries(value));
  const [card, base, digest, text, host] = ['card', 'base', 'digest', 'text', 'host'].map((key) => {
    const word = all.get(key);
    return typeof word === 'string' ? word : null;
  });
  const [sequence, at, pid] = ['sequence', 'at', 'pid'].map((key) => Number(all.get(key)));
  if (card == null || base == null || digest == null || text == null || host == null) return null;
  const first = { text: base, isMarked: all.get('marked') === true, digest };
  const draft = { base: first, text, sequence: sequence ?? 0 };
  return { file, card, draft, at: at ?? 0, pid: pid ?? 0, host };
}

/** The real disk, with files that only their owner can read. */
function privateDisk(synced: boolean): Disk {
  return {
    ...realDisk,
    makeFolder: (path) => {
      realDisk.makePrivateFolder(path);
    },
    writeSynced(path, bytes) {
      const file = openSync(path, 'w', 0o600);
      try {
        let written = 0;
        while (written < bytes.length) written += writeSync(file, bytes, written);
        if (synced) fsyncSync(file);
      } finally {
        closeSync(file);
      }
    },
    syncFolder: (path) => {
      if (synced) realDisk.syncFolder(path);
    },
  };
}
