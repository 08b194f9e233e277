import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { cardText, changed } from './change.js';
import { lookAt } from './look.js';
import { TELLERS } from './told-keys.js';

const NAMES: Files = {
  'names.yaml': `names:
  - { name: Ysolde Marrack, kind: character, aliases: [Ysolde], level: later }
  - { name: Old Pell, kind: character, level: open }
`,
};

type Change = readonly [from: string, to: string];

const lamp = (lines: string): Files => ({
  'one/cards/base/a2.md': cardText(
    `number: "2"\nname: The Lamp\nspoiler: open\nstory: 1/4\n${lines}`,
  ),
});
const image = (rest: string): Files => lamp(`image: { file: art/a2.svg, ${rest} }`);
const plan = (...changes: Change[]): Files => changed('one/plan.yaml', changes);
const subset = (keys: string): Files => plan(['group: inserts,', `group: inserts, ${keys},`]);
const parallel = (keys: string): Files =>
  plan(['totals:', `parallels: [{ of: [base], ${keys} }]\ntotals:`]);
const product = (keys: string): Files => plan(['totals:', `products: [{ ${keys} }]\ntotals:`]);
const property = (...changes: Change[]): Files => changed('property.yaml', changes);
const more = (lines: string): Files => property(['approvals: none', `approvals: none\n${lines}`]);
const name = (keys: string): Files => ({
  'names.yaml': (NAMES['names.yaml'] ?? '').replace(
    'Pell, kind: character',
    `Pell, kind: character, ${keys}`,
  ),
});
const secret = (keys: string): Files => ({
  'names.yaml': `${NAMES['names.yaml'] ?? ''}secrets:\n  - { level: later, ${keys} }\n`,
});
const sales = (keys: string, id = 'wrap'): Files => ({
  [`one/sales/${id}.md`]: cardText(`kind: web\ngoes: unset\nspoiler: open\n${keys}`),
});
const roster = (artist: string, file = 'x'): Files => ({
  ...subset(`roster: rosters/${file}.yaml`),
  [`one/rosters/${file}.yaml`]: `artists:\n  - { ${artist} }\n`,
});
const correction = (keys: string): Files => ({
  'one/corrections.yaml': `corrections:\n  - { card: base/a2, at: "2027-06-01", ${keys} }\n`,
});
const back = (lines: string, id = 'plain'): Files => ({
  ...plan(['group: inserts,', `group: inserts, back: ${id},`]),
  [`backs/${id}.yaml`]: `id: ${id}
trim: { width: 63.5, height: 88.9 }
bleed: 3
safe: 3
fonts: { body: { package: "@fontsource/alegreya-sans", regular: files/alegreya-sans-latin-400-normal.woff } }
zones: {}
${lines}`,
});
const accepted = 'accepted: [{ rule: copy-words, words: Ysolde, why: Ysolde, by: jonah }]';

/** A held name in each key of free text, outward or not. */
const PLANTS: Readonly<Record<string, Files>> = {
  'card.number': changed('one/cards/base/a2.md', [['"2"', 'YSOLDE']]),
  'card.name': changed('one/cards/base/a2.md', [['The Lamp', 'The Lamp of Ysolde']]),
  'card.publicName': lamp('publicName: Ysolde'),
  'card.facts': lamp('facts: { Lamp: of Ysolde }'),
  'card.facts, in its name': lamp('facts: { Ysolde: a lamp }'),
  'card.texts': lamp('texts: { caption: The lamp of Ysolde }'),
  'card.why': lamp('why: Ysolde'),
  'card.bio': changed('one/cards/base/a2.md', [['nobody', 'Ysolde']]),
  'card.remark': lamp('remark: Ysolde'),
  'card.accepted': lamp(accepted),
  'image.file': lamp('image: { file: art/ysolde.svg }'),
  'image.alt': image('alt: Ysolde with a lamp'),
  'image.ref': image('ref: Ysolde'),
  'image.depicts': image('depicts: [Ysolde]'),
  'signer.name': lamp('signers: [{ name: Ysolde, state: signed }]'),
  'signer.as': lamp('signers: [{ name: Somebody, as: Ysolde, state: signed }]'),
  'credit.role': lamp('credits: [{ role: Voice of Ysolde, name: Somebody }]'),
  'credit.name': lamp('credits: [{ role: Voice, name: Ysolde }]'),
  'variation.tell': lamp('variation: { of: base/a1, letter: b, tell: Ysolde has a lamp }'),
  'relic.piece': lamp('relic: { piece: Ysolde, from: x }'),
  'relic.from': lamp('relic: { piece: x, from: Ysolde }'),
  'relic.record': lamp('relic: { piece: x, from: x, record: Ysolde }'),
  'source.ref': lamp('sources: [{ doc: x, ref: Ysolde }]'),
  'source.for': lamp('sources: [{ doc: x, for: Ysolde }]'),
  'subset.id': plan(['id: extra', 'id: ysolde']),
  'subset.title': plan(['title: Extra', 'title: Letters of Ysolde']),
  'subset.group': plan(['group: inserts', 'group: ysolde']),
  'subset.numbers': plan(['prefix: X-', 'prefix: YSOLDE-']),
  'subset.numbers, as a code': plan(['{ prefix: X-, from: 1, to: 1 }', '{ codes: [YM-1] }']),
  'subset.facts': subset('facts: [Ysolde]'),
  'subset.statement': subset('statement: Ysolde signs'),
  'subset.roster': roster('name: Somebody, state: signed', 'ysolde'),
  'total.title': plan(['title: Everything', 'title: With Ysolde']),
  'parallel.id': parallel('id: ysolde, title: P'),
  'parallel.title': parallel('id: p, title: Ysolde'),
  'parallel.tell': parallel('id: p, title: P, tell: the lamp of Ysolde'),
  'product.id': product('id: ysolde, title: P'),
  'product.title': product('id: p, title: Ysolde'),
  'merge.paragraph': plan([
    'totals:',
    'merge: { columns: [{ column: A, from: bio }], paragraph: Ysolde }\ntotals:',
  ]),
  'column.column': plan([
    'totals:',
    'merge: { columns: [{ column: Ysolde, from: bio }] }\ntotals:',
  ]),
  'plan.id': Object.fromEntries(
    [...sampleWith({})].flatMap(([path, text]) =>
      path.startsWith('one/')
        ? [
            [path, null],
            [path.replace('one/', 'ysolde/'), text.replace('id: one', 'id: ysolde')],
          ]
        : [],
    ),
  ),
  'plan.title': plan(['title: One', 'title: The Lamp of Ysolde']),
  'plan.short': plan(['title: One', 'title: One\nshort: Ysolde']),
  'plan.totals': plan(['all: {', 'ysolde: {']),
  'plan.accepted': plan(['title: One', `title: One\n${accepted}`]),
  'property.id': property(['id: lake', 'id: ysolde']),
  'property.title': property(['title: The Lake', 'title: Ysolde']),
  'level.id': property(['id: last', 'id: ysolde']),
  'level.label': property(['label: Episode 1', 'label: Ysolde comes']),
  'embargo.id': property(['id: guest', 'id: ysolde']),
  'embargo.label': property(
    ['label: A guest', 'label: Ysolde'],
    ['lift: unset', 'lift: "2027-06-04T20:00:00+01:00[Europe/London]"'],
  ),
  'site.title': more('site: { title: Ysolde }'),
  'site.address': more('site: { address: "https://ysolde.example/" }'),
  'site.dataTerms': more('site: { dataTerms: Ask Ysolde. }'),
  'legal.line': property(['© 2027', '© Ysolde 2027']),
  'owed.name': property(['Oar" }', 'Oar", depicts: [{ name: Ysolde, line: A line }] }']),
  'owed.line': property(['Oar" }', 'Oar", depicts: [{ name: Old Pell, line: Ysolde }] }']),
  'cut.id': more('cuts: [{ id: ysolde, received: "2027-01-01" }]'),
  'names.words': { 'names.yaml': `${NAMES['names.yaml'] ?? ''}words: [Ysolde]\n` },
  'cut.names': more('cuts: [{ id: x, received: "2027-01-01", names: [Ysolde] }]'),
  'document.id': more('documents: [{ id: ysolde, title: X }]'),
  'document.title': more('documents: [{ id: x, title: Ysolde }]'),
  'beat.says': property(['The water rises', 'Ysolde comes']),
  'where.depicts': property([
    'approvals: none',
    'approvals: [{ parts: [image], roles: none, where: { depicts: [Ysolde] } }]',
  ]),
  'name.name': name('say: pell'),
  'name.aliases': name('aliases: [Ysoldes Pell]'),
  'name.avoid': name('avoid: [{ form: Pelly, use: Pell, why: Ysolde }]'),
  'name.say': name('say: Ysolde'),
  'name.publicName': name('publicName: The father of Ysolde'),
  'name.except': name('except: [Ysolde Street]'),
  'secret.id': secret('id: ysolde, says: A, allOf: [[a], [b]]'),
  'secret.says': secret('id: a, says: Ysolde, allOf: [[a], [b]]'),
  'secret.allOf': secret('id: a, says: A, allOf: [[Ysolde], [b]]'),
  'person.id': changed('people.yaml', [['id: jonah', 'id: ysolde']]),
  'person.name': changed('people.yaml', [['Jonah Prewett', 'Ysolde Prewett']]),
  'artist.name': roster('name: Ysolde Marrack, state: signed'),
  'artist.remark': roster('name: Somebody, state: signed, remark: Ysolde'),
  'correction.was': correction('was: Ysolde, now: nobody'),
  'correction.now': correction('was: nobody, now: Ysolde'),
  'correction.note': correction('was: a, now: b, note: Ysolde said so'),
  'sales.title': sales('title: The lamp of Ysolde'),
  'sales.remark': sales('remark: Ysolde'),
  'sales.accepted': sales(accepted),
  'back.id': back('', 'ysolde'),
  'back.shared': back('shared: { note: The lamp of Ysolde }\n'),
};

const RULES = ['leak', 'name-held', 'depicts-held', 'id-tells', 'number-tells'];

const keys = Object.entries(TELLERS).flatMap(([shape, table]) =>
  Object.entries(table).flatMap(([key, teller]) =>
    teller === 'none' || teller === 'parts' ? [] : [{ key: `${shape}.${key}`, teller }],
  ),
);

describe('a held name', () => {
  test('is planted in every key of free text', () => {
    const planted = Object.keys(PLANTS).map((key) => key.replace(/,.*/, ''));
    expect([...new Set(planted)].sort()).toStrictEqual(keys.map(({ key }) => key).sort());
  });

  const plants = Object.entries(PLANTS).map(([says, files]) => {
    const teller = keys.find(({ key }) => key === says.replace(/,.*/, ''))?.teller;
    return { says, files, teller };
  });

  test.each(plants)('in $says: $teller', ({ files, teller }) => {
    const { findings } = lookAt({ ...NAMES, 'one/art/a2.svg': '<svg/>', ...files }, RULES);
    const told = findings.map(({ rule, severity }) => `${rule} ${severity}`);
    expect(told).toStrictEqual(teller === 'house' ? [] : [`${teller ?? ''} error`]);
  });

  test('is told once in a file name, and in a sales text’s too', () => {
    expect(lookAt({ ...NAMES, ...sales('', 'ysolde') }, RULES).findings).toMatchObject([
      { rule: 'id-tells', file: 'one/sales/ysolde.md' },
    ]);
  });
});

describe('what waits as long as the name', () => {
  test.each([
    ['a label that is not announced', property(['label: Episode 2', 'label: Ysolde comes'])],
    [
      'a label of an embargo without a date',
      {
        ...property(['label: A guest', 'label: Barnaby']),
        'names.yaml':
          'names:\n  - { name: Barnaby, kind: performer, level: open, embargo: [guest] }\n',
      },
    ],
    [
      'a line owed to the name itself',
      property(['Oar" }', 'Oar", depicts: [{ name: Ysolde Marrack, line: © Ysolde }] }']),
    ],
    ['an artist who withdrew', roster('name: Ysolde, state: withdrawn')],
    [
      'a shared text of cards that are all held',
      {
        ...back('shared: { note: The lamp of Ysolde }\n'),
        ...changed('one/cards/extra/b1.md', [['spoiler: open', 'spoiler: later']]),
      },
    ],
    [
      'a shared text of no card',
      {
        ...back('shared: { note: The lamp of Ysolde }\n'),
        ...plan(),
      },
    ],
  ])('%s', (_, files) => {
    expect(lookAt({ ...NAMES, ...files }, RULES).findings).toStrictEqual([]);
  });

  test('a title or a public name that a placeholder shows does not wait', () => {
    const title = plan(['title: Extra, group', 'title: Ysolde, spoiler: later, group']);
    expect(lookAt({ ...NAMES, ...title }, RULES).findings).toMatchObject([{ rule: 'leak' }]);
    const card = changed('one/cards/base/a2.md', [
      ['spoiler: open', 'spoiler: later\npublicName: Ysolde'],
    ]);
    expect(lookAt({ ...NAMES, ...card }, RULES).findings).toMatchObject([{ rule: 'leak' }]);
  });

  test('a shared text is told with the first of the cards that print it', () => {
    const names = {
      'names.yaml':
        'names:\n  - { name: Barnaby, kind: performer, level: open, embargo: [guest] }\n',
    };
    const shared = back('shared: { note: The voice of Barnaby }\n');
    const held = cardText('number: X-1\nname: A\nspoiler: later\nembargo: [guest]\nships: unset');
    const one = { ...names, ...shared, 'one/cards/extra/b1.md': held };
    expect(lookAt(one, RULES).findings).toStrictEqual([]);
    const both = changed('one/plan.yaml', [['group: base,', 'group: base, back: plain,']], one);
    expect(lookAt({ ...one, ...both }, RULES).findings).toMatchObject([{ rule: 'leak' }]);
    const later = { 'one/cards/extra/b2.md': cardText('number: X-2\nname: B\nspoiler: last') };
    expect(lookAt({ ...one, ...later }, RULES).findings).toMatchObject([{ rule: 'leak' }]);
  });

  test('but one that leaves no trace until then does', () => {
    const last = {
      'names.yaml': (NAMES['names.yaml'] ?? '').replace('level: later', 'level: last'),
    };
    const title = plan(['title: Extra, group', 'title: Ysolde, spoiler: last, group']);
    expect(lookAt({ ...last, ...title }, RULES).findings).toStrictEqual([]);
  });
});
