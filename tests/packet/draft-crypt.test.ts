import { createDecipheriv, hkdfSync } from 'node:crypto';

import { expect, it } from 'vitest';

import { DraftCrypt } from '../../pipeline/out/packet/draft-crypt.js';

const KEY = Buffer.from('a private key of some length or other').toString('base64url');
const NONCE = new Uint8Array(12).fill(9);

it('seals by AES-256-GCM under a key by HKDF-SHA-256, as another implementation has it', async () => {
  const crypt = await DraftCrypt.of(KEY);
  const sealed = await crypt.sealed('Odalys Thrane: approved', NONCE);
  const [nonce = '', octets = ''] = sealed.split('.');
  const from = Buffer.from(KEY, 'base64url');
  const key = Buffer.from(hkdfSync('sha256', from, '', 'Holdback draft 1', 32));
  const body = Buffer.from(octets, 'base64');
  const decipher = createDecipheriv('aes-256-gcm', key, Buffer.from(nonce, 'base64'));
  decipher.setAuthTag(body.subarray(-16));
  const plain = Buffer.concat([decipher.update(body.subarray(0, -16)), decipher.final()]);
  expect(plain.toString()).toBe('Odalys Thrane: approved');
  const name = Buffer.from(hkdfSync('sha256', from, '', 'Holdback draft name 1', 16));
  expect(crypt.name).toBe(name.toString('hex'));
  expect(await crypt.opened(sealed)).toBe('Odalys Thrane: approved');
});

it('opens nothing that another packet sealed, or that was changed or cut', async () => {
  const crypt = await DraftCrypt.of(KEY);
  const sealed = await crypt.sealed('a draft', NONCE);
  const other = await DraftCrypt.of(Buffer.from('another key').toString('base64url'));
  expect(other.name).not.toBe(crypt.name);
  expect(await other.opened(sealed)).toBe(null);
  expect(await crypt.opened(sealed.slice(0, -8))).toBe(null);
  expect(await crypt.opened(`A${sealed.slice(1)}`)).toBe(null);
  expect(await crypt.opened('nothing')).toBe(null);
  await expect(crypt.sealed('', new Uint8Array(11))).rejects.toThrow('12 octets');
});
