/**
 * What the demo's public list is to be at six instants. Every figure and name here was worked out
 * from the cards' own holds and the lifts of `property.yaml`, with a pencil; nothing was copied from
 * an output.
 */

/** The instants, in their order, as RFC 9557 strings. */
export const INSTANTS = [
  // Before anything has lifted. *Depth Charts* is in shops.
  '2026-12-02T12:00:00+00:00[Europe/London]',
  // The fair opens, and with it the one embargo that has an hour of its own.
  '2027-02-13T10:00:00+00:00[Europe/London]',
  // *High Water* is in shops; the first episodes are on air eleven hours later.
  '2027-04-16T09:00:00+01:00[Europe/London]',
  '2027-04-16T20:00:00+01:00[Europe/London]',
  // Episodes 4 to 7.
  '2027-05-14T20:00:00+01:00[Europe/London]',
  // The day after the last episodes.
  '2027-06-05T12:00:00+01:00[Europe/London]',
] as const;

/** One value for each instant. */
export type AtEach<T> = readonly [T, T, T, T, T, T];

/** The latest step of time at each instant: all that the list may know of the clock. */
export const AS_OF: AtEach<string> = [
  // The street instant of *Depth Charts*.
  '2026-10-02T09:00:00+01:00[Europe/London]',
  '2027-02-13T10:00:00+00:00[Europe/London]',
  '2027-04-16T09:00:00+01:00[Europe/London]',
  '2027-04-16T20:00:00+01:00[Europe/London]',
  '2027-05-14T20:00:00+01:00[Europe/London]',
  '2027-06-04T20:00:00+01:00[Europe/London]',
];

/**
 * Cards shown / placeholders / not issued. `-` where a subset leaves no trace. A variation is a card
 * of its own here.
 */
export const COUNTS: Readonly<Record<string, AtEach<string>>> = {
  'depth-charts/depths': ['36/0/0', '36/0/0', '36/0/0', '36/0/0', '36/0/0', '36/0/0'],
  // 48 numbers and 17 b. `shops`: 12, 18, 29, 43, 45, 46, 47. `premiere`: 13, 19, 30, 36, 38, 42, 48.
  // Numbers 8, 9 and 17 are open, with a field or the name held.
  'high-water/crew': ['35/14/0', '35/14/0', '42/7/0', '49/0/0', '49/0/0', '49/0/0'],
  // Open: 49 to 53. `shops`: 54 to 58 and 61. The other 24 are `premiere`: such a card is in
  // somebody's hands at 09:00, and on the list at 20:00.
  'high-water/story': ['5/30/0', '5/30/0', '11/24/0', '35/0/0', '35/0/0', '35/0/0'],
  'high-water/checklist': ['1/0/0', '1/0/0', '1/0/0', '1/0/0', '1/0/0', '1/0/0'],
  // LC-6 is `shops`, LC-7 and LC-8 are `premiere`.
  'high-water/charts': ['5/3/0', '5/3/0', '6/2/0', '8/0/0', '8/0/0', '8/0/0'],
  // MB-3 and MB-5 are `shops`.
  'high-water/benches': ['10/2/0', '10/2/0', '12/0/0', '12/0/0', '12/0/0', '12/0/0'],
  // `shops`: NS-7 and NS-10. `premiere`: NS-3, NS-11, NS-13, NS-14, NS-15.
  'high-water/signals': ['9/7/0', '9/7/0', '11/5/0', '16/0/0', '16/0/0', '16/0/0'],
  // All `spring`. They ship on 5 June, which holds nothing on the list.
  'high-water/letters': ['0/6/0', '0/6/0', '0/6/0', '0/6/0', '6/0/0', '6/0/0'],
  // NG-1 is `finale`, which is absent: there is no subset before it opens.
  'high-water/loose': ['-', '-', '-', '-', '-', '1/0/0'],
  // SG-5 is `shops`; SG-12 waits for a contract and has no day.
  'high-water/signatures': ['10/2/0', '10/2/0', '11/1/0', '11/1/0', '11/1/0', '11/1/0'],
  // A roster has no cards.
  'high-water/sketches': ['0/0/0', '0/0/0', '0/0/0', '0/0/0', '0/0/0', '0/0/0'],
  // TR-2 is `premiere`, TR-6 is `shops`, and TR-4 was not issued.
  'high-water/relics': ['3/2/1', '3/2/1', '4/1/1', '5/0/1', '5/0/1', '5/0/1'],
  // FP-4 is `shops`.
  'high-water/toppers': ['3/1/0', '3/1/0', '4/0/0', '4/0/0', '4/0/0', '4/0/0'],
  // P-2 is handed out at the fair, from the minute at which it opens.
  'high-water/promos': ['1/1/0', '2/0/0', '2/0/0', '2/0/0', '2/0/0', '2/0/0'],
};

/**
 * Cards listed in each set: shown and placeholders, with the variation and without what was not
 * issued. 49 + 35 + 1 + 8 + 12 + 16 + 6 + 12 + 5 + 4 + 2 = 150, and NG-1 once it is there.
 */
export const LISTED: Readonly<Record<string, AtEach<number>>> = {
  'depth-charts': [36, 36, 36, 36, 36, 36],
  'high-water': [150, 150, 150, 150, 150, 151],
};

/**
 * The parallels told. Lamplit is under `shop-exclusive` until 1 March, a day between the second
 * instant and the third.
 */
export const PARALLELS: readonly string[] = from(
  2,
  'tarred varnished brass-nailed keel plates lamplit',
  'tarred varnished brass-nailed keel plates',
);

/** Artists told of 21: one withdrew, and two were asked and have not answered. */
export const ARTISTS = 18;

/** What a list says of a card: its name, and from when a placeholder is more than that. */
export const TELLING: Readonly<Record<string, readonly string[]>> = {
  // The card is open from the first day; only its name and picture are not.
  'crew 9': from(2, 'Magistrate Tern', 'The magistrate'),
  'crew 17 b': from(0, 'Odalys Thrane'),
  // In somebody's hands at 09:00, and on the list at 20:00.
  'charts LC-8': from(3, 'The Eighth Gate', 'The last chart, until 2027-04-16T20:00'),
  'letters LD-1': from(
    4,
    'The Letter Under the Stair',
    'To whoever lifts this, until 2027-05-14T20:00',
  ),
  'loose NG-1': from(5, 'The Ninth Gate', '-'),
  // A code is held with its card. The list never has this one, and ends with a card without number,
  // name or day instead.
  'signatures SG-12': from(0, '-'),
  'signatures without number': from(
    2,
    'To be revealed, without a day',
    'Somebody with a dry cough, until 2027-04-16T09:00; To be revealed, without a day',
  ),
  'relics TR-4': from(0, 'Plank of the Argument, not issued'),
  'promos P-2': from(1, 'Lanterns Out', 'To be revealed, until 2027-02-13T10:00'),
};

/** One thing from an instant of the list on, and another before it. */
function from(index: number, then: string, before = ''): readonly string[] {
  return INSTANTS.map((_, at) => (at < index ? before : then));
}
