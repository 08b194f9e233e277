import { createPrivateKey, generateKeyPairSync, sign, type KeyObject } from 'node:crypto';

import { describe, expect, test } from 'vitest';

import type { AnswerFile, Decision, PacketRecord } from '../../schema/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import {
  EMPTY_LEDGER,
  answerRefusals,
  answerText,
  appended,
  packetDigest,
  signedOctets,
  type AnswerGround,
  type LedgerWords,
} from '../../pipeline/review/index.js';

const MADE = '2027-01-11T10:00:00+00:00[Europe/London]';
const EXPIRES = '2027-01-25T10:00:00+00:00[Europe/London]';
const NOW = instantOf('2027-01-18T10:00:00+00:00[Europe/London]');
const CARD = 'high-water/crew/c017';
const OTHER = 'high-water/crew/c018';
const digest = (letter: string): string => letter.repeat(64);
const seen = { openings: [], inHands: 'never' as const, shows: [] };

/** RFC 8032, 7.1, test 1: the secret and public key (from memory; the test below holds them). */
const KEY = jwkOf(
  '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60',
  'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
);

function jwkOf(
  secret: string,
  open: string,
): { readonly secret: KeyObject; readonly open: string } {
  const [d, x] = [secret, open].map((hex) => Buffer.from(hex, 'hex').toString('base64url'));
  const jwk = { kty: 'OKP', crv: 'Ed25519', d: d ?? '', x: x ?? '' };
  return { secret: createPrivateKey({ key: jwk, format: 'jwk' }), open: x ?? '' };
}

const RECORD: PacketRecord = {
  format: 1,
  id: 'p-1',
  property: 'ferrywrights',
  person: 'amara',
  clearance: 'finale',
  round: 1,
  made: MADE,
  expires: EXPIRES,
  publicKey: KEY.open,
  ledger: 'none',
  decides: [
    { card: CARD, part: 'copy', digest: digest('a'), seen },
    { card: CARD, part: 'web', digest: digest('b'), seen },
    { card: OTHER, part: 'copy', digest: digest('c'), seen },
  ],
};

const APPROVED: Decision = {
  card: CARD,
  part: 'copy',
  digest: digest('a'),
  decision: 'approved',
};

type Unsigned = Omit<AnswerFile, 'signature'>;
const UNSIGNED: Unsigned = {
  format: 1,
  property: 'ferrywrights',
  packet: 'p-1',
  person: 'amara',
  decisions: [APPROVED],
  remarks: [],
};

function signed(more: Partial<Unsigned> = {}, key = KEY.secret): AnswerFile {
  const answer = { ...UNSIGNED, ...more };
  const signature = sign(null, signedOctets(answer), key).toString('base64url');
  return { ...answer, signature };
}

const submitted = (record: PacketRecord): LedgerWords => ({
  kind: 'submitted',
  at: MADE,
  packet: record.id,
  person: record.person,
  record: packetDigest(record),
});
const LEDGER = appended(EMPTY_LEDGER, [submitted(RECORD)]);
const GROUND: AnswerGround = { property: 'ferrywrights', record: RECORD, ledger: LEDGER, now: NOW };

const refusals = (answer: AnswerFile, more: Partial<AnswerGround> = {}): string[] =>
  answerRefusals(answer, { ...GROUND, ...more }).map(({ why, about }) =>
    about === undefined ? why : `${why}: ${about}`,
  );

test('keys and signatures are those of RFC 8032, 7.1, test 1 and 2', () => {
  const empty = sign(null, new Uint8Array(), KEY.secret).toString('hex');
  expect(empty.slice(0, 32)).toBe('e5564300c360ac729086e2cc806e828a');
  const two = jwkOf(
    '4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb',
    '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
  );
  expect(sign(null, Uint8Array.of(0x72), two.secret).toString('hex').slice(0, 32)).toBe(
    '92a009a9f0d4cab8720e820b5f642540',
  );
});

describe('a decision file', () => {
  test('that is right in everything is taken', () => {
    const decisions: Decision[] = [
      APPROVED,
      { ...APPROVED, part: 'web', digest: digest('b'), decision: 'on hold', with: 'The studio' },
      {
        ...APPROVED,
        card: OTHER,
        digest: digest('c'),
        decision: 'revise and resubmit',
        remark: 'No',
      },
    ];
    const remarks = [{ about: CARD, text: 'Lovely', reason: 'tone', range: { from: 0, to: 4 } }];
    expect(refusals(signed({ decisions, remarks }))).toEqual([]);
    const changes = [{ field: 'bio', text: 'She rows.' }];
    const changed: Decision = { ...APPROVED, decision: 'approved with changes', changes };
    expect(refusals(signed({ decisions: [changed] }))).toEqual([]);
  });

  test('has one text: canonical JSON and a line break', () => {
    const answer = signed();
    expect(answerText(answer)).toBe(
      `{"decisions":[{"card":"${CARD}","decision":"approved","digest":"${digest('a')}","part":"copy"}],` +
        `"format":1,"packet":"p-1","person":"amara","property":"ferrywrights","remarks":[],"signature":"${answer.signature}"}\n`,
    );
  });
});

describe('forged: wrong key, or anything changed after it was signed', () => {
  const answer = signed();
  const flipped = (at: number): string => {
    const octets = Buffer.from(answer.signature, 'base64url');
    octets[at] = (octets[at] ?? 0) ^ 1;
    return octets.toString('base64url');
  };
  const spare = answer.signature.replace(/.$/, (sign) => (sign === 'A' ? 'B' : nextOf(sign)));
  function nextOf(sign: string): string {
    const signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
    return signs[signs.indexOf(sign) + 1] ?? 'B';
  }
  test.each<[string, AnswerFile]>([
    ['another key', signed({}, generateKeyPairSync('ed25519').privateKey)],
    ['a bit of the signature', { ...answer, signature: flipped(0) }],
    ['its last bit', { ...answer, signature: flipped(63) }],
    ['spare bits of its encoding', { ...answer, signature: spare }],
    ['no signature', { ...answer, signature: 'A'.repeat(86) }],
    ['another verdict', { ...answer, decisions: [{ ...APPROVED, decision: 'approved as noted' }] }],
    ['a remark more', { ...answer, decisions: [{ ...APPROVED, remark: 'Good' }] }],
    ['a decision less', { ...signed({ decisions: [APPROVED, APPROVED] }), decisions: [APPROVED] }],
    ['a remark on the whole', { ...answer, remarks: [{ about: CARD, text: 'Good' }] }],
    ['signed without saying what for', { ...answer, signature: bare() }],
  ])('%s', (_, forged) => {
    expect(refusals(forged)).toContain('forged');
  });

  function bare(): string {
    const text = new TextDecoder().decode(signedOctets(UNSIGNED)).replace(/^.*\n/, '');
    return sign(null, new TextEncoder().encode(text), KEY.secret).toString('base64url');
  }

  test('a public key that is none', () => {
    const record = { ...RECORD, publicKey: 'A'.repeat(43) };
    expect(
      refusals(answer, { record, ledger: appended(EMPTY_LEDGER, [submitted(record)]) }),
    ).toEqual(['forged']);
  });

  test('decisions in another order', () => {
    const web: Decision = { ...APPROVED, part: 'web', digest: digest('b') };
    const two = signed({ decisions: [APPROVED, web] });
    expect(refusals({ ...two, decisions: [web, APPROVED] })).toEqual(['forged']);
  });
});

describe('refused, each for its own reason', () => {
  test.each<[string, AnswerFile, Partial<AnswerGround>, string[]]>([
    ['property', signed({ property: 'lake' }), {}, ['other property: lake']],
    ['our property', signed(), { property: 'lake' }, ['other property: ferrywrights']],
    ['packet', signed({ packet: 'p-2' }), {}, ['other packet: p-2']],
    ['person', signed({ person: 'orrin' }), {}, ['other person: orrin']],
    ['not submitted', signed(), { ledger: EMPTY_LEDGER }, ['packet not submitted']],
    [
      'a record changed since',
      signed(),
      { record: { ...RECORD, expires: '2028-01-25T10:00:00+00:00[Europe/London]' } },
      ['packet record changed'],
    ],
    [
      'withdrawn',
      signed(),
      {
        ledger: appended(LEDGER, [
          { kind: 'withdrawn', at: MADE, packet: 'p-1', by: 'jonah', why: 'Wrong set' },
        ]),
      },
      ['packet withdrawn'],
    ],
    ['late', signed(), { now: instantOf(EXPIRES) + 1 }, [`expired: ${EXPIRES}`]],
    ['at the last moment', signed(), { now: instantOf(EXPIRES) }, []],
    [
      'replayed',
      signed(),
      {
        ledger: appended(LEDGER, [{ kind: 'decided', at: MADE, answer: signed(), approves: [] }]),
      },
      ['replayed'],
    ],
    [
      'a card that was not shown',
      signed({ decisions: [{ ...APPROVED, card: 'high-water/crew/c019' }] }),
      {},
      ['not decidable: high-water/crew/c019 copy'],
    ],
    [
      'a part that was not shown',
      signed({ decisions: [{ ...APPROVED, part: 'layout' }] }),
      {},
      [`not decidable: ${CARD} layout`],
    ],
    [
      'the digest of another card',
      signed({ decisions: [{ ...APPROVED, digest: digest('c') }] }),
      {},
      [`other text: ${CARD} copy`],
    ],
    [
      'the digest of another part',
      signed({ decisions: [{ ...APPROVED, digest: digest('b') }] }),
      {},
      [`other text: ${CARD} copy`],
    ],
    [
      'two decisions on one part',
      signed({ decisions: [APPROVED, { ...APPROVED, decision: 'rejected' }] }),
      {},
      [`decided twice: ${CARD} copy`],
    ],
    [
      'revise without a remark',
      signed({ decisions: [{ ...APPROVED, decision: 'revise and resubmit' }] }),
      {},
      [`remark missing: ${CARD} copy`],
    ],
    [
      'on hold with nobody',
      signed({ decisions: [{ ...APPROVED, decision: 'on hold' }] }),
      {},
      [`holder missing: ${CARD} copy`],
    ],
    [
      'changes that are not there',
      signed({ decisions: [{ ...APPROVED, decision: 'approved with changes' }] }),
      {},
      [`changes missing: ${CARD} copy`],
    ],
    [
      'changes under another verdict',
      signed({ decisions: [{ ...APPROVED, changes: [{ field: 'name', text: 'A' }] }] }),
      {},
      [`changes without approval: ${CARD} copy`],
    ],
    [
      'changes to what is no copy',
      signed({
        decisions: [
          {
            ...APPROVED,
            part: 'web',
            digest: digest('b'),
            decision: 'approved with changes',
            changes: [{ field: 'name', text: 'A' }],
          },
        ],
      }),
      {},
      [`changes beside copy: ${CARD} web`],
    ],
  ])('%s', (_, answer, ground, expected) => {
    expect(refusals(answer, ground)).toEqual(expected);
  });

  test('all of them at once', () => {
    const answer = signed({ property: 'lake', person: 'orrin' });
    expect(refusals(answer, { now: instantOf(EXPIRES) + 1 })).toHaveLength(3);
  });
});
