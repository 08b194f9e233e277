import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';

import { view, type View } from '../../pipeline/gate/index.js';
import { identityOf } from '../../pipeline/model/index.js';
import {
  ABOUT_SHEET,
  NAMES_SHEET,
  bookOf,
  cardsBy,
  sheetCardOf,
  type Book,
  type BookOptions,
  type SheetCard,
} from '../../pipeline/out/sheets/index.js';
import type { Released } from '../../pipeline/select/index.js';
import { HOUSE, personAt, publicAt, seen } from '../gate/support.js';
import { cardOf, example, exampleWith, say } from '../law/example.js';
import { releasedOf } from '../law/outputs.js';
import type { Plain } from '../law/plain.js';
import { oddCard } from './odd-cards.js';
import {
  cardOfRow,
  carried,
  cellsOf,
  csvRows,
  openpyxlSheets,
  workbookRows,
  type PythonSheet,
  type Read,
} from './read-back.js';

const FONTS: BookOptions['fonts'] = new Map();
const COPY: BookOptions = { what: 'copy', fonts: FONTS };
const LIST: BookOptions = { what: 'checklist', fonts: FONTS };
const DAY = 20;

/** Names of facts and of texts: each is a column. */
const NAMES = ['Berth', 'No. of oars', '=1+1 ', '__proto__'];

/** The values of facts or texts under a few names, so that a sheet has no thousand columns. */
function underFewNames(parts: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(
    Object.values(parts).map((value, at): [string, string] => [NAMES[at] ?? '', value]),
  );
}

/** A thousand odd cards, in one subset of the example's set. */
const ODD = fc.sample(oddCard, { numRuns: 1000, seed: 20270416 }).map((card, at): SheetCard => {
  const { facts = {}, texts = {} } = card.front;
  return {
    ...card,
    front: { ...card.front, facts: underFewNames(facts), texts: underFewNames(texts) },
    subset: 'crew',
    id: `c${String(at).padStart(4, '0')}`,
  };
});

const PLAIN: Plain = exampleWith(
  ...ODD.map(({ subset, id, front }) => ({
    subset,
    id,
    front: { ...front, spoiler: 'open', embargo: [], holds: {} },
    bio: [[say('A bell.'), say('Held words.', 'spring')]],
  })),
);

const ODD_VIEW = seen(PLAIN, HOUSE);

/** The house's book of the odd cards. */
function oddBook(): Book {
  return bookOf(ODD_VIEW, {
    ...COPY,
    house: {
      names: [],
      facts: new Map(),
      cards: new Map(ODD.map((card) => [`high-water/${card.subset}/${card.id}`, card])),
    },
  });
}

function byIdentity<T extends { readonly id: string }>(cards: readonly T[]): T[] {
  return [...cards].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/**
 * What openpyxl makes of a text: it leaves `_x000D_` (ECMA-376 part 1, 22.9.2.19) as it stands, and
 * drops every `x005F_`.
 */
function onOpenpyxl(text: Read): string {
  return String(text ?? '')
    .replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_')
    .replace(/\r/g, '_x000D_')
    .replaceAll('x005F_', '');
}

describe('a thousand odd cards of the house come back whole', () => {
  const whole = byIdentity(ODD.map(carried));
  let xlsx: Uint8Array;
  beforeAll(async () => {
    xlsx = await oddBook().bytes('xlsx');
  }, 120_000);

  test('from CSV, by csv-parse', async () => {
    const rows = cellsOf(csvRows(await oddBook().bytes('csv')));
    expect(byIdentity(rows.map(cardOfRow))).toStrictEqual(whole);
  });

  test('from a workbook, by read-excel-file', async () => {
    const sheets = await workbookRows(xlsx);
    expect([...sheets.keys()]).toStrictEqual([ABOUT_SHEET, 'High Water', NAMES_SHEET]);
    const rows = cellsOf(sheets.get('High Water') ?? []);
    expect(byIdentity(rows.map(cardOfRow))).toStrictEqual(whole);
  });

  test('from a workbook, by openpyxl, which finds no formula in it', async () => {
    const sheets = openpyxlSheets(xlsx);
    const types = new Set(sheets.flatMap(({ cells }) => cells.flat().map(([type]) => type)));
    expect([...types].sort()).toStrictEqual(['n', 's']);
    const rows = sheets[1]?.cells.map((row) => row.map(([, value]) => String(value ?? '')));
    const csv = csvRows(await oddBook().bytes('csv'));
    expect(rows).toStrictEqual(csv.map((row) => row.map(onOpenpyxl)));
  });

  test('and the same cards are the same bytes', async () => {
    expect(Buffer.from(await oddBook().bytes('xlsx')).equals(xlsx)).toBe(true);
  });
});

describe.each([
  ['the public', publicAt(DAY)],
  ['a reviewer', personAt(example(), 'amara', DAY)],
])('what is cut for %s', (_, audience) => {
  const made = seen(PLAIN, audience);
  const cut = bookOf(made, COPY);

  test('is the same from both formats, and every row is marked', async () => {
    const csv = cellsOf(csvRows(await cut.bytes('csv')));
    const sheets = await workbookRows(await cut.bytes('xlsx'));
    expect(csv).toHaveLength(1000);
    expect(cellsOf(sheets.get('High Water') ?? [])).toStrictEqual(csv);
    expect(new Set(csv.map((row) => row.get('Cut')))).toStrictEqual(new Set(['yes']));
  });

  test('has no key of the house', async () => {
    const [headings = []] = csvRows(await cut.bytes('csv'));
    const inside = ['Spoiler', 'Embargo', 'Holds', 'State', 'Why', 'Writer', 'Remark', 'Story'];
    expect(headings.filter((heading) => inside.includes(String(heading)))).toStrictEqual([]);
    expect(headings.includes('Identity')).toBe(audience.kind === 'person');
  });
});

describe('a workbook as openpyxl sees it', () => {
  let sheets: readonly PythonSheet[];
  const plain = exampleWith(
    cardOf(
      'crew',
      'c001',
      { number: '001', name: '=1+1', run: 250, facts: { Berth: '2/14' }, story: '2/14' },
      [say('A bell.')],
    ),
    cardOf('crew', 'c002', { number: '2' }),
  );
  beforeAll(async () => {
    sheets = openpyxlSheets(await houseBook(plain).bytes('xlsx'));
  }, 60_000);
  const cell = (row: number, heading: string) => {
    const [headings = [], ...rows] = sheets[1]?.cells ?? [];
    const at = headings.findIndex(([, text]) => text === heading);
    return [...(rows[row]?.[at] ?? []), sheets[1]?.wrapped[at]];
  };

  test('has numbers where there are figures, and text everywhere else', () => {
    expect(cell(0, 'Number')).toStrictEqual(['s', '001', false]);
    expect(cell(0, 'Name')).toStrictEqual(['s', "'=1+1", false]);
    expect(cell(0, 'Run')).toStrictEqual(['n', 250, false]);
    expect(cell(0, 'Fact: Berth')).toStrictEqual(['s', '2/14', true]);
    expect(cell(0, 'Story')).toStrictEqual(['s', '2/14', false]);
    expect(cell(0, 'Bio')).toStrictEqual(['s', 'A bell.', true]);
    expect(cell(1, 'Run')[1]).toBeNull();
  });

  test('keeps headings, number and name in sight, and has wide columns for long texts', () => {
    expect(sheets.map(({ frozen }) => frozen)).toStrictEqual([null, 'D2', 'B2']);
    const bio = sheets[1]?.cells[0]?.findIndex(([, text]) => text === 'Bio') ?? -1;
    expect(bio).toBeGreaterThan(0);
    expect(sheets[1]?.widths[String.fromCharCode(65 + bio)]).toBe(60);
  });

  test('is marked INTERNAL on every sheet', () => {
    expect(sheets.map(({ cells }) => cells[0]?.at(-1)?.[1])).toStrictEqual([
      'INTERNAL, up to: Known from the trailers',
      'INTERNAL, up to: Known from the trailers',
      'INTERNAL, up to: Known from the trailers',
    ]);
  });
});

/** The copy of a content for the house. */
function houseBook(plain: Plain): Book {
  const released: Released = releasedOf(plain);
  const cards = released.sets.flatMap((set) => set.cards);
  return bookOf(seen(plain, HOUSE), {
    ...COPY,
    house: {
      names: released.names,
      facts: new Map(),
      cards: new Map(
        cards.map((card) => [
          `${card.set}/${identityOf(card)}`,
          {
            ...sheetCardOf(card),
            body: card.bio
              .flat()
              .map(({ text }) => text)
              .join(''),
          },
        ]),
      ),
    },
  });
}

test('a formula is none in CSV either', async () => {
  const plain = exampleWith(cardOf('crew', 'c001', { number: '1', name: '=1+1', remark: '-1' }));
  const text = new TextDecoder().decode(await houseBook(plain).bytes('csv'));
  expect(text).toContain("\r\ncrew/c001,1,'=1+1,");
  expect(text).toContain(",'-1,");
});

test('the bytes of a CSV file', async () => {
  const plain = exampleWith(
    cardOf('crew', 'c001', { number: '1', shortPrint: 'SP' }),
    cardOf('crew', 'c002', { number: '2', spoiler: 'spring', publicName: 'A “lamp”, lit' }),
  );
  const bytes = await bookOf(seen(plain, publicAt(DAY)), LIST).bytes('csv');
  expect(new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)).toBe(
    '\ufeffNumber,Name,Subset title,Set title,On the checklist,To be revealed,Short print,Cut\r\n' +
      '1,Name of c001,Crew and Craft,The Ferrywrights: High Water,shown,,SP,yes\r\n' +
      '2,"A “lamp”, lit",Crew and Craft,The Ferrywrights: High Water,to be revealed,"22 March 2027, 09:00",,yes\r\n',
  );
});

test('whole cards go to nobody but the house', () => {
  const house = { names: [], facts: new Map(), cards: new Map() };
  const refused = 'what stands in the files is for the house, and its copy is made of that';
  for (const audience of [publicAt(DAY), personAt(example(), 'amara', DAY)]) {
    expect(() => bookOf(seen(example(), audience), { ...COPY, house })).toThrow(refused);
  }
  expect(() => bookOf(seen(example(), HOUSE), COPY)).toThrow(refused);
});

describe('a writer’s own cards', () => {
  const plain = exampleWith(
    cardOf('crew', 'c001', { number: '1', writer: 'pip' }, [
      say('A bell.'),
      say('Rung.', 'spring'),
    ]),
    cardOf('crew', 'c002', { number: '2', writer: 'jonah' }),
    cardOf('crew', 'c003', { number: '3', writer: 'pip', spoiler: 'spring' }),
    cardOf('crew', 'c004', { number: '4', writer: 'pip', spoiler: 'shops' }, [
      say('Nine', null, { italic: true }),
      say('locks.'),
    ]),
  );
  const pip = { id: 'pip', name: 'Pip', role: 'writer', clearance: 'shops' } as const;
  const lower: Plain = { ...plain, people: { people: [pip] } };
  const sees = (clearance: string): View => {
    const made = view(releasedOf(lower), {
      kind: 'person',
      person: { ...pip, clearance },
      at: Date.UTC(2027, 0, 5),
    });
    if (!made) throw new Error('nothing is public then');
    return made;
  };
  const book = bookOf(sees('shops'), {
    ...COPY,
    own: cardsBy('pip', seen(lower, HOUSE)),
    anybody: sees('open'),
  });

  test('are those that are open to them', async () => {
    const rows = cellsOf(csvRows(await book.bytes('csv')));
    expect(rows.map((row) => [row.get('Identity'), row.get('Bio'), row.get('Words used')])).toEqual(
      [
        ['crew/c001', 'A bell. [to be revealed]', '2'],
        ['crew/c004', '*Nine* locks.', '2'],
      ],
    );
    expect(book.mark).toBe('For Pip');
  });

  test('come with the room that the plan gives them', async () => {
    const bounded = structuredClone(lower);
    for (const subset of bounded.sets[0]?.plan.subsets ?? []) {
      subset.bio = { words: { min: 35, max: 60 } };
    }
    const audience = { kind: 'person', person: pip, at: Date.UTC(2027, 0, 5) } as const;
    const own = cardsBy('pip', seen(bounded, HOUSE));
    const made = await bookOf(seen(bounded, audience), { ...COPY, own }).bytes('csv');
    const rows = cellsOf(csvRows(made));
    expect(
      rows.map((row) => ['Words at least', 'Words at most'].map((heading) => row.get(heading))),
    ).toEqual([
      ['35', '60'],
      ['35', '60'],
    ]);
  });

  test('come with the names to use, and those to keep', async () => {
    const names = [
      {
        name: 'Odalys Thrane',
        kind: 'character',
        level: 'open',
        say: 'oh-DAH-liss',
        avoid: [
          { form: 'Miss Thrane', use: 'Odalys Thrane', why: 'retitled in script 5' },
          { form: 'Marrack', use: 'Odalys Thrane' },
        ],
      },
      { name: 'Magistrate Tern', kind: 'character', level: 'shops' },
      { name: 'Ysolde Marrack', kind: 'character', level: 'finale' },
    ] as const;
    Object.assign(lower.names, { names });
    const own = cardsBy('pip', seen(lower, HOUSE));
    const sheets = await workbookRows(
      await bookOf(sees('shops'), { ...COPY, own, anybody: sees('open') }).bytes('xlsx'),
    );
    expect(sheets.get(NAMES_SHEET)).toStrictEqual([
      ['Name', 'Use', 'Avoid', 'Say', 'For Pip'],
      ['Magistrate Tern', 'never on a card that opens before the name does', null, null, null],
      ['Odalys Thrane', 'on any card', 'Miss Thrane: use Odalys Thrane', 'oh-DAH-liss', null],
    ]);
  });
});
