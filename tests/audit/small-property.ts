import type { Content } from '../../pipeline/model/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';

/** A day on which everything below is held that can be. */
export const SMALL_DAY = Date.parse('2027-03-30T12:00:00+01:00');

/**
 * A property with one of everything that can be held, each in words of its own. The card `w001` is
 * held whole, of `w002` only fields are, `w003` is open, and `deep` and `secret-set` leave no trace.
 */
export const SMALL_FILES: ReadonlyMap<string, string> = new Map([
  [
    'property.yaml',
    `id: small
title: The Small Lake
zone: Europe/London
since: "2026-09-01T09:00:00+01:00[Europe/London]"
levels:
  - { id: open, label: Known already }
  - { id: later, label: Chapters of autumn, lift: "2027-05-14T20:00:00+01:00[Europe/London]" }
  - { id: last, label: Chapters of winter, lift: "2027-06-04T20:00:00+01:00[Europe/London]", held: absent, announce: false }
embargoes:
  - { id: more, label: Further pens, lift: unset }
documents:
  - { id: doc-1, title: Script of the first flood, level: open }
  - { id: doc-9, title: Script of the tenth flood, level: last }
approvals: none
beats:
  - { at: 1/1, says: The tide takes the quay, level: open }
  - { at: 9/9, says: The harbour bell is melted down, level: last }
legal: { line: "© 2027 Lantern & Oar" }
site: { shows: { bio: full, art: front, facts: full, credits: full } }
`,
  ],
  [
    'names.yaml',
    `names:
  - { name: Odalys Thrane, kind: character, aliases: [Odalys, { form: Warden of Weeds, level: later }], level: open }
  - name: Ysolde Marrack
    kind: character
    aliases: [Steward Marrow]
    avoid: [{ form: Widow Marrack, use: Ysolde Marrack, why: she was never anybody's wife and script 5 says so twice }]
    say: ee-ZOL-duh
    level: last
    publicName: The voice
    except: [Ysolde Marrack Street]
  - { name: the Dipper, kind: craft, match: exact, level: last, publicName: A boat }
  - { name: Osk, kind: character, level: later, publicName: A diver }
secrets:
  - { id: kin, level: last, says: The pilot and the warden are kin, allOf: [[pilot], [kin]] }
`,
  ],
  [
    'people.yaml',
    'people:\n  - { id: jonah, name: Jonah Prewett, role: writer, clearance: last }\n',
  ],
  [
    'first/plan.yaml',
    `id: first
title: First Water
short: FW
spoiler: open
stage: writing
street: "2027-04-16T09:00:00+01:00[Europe/London]"
subsets:
  - { id: wide, title: Wide Water, group: base, numbers: { from: 1, to: 3 }, facts: [Berth] }
  - { id: codes, title: Signatures, group: autographs, numbers: { codes: [QX-77] } }
  - { id: deep, title: Rooms below, group: inserts, numbers: { prefix: D-, from: 1, to: 1 }, spoiler: last, facts: [Fathoms] }
  - { id: drawn, title: Drawn by hand, group: sketches, numbers: none, bio: none, roster: rosters/drawn.yaml }
  - { id: kept, title: Kept for later, group: sketches, numbers: none, bio: none, roster: rosters/kept.yaml, spoiler: later }
parallels:
  - { id: tarred, title: Tarred, of: [wide], tell: black edges }
  - { id: gilded, title: Gilded oars, of: [wide], tell: gold on the rowlocks, spoiler: later }
`,
  ],
  [
    'second/plan.yaml',
    `id: second
title: Unspoken Water
short: Unspoken
spoiler: last
stage: planning
subsets:
  - { id: hush, title: Hush money, group: base, numbers: { from: 1, to: 1 } }
`,
  ],
  [
    'first/rosters/drawn.yaml',
    `artists:
  - { name: Bram Ostler, state: signed }
  - { name: Corvin Delph, state: withdrawn, remark: he asked for a month that the printer could not give us }
`,
  ],
  ['first/rosters/kept.yaml', 'artists:\n  - { name: Pip Castellane, state: signed }\n'],
  [
    'first/corrections.yaml',
    `corrections:
  - { card: wide/w001, at: "2027-03-01", was: Seven lanterns, now: Eight lanterns, note: Counted again by hand }
  - { card: wide/w003, at: "2027-03-01", was: Two oars, now: Three oars }
`,
  ],
  [
    'first/sales/sheet.md',
    `---
kind: sell-sheet
title: Sheet of autumn
goes: "2027-05-20T10:00:00+01:00[Europe/London]"
spoiler: later
---
Come and see what the harbour master keeps below the third lock of the town.
`,
  ],
  [
    'first/cards/wide/w001.md',
    `---
number: "1"
name: Tern of Nine Locks
spoiler: later
publicName: The magistrate
image: { file: art/w001.svg, alt: A seal pressed into red wax }
facts: { Berth: Chamber of seals }
texts: { caption: The wax is still warm }
signers: [{ name: Rhosyn Pike, as: The Magistrate's clerk, state: signed }]
credits: [{ role: Sealing, name: Tove Lindqvist }]
variation: { of: wide/w003, letter: b, tell: The wax is green }
sources: [{ doc: doc-1, ref: the third reel of the second day when the lamp goes out, for: Berth }]
why: held back until the second printing since the wax was of the wrong colour
remark: ask Mireille whether the seal of the model is the one that burned last spring
accepted: [{ rule: alike, words: the wax, why: both cards are about the very same seal and must say so, by: jonah }]
---
The magistrate seals every lock of the town in a single night, and keeps the keys.

Nobody asks why.
`,
  ],
  [
    'first/cards/wide/w002.md',
    `---
number: "2"
name: Keeper of the Quay
spoiler: open
holds: { image.alt: later, facts.Guild: last, credits: later, signers: more }
image: { file: art/w002.svg, alt: A lamp held over black water }
facts: { Berth: Lock nine, Guild: Order of the drowned }
signers: [{ name: Barnaby Quent, state: asked }]
credits: [{ role: Lamps, name: Yewande Sorrel }]
---
The keeper lights nine windows [and puts out a tenth that nobody has ever seen lit](held:later). She sleeps by day.
`,
  ],
  [
    'first/cards/wide/w003.md',
    `---
number: "3"
name: An open boat
spoiler: open
facts: { Berth: Lock nine }
image: { file: art/w003.svg, alt: An open boat at noon }
signers: [{ name: Caspar Ellwood, state: withdrawn }]
---
An open boat is rowed over the lake at noon by whoever has the time for it today.
`,
  ],
  [
    'first/cards/codes/q077.md',
    `---
number: QX-77
name: Pen of the pilot
spoiler: later
---
`,
  ],
  [
    'first/cards/deep/d001.md',
    `---
number: D-1
name: Below the sill
spoiler: last
publicName: A closed door
---
The room below the sill is dry, and somebody has kept it so for forty years and more.
`,
  ],
]);

export const SMALL: Content = readContent(memoryFolder(SMALL_FILES));
