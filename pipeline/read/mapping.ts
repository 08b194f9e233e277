import { MappingFile } from '../../schema/index.js';
import type { Fault } from '../model/index.js';
import { FileReader } from './files.js';
import { memoryFolder } from './folder.js';

/** How a spreadsheet is to be read, or what is wrong with the file that says it. */
export type MappingReading =
  | { readonly ok: true; readonly value: MappingFile }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads a saved mapping: YAML that lies outside the content folder. */
export function readMapping(file: string, bytes: Uint8Array): MappingReading {
  const reader = new FileReader(memoryFolder(new Map([[file, bytes]])));
  const reading = reader.yaml(file, MappingFile);
  return reading === null
    ? { ok: false, faults: reader.faults }
    : { ok: true, value: reading.value };
}
