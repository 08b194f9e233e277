import { createPrivateKey, createPublicKey } from 'node:crypto';

/** Octets of chance that a key pair takes. */
export const KEY_SEED_OCTETS = 32;

/** PKCS #8 (RFC 8410, 7) of an Ed25519 private key, up to its 32 octets. */
const BEFORE_SEED = Buffer.from('302e020100300506032b657004220420', 'hex');

/** The two halves of an Ed25519 key pair in base64url: PKCS #8, and the 32 raw octets. */
export interface KeyPair {
  readonly privateKey: string;
  readonly publicKey: string;
}

/**
 * The key pair that is made of a seed: for Ed25519 the seed is the private key (RFC 8032, 5.1.5).
 * @throws RangeError for a seed of another size.
 */
export function keyPairFrom(seed: Uint8Array): KeyPair {
  if (seed.length !== KEY_SEED_OCTETS) throw new RangeError('a key takes 32 octets of chance');
  const der = Buffer.concat([BEFORE_SEED, seed]);
  const secret = createPrivateKey({ key: der, format: 'der', type: 'pkcs8' });
  const { x } = createPublicKey(secret).export({ format: 'jwk' });
  if (x === undefined) throw new RangeError('this key has no public half');
  return { privateKey: der.toString('base64url'), publicKey: x };
}
