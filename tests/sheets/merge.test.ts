import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { MergeError, mergeTable } from '../../pipeline/out/sheets/index.js';
import { demoFiles, withEdit } from '../demo/copy.js';
import { DEMO_NOW } from '../demo/day.js';
import { HOUSE, personAt, publicAt, seen } from '../gate/support.js';
import { cardOf, example, exampleWith, say } from '../law/example.js';
import type { Plain } from '../law/plain.js';
import { csvOf, recordsOf, released, viewOf } from './support.js';

const demo = demoFiles({ art: true });
const DEMO = released(demo);

/** How many cards of a set are issued. */
function cardsIn(set: string): number {
  return cardsOf(set).filter(({ front }) => front.issued !== 'no').length;
}

/** The texts that cards of a set have, as fields of a merge file. */
function textsIn(set: string): readonly string[] {
  const zones = cardsOf(set).flatMap(({ front }) => Object.keys(front.texts ?? {}));
  return [...new Set(zones)].map((zone) => `texts.${zone}`).sort();
}

function cardsOf(set: string) {
  return DEMO.sets.filter(({ id }) => id === set).flatMap(({ cards }) => cards);
}

/** The demo with a `merge` in the plan of one set. */
function withMerge(set: string, merge: string) {
  return withEdit(demo, `${set}/plan.yaml`, 'stage: ', `merge: ${merge}\nstage: `);
}

function person(id: string) {
  const found = DEMO.people.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`nobody is called ${id}`);
  return { kind: 'person', person: found, at: DEMO_NOW } as const;
}

describe('the merge file of the house', () => {
  test('has the columns of the plan, and the cells of each card', () => {
    const files = withMerge(
      'depth-charts',
      '{ columns: [{ column: No., from: number }, { column: Title, from: name }, { column: Depth, from: facts.Depth }, { column: "@Art", from: art }, { column: Back, from: back }, { column: Level, from: level }] }',
    );
    const lines = csvOf(viewOf(released(files), HOUSE), { set: 'depth-charts' }).split('\r\n');
    expect(lines).toHaveLength(cardsIn('depth-charts') + 2);
    expect(lines.slice(0, 7)).toStrictEqual([
      'No.,Title,Depth,@Art,Back,Level,"INTERNAL, up to: Later episodes"',
      '1,The Overmere,"Ninety-one fathoms, so far",depth-charts/art/d001.svg,standard,Known from the trailers,',
      '2,Nine Locks,"Two streets, and counting",depth-charts/art/d002.svg,standard,Known from the trailers,',
      '3,The Spring Rise,One hand,depth-charts/art/d003.svg,standard,Known from the trailers,',
      '4,A House Becomes a Boat,Draws two bricks,depth-charts/art/d004.svg,standard,Known from the trailers,',
      '5,Thimble Quay,One fathom at the steps,depth-charts/art/d005.svg,standard,Known from the trailers,',
      '6,The Lamp Tender’s Round,"Forty lamps, none of them wet yet",depth-charts/art/d006.svg,standard,Known from the trailers,',
    ]);
  });

  test('has every card of the demo that is issued, whole', () => {
    const records = recordsOf(csvOf(viewOf(DEMO, HOUSE)));
    const cards = DEMO.sets.flatMap((set) => set.cards);
    const issued = cards.filter(({ front }) => front.issued !== 'no');
    expect(issued.length).toBeGreaterThan(60);
    expect(issued.length).toBeLessThan(cards.length);
    expect(records).toHaveLength(issued.length);
    expect(records.map((record) => record['name']).sort()).toStrictEqual(
      issued.map(({ front }) => front.name).sort(),
    );
    const bios = issued.map(({ bio }) =>
      bio
        .flatMap((runs) => [...runs.map((run) => run.text), ' '])
        .join('')
        .replace(/\s+/g, ' ')
        .trim(),
    );
    expect(records.map((record) => record['bio']).sort()).toStrictEqual(bios.sort());
  });

  test('fills one column of two sets from what each plan names', () => {
    const files = new Map([
      ...withMerge('depth-charts', '{ columns: [{ column: Title, from: name }] }'),
      [
        'high-water/plan.yaml',
        String(
          withMerge(
            'high-water',
            '{ columns: [{ column: Title, from: subset }, { column: No., from: number }] }',
          ).get('high-water/plan.yaml'),
        ),
      ],
    ]);
    const records = recordsOf(csvOf(viewOf(released(files), HOUSE)));
    expect(records[0]).toMatchObject({ Title: 'The Overmere', 'No.': '' });
    expect(records[cardsIn('depth-charts')]).toMatchObject({
      Title: 'Crew and Craft',
      'No.': '1',
    });
  });

  test('is refused if two columns have one heading, and tells of a column without a cell', () => {
    const twice = '{ columns: [{ column: A, from: name }, { column: A, from: bio }] }';
    expect(() => mergeTable(viewOf(released(withMerge('depth-charts', twice)), HOUSE))).toThrow(
      new MergeError(
        'depth-charts/plan.yaml: two columns of `merge` are called A. Give each its own name.',
      ),
    );
    const misspelt = '{ columns: [{ column: A, from: name }, { column: D, from: facts.Deptj }] }';
    const { empty } = mergeTable(viewOf(released(withMerge('depth-charts', misspelt)), HOUSE), {
      set: 'depth-charts',
    });
    expect(empty).toStrictEqual(['D']);
  });
});

describe('the usual columns', () => {
  test('are those that occur', () => {
    const { headings, mark } = mergeTable(viewOf(DEMO, HOUSE), { set: 'depth-charts' });
    expect(headings).toStrictEqual(['number', 'name', 'subset', 'bio', 'facts.Depth', 'legal']);
    expect(mark).toBe('INTERNAL, up to: Later episodes');
  });

  test('of several sets begin with the set', () => {
    const { headings } = mergeTable(viewOf(DEMO, HOUSE));
    expect(headings).toStrictEqual([
      'set',
      'number',
      'name',
      'subset',
      'bio',
      'facts.Depth',
      'facts.Berth',
      ...textsIn('high-water'),
      'credits',
      'legal',
    ]);
  });
});

describe('the merge file of a person', () => {
  test('is what they are sent, under the names of the fields, with whom it is for', () => {
    const files = withMerge('high-water', '{ columns: [{ column: Told by Ysolde, from: bio }] }');
    expect(csvOf(viewOf(released(files), person('ines-desk')))).toBe(
      'number,name,subset,texts.caption,legal,For Orrin Vetchley\r\n' +
        'SG-1,Ines Albarran,Signatures,' +
        'She speaks so softly that the crew hung a microphone from her hat.,© 2027 Lantern & Oar,\r\n',
    );
  });

  test.each(['wilf', 'jonah', 'tobit'])('%s reads no held word', (id) => {
    const { clearance, knows = [] } = person(id).person;
    const { property, names, sets } = DEMO;
    const levels = property.levels.map((level) => level.id);
    const isHeld = (hold: string): boolean =>
      levels.includes(hold)
        ? levels.indexOf(hold) > levels.indexOf(clearance)
        : !knows.includes(hold);
    const forms = names
      .filter(({ level, embargo = [] }) => [level, ...embargo].some(isHeld))
      .map(({ name }) => name);
    const bios = sets
      .flatMap(({ cards }) => cards)
      .flatMap(({ bio, front }) =>
        bio.flat().filter((run) => [front.spoiler, run.hold ?? 'open'].some(isHeld)),
      )
      .map((run) => run.text.trim())
      .filter((text) => text.length > 15);
    const house = csvOf(viewOf(DEMO, HOUSE));
    const told = [...forms, ...bios].filter((words) => house.includes(words));
    expect(told.length).toBeGreaterThan(5);
    const cut = csvOf(viewOf(DEMO, person(id)));
    expect(told.filter((words) => cut.includes(words))).toStrictEqual([]);
    expect(recordsOf(cut).length).toBeGreaterThan(55);
  });

  test('shows what is held by the one mark, and a placeholder by its public name', () => {
    const plain = exampleWith(
      cardOf('crew', 'c001', { number: '1' }, [say('A bell.'), say('Nobody rings.', 'spring')]),
      cardOf('crew', 'c002', { number: '2', holds: { bio: 'spring' } }, [say('Words.')]),
      cardOf('crew', 'c003', { number: '3', spoiler: 'spring', publicName: 'A lamp' }, [say('X')]),
    );
    const person = { ...plain.people.people[0], clearance: 'shops' };
    const lower: Plain = { ...plain, people: { people: [Object.assign(person, PERSON)] } };
    const records = recordsOf(csvOf(seen(lower, personAt(lower, 'pip', 5))));
    expect(records.map(({ number, name, bio }) => [number, name, bio])).toStrictEqual([
      ['1', 'Name of c001', 'A bell. [to be revealed]'],
      ['2', 'Name of c002', '[to be revealed]'],
      ['3', 'A lamp', ''],
    ]);
  });
});

const PERSON = { id: 'pip', name: 'Pip', role: 'writer' } as const;

describe('the merge file of the public', () => {
  test('has no mark, but that of a preview', () => {
    const made = seen(example(), publicAt(41));
    expect(mergeTable(made).mark).toBeNull();
    expect(mergeTable(made, { preview: true }).mark).toMatch(
      /^Preview, not to be passed on before \d+ \w+ 20\d\d, \d\d:\d\d$/,
    );
    expect(mergeTable(made).headings).not.toContain('art');
  });
});

describe('a cell', () => {
  const one = (text: string, merge = '') => {
    const plain = exampleWith(cardOf('crew', 'c001', { number: '1', facts: { Berth: text } }));
    const [set] = plain.sets;
    if (set && merge !== '') {
      set.plan.merge = { columns: [{ column: 'Berth', from: 'facts.Berth' }], paragraph: merge };
    }
    return mergeTable(seen(plain, HOUSE));
  };
  const berth = (text: string, merge = ''): string => {
    const { headings, rows } = one(text, merge || ' ');
    return rows[0]?.[headings.indexOf('Berth')] ?? '';
  };

  test.each([
    ['a\nb', 'a b'],
    ['a\r\n\r\nb', 'a b'],
    ['\n a \n \n\n b\tc \n', 'a b c'],
    ['a\u2028b\u0085c', 'a b c'],
    ['\n\n', ''],
  ])('%j is one line', (text, line) => {
    expect(berth(text)).toBe(line);
  });

  test('parts paragraphs as the plan says, and breaks by a space', () => {
    expect(berth('a\nb\n\nc\n \n\nd', ' ¶ ')).toBe('a b ¶ c ¶ d');
  });

  test('of a bio has its words without emphasis', () => {
    const plain = exampleWith(
      cardOf(
        'crew',
        'c001',
        { number: '1' },
        [say('One', null, { italic: true }), say('two.', null, { broken: true })],
        [say('Three.', 'finale', { bold: true })],
      ),
    );
    const [record] = recordsOf(csvOf(seen(plain, HOUSE)));
    expect(record?.['bio']).toBe('One two. Three.');
  });

  test('of several signers or credits names them all', () => {
    const plain = exampleWith(
      cardOf('crew', 'c001', {
        number: '1',
        credits: [
          { role: 'Illustration', name: 'Tove Lindqvist' },
          { role: 'Model', name: 'Bram Ostler' },
        ],
        signers: [
          { name: 'Ines Albarran', as: 'Odalys Thrane', state: 'signed' },
          { name: 'Rhosyn Pike', state: 'redemption' },
        ],
      }),
    );
    const [set] = plain.sets;
    const columns = ['credits', 'signers', 'group'].map((from) => ({ column: from, from }));
    Object.assign(set?.plan ?? {}, { merge: { columns } });
    expect(mergeTable(seen(plain, HOUSE)).rows).toStrictEqual([
      [
        'Illustration: Tove Lindqvist Model: Bram Ostler',
        'Ines Albarran as Odalys Thrane Rhosyn Pike',
        'base',
      ],
    ]);
  });

  test('of the legal line has what is owed to whoever may be known to be shown', () => {
    const image = { file: 'art/c001.svg', depicts: ['Ines Albarran'] };
    const holds = { 'image.depicts': 'finale' };
    const plain = exampleWith(
      cardOf('crew', 'c001', { number: '1', image }),
      cardOf('crew', 'c002', { number: '2', image, holds }),
    );
    const depicts = [
      { name: 'Ines Albarran', line: 'Ines Albarran by leave.' },
      { name: 'Rhosyn Pike', line: 'Rhosyn Pike by leave.' },
    ];
    plain.property.legal = { line: '© 2027 Lantern & Oar.', depicts };
    const [house] = recordsOf(csvOf(seen(plain, HOUSE)));
    expect(house?.['legal']).toBe('© 2027 Lantern & Oar. Ines Albarran by leave.');
    const [sent, held] = recordsOf(csvOf(seen(plain, personAt(plain, 'amara', 5))));
    expect(sent?.['legal']).toBe('© 2027 Lantern & Oar. Ines Albarran by leave.');
    expect(held?.['legal']).toBe('© 2027 Lantern & Oar.');
  });

  test('that begins like a formula is changed and named, or left as typed', () => {
    const { rows, changed, headings } = one('-12 m');
    const at = headings.indexOf('facts.Berth');
    expect(rows[0]?.[at]).toBe("'-12 m");
    expect(changed).toStrictEqual([{ card: 'high-water/crew/c001', field: 'facts.Berth' }]);
    const plain = exampleWith(cardOf('crew', 'c001', { number: '1', facts: { Berth: '-12 m' } }));
    const typed = mergeTable(seen(plain, HOUSE), { asTyped: true });
    expect([typed.rows[0]?.[at], typed.changed]).toStrictEqual(['-12 m', []]);
    const told = mergeTable(seen(plain, publicAt(41))).changed;
    expect(told).toStrictEqual([{ card: 'high-water, Crew and Craft, 1', field: 'facts.Berth' }]);
  });

  test('keeps its words in their order, on one line, whatever they are', () => {
    const text = fc
      .array(fc.constantFrom('a', 'é', '"', ',', '=1', '-', '@', ' ', '\t', '\n', '\r\n', '\r'))
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(text, (typed) => {
        const line = berth(typed);
        const words = typed.split(/\s+/).filter((word) => word !== '');
        const formula = /^[=+\-@]/.test(words[0] ?? '');
        expect(line).toMatch(formula ? /^'[^\t\r\n]*$/ : /^[^\t\r\n]*$/);
        const said = formula ? line.slice(1) : line;
        expect(said.split(' ').filter((word) => word !== '')).toStrictEqual(words);
      }),
    );
  });
});
