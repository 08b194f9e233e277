import { sign } from 'node:crypto';
import { rmSync } from 'node:fs';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { instantOf, type Instant } from '../../pipeline/model/index.js';
import { answerText, canonicalText, signedOctets } from '../../pipeline/review/index.js';
import { recordAnswer } from '../../pipeline/submission/index.js';
import type { AnswerFile, Decision, PacketRecord } from '../../schema/index.js';
import {
  CHART,
  LAMP,
  NOW,
  QUAY,
  SEED,
  decisionOn,
  fileOf,
  octets,
  placed,
  secretOf,
  sentRecord,
  signed,
  unsigned,
  type Unsigned,
} from './ground.js';
import { whyRefused as whyRefusedIn } from './refusals.js';

const OTHER_SEED = new Uint8Array(32).fill(8);
const SECOND_SEED = new Uint8Array(32).fill(9);

let root: string;
let record: PacketRecord;
let second: PacketRecord;
beforeAll(async () => {
  root = placed();
  record = await sentRecord(root);
  second = await sentRecord(root, { seed: SECOND_SEED, parts: ['copy'] });
});
afterAll(() => {
  rmSync(root, { recursive: true, force: true });
});

const whyRefused = (file: Uint8Array, now: Instant = NOW): Promise<readonly string[]> =>
  whyRefusedIn(root, file, now);

const on = (card: string, part: Decision['part'], more: Partial<Decision> = {}): Decision =>
  decisionOn(record, card, part, more);
const right = (): Unsigned => unsigned(record, [on(QUAY, 'copy'), on(LAMP, 'copy')]);

/** The right file with its signature, then something else done to it: canonical again. */
const tampered = (change: (answer: AnswerFile) => AnswerFile): Uint8Array =>
  octets(answerText(change(signed(right()))));

/** The right file as text, then something done to the text. */
const retold = (change: (text: string) => string): Uint8Array =>
  octets(change(answerText(signed(right()))));

/** Files with keys that a decision file has not are no values of its type. */
const withKeys = (change: (answer: Record<string, unknown>) => object): Uint8Array =>
  octets(`${canonicalText(change({ ...signed(right()) }))}\n`);

type Rows = readonly (readonly [string, () => Uint8Array, Instant?])[];
type Kind = readonly [kind: string, says: RegExp, rows: Rows];

const FORGED = /^the signature does not fit: it was not made with the key of this packet/;
const OTHER_TEXT = /^this is not the text that the packet saved: it was written anew/;
const NO_SHAPE = /^this is no decision file as a packet saves it: .*Ask the reviewer for the file/;
const NO_JSON = /^this is no decision file: it is no JSON, or it was cut off/;
const END = instantOf('2027-03-12T10:00:00+00:00[Europe/London]');
const DAY = 86_400_000;

const KINDS: readonly Kind[] = [
  [
    'wrong key',
    FORGED,
    [
      ['another key', () => fileOf(right(), OTHER_SEED)],
      ['the key of another packet', () => fileOf(right(), SECOND_SEED)],
      [
        'no signature at all',
        () => tampered((answer) => ({ ...answer, signature: 'A'.repeat(86) })),
      ],
      [
        'the signature of other decisions',
        () => {
          const { signature } = signed(unsigned(record, [on(QUAY, 'web')]));
          return tampered((answer) => ({ ...answer, signature }));
        },
      ],
      [
        'a signature of the bare text',
        () => {
          const text = new TextDecoder().decode(signedOctets(right())).replace(/^.*\n/, '');
          const signature = sign(null, octets(text), secretOf(SEED)).toString('base64url');
          return tampered((answer) => ({ ...answer, signature }));
        },
      ],
    ],
  ],
  [
    'other packet',
    /^there is no packet |^the signature does not fit/,
    [
      ['one that was never made', () => fileOf({ ...right(), packet: 'amara-3' })],
      ['one of another person', () => fileOf({ ...right(), packet: 'tobit-1' })],
      ['one that is like it', () => fileOf({ ...right(), packet: 'amara-10' })],
      ['the second, with the key of the first', () => fileOf({ ...right(), packet: 'amara-2' })],
      ['the first, with the key of the second', () => fileOf({ ...right() }, SECOND_SEED)],
    ],
  ],
  [
    'other person',
    /^this decision file names \S+, to whom this packet was not sent/,
    [
      ['another reviewer', () => fileOf({ ...right(), person: 'tobit' })],
      ['somebody of the house', () => fileOf({ ...right(), person: 'sefa' })],
      ['nobody', () => fileOf({ ...right(), person: 'nobody' })],
      ['changed after signing', () => tampered((answer) => ({ ...answer, person: 'tobit' }))],
    ],
  ],
  [
    'other property',
    /^this decision file is for another property, \S+: record it where that one is kept$/,
    [
      ['another', () => fileOf({ ...right(), property: 'sea' })],
      ['one that is like it', () => fileOf({ ...right(), property: 'lake-2' })],
      ['and another packet', () => fileOf({ ...right(), property: 'sea', packet: 'amara-7' })],
      ['changed after signing', () => tampered((answer) => ({ ...answer, property: 'sea' }))],
    ],
  ],
  [
    'digest of another card',
    /^one\/base\/a1 (?:copy|web): the digest is not that of the text that was shown/,
    [
      ['of another card', () => one({ ...on(QUAY, 'copy'), digest: on(LAMP, 'copy').digest })],
      ['of another part', () => one({ ...on(QUAY, 'copy'), digest: on(QUAY, 'web').digest })],
      ['of a part for a part', () => one({ ...on(QUAY, 'web'), digest: on(LAMP, 'web').digest })],
      ['of nothing', () => one({ ...on(QUAY, 'copy'), digest: '0'.repeat(64) })],
      [
        'of one among right ones',
        () =>
          fileOf(
            unsigned(record, [
              on(LAMP, 'copy'),
              { ...on(QUAY, 'copy'), digest: on(LAMP, 'copy').digest },
            ]),
          ),
      ],
    ],
  ],
  [
    'not decidable',
    /^one\/\S+ \S+: it was not among what this packet asked for/,
    [
      ['a card that is not handed in', () => one({ ...on(QUAY, 'copy'), card: CHART })],
      ['a card that is not there', () => one({ ...on(QUAY, 'copy'), card: 'one/base/a9' })],
      ['a part that nobody asked for', () => one({ ...on(QUAY, 'copy'), part: 'sales' })],
      [
        'a part that this packet left out',
        () => fileOf(unsigned(second, [on(QUAY, 'web')]), SECOND_SEED),
      ],
    ],
  ],
  [
    'expired',
    /^decisions on this packet could be given until 2027-03-12T10:00:00\+00:00\[Europe\/London\]: send a new packet$/,
    [
      ['by a second', () => fileOf(right()), END + 1000],
      ['by a millisecond', () => fileOf(right()), END + 1],
      ['by a day', () => fileOf(right()), END + DAY],
      ['by a year', () => fileOf(right()), END + 365 * DAY],
    ],
  ],
  [
    'reordered',
    /^this is not the text that the packet saved|^the signature does not fit/,
    [
      [
        'decisions',
        () => tampered((answer) => ({ ...answer, decisions: answer.decisions.toReversed() })),
      ],
      ['keys', () => octets(`${JSON.stringify(signed(right()))}\n`)],
      [
        'keys of a decision',
        () => retold((text) => text.replace(/("card":"[^"]*"),("decision":"[^"]*")/, '$2,$1')),
      ],
      [
        'the last key first',
        () => retold((text) => text.replace(/^\{(.*),("signature":"[^"]*")\}/, '{$2,$1}')),
      ],
    ],
  ],
  [
    'cut',
    /no JSON, or it was cut off|^this is no decision file as|not the text that|^the signature/,
    [
      ['in the middle', () => retold((text) => text.slice(0, text.length / 2))],
      ['its last sign', () => retold((text) => text.slice(0, -2))],
      ['its line break', () => retold((text) => text.trimEnd())],
      ['all of it', () => octets('')],
      [
        'a decision',
        () => tampered((answer) => ({ ...answer, decisions: answer.decisions.slice(0, 1) })),
      ],
    ],
  ],
  [
    'field added',
    NO_SHAPE,
    [
      ['to the file', () => withKeys((answer) => ({ ...answer, note: 'all good' }))],
      [
        'to a decision',
        () => withKeys((answer) => ({ ...answer, decisions: [{ ...on(QUAY, 'copy'), by: 'x' }] })),
      ],
      ['a key of the language', () => retold((text) => text.replace('{', '{"__proto__":{},'))],
      ['a second signature', () => withKeys((answer) => ({ ...answer, signatures: [] }))],
    ],
  ],
  [
    'field added that may be there',
    /^the signature does not fit/,
    [
      ['a remark', () => first({ remark: 'Good' })],
      ['a holder', () => first({ with: 'The studio' })],
      ['changes', () => first({ changes: [{ field: 'name', text: 'Mine' }] })],
      [
        'a remark on the whole',
        () => tampered((answer) => ({ ...answer, remarks: [{ about: 'all', text: 'Good' }] })),
      ],
    ],
  ],
  [
    'field removed',
    NO_SHAPE,
    ['format', 'property', 'packet', 'person', 'decisions', 'remarks', 'signature'].map((key) => [
      key,
      () =>
        withKeys((answer) =>
          Object.fromEntries(Object.entries(answer).filter(([name]) => name !== key)),
        ),
    ]),
  ],
  [
    'encoding varied',
    OTHER_TEXT,
    [
      ['a byte order mark', () => retold((text) => `\ufeff${text}`)],
      ['Windows line ends', () => retold((text) => text.replace('\n', '\r\n'))],
      [
        'spaces',
        () => octets(`${JSON.stringify(JSON.parse(answerText(signed(right()))), null, 2)}\n`),
      ],
      ['an escaped letter', () => retold((text) => text.replace('"amara"', '"\\u0061mara"'))],
      [
        'a number written otherwise',
        () => retold((text) => text.replace('"format":1', '"format":1.0')),
      ],
      ['a key twice', () => retold((text) => text.replace('{', '{"person":"tobit",'))],
    ],
  ],
  [
    'no text',
    NO_JSON,
    [
      ['UTF-16', () => new Uint8Array(Buffer.from(answerText(signed(right())), 'utf16le'))],
      ['bytes that are no UTF-8', () => Uint8Array.of(0x22, 0xff, 0x22)],
      ['words', () => octets('approved')],
      ['two files', () => retold((text) => text + text)],
    ],
  ],
];

function one(decision: Decision): Uint8Array {
  return fileOf(unsigned(record, [decision]));
}

function first(more: Partial<Decision>): Uint8Array {
  return tampered((answer) => ({
    ...answer,
    decisions: answer.decisions.map((each, at) => (at === 0 ? { ...each, ...more } : each)),
  }));
}

describe.each(KINDS)('%s: refused, and no byte is changed', (_, says, rows) => {
  it.each(rows.map(([name, file, now = NOW]) => ({ name, file, now })))(
    '$name',
    async ({ file, now }) => {
      expect((await whyRefused(file(), now)).filter((why) => says.test(why))).toHaveLength(1);
    },
  );
});

it('the file that all of them were made from is taken', async () => {
  const file = fileOf(right());
  const order = { contentPath: root, now: END, octets: file, dryRun: true };
  expect(await recordAnswer(order)).toMatchObject({ done: true });
});
