import type { TSchema } from 'typebox';

import { LedgerEntry, PacketRecord, RehearsalRecord, ReleaseRecord } from '../../schema/index.js';
import { EMPTY_LEDGER, lostHeads, readLedger, type Ledger } from '../review/index.js';
import type { Folder } from './folder.js';
import { validate } from './validate.js';

/** Something wrong below `review/`: nothing there may be trusted until it is mended. */
export interface ReviewFault {
  readonly file: string;
  /** From 1; null where it is about the whole file. */
  readonly line: number | null;
  readonly message: string;
}

/** What is kept below `review/`. */
export interface Review {
  readonly ledger: Ledger;
  readonly packets: ReadonlyMap<string, PacketRecord>;
  readonly faults: readonly ReviewFault[];
}

const LEDGER = 'review/ledger.jsonl';

/**
 * Reads the ledger and the records that lean on it. Each line must hold the digest of the line
 * before, and each head that a record kept must still be there.
 * @throws what the folder throws when the disk fails.
 */
export function readReview(folder: Folder): Review {
  const paths = folder.list().flatMap(({ path, outside }) => (outside ? [] : [path]));
  const reader = new ReviewReader(folder);
  const ledger = paths.includes(LEDGER) ? reader.ledger() : EMPTY_LEDGER;
  const packets = reader.records(paths, 'review/packets/', PacketRecord);
  const kept = [
    ...[...packets].map(([file, { ledger: head }]) => ({ file, head })),
    ...headsOf(reader.records(paths, 'review/releases/', ReleaseRecord)),
    ...headsOf(reader.records(paths, 'review/rehearsal.json', RehearsalRecord)),
  ];
  for (const { file, head } of kept) {
    if (lostHeads(ledger, [head]).length > 0) reader.fault(file, null, LOST);
  }
  return {
    ledger,
    packets: new Map([...packets.values()].map((record) => [record.id, record])),
    faults: reader.faults,
  };
}

const LOST =
  'the ledger that this record saw is not there any more: the ledger was cut or changed since';

interface Kept {
  readonly file: string;
  readonly head: string;
}

function headsOf(records: ReadonlyMap<string, { readonly ledger?: string }>): Kept[] {
  return [...records].flatMap(([file, { ledger: head }]) =>
    head === undefined ? [] : [{ file, head }],
  );
}

class ReviewReader {
  readonly faults: ReviewFault[] = [];

  constructor(private readonly folder: Folder) {}

  fault(file: string, line: number | null, message: string): void {
    this.faults.push({ file, line, message });
  }

  ledger(): Ledger {
    const reading = readLedger(this.text(LEDGER), (value) => {
      const valid = validate(LedgerEntry, value);
      return valid.ok ? valid.value : { why: saidOf(valid.faults) };
    });
    if (reading.ok) return reading.ledger;
    for (const { line, message } of reading.faults) this.fault(LEDGER, line, message);
    return EMPTY_LEDGER;
  }

  /** Records of one shape, by their path. */
  records<S extends TSchema>(
    paths: readonly string[],
    below: string,
    shape: S,
  ): ReadonlyMap<string, RecordOf<S>> {
    return new Map(
      paths
        .filter((path) => path.startsWith(below) && path.endsWith('.json'))
        .flatMap((path) => {
          const record = this.record(path, shape);
          return record === null ? [] : [[path, record] as const];
        }),
    );
  }

  private record<S extends TSchema>(path: string, shape: S): RecordOf<S> | null {
    let value: unknown;
    try {
      value = JSON.parse(this.text(path));
    } catch {
      this.fault(path, null, 'this is no JSON');
      return null;
    }
    const valid = validate(shape, value);
    if (valid.ok) return valid.value;
    this.fault(path, null, saidOf(valid.faults));
    return null;
  }

  private text(path: string): string {
    return new TextDecoder().decode(this.folder.read(path));
  }
}

type RecordOf<S extends TSchema> = Extract<
  ReturnType<typeof validate<S>>,
  { readonly ok: true }
>['value'];

function saidOf(faults: readonly { readonly message: string }[]): string {
  return [...new Set(faults.map(({ message }) => message))].join('; ');
}
