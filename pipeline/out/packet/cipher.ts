type Octets = Uint8Array<ArrayBuffer>;

/** Octets of a key by PBKDF2-HMAC-SHA-256 (RFC 8018, 5.2). */
export async function derivedOctets(
  secret: Octets,
  salt: Octets,
  rounds: number,
  length: number,
): Promise<Octets> {
  const base = await crypto.subtle.importKey('raw', secret, 'PBKDF2', false, ['deriveBits']);
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: rounds };
  return new Uint8Array(await crypto.subtle.deriveBits(how, base, length * 8));
}

/** AES-GCM (NIST SP 800-38D) of octets, and the tag of 16 octets after them. */
export async function encrypted(key: Octets, nonce: Octets, plain: Octets): Promise<Octets> {
  const how = { name: 'AES-GCM', iv: nonce, tagLength: 128 };
  const imported = await crypto.subtle.importKey('raw', key, 'AES-GCM', false, ['encrypt']);
  return new Uint8Array(await crypto.subtle.encrypt(how, imported, plain));
}
