import { HandFile } from '../../schema/index.js';
import type { Fault } from '../model/index.js';
import { FileReader } from './files.js';
import { memoryFolder } from './folder.js';

/** The decisions of an answer that came by mail, or what is wrong with their file. */
export type HandReading =
  | { readonly ok: true; readonly value: HandFile }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads what was typed of an answer that came by mail: YAML. */
export function readHandFile(file: string, bytes: Uint8Array): HandReading {
  const reader = new FileReader(memoryFolder(new Map([[file, bytes]])));
  const reading = reader.yaml(file, HandFile);
  return reading === null
    ? { ok: false, faults: reader.faults }
    : { ok: true, value: reading.value };
}
