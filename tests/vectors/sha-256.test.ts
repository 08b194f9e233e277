import { expect, test } from 'vitest';

import { sha256 } from '../../pipeline/review/index.js';
import { field, octetsOf, rowsOf } from './rows.js';

// NIST CAVP, SHA-256 byte-oriented (FIPS 180-4): how many rows each file has, and all of them.
test.each([
  ['hashes/SHA2/SHA256ShortMsg.rsp', 65],
  ['hashes/SHA2/SHA256LongMsg.rsp', 64],
])('%s', (path, count) => {
  const rows = rowsOf(path).filter((row) => row.has('MD'));
  const found = rows.map((row) => {
    const length = Number(field(row, 'Len')) / 8;
    return sha256(octetsOf(field(row, 'Msg')).subarray(0, length));
  });
  expect(found).toHaveLength(count);
  expect(found).toEqual(rows.map((row) => field(row, 'MD')));
});

test('the examples of FIPS 180-2, B.1 and B.2, as texts', () => {
  expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  expect(sha256('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq')).toBe(
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  );
});
