import type { Static, TSchema } from 'typebox';

import { CardFront, SalesFront } from '../../schema/index.js';
import {
  locatorOf,
  type Card,
  type Copy,
  type Fault,
  type SalesText,
  type SourceFile,
  type Sourced,
} from '../model/index.js';
import { readCopy } from './copy.js';
import type { Folder } from './folder.js';
import { decode, notText, splitFrontMatter, tooLarge } from './front-matter.js';
import { validate } from './validate.js';
import type { KeptReadings } from './kept-readings.js';
import { readYaml, type YamlTrouble } from './yaml.js';

/** Most bytes that one file may have. */
const LARGEST = 1_000_000;

/** Files of a folder, read one by one; what is wrong with them is gathered. */
export class FileReader {
  readonly faults: Fault[] = [];

  /** @param kept readings of before; of bytes that are the same values, nothing is read again. */
  constructor(
    private readonly folder: Folder,
    private readonly kept?: KeptReadings,
  ) {}

  /** A YAML file as its schema types it, or null with faults gathered. */
  yaml<S extends TSchema>(path: string, schema: S): Sourced<Static<S>> | null {
    return this.once(path, (bytes) => {
      const source = this.text(path, bytes);
      if (!source) return null;
      const reading = readYaml(source, source.text, 0, schema);
      return this.valid(source, 'schema', reading.troubles, reading.value, schema);
    });
  }

  /** A card, or null with faults gathered. Its place in the folder gives its identity. */
  card(path: string, place: Pick<Card, 'set' | 'subset' | 'id'>): Card | null {
    return this.once(path, (bytes) => {
      const words = this.words(path, bytes, CardFront);
      if (!words) return null;
      const { set, subset, id } = place;
      return { set, subset, id, source: words.source, front: words.front, bio: words.copy };
    });
  }

  /** A sales text, or null with faults gathered. */
  sales(path: string, set: string, id: string): SalesText | null {
    return this.once(path, (bytes) => {
      const words = this.words(path, bytes, SalesFront);
      return words && { set, id, source: words.source, front: words.front, words: words.copy };
    });
  }

  /** Reads a file, or takes what was read of the same bytes before, with its faults. */
  private once<T extends object>(path: string, read: (bytes: Uint8Array) => T | null): T | null {
    const bytes = this.folder.read(path);
    const before = this.kept?.get(path, bytes);
    if (before) {
      this.faults.push(...before.faults);
      return before.value as T | null;
    }
    const first = this.faults.length;
    const value = read(bytes);
    this.kept?.keep(path, bytes, { value, faults: this.faults.slice(first) });
    return value;
  }

  private words<S extends TSchema>(
    path: string,
    bytes: Uint8Array,
    schema: S,
  ): { source: SourceFile; front: Static<S>; copy: Copy } | null {
    const source = this.text(path, bytes);
    if (!source) return null;
    const split = splitFrontMatter(source);
    if (!split.ok) {
      this.faults.push(split.fault);
      return null;
    }
    const { yaml, fence } = split;
    const reading = readYaml(source, yaml, fence.yamlFrom, schema);
    const front = this.valid(source, 'front-matter', reading.troubles, reading.value, schema);
    const body = readCopy(source, fence.bodyFrom);
    this.faults.push(...body.faults);
    return front && body.faults.length === 0
      ? { source, front: front.value, copy: body.copy }
      : null;
  }

  private text(path: string, bytes: Uint8Array): SourceFile | null {
    if (bytes.length > LARGEST) {
      this.faults.push(tooLarge(path, LARGEST));
      return null;
    }
    const text = decode(bytes);
    if (text === null) this.faults.push(notText(path));
    return text === null ? null : { file: path, text };
  }

  private valid<S extends TSchema>(
    source: SourceFile,
    rule: 'schema' | 'front-matter',
    troubles: readonly YamlTrouble[],
    value: unknown,
    schema: S,
  ): Sourced<Static<S>> | null {
    this.faults.push(...troubles.map((trouble): Fault => ({ rule, ...trouble })));
    if (troubles.length > 0) return null;
    const validation = validate(schema, value);
    if (validation.ok) return { source, value: validation.value };
    const spotOf = locatorOf(source);
    for (const { path, what, ...fault } of validation.faults) {
      this.faults.push({ ...fault, spot: spotOf(path, what) });
    }
    return null;
  }
}
