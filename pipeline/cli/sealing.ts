import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';

import {
  NONCE_OCTETS,
  PASSPHRASE_OCTETS,
  SALT_OCTETS,
  passphraseFrom,
  passphraseLetters,
  seal,
} from '../out/packet/index.js';
import { UsageError, type Io } from './io.js';

/** How a file is sealed, and what is to be said once it is written. */
export interface Sealing {
  readonly seal: (page: string) => Promise<string>;
  readonly said: string;
}

/** A passphrase, and what is to be said of it once what it opens is written. */
export interface Passphrase {
  readonly passphrase: string;
  readonly said: string;
}

/**
 * The passphrase of a file, or a new one that is shown once, to a terminal: where output may be kept
 * by others, a passphrase in it would open what it seals.
 * @throws UsageError if there is neither a file nor a terminal, or the file has no passphrase.
 */
export function passphraseFor(passphraseFile: string | undefined, io: Io): Passphrase {
  if (passphraseFile !== undefined) {
    return { passphrase: readPassphrase(passphraseFile, io), said: '' };
  }
  if (!io.terminal) {
    throw new UsageError(
      'a sealed file needs a passphrase, which is shown on a terminal alone: ' +
        'run this on one, or name a file that has it with --passphrase-file FILE',
    );
  }
  const passphrase = passphraseFrom(io.random(PASSPHRASE_OCTETS));
  const said = `it opens with ${passphrase}\nTell it by another way than the file. It is kept nowhere.\n`;
  return { passphrase, said };
}

/** Seals a page with a passphrase and new chance. */
export function sealedWith(
  page: string,
  passphrase: string,
  io: Io,
  scripts: readonly string[] = [],
): Promise<string> {
  const chance = { salt: io.random(SALT_OCTETS), nonce: io.random(NONCE_OCTETS) };
  return seal(page, passphrase, chance, scripts);
}

/**
 * Seals with the passphrase of a file, or with a new one.
 * @throws UsageError as `passphraseFor` does.
 */
export function sealingFor(passphraseFile: string | undefined, io: Io): Sealing {
  const { passphrase, said } = passphraseFor(passphraseFile, io);
  return { seal: (page) => sealedWith(page, passphrase, io), said };
}

function readPassphrase(file: string, io: Io): string {
  const path = resolve(io.cwd, file);
  try {
    const text = readFileSync(path, 'utf8').trim();
    passphraseLetters(text);
    return text;
  } catch (error) {
    const why = error instanceof RangeError ? error.message : 'it cannot be read';
    throw new UsageError(`--passphrase-file ${file}: ${why}`);
  }
}
