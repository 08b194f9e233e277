import { readFileSync } from 'node:fs';

import { vectorsPath } from '../setup/programs.mjs';

/** A row of a NIST response file: its fields, those in brackets above it among them. */
export type Row = ReadonlyMap<string, string>;

/**
 * The rows of a NIST CAVP response file (.rsp), as Debian's python3-cryptography-vectors has them
 * under `path`. A row without `PT` or `MD` that says FAIL has a field of that name.
 */
export function rowsOf(path: string): readonly Row[] {
  const shared = new Map<string, string>();
  const rows: Row[] = [];
  for (const block of readFileSync(vectorsPath(path), 'latin1').split(/\r?\n\r?\n/)) {
    const row = new Map<string, string>();
    for (const line of block.split(/\r?\n/)) {
      const [, bracket, name = '', value = ''] = /^(\[?)(\w+)(?: = ?([^\]]*))?/.exec(line) ?? [];
      if (name !== '') (bracket === '[' ? shared : row).set(name, value.trim());
    }
    if (row.size > 0) rows.push(new Map([...shared, ...row]));
  }
  return rows;
}

export function octetsOf(hex: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(Buffer.from(hex, 'hex'));
}

export function hexOf(octets: Uint8Array | ArrayBuffer): string {
  return Buffer.from(new Uint8Array(octets)).toString('hex');
}

/** A field that every row of the file has. */
export function field(row: Row, name: string): string {
  const value = row.get(name);
  if (value === undefined) throw new Error(`a row has no ${name}`);
  return value;
}
