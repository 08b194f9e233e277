import { base64Of, octetsOf } from './octets.js';

/** AES-GCM's own (NIST SP 800-38D, 8.2). */
const NONCE_OCTETS = 12;

/**
 * Keeps drafts sealed where pages from a disk share their storage: AES-256-GCM, the key and the name
 * that they are kept under by HKDF-SHA-256 (RFC 5869) from the packet's private key.
 */
export class DraftCrypt {
  private constructor(
    /** What drafts are kept under: it tells nothing. */
    readonly name: string,
    readonly key: Awaited<ReturnType<typeof crypto.subtle.deriveKey>>,
  ) {}

  static async of(privateKey: string): Promise<DraftCrypt> {
    const octets = octetsOf(privateKey);
    const base = await crypto.subtle.importKey('raw', octets, 'HKDF', false, [
      'deriveKey',
      'deriveBits',
    ]);
    const aes = { name: 'AES-GCM', length: 256 };
    const key = await crypto.subtle.deriveKey(hkdf('Holdback draft 1'), base, aes, false, [
      'encrypt',
      'decrypt',
    ]);
    const name = await crypto.subtle.deriveBits(hkdf('Holdback draft name 1'), base, 128);
    const digits = [...new Uint8Array(name)].map((octet) => octet.toString(16).padStart(2, '0'));
    return new DraftCrypt(digits.join(''), key);
  }

  /** The nonce and what it seals, in base64. `nonce` must never be used twice. */
  async sealed(text: string, nonce: Uint8Array<ArrayBuffer>): Promise<string> {
    if (nonce.length !== NONCE_OCTETS) throw new RangeError('a nonce has 12 octets');
    const how = { name: 'AES-GCM', iv: nonce };
    const octets = await crypto.subtle.encrypt(how, this.key, new TextEncoder().encode(text));
    return `${base64Of(nonce)}.${base64Of(new Uint8Array(octets))}`;
  }

  /** The text of a draft; null for one that was sealed otherwise or changed. */
  async opened(sealed: string): Promise<string | null> {
    const [nonce = '', octets = ''] = sealed.split('.');
    try {
      const how = { name: 'AES-GCM', iv: octetsOf(nonce) };
      return new TextDecoder().decode(await crypto.subtle.decrypt(how, this.key, octetsOf(octets)));
    } catch {
      return null;
    }
  }
}

function hkdf(info: string) {
  const salt = new Uint8Array(0);
  return { name: 'HKDF', hash: 'SHA-256', salt, info: new TextEncoder().encode(info) };
}
