import { runInNewContext } from 'node:vm';

import { describe, expect, it, test } from 'vitest';

import { derivedOctets, encrypted } from '../../pipeline/out/packet/cipher.js';
import { seal } from '../../pipeline/out/packet/index.js';
import { field, hexOf, octetsOf, rowsOf, type Row } from './rows.js';

const utf8 = (text: string): Uint8Array<ArrayBuffer> =>
  new Uint8Array(new TextEncoder().encode(text));

// RFC 7914, 11.
test.each([
  [
    'passwd',
    'salt',
    1,
    '55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc49ca9cccf179b645991664b39d77ef317c71b845b1e30bd509112041d3a19783',
  ],
  [
    'Password',
    'NaCl',
    80_000,
    '4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56a1d425a1225833549adb841b51c9b3176a272bdebba1d078478f62b397f33c8d',
  ],
])('a key by PBKDF2-HMAC-SHA-256 of %s, %s, %i rounds', async (secret, salt, rounds, key) => {
  expect(hexOf(await derivedOctets(utf8(secret), utf8(salt), rounds, 64))).toBe(key);
});

/** Rows as a sealed page has them: a nonce of 96 bits and nothing beside what is encrypted. */
const isLikeOurs = (row: Row): boolean =>
  field(row, 'IVlen') === '96' && field(row, 'AADlen') === '0';

// NIST CAVP (CAVS 14.0), AES-256-GCM with the nonce given.
test('AES-256-GCM encrypts as NIST’s rows', async () => {
  const rows = rowsOf('ciphers/AES/GCM/gcmEncryptExtIV256.rsp').filter(
    (row) => row.has('Count') && isLikeOurs(row),
  );
  const made = await Promise.all(
    rows.map(async (row) => {
      const [key, nonce, plain] = ['Key', 'IV', 'PT'].map((name) => octetsOf(field(row, name)));
      if (!key || !nonce || !plain) throw new Error('a row is cut');
      const octets = hexOf(await encrypted(key, nonce, plain));
      // A short tag is the beginning of the whole one (NIST SP 800-38D, 7.1).
      return octets.slice(0, field(row, 'CT').length + field(row, 'Tag').length);
    }),
  );
  expect(made).toHaveLength(525);
  expect(made).toEqual(rows.map((row) => field(row, 'CT') + field(row, 'Tag')));
});

/** What a sealed page's own script does with octets: hexadecimal, or `refused`. */
async function openedByPage(script: string, row: Row): Promise<string> {
  let plain = '';
  const octets = octetsOf(field(row, 'CT') + field(row, 'Tag'));
  const { submit, shown } = pageAround(script, row, octets, (found) => {
    plain = hexOf(found);
  });
  await submit();
  return shown() === '' ? 'refused' : plain;
}

/** The script of a sealed page with NIST's key in place of the one that a passphrase makes. */
function pageAround(
  script: string,
  row: Row,
  sealed: Uint8Array,
  opened: (plain: ArrayBuffer) => void,
): { readonly submit: () => Promise<void>; readonly shown: () => string } {
  const base64 = (given: Uint8Array): string => Buffer.from(given).toString('base64');
  const { subtle } = crypto;
  let written = '';
  let submit: (event: { preventDefault: () => void }) => Promise<void> = () =>
    Promise.reject(new Error('the page listens to nothing'));
  const parts: Readonly<Record<string, object>> = {
    open: {
      addEventListener: (_: string, listener: typeof submit) => {
        submit = listener;
      },
    },
    said: { textContent: '' },
    passphrase: { value: 'K7Q2M-00ABC-XYZ12-34567' },
    sealed: {
      dataset: {
        salt: base64(new Uint8Array(16)),
        nonce: base64(octetsOf(field(row, 'IV'))),
        rounds: '1',
      },
      content: { textContent: base64(sealed) },
    },
  };
  const document = {
    getElementById: (id: string) => parts[id],
    open: () => undefined,
    write: () => (written = 'a page'),
    close: () => undefined,
  };
  const own = {
    importKey: () => Promise.resolve('a passphrase'),
    deriveKey: () =>
      subtle.importKey('raw', octetsOf(field(row, 'Key')), 'AES-GCM', false, ['decrypt']),
    decrypt: async (...given: Parameters<typeof subtle.decrypt>) => {
      opened(await subtle.decrypt(...given));
      // A page of no letters, whatever NIST encrypted.
      return new ArrayBuffer(4);
    },
  };
  runInNewContext(script, { document, crypto: { subtle: own }, atob, TextEncoder, TextDecoder });
  return { submit: () => submit({ preventDefault: () => undefined }), shown: () => written };
}

describe('a sealed page’s own script', () => {
  it('opens what NIST’s rows open, and refuses their FAIL rows and every short tag', async () => {
    const page = await seal('', 'K7Q2M-00ABC-XYZ12-34567', {
      salt: new Uint8Array(16),
      nonce: new Uint8Array(12),
    });
    const [, script = ''] = /<script>([\s\S]*?)<\/script>/.exec(page) ?? [];
    const rows = rowsOf('ciphers/AES/GCM/gcmDecrypt256.rsp').filter(
      (row) => row.has('Count') && isLikeOurs(row),
    );
    const found = await Promise.all(rows.map((row) => openedByPage(script, row)));
    const due = rows.map((row) =>
      row.has('FAIL') || field(row, 'Taglen') !== '128' ? 'refused' : field(row, 'PT'),
    );
    expect(found).toEqual(due);
    const counted = { rows: rows.length, opened: due.filter((each) => each !== 'refused').length };
    const short = rows.filter((row) => field(row, 'Taglen') !== '128' && !row.has('FAIL')).length;
    expect({ ...counted, short }).toEqual({ rows: 525, opened: 42, short: 226 });
  });
});
