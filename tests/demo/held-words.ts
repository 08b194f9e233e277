import type { AtEach } from './instants.js';

/**
 * Words that stand in the content, by the first of the instants at which a byte of the site may have
 * them. They are in letters that no format escapes.
 */
export const HELD_WORDS: AtEach<readonly string[]> = [
  [],
  ['Lanterns Out', 'as freckled as it was'],
  [
    'Lamplit',
    'glow in the dark',
    'Magistrate Tern',
    'Osk Ferrant',
    'Perrin Loach',
    'Wet Blanket',
    'Una Tasker',
    'Ferris Bold',
    'Evander Sloame',
    'SG-5',
    'One Hundred Hands',
    'Mouths in a Tray',
    'one of them a little too high',
    'Drawing Lots for Timber',
    // The pictures of two cards that are open otherwise.
    'A pilot at the wheel of a night ferry',
    'A very tall hat, and below it',
    'First cards',
  ],
  [
    'Seven Doors',
    'Eighth Gate',
    'Marget Lull',
    'Soft Landing',
    'Saul Hitchin',
    'Tobias Nettle',
    'Elva Crake',
    'Rubber Stamp',
    'No Light at All',
    'Eight, Not Nine',
    'Forty-One Ashore',
    // Spans on cards that show before them.
    'without a licence',
    'a rule about the dark already written',
    'Episodes 1 to 3',
  ],
  [
    'Pellam Strood',
    'Duchess',
    'The Letter Under the Stair',
    'second best marble',
    'Supper was at six',
    'Episodes 4 to 7',
  ],
  [
    'Ysolde',
    'Marrack',
    'Ninth Gate',
    'NG-1',
    'The ninth key',
    'The lake can fall',
    'your brother',
    'the ink was a week old',
    'the first wet chimney',
    'Later episodes',
    '2027-06-04',
  ],
];

/** Words that stand in the content and never in a site. */
export const NEVER_WORDS = [
  // Of SG-12, which has no day.
  'Barnaby',
  'Barnaby Quent',
  'SG-12',
  'a real ladder in the recording booth',
  // Who withdrew, and who has not signed.
  'Caspar Ellwood',
  'Hamish Tarrow',
  'Philippa Zeal',
  // What the house keeps to itself.
  'turned out to be from another boat',
  'timber book, TR-1',
  'Planned as a dual',
  'harbour-map',
  'script-5',
  'cut-7',
  'still 9012',
  'crew/c017',
  'Henrike Vale',
  'Amara Linde',
  'second-signers',
  'More signers',
  'shop-exclusive',
  'Shop exclusives',
  'The winter fair',
  // A day of delivery is told to reviewers alone.
  '2027-06-05',
] as const;
