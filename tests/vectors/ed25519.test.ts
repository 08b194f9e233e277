import { readFileSync } from 'node:fs';

import { describe, expect, it } from 'vitest';

import { isSigned } from '../../pipeline/review/index.js';
import { vectorsPath } from '../setup/programs.mjs';
import { octetsOf } from './rows.js';

/** A key, a message and its signature, in hexadecimal. */
interface Signed {
  readonly key: string;
  readonly message: string;
  readonly signature: string;
}

/** The order of the group (RFC 8032, 5.1), the least first. */
const ORDER = (1n << 252n) + 27742317777372353535851937790883648493n;

/** RFC 8032, 7.1: test 1, test 2, test 3 and test SHA(abc). */
const FROM_RFC: readonly Signed[] = [
  {
    key: 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
    message: '',
    signature:
      'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
  },
  {
    key: '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
    message: '72',
    signature:
      '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00',
  },
  {
    key: 'fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025',
    message: 'af82',
    signature:
      '6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a',
  },
  {
    key: 'ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf',
    message:
      'ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94fa54ca49f',
    signature:
      'dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b58909351fc9ac90b3ecfdfbc7c66431e0303dca179c138ac17ad9bef1177331a704',
  },
];

/** D. J. Bernstein's sign.input: secret and key, key, message, signature and message. */
function fromInput(): readonly Signed[] {
  const lines = readFileSync(vectorsPath('asymmetric/Ed25519/sign.input'), 'latin1').trim();
  return lines.split('\n').map((line) => {
    const [, key = '', message = '', signed = ''] = line.split(':');
    return { key, message, signature: signed.slice(0, 128) };
  });
}

const coded = (hex: string): string => Buffer.from(hex, 'hex').toString('base64url');
const isRight = ({ key, message, signature }: Signed): boolean =>
  isSigned(octetsOf(message), coded(signature), coded(key));

function flipped(hex: string, at: number): string {
  const octets = Buffer.from(hex, 'hex');
  octets.writeUInt8(octets.readUInt8(at) ^ 1, at);
  return octets.toString('hex');
}

/** The same signature with the group's order added to its second half: RFC 8032, 5.1.7, refuses it. */
function raised({ signature }: Signed): string {
  const half = Buffer.from(signature.slice(64), 'hex').reverse().toString('hex');
  const more = (BigInt(`0x${half}`) + ORDER).toString(16).padStart(64, '0');
  return signature.slice(0, 64) + Buffer.from(more, 'hex').reverse().toString('hex');
}

describe.each([
  ['RFC 8032, 7.1', FROM_RFC, 4],
  ['sign.input', fromInput(), 1024],
] as const)('signatures of %s', (_, rows, count) => {
  it('are all right', () => {
    expect(rows.filter(isRight)).toHaveLength(count);
  });

  it('are wrong with a bit changed in the signature, the message or the key', () => {
    const changed = rows.flatMap((row, at) => [
      { ...row, signature: flipped(row.signature, at % 64) },
      { ...row, message: row.message === '' ? '00' : flipped(row.message, 0) },
      { ...row, message: `${row.message}00` },
      { ...row, key: flipped(row.key, at % 32) },
    ]);
    expect(changed.filter(isRight)).toEqual([]);
  });

  it('are wrong when they are cut, lengthened or written in another way', () => {
    const signatures = (row: Signed): readonly string[] => [
      row.signature.slice(0, -2),
      `${row.signature}00`,
      raised(row),
    ];
    const changed = rows.flatMap((row) =>
      signatures(row).map((signature) => ({ ...row, signature })),
    );
    expect(changed.filter(isRight)).toEqual([]);
    const [row] = rows;
    const written = coded(row?.signature ?? '');
    const open = coded(row?.key ?? '');
    const octets = octetsOf(row?.message ?? '');
    expect(isSigned(octets, written, open)).toBe(true);
    const other = [`${written}==`, ` ${written}`, `${written}\n`, written.replace(/[-_]/, '+')];
    expect(other.filter((each) => each !== written && isSigned(octets, each, open))).toEqual([]);
  });
});
