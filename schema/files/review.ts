import { Type, type Static } from 'typebox';
import { Format, Id, Instant, Part, PlainDate, Text, oneOf, said, shape } from '../common.js';

export const Digest = Type.String({
  pattern: '^[0-9a-f]{64}$',
  title: 'a SHA-256 digest of 64 hexadecimal digits',
});

const CardKey = Type.String({
  pattern: '^[a-z0-9-]+/[a-z0-9-]+/[a-z0-9-]+$',
  title: 'set, subset and card, such as high-water/crew/c017',
});

const Head = Type.Union([Digest, Type.Literal('none')], {
  title: 'the digest of a ledger entry, or none',
});

const Never = Type.Literal('never');

/** When things of a card were to become public, as a person saw it. */
export const SeenShape = shape(
  {
    openings: Type.Array(
      shape(
        { what: Text, opens: Type.Union([Instant, Never]), absent: Type.Boolean() },
        'When it opens, and whether it leaves no trace until then.',
      ),
    ),
    inHands: Type.Union([Instant, Never]),
    shows: Type.Array(Text),
  },
  'When things of a card were to become public, as a person saw it.',
);

export type Seen = Static<typeof SeenShape>;

const SubmittedPart = shape(
  { card: CardKey, part: Part, digest: Digest, seen: SeenShape },
  'A part of a card, by the digest and the schedule of what was shown.',
);

export const Verdict = oneOf(
  [
    'approved',
    'approved with changes',
    'approved as noted',
    'revise and resubmit',
    'rejected',
    'on hold',
  ],
  'What a reviewer decides.',
);

const decided = {
  card: CardKey,
  part: Part,
  digest: Digest,
  decision: Verdict,
  remark: Type.Optional(Text),
  with: Type.Optional(Text),
  changes: Type.Optional(
    Type.Array(shape({ field: Text, text: Type.String() }, 'The exact text of a field.'), {
      minItems: 1,
    }),
  ),
};

export const Decision = shape(decided, 'What a reviewer decides on a part of a card.');
export type Decision = Static<typeof Decision>;

/** What `record --by-hand` is given: the decisions of an answer that came by mail. */
export const HandFile = shape(
  {
    format: Type.Optional(Format),
    decisions: Type.Array(
      shape(
        {
          card: said(CardKey, 'The card, by set, subset and card, such as high-water/crew/c017.'),
          part: said(Part, 'The part of the card that the decision is on.'),
          decision: said(Verdict, 'What was decided, in the words of the trade.'),
          remark: Type.Optional(said(Text, 'What the reviewer said of it.')),
          with: Type.Optional(said(Text, 'Of what is on hold: with whom it lies.')),
        },
        'What a reviewer decided on a part of a card.',
      ),
      { minItems: 1, description: 'One for each part that was decided on.' },
    ),
  },
  'Decisions that came by mail.',
);
export type HandFile = Static<typeof HandFile>;

/** A remark of a reviewer: on a card, or on more than one. */
export const ReviewRemark = shape(
  {
    about: Text,
    text: Text,
    reason: Type.Optional(Text),
    range: Type.Optional(
      shape(
        { from: Type.Integer({ minimum: 0 }), to: Type.Integer({ minimum: 0 }) },
        'Letters of the text that it is about.',
      ),
    ),
  },
  'A remark.',
);

/** A decision file: what a packet gives back, signed with its key. */
export const AnswerFile = shape(
  {
    format: Type.Literal(1),
    property: Id,
    packet: Id,
    person: Id,
    decisions: Type.Array(Decision),
    remarks: Type.Array(ReviewRemark),
    signature: Type.String({
      pattern: '^[A-Za-z0-9_-]{86}$',
      title: 'an Ed25519 signature in base64url',
    }),
  },
  'A decision file: what a packet gives back.',
);
export type AnswerFile = Static<typeof AnswerFile>;

/** The day on which an answer by mail came. */
export const Received = PlainDate;

const chained = { previous: Head, at: Instant };

/** An entry of `review/ledger.jsonl`: one line of JSON each. */
export const LedgerEntry = Type.Union([
  shape(
    { ...chained, kind: Type.Literal('submitted'), packet: Id, person: Id, record: Digest },
    'A packet was sent.',
  ),
  shape(
    {
      ...chained,
      kind: Type.Literal('decided'),
      answer: AnswerFile,
      approves: Type.Array(
        shape(
          { card: CardKey, part: Part, digest: Digest },
          'A part as it is after the changes with which it was approved.',
        ),
      ),
    },
    'A reviewer decided.',
  ),
  shape(
    {
      ...chained,
      kind: Type.Literal('by-hand'),
      person: Id,
      by: Id,
      confirmedBy: Id,
      received: Received,
      evidence: Digest,
      decisions: Type.Array(
        shape({ ...decided, seen: SeenShape }, 'What a reviewer decided, and what they saw.'),
      ),
    },
    'A decision came by mail and was entered by hand.',
  ),
  shape(
    { ...chained, kind: Type.Literal('withdrawn'), packet: Id, by: Id, why: Text },
    'A packet was withdrawn.',
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
    property: Id,
    person: Id,
    clearance: Id,
    round: Type.Integer({ minimum: 1 }),
    made: Instant,
    expires: Instant,
    publicKey: Type.String({
      pattern: '^[A-Za-z0-9_-]{43}$',
      title: 'an Ed25519 public key in base64url',
    }),
    ledger: Head,
    decides: Type.Array(SubmittedPart),
  },
  'A packet that was sent.',
);
export type PacketRecord = Static<typeof PacketRecord>;

/** `review/approved/<digest>.json`: an approved text, trusted only by its recomputed digest. */
export const ApprovedText = shape(
  {
    format: Format,
    card: said(CardKey, 'The card, by set, subset and card, such as high-water/crew/c017.'),
    part: said(Part, 'The part of the card that was approved.'),
    digest: said(Digest, 'The digest of what it covers, which is also the name of the file.'),
    covers: Type.Unknown({
      description: 'Exactly what was approved; it counts if the digest is of it.',
    }),
  },
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
    ledger: Type.Optional(Head),
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
    ledger: Type.Optional(Head),
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
