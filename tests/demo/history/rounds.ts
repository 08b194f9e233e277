import type { Decision } from '../../../schema/index.js';

/** What a reviewer decides on one text of a packet; the rest that they open is approved. */
export interface Answer {
  /** The name of the card, as it stands in the heading of its page. */
  readonly card: string;
  readonly verdict: Exclude<Decision['decision'], 'approved'>;
  readonly remark?: string;
  /** With whom it lies. */
  readonly with?: string;
  /** What of a bio is approved with changes: `from → to`. */
  readonly bio?: string;
}

/** A packet that was sent, and what came back. */
export interface Sent {
  readonly to: string;
  readonly sent: string;
  readonly back: string;
  readonly answers: readonly Answer[];
}

/** Words that stood otherwise in a file when a round began. */
export interface Earlier {
  readonly file: string;
  /** As it stands today, and as it stood then. */
  readonly today: string;
  readonly then: string;
}

export interface Round {
  readonly earlier: readonly Earlier[];
  readonly packets: readonly Sent[];
}

const CREW = 'high-water/cards/crew';

/**
 * The two rounds in which the demo was approved. In the first a card is sent back, one is approved as
 * noted, one with changes, and one lies on hold; and two cards have each other's number.
 */
export const ROUNDS: readonly Round[] = [
  {
    earlier: [
      {
        file: `${CREW}/c006.md`,
        today: 'doorknobs, hundreds, sorted',
        then: 'forty doorknobs, sorted',
      },
      { file: `${CREW}/c005.md`, today: 'and some fish.', then: 'and one fish.' },
      { file: `${CREW}/c008.md`, today: 'number: "8"', then: 'number: "9"' },
      { file: `${CREW}/c009.md`, today: 'number: "9"', then: 'number: "8"' },
      {
        file: 'high-water/cards/benches/be02.md',
        today: 'With two thousand ripples',
        then: 'With a thousand ripples',
      },
    ],
    packets: [
      {
        to: 'yewande',
        sent: '2026-12-07T10:00:00+00:00[Europe/London]',
        back: '2026-12-09T16:20:00+00:00[Europe/London]',
        answers: [],
      },
      {
        to: 'amara',
        sent: '2026-12-07T10:05:00+00:00[Europe/London]',
        back: '2026-12-17T09:40:00+00:00[Europe/London]',
        answers: [
          {
            card: 'Sister Quillon Ash',
            verdict: 'approved as noted',
            remark: 'There are two fish on her chart in episode 2, so not "one fish".',
          },
          {
            card: 'Dorrit Sill',
            verdict: 'revise and resubmit',
            remark: 'The model room counted her doorknobs. It is hundreds, not forty.',
          },
          {
            card: 'Water Made of Resin',
            verdict: 'approved with changes',
            bio: 'With a thousand → With two thousand',
          },
          {
            card: 'A Crossing in Fog',
            verdict: 'on hold',
            with: 'the sound department, who are still deciding who says good evening',
          },
        ],
      },
    ],
  },
  {
    earlier: [],
    packets: [
      {
        to: 'amara',
        sent: '2027-01-05T11:00:00+00:00[Europe/London]',
        back: '2027-01-14T15:10:00+00:00[Europe/London]',
        answers: [],
      },
    ],
  },
];

/** When the site went out since. */
export const RELEASES = [
  '2027-02-13T10:00:00+00:00[Europe/London]',
  '2027-03-01T00:00:00+00:00[Europe/London]',
] as const;
