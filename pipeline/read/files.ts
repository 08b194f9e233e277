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
import { readYaml, type YamlTrouble } from './yaml.js';

/** Most bytes that one file may have. */
const LARGEST = 1_000_000;

/** Files of a folder, read one by one; what is wrong with them is gathered. */
export class FileReader {
  readonly faults: Fault[] = [];

  constructor(private readonly folder: Folder) {}

  /** A YAML file as its schema types it, or null with faults gathered. */
  yaml<S extends TSchema>(path: string, schema: S): Sourced<Static<S>> | null {
    const source = this.text(path);
    if (!source) return null;
    const reading = readYaml(source, source.text, 0, schema);
    return this.valid(source, 'schema', reading.troubles, reading.value, schema);
  }

  /** A card, or null with faults gathered. Its place in the folder gives its identity. */
  card(path: string, place: Pick<Card, 'set' | 'subset' | 'id'>): Card | null {
    const words = this.words(path, CardFront);
    if (!words) return null;
    const { set, subset, id } = place;
    return { set, subset, id, source: words.source, front: words.front, bio: words.copy };
  }

  /** A sales text, or null with faults gathered. */
  sales(path: string, set: string, id: string): SalesText | null {
    const words = this.words(path, SalesFront);
    return words && { set, id, source: words.source, front: words.front, words: words.copy };
  }

  private words<S extends TSchema>(
    path: string,
    schema: S,
  ): { source: SourceFile; front: Static<S>; copy: Copy } | null {
    const source = this.text(path);
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

  private text(path: string): SourceFile | null {
    const bytes = this.folder.read(path);
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
