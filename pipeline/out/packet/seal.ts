import { derivedOctets, encrypted } from './cipher.js';
import { shell } from './shell.js';

/** Rounds of PBKDF2-HMAC-SHA-256: what OWASP's password storage sheet asked for in 2023. */
export const ROUNDS = 600_000;

/** Sealed pages differ in size by no less than this, in octets: a size tells how much is in them. */
const PADDED_TO = 65_536;

/** Octets of chance that one sealing takes: they must never be used for another. */
export interface Chance {
  readonly salt: Uint8Array<ArrayBuffer>;
  readonly nonce: Uint8Array<ArrayBuffer>;
}
export const SALT_OCTETS = 16;
/** AES-256. */
const KEY_OCTETS = 32;
/** AES-GCM's own (NIST SP 800-38D, 8.2). */
export const NONCE_OCTETS = 12;

/**
 * Seals a page: one HTML file that opens from a disk, without a network, for whoever has the
 * passphrase, and tells nobody else what is in it but its rough size. AES-256-GCM, the key by
 * PBKDF2-HMAC-SHA-256. `scripts` are the texts of the scripts that the page may run: their digests
 * stand in the clear, so they must be the same for every page of a kind.
 * @throws RangeError for a passphrase of less than 80 bits or chance of another size.
 */
export async function seal(
  page: string,
  passphrase: string,
  chance: Chance,
  scripts: readonly string[] = [],
): Promise<string> {
  const { salt, nonce } = chance;
  if (salt.length !== SALT_OCTETS || nonce.length !== NONCE_OCTETS) {
    throw new RangeError('a sealing takes a salt of 16 octets and a nonce of 12');
  }
  const letters = new TextEncoder().encode(passphraseLetters(passphrase));
  const key = await derivedOctets(letters, salt, ROUNDS, KEY_OCTETS);
  const sealed = await encrypted(key, nonce, padded(new TextEncoder().encode(page)));
  return shell({
    rounds: ROUNDS,
    salt: base64(salt),
    nonce: base64(nonce),
    sealed: base64(sealed),
    scripts,
  });
}

/** The length in four octets, the page, and zeros. */
function padded(page: Uint8Array): Uint8Array<ArrayBuffer> {
  const size = Math.ceil((page.length + 4) / PADDED_TO) * PADDED_TO;
  const octets = new Uint8Array(size);
  new DataView(octets.buffer).setUint32(0, page.length);
  octets.set(page, 4);
  return octets;
}

function base64(octets: Uint8Array): string {
  return Buffer.from(octets).toString('base64');
}

/** Letters and digits that are not mistaken for one another, 32 of them. */
const LETTERS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const LETTERS_IN_ALL = 20;
const FEWEST_LETTERS = 16;

/** Octets of chance that a passphrase takes. */
export const PASSPHRASE_OCTETS = LETTERS_IN_ALL;

/** A passphrase of 100 bits in four groups, such as "7QK2M-…", from 20 octets of chance. */
export function passphraseFrom(chance: Uint8Array): string {
  if (chance.length !== PASSPHRASE_OCTETS) throw new RangeError('a passphrase takes 20 octets');
  const letters = [...chance].map((octet) => LETTERS[octet % LETTERS.length] ?? '').join('');
  return letters.replace(/.{5}(?=.)/g, '$&-');
}

/**
 * What counts of a passphrase, however it is typed: no spaces or hyphens, capitals, and what is
 * mistaken for a digit as that digit.
 * @throws RangeError for fewer than 16 letters: 80 bits, if they are chosen by chance.
 */
export function passphraseLetters(typed: string): string {
  const letters = typed
    .toUpperCase()
    .replace(/[\s-]+/g, '')
    .replaceAll('O', '0')
    .replace(/[IL]/g, '1');
  if (letters.length >= FEWEST_LETTERS) return letters;
  throw new RangeError(`a passphrase has at least ${String(FEWEST_LETTERS)} letters and digits`);
}
