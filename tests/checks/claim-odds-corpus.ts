/** Whether a line is of a text that sells, or of a bio. */
export type Where = 'S' | 'B';

/**
 * Texts with the odds that they say of the set with packs, in words: `!` before what is an error, `~`
 * before what is a warning, `?` before what nothing is held to.
 */
export const ODDS: readonly (readonly [Where, string, readonly string[]])[] = [
  // 1,200 in 4,800 packs of Hobby; 150 in 1,200 of Retail.
  ['S', 'Lake Charts 1:4 packs.', ['Lake Charts 1:4 packs']],
  ['S', 'Lake Charts 1:3 Hobby packs.', ['!Lake Charts 1:3 Hobby packs']],
  ['S', 'Lake Charts 1:5 Hobby packs.', ['!Lake Charts 1:5 Hobby packs']],
  ['S', 'Lake Charts 1:8.', ['Lake Charts 1:8']],
  ['S', 'Lake Charts 1:6.', ['!Lake Charts 1:6']],
  [
    'S',
    'Lake Charts (hobby 1:4, retail 1:8).',
    ['Lake Charts (hobby 1:4', 'Lake Charts (hobby 1:4, retail 1:8'],
  ],
  [
    'S',
    'Lake Charts (hobby 1:4, retail 1:6).',
    ['Lake Charts (hobby 1:4', '!Lake Charts (hobby 1:4, retail 1:6'],
  ],
  [
    'S',
    'Lake Charts are 1:3 in hobby packs and 1:8 in retail packs.',
    [
      '!Lake Charts are 1:3 in hobby packs',
      'Lake Charts are 1:3 in hobby packs and 1:8 in retail packs',
    ],
  ],
  ['S', 'One in four packs holds a Lake Chart.', ['One in four packs holds a Lake Chart']],
  [
    'S',
    'One in three hobby packs holds a Lake Chart.',
    ['!One in three hobby packs holds a Lake Chart'],
  ],
  ['S', 'One hobby pack in three has a Lake Chart.', ['!One hobby pack in three has a Lake Chart']],
  ['S', 'Every fourth pack holds a Lake Chart.', ['Every fourth pack holds a Lake Chart']],
  [
    'S',
    'Every third pack of Hobby has a Lake Chart.',
    ['!Every third pack of Hobby has a Lake Chart'],
  ],
  ['S', 'One Lake Chart in every four packs.', ['One Lake Chart in every four packs']],
  [
    'S',
    'Lake Charts come once in every four packs, Night Signals once in eight.',
    ['Lake Charts come once in every four packs', 'Night Signals once in eight'],
  ],
  ['S', 'Look for Lake Charts at odds of 1:4.', ['Lake Charts at odds of 1:4']],
  [
    'S',
    'The odds of a Lake Chart are 1:4, of a Night Signal 1:8.',
    ['a Lake Chart are 1:4', 'a Night Signal 1:8'],
  ],
  [
    'S',
    '1:4 packs has a Lake Chart, 1:8 a Night Signal.',
    ['1:4 packs has a Lake Chart', '1:8 a Night Signal'],
  ],
  ['S', 'You have a 1-in-4 chance of a Lake Chart.', ['1-in-4 chance of a Lake Chart']],
  [
    'S',
    'There is a one-in-four chance of a Lake Chart in every pack.',
    ['one-in-four chance of a Lake Chart'],
  ],
  ['S', 'Lake Charts (LC-1 to LC-5) 1:4 packs.', ['Lake Charts (LC-1 to LC-5) 1:4 packs']],
  ['S', 'Roughly every fourth pack has a Lake Chart.', ['every fourth pack has a Lake Chart']],
  [
    'S',
    'About one in five hobby packs has a Lake Chart.',
    ['!one in five hobby packs has a Lake Chart'],
  ],
  [
    'S',
    'At least one in three hobby packs has a chart.',
    ['!one in three hobby packs has a chart'],
  ],
  // 600 in Hobby, none in Retail.
  ['S', 'Night Signals 1:8 in Retail.', ['!Night Signals 1:8 in Retail']],
  // 50 in Hobby: 1:96.
  ['S', 'Our odds are 1:96 for a Letter from the Street.', ['1:96 for a Letter from the Street']],
  ['S', 'Redemption cards 1:96 packs.', ['Redemption cards 1:96 packs']],
  ['S', 'Redemption cards 1:90 packs.', ['!Redemption cards 1:90 packs']],
  // 200, one in each of 200 boxes, ten in each of 20 cases: 1:24.
  ['S', 'An autograph a box.', ['An autograph a box']],
  ['S', 'One autograph per box!', ['One autograph per box']],
  ['S', 'At least one autograph in every box.', ['one autograph in every box']],
  ['S', 'There is an autograph in every hobby box.', ['an autograph in every hobby box']],
  ['S', 'A signature waits in every box of Hobby.', ['A signature waits in every box of Hobby']],
  ['S', 'Autographs are guaranteed: one a box.', ['Autographs are guaranteed: one a box']],
  ['S', 'Signed cards 1-in-24 packs.', ['Signed cards 1-in-24 packs']],
  ['S', 'Signatures 1:20 packs.', ['!Signatures 1:20 packs']],
  ['S', 'Signatures 1:30 packs.', ['!Signatures 1:30 packs']],
  ['S', 'Two autographs in every box.', ['!Two autographs in every box']],
  ['S', 'A case has ten autographs.', ['A case has ten autographs']],
  [
    'S',
    'Signatures: one a box, eleven a case.',
    ['Signatures: one a box', '!Signatures: one a box, eleven a case'],
  ],
  ['S', 'Up to two autographs a box.', []],
  // 100 in 4,800 packs: 1:48, of which the plan says 1:50; 1 in 2 boxes, 5 a case, by chance.
  ['S', 'Timber Relics 1:50 packs.', ['Timber Relics 1:50 packs']],
  ['S', 'Timber Relics 1:48 packs.', ['!Timber Relics 1:48 packs']],
  ['S', 'Timber Relics 1:60 packs.', ['!Timber Relics 1:60 packs']],
  ['S', 'One relic in every 24 packs.', ['!One relic in every 24 packs']],
  ['S', 'A Timber Relic in every second box.', ['A Timber Relic in every second box']],
  ['S', 'A Timber Relic in every box.', ['!A Timber Relic in every box']],
  ['S', 'A relic per case.', ['!A relic per case']],
  [
    'S',
    'There are five Timber Relics in every case, on average.',
    ['five Timber Relics in every case'],
  ],
  ['S', 'One Timber Relic in every five boxes.', ['~One Timber Relic in every five boxes']],
  // 20, one in each of 20 cases: 1:240.
  ['S', 'A sketch card in every case.', ['A sketch card in every case']],
  ['S', 'One sketch card per box.', ['!One sketch card per box']],
  ['S', 'One in ten boxes has a sketch card.', ['One in ten boxes has a sketch card']],
  ['S', 'One in five boxes has a sketch card.', ['!One in five boxes has a sketch card']],
  ['S', 'Sketch Cards 1:500 packs.', ['~Sketch Cards 1:500 packs']],
  ['S', 'Sketch Cards 1:250 packs.', ['!Sketch Cards 1:250 packs']],
  // 200, 100 and 20 together: 320 in 200 boxes, one of them sure.
  ['S', 'One hit in every box.', ['One hit in every box']],
  ['S', 'Two hits a box.', ['!Two hits a box']],
  ['S', 'Two hits a box, on average.', ['!Two hits a box']],
  ['S', 'Three hits in two boxes.', []],
  [
    'S',
    'Hits (autographs, relics or sketch cards) 1:15 packs.',
    ['Hits (autographs, relics or sketch cards) 1:15 packs'],
  ],
  // 1,200 and 600 together: three in eight packs; with the 50 Letters 1,850 in 4,800.
  [
    'S',
    'A Lake Chart or a Night Signal in every third pack.',
    ['A Lake Chart or a Night Signal in every third pack'],
  ],
  [
    'S',
    'A Lake Chart or a Night Signal in every second pack.',
    ['!A Lake Chart or a Night Signal in every second pack'],
  ],
  ['S', 'An insert in every third pack.', ['An insert in every third pack']],
  ['S', 'An insert in every second pack.', ['!An insert in every second pack']],
  [
    'S',
    'Three in every eight packs hold an insert.',
    ['Three in every eight packs hold an insert'],
  ],
  [
    'S',
    'Lake Charts, Night Signals and Letters 1:3 packs together.',
    ['Lake Charts, Night Signals and Letters 1:3 packs'],
  ],
  // 2,400 Tarred and 96 Brass-Nailed in Hobby; 1,200 Lamplit in 1,200 packs of Retail.
  ['S', 'Tarred cards in every other pack.', ['Tarred cards in every other pack']],
  ['S', 'Two Tarred cards a pack.', ['!Two Tarred cards a pack']],
  ['S', 'Numbered cards 1:50 packs.', ['Numbered cards 1:50 packs']],
  ['S', 'Numbered cards: one in 40 packs.', ['!Numbered cards: one in 40 packs']],
  ['S', 'Parallels 1:2 packs.', ['Parallels 1:2 packs']],
  [
    'S',
    'Brass-Nailed cards are found in about one in 48 packs.',
    ['Brass-Nailed cards are found in about one in 48 packs'],
  ],
  ['S', 'A Brass-Nailed card in every second box.', ['!A Brass-Nailed card in every second box']],
  ['S', 'One Lamplit card in every retail pack.', ['One Lamplit card in every retail pack']],
  ['S', 'One Lamplit card in every hobby pack.', ['!One Lamplit card in every hobby pack']],
  // Several in one sentence.
  [
    'S',
    'Lake Charts in one pack of four, on average; one signature in every box.',
    ['Lake Charts in one pack of four', 'one signature in every box'],
  ],
  [
    'S',
    'Each hobby box holds one autograph, and each case a sketch card.',
    ['Each hobby box holds one autograph', 'each case a sketch card'],
  ],
  [
    'S',
    'Hobby: Signatures 1:24, Timber Relics 1:50. Retail: Lake Charts 1:8, Signatures 1:24.',
    ['Signatures 1:24', 'Timber Relics 1:50', 'Lake Charts 1:8', '!Signatures 1:24'],
  ],
  [
    'S',
    'Every box has an autograph and a Timber Relic.',
    ['Every box has an autograph', '!Every box has an autograph and a Timber Relic'],
  ],
  [
    'S',
    'Lake Charts (1:4 hobby; 1:7 retail)',
    ['Lake Charts (1:4 hobby', '!Lake Charts (1:4 hobby; 1:7 retail'],
  ],
  ['S', 'Relics are 1 per 50 packs (not in Retail).', ['Relics are 1 per 50 packs']],
  ['S', 'Look for Brass-Nailed one-of-ones, 1:40.', ['!Brass-Nailed one-of-ones, 1:40']],
  [
    'S',
    'Chase the Brass-Nailed parallels, numbered to 12: one in 40 packs.',
    ['!Brass-Nailed parallels, numbered to 12: one in 40 packs'],
  ],
  [
    'S',
    'On average there is a Lake Chart in one pack of four, and in every box there is one signature.',
    ['a Lake Chart in one pack of four', 'every box there is one signature'],
  ],
  [
    'S',
    'Autographs: 1 per box; relics: 2 per box; sketch cards: 1 per case.',
    ['Autographs: 1 per box', '!relics: 2 per box', 'sketch cards: 1 per case'],
  ],
  // What lies beside the packs, or is the rest of them.
  ['S', 'A box topper in every box.', []],
  ['S', 'Five base cards in every pack.', []],
  // Bios.
  [
    'B',
    'One hobby pack in eight holds a Night Signal.',
    ['One hobby pack in eight holds a Night Signal'],
  ],
  [
    'B',
    'One hobby pack in five holds a Night Signal card.',
    ['!One hobby pack in five holds a Night Signal card'],
  ],
  ['B', 'Look for a signed card in every box.', ['a signed card in every box']],
  ['B', 'Look for two signed cards in every box.', ['!two signed cards in every box']],
];

/** Texts that say no odds of the set. */
export const NO_ODDS: readonly (readonly [Where, string])[] = [
  ['S', 'The show starts at 1:24 in the morning.'],
  ['S', 'Mix the tar 1:4 with oil.'],
  ['S', 'A bell rings in every pack of the night.'],
  ['S', 'Look for a chart in every boat and a lamp in every box.'],
  ['S', 'Open a box and there is a bell.'],
  ['S', 'One in four boats is late.'],
  ['S', 'One in three umbrellas leaks, and every tenth hat has a hole.'],
  ['S', 'There are six cards in every pack, all of them dry.'],
  ['S', '24 packs a box, ten boxes a case.'],
  ['S', 'They are in no pack.'],
  ['S', 'This wrapper holds a small part of Nine Locks.'],
  ['S', 'The Lake Charts were drawn in one night in four.'],
  ['S', 'Every pack is a letter from the lake.'],
  ['S', 'There is a signature on every pack.'],
  ['S', 'There is a chart of what lies below in one pack of four.'],
  ['S', 'No pack holds two Lake Charts.'],
  ['S', 'Each box measures 5 × 7 inches.'],
  ['B', 'One in four boats is late.'],
  ['B', 'One in four boats carries a relic.'],
  ['B', 'She hid a letter in every box.'],
  ['B', 'A relic lay in every box, and a bell in every case.'],
  ['B', 'There is a chart in every box on the quay.'],
  ['B', 'Every case of lamps has two signatures on the lid.'],
  ['B', 'He keeps one signal in every box.'],
  ['B', 'Old Pell puts a letter in each packet of tea.'],
  ['B', 'Ten to one it rains; one in three umbrellas leaks.'],
  ['B', 'The tide table says 1:24, the clock says 1:4.'],
  ['B', 'A pack of nine dogs followed the ferry, one in three of them wet.'],
  ['B', 'One pack in two was soaked, and every box had a hole.'],
  ['B', 'Twice a case of charts has gone into the lake.'],
  ['B', 'Each box of matches holds forty, and one in ten lights.'],
  ['B', 'Dace sold one box in four, and kept the autographs.'],
  ['B', 'In every case there is a lamp, in every lamp a wick.'],
  ['B', 'The ferry carries one relic per trip.'],
  ['B', 'One sketch in ten is of a cat.'],
];
