import { Type, type Static } from 'typebox';
import { Format, Id, Instant, Part, Text, shape } from '../common.js';

export const Digest = Type.String({
  pattern: '^[0-9a-f]{64}$',
  title: 'a SHA-256 digest of 64 hexadecimal digits',
});

const CardKey = Type.String({
  pattern: '^[a-z0-9-]+/[a-z0-9-]+/[a-z0-9-]+$',
  title: 'set, subset and card, such as high-water/crew/c017',
});

const chained = { previous: Type.Union([Digest, Type.Literal('none')]), at: Instant };

const DecidedPart = shape(
  { card: CardKey, part: Part, digest: Digest },
  'A part of a card, by the digest of what was seen.',
);

/** An entry of `review/ledger.jsonl`: one line of JSON each. */
export const LedgerEntry = Type.Union([
  shape(
    {
      ...chained,
      kind: Type.Literal('submitted'),
      packet: Id,
      person: Id,
      parts: Type.Array(DecidedPart),
    },
    'A packet was sent.',
  ),
  shape(
    {
      ...chained,
      kind: Type.Literal('decided'),
      packet: Id,
      person: Id,
      decision: Type.Enum([
        'approved',
        'approved with changes',
        'approved as noted',
        'revise and resubmit',
        'rejected',
        'on hold',
      ]),
      parts: Type.Array(DecidedPart),
      remark: Type.Optional(Text),
    },
    'A reviewer decided.',
  ),
  shape(
    { ...chained, kind: Type.Literal('checked'), card: CardKey, cut: Id, by: Id },
    'Copy was read against a cut.',
  ),
  shape(
    { ...chained, kind: Type.Literal('released'), release: Id, asOf: Instant, digest: Digest },
    'A site went out.',
  ),
]);
export type LedgerEntry = Static<typeof LedgerEntry>;

/** `review/packets/<id>.json`: what stays here of a packet that was sent. */
export const PacketRecord = shape(
  {
    format: Format,
    id: Id,
    person: Id,
    clearance: Id,
    made: Instant,
    expires: Instant,
    publicKey: Text,
    decides: Type.Array(DecidedPart),
  },
  'A packet that was sent.',
);
export type PacketRecord = Static<typeof PacketRecord>;

/** `review/approved/<digest>.json`: an approved text, trusted only by its recomputed digest. */
export const ApprovedText = shape(
  { format: Format, card: CardKey, part: Part, digest: Digest, covers: Type.Unknown() },
  'An approved text.',
);
export type ApprovedText = Static<typeof ApprovedText>;

/** `review/releases/<id>.json`: what the team needs to know of a release; it never leaves. */
export const ReleaseRecord = shape(
  {
    format: Format,
    id: Id,
    made: Instant,
    at: Instant,
    asOf: Instant,
    preview: Type.Boolean(),
    digest: Digest,
    files: Type.Integer({ minimum: 0 }),
    shown: Type.Array(CardKey),
    placeholders: Type.Array(CardKey),
    left: Type.Array(CardKey, { description: 'Cards that leave no trace in it.' }),
    zoneData: Text,
    takenBack: Type.Optional(
      shape(
        {
          parts: Type.Array(Text, {
            description: 'What the release before showed and this does not.',
          }),
          addresses: Type.Array(Text, {
            description: 'Below the site: what caches may still have of the release before.',
          }),
        },
        'What was taken back.',
      ),
    ),
  },
  'The private record of a release.',
);
export type ReleaseRecord = Static<typeof ReleaseRecord>;

/** `review/rehearsal.json`: how the releases to come would have gone; it never leaves. */
export const RehearsalRecord = shape(
  {
    format: Format,
    made: Instant,
    content: Type.String({
      description: 'SHA-256 over the content folder but for what releases and rehearsals wrote.',
    }),
    lifts: Type.Array(
      shape(
        {
          at: Instant,
          digest: Type.Union([Digest, Type.Null()], {
            description: 'What the release will have if nothing changes; null if it is refused.',
          }),
          blocks: Type.Array(Text, { description: 'What would be in its way, a line each.' }),
        },
        'A release to come.',
      ),
    ),
  },
  'A rehearsal of every release to come.',
);
export type RehearsalRecord = Static<typeof RehearsalRecord>;
