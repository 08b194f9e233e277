import type { Fault } from '../model/index.js';

/** What one file gave. */
export interface KeptReading {
  /** Null if it could not be read; then there are faults. */
  readonly value: object | null;
  readonly faults: readonly Fault[];
}

/**
 * What files gave when they were read, for a folder that gives the same bytes, as the same value, for
 * a file that has not changed: then the same value is read of it, and only what changed is read.
 */
export class KeptReadings {
  private readonly readings = new WeakMap<
    Uint8Array,
    { readonly path: string; readonly reading: KeptReading }
  >();

  get(path: string, bytes: Uint8Array): KeptReading | null {
    const kept = this.readings.get(bytes);
    return kept?.path === path ? kept.reading : null;
  }

  keep(path: string, bytes: Uint8Array, reading: KeptReading): void {
    this.readings.set(bytes, { path, reading });
  }
}
