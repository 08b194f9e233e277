import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { edited } from '../../pipeline/checks/sample.js';
import { view } from '../../pipeline/gate/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import { ownBrief, type OwnBrief } from '../../pipeline/out/brief/index.js';
import { diskFolder, memoryFolder, readContent } from '../../pipeline/read/index.js';
import { briefFor, type PersonBriefing } from '../../pipeline/release/index.js';
import { select, type Released } from '../../pipeline/select/index.js';
import { diceOf, draftOf, inSomeOrder } from '../law/edit.js';
import type { Eye } from '../law/held.js';
import { editsFor } from '../law/hidden-edits.js';
import { audienceOf, releasedOf, viewText } from '../law/outputs.js';
import type { Plain } from '../law/plain.js';
import { looking } from '../law/property.js';

const BEFORE = instantOf('2026-10-01T12:00:00+01:00[Europe/London]');
const LATER = instantOf('2027-04-17T12:00:00+01:00[Europe/London]');
const LAST = instantOf('2027-06-05T12:00:00+01:00[Europe/London]');

const FILES: Files = {
  'people.yaml': `people:
  - { id: jonah, name: Jonah <Prewett>, role: writer, clearance: later }
  - { id: amara, name: Amara Linde, role: licensor, clearance: last, knows: [guest] }
  - { id: nobody, name: Nell Ode, role: publisher, clearance: open }
  - { id: desk, name: Orrin Vetchley, role: likeness, clearance: last, knows: [guest], sees: { subset: [base] } }
`,
  'names.yaml': `names:
  - { name: Tamsin Oakum, kind: character, level: open, aliases: [Tam, { form: Captain Oakum, level: later }] }
  - { name: Ysolde Marrack, kind: character, level: last, say: ee-SOLD }
  - { name: Pim, kind: character, level: open, embargo: [guest] }
  - { name: Old Pell, kind: character, level: later }
`,
  ...edited(
    'one/cards/base/a1.md',
    [
      'spoiler: open',
      'spoiler: open\nfacts: { Berth: The quay, Keeper: Tamsin }\nholds: { facts.Keeper: later }',
    ],
    ['stands in water to the knee.', 'stands in [water](held:later) to the knee.'],
  ),
  ...edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: later\npublicName: A lamp']),
  ...edited('one/cards/extra/b1.md', ['spoiler: open', 'spoiler: last']),
  ...edited('one/plan.yaml', [
    'totals:',
    'parallels:\n  - { id: wet, title: Wet, of: [base], spoiler: later }\ntotals:',
  ]),
};

function released(files: Files = FILES): Released {
  const content = readContent(memoryFolder(sampleWith(files)));
  const found = select(content);
  if (!found) throw new Error(JSON.stringify(content.faults.map(({ message }) => message)));
  return found;
}

function personOf({ people }: Released, id: string): Released['people'][number] {
  const found = people.find((person) => person.id === id);
  if (!found) throw new Error(`nobody is called ${id}`);
  return found;
}

function ownOf(id: string, at = BEFORE, files = FILES): OwnBrief {
  const all = released(files);
  const person = personOf(all, id);
  const own = view(all, { kind: 'person', person, at });
  const bare = { ...person, clearance: 'open', knows: [] };
  const anybody = view(all, { kind: 'person', person: bare, at });
  if (!own || !anybody) throw new Error('they see something');
  return ownBrief(own, anybody);
}

const briefing = (id: string, at: number, now = BEFORE): PersonBriefing => {
  const all = released();
  return briefFor(all, personOf(all, id), { at, now });
};

describe('what a person must keep to themselves', () => {
  test('is what they are cleared for and the public does not know by then', () => {
    expect(ownOf('jonah')).toEqual({
      person: 'Jonah <Prewett>',
      names: [
        { name: 'Old Pell', aliases: [], say: null },
        { name: 'Tamsin Oakum', aliases: ['Captain Oakum'], say: null },
      ],
      subjects: [
        'Base, 1 The Quay: its text, where words are held; Keeper',
        'Base, 2 The Lamp',
        'One: the parallel Wet',
      ],
      stack: [{ set: 'One', subset: 'Base', cards: ['1', '2'] }],
    });
  });

  test('is more for whoever is cleared for more, and less once it has lifted', () => {
    const amara = ownOf('amara');
    expect(amara.names.map(({ name }) => name)).toEqual([
      'Old Pell',
      'Pim',
      'Tamsin Oakum',
      'Ysolde Marrack',
    ]);
    expect(amara.stack).toEqual([
      { set: 'One', subset: 'Base', cards: ['1', '2'] },
      { set: 'One', subset: 'Extra', cards: ['X-1'] },
    ]);
    expect(ownOf('amara', LATER)).toEqual({
      person: 'Amara Linde',
      names: [
        { name: 'Pim', aliases: [], say: null },
        { name: 'Ysolde Marrack', aliases: [], say: 'ee-SOLD' },
      ],
      subjects: ['Extra, X-1 The Chart'],
      stack: [{ set: 'One', subset: 'Extra', cards: ['X-1'] }],
    });
    expect(ownOf('amara', LAST).stack).toEqual([]);
  });

  test('takes out of a stack what everybody sees to be held, and tells no more of it', () => {
    expect(ownOf('nobody')).toEqual({
      person: 'Nell Ode',
      names: [],
      subjects: [],
      stack: [{ set: 'One', subset: 'Base', cards: ['1', '2'] }],
    });
  });

  test('takes out a card of which the whole text is held', () => {
    const held = edited('one/cards/base/a1.md', [
      'spoiler: open',
      'spoiler: open\nholds: { bio: later }',
    ]);
    const files = { ...FILES, ...held };
    expect(ownOf('nobody', BEFORE, files).stack).toEqual([
      { set: 'One', subset: 'Base', cards: ['1', '2'] },
    ]);
    expect(ownOf('jonah', BEFORE, files).subjects[0]).toBe(
      'Base, 1 The Quay: its text, where words are held',
    );
  });

  test('is not made of other views', () => {
    const all = released();
    const shown = view(all, { kind: 'public', at: BEFORE });
    const own = view(all, { kind: 'person', person: personOf(all, 'jonah'), at: BEFORE });
    const other = view(all, { kind: 'person', person: personOf(all, 'amara'), at: BEFORE });
    const house = view(all, { kind: 'house' });
    if (!shown || !own || !other || !house) throw new Error('all see something');
    for (const pair of [
      [shown, shown],
      [house, house],
      [own, other],
      [own, shown],
    ] as const) {
      expect(() => ownBrief(...pair)).toThrow(RangeError);
    }
  });
});

describe('the page for a person', () => {
  test('has what the public may hear, and theirs', () => {
    const made = briefing('jonah', BEFORE);
    if (!made.ok) throw new Error(made.why);
    expect(made.page).toContain('<p class="not-yet">For Jonah &lt;Prewett&gt; alone.</p>');
    expect(made.page).toContain(`<section class="own">
<h2>What not to raise</h2>
<p>For Jonah &lt;Prewett&gt; alone: you know of it, and the public does not by then.</p>
<h3>Names</h3>
<ul>
<li><b>Old Pell</b></li>
<li><b>Tamsin Oakum</b>; Captain Oakum</li>
</ul>
<h3>Subjects</h3>
<ul>
<li>Base, 1 The Quay: its text, where words are held; Keeper</li>
<li>Base, 2 The Lamp</li>
<li>One: the parallel Wet</li>
</ul>
</section>
<section class="own">
<h2>What to take out of a stack opened on camera</h2>
<table><tbody>
<tr><th scope="row">One: Base</th><td>1, 2</td></tr>
</tbody></table>
</section>
`);
    expect(made.page).toContain('The checklist of One lists two cards.');
    expect(made.page).not.toMatch(/Ysolde|Pim|X-1|Extra, /);
  });

  test('is refused where what may be said by then would tell them of it today', () => {
    const why = { ok: false, why: 'not cleared by then' };
    expect(briefing('jonah', LATER).ok).toBe(true);
    expect(briefing('jonah', LAST)).toEqual(why);
    expect(briefing('nobody', LATER)).toEqual(why);
    expect(briefing('nobody', LATER, LATER).ok).toBe(true);
    expect(briefing('amara', LAST).ok).toBe(true);
    expect(briefing('desk', LAST)).toEqual({ ok: false, why: 'sees some cards' });
    expect(briefing('desk', LAST, LAST).ok).toBe(true);
    const summer = instantOf('2026-08-01T12:00:00+01:00[Europe/London]');
    expect(briefing('amara', summer)).toEqual({ ok: false, why: 'nothing public' });
  });

  test('of the demo tells nobody of what they are not cleared for', () => {
    const all = select(readContent(diskFolder('content')));
    if (!all) throw new Error('the demo can be read');
    const now = instantOf('2027-03-30T12:00:00+01:00[Europe/London]');
    const pageOf = (id: string): string => {
      const made = briefFor(all, personOf(all, id), { at: now, now });
      return made.ok ? made.page : made.why;
    };
    const held = /Ysolde|Marrack|Ninth Gate|NG-1|Pellam|Strood|Barnaby|Quent|SG-12/;
    expect(pageOf('amara')).toMatch(held);
    expect(pageOf('tobit')).not.toMatch(held);
    expect(pageOf('tobit')).toContain('LC-8 The Eighth Gate');
    expect(pageOf('ines-desk')).not.toMatch(/LC-8 The Eighth Gate|Osk Ferrant/);
  });
});

/** The page for the person who looks, or why there is none. */
function pageFor(plain: Plain, eye: Eye, at = eye.at): string {
  const audience = audienceOf(plain, eye);
  if (audience.kind !== 'person') throw new Error('a person looks');
  const made = briefFor(releasedOf(plain), audience.person, { at, now: eye.at });
  return made.ok ? made.page : made.why;
}

/** What everybody sees: an edit that changes it is hidden from nobody. */
const publicText = (plain: Plain, { at }: Eye): string =>
  viewText(view(releasedOf(plain), { kind: 'public', at }));

test('edits above the clearance leave the page as it is', { timeout: 120_000 }, () => {
  const edits = editsFor('person');
  const tally = { applied: 0, told: 0 };
  fc.assert(
    fc.property(looking('person'), fc.nat(), ({ plain, eye }, seed) => {
      const before = pageFor(plain, eye);
      const shown = publicText(plain, eye);
      if (/<li>|<td>/.test(before)) tally.told += 1;
      for (const { name, change } of inSomeOrder(edits, seed).slice(0, 12)) {
        const draft = draftOf(plain);
        if (!change(draft, eye, diceOf(seed, name)) || publicText(draft, eye) !== shown) continue;
        tally.applied += 1;
        expect(pageFor(draft, eye), name).toBe(before);
      }
    }),
    { numRuns: 60, endOnFailure: true },
  );
  // It is no test if nothing is hidden or nothing is told.
  expect(tally.applied).toBeGreaterThan(300);
  expect(tally.told).toBeGreaterThan(20);
});
