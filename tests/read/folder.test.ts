import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

import { afterAll, beforeAll, describe, expect, test } from 'vitest';

import { diskFolder, memoryFolder, readContent } from '../../pipeline/read/index.js';
import { CARD, GOOD_CARD, contentWith, filesWith, readCard, told } from './support.js';

const top = mkdtempSync(join(tmpdir(), 'holdback-folder-'));
const root = join(top, 'content');

function put(path: string, text: string | Uint8Array): void {
  mkdirSync(dirname(join(top, path)), { recursive: true });
  writeFileSync(join(top, path), text);
}

function link(target: string, path: string): void {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  symlinkSync(target, join(root, path));
}

beforeAll(() => {
  for (const [path, text] of filesWith({})) put(`content/${path}`, text);
  put('outside/secret.md', GOOD_CARD.replace('Odalys Thrane', 'Ysolde Marrack'));
  put('content-2/near.md', GOOD_CARD);
  put('content/.git/config', 'x');
  put('content/quay/.draft.md', 'x');
  put('content/quay/cards/base/.b009.md.swp', 'x');
  link(join(top, 'outside/secret.md'), 'quay/cards/base/b002.md');
  link('../../../../outside/secret.md', 'quay/cards/base/b003.md');
  link('../../../../content-2/near.md', 'quay/cards/base/b004.md');
  link('b001.md', 'quay/cards/base/b005.md');
  link('nowhere.md', 'quay/cards/base/b006.md');
  link('b007.md', 'quay/cards/base/b007.md');
  link(join(top, 'outside'), 'later');
  link('cards', 'quay/more');
  link(join(top, 'outside/secret.md'), 'people.yaml');
});
afterAll(() => {
  rmSync(top, { recursive: true });
});

describe('a folder on disk', () => {
  test('lists every file, sorted, without names that begin with a dot', () => {
    expect(
      diskFolder(root)
        .list()
        .map(({ path, outside }) => `${path}${outside ? ' outside' : ''}`),
    ).toStrictEqual([
      'later outside',
      'people.yaml outside',
      'property.yaml',
      CARD,
      'quay/cards/base/b002.md outside',
      'quay/cards/base/b003.md outside',
      'quay/cards/base/b004.md outside',
      'quay/cards/base/b005.md',
      'quay/cards/base/b006.md outside',
      'quay/cards/base/b007.md outside',
      'quay/more outside',
      'quay/plan.yaml',
    ]);
  });

  test('finds each link that leads out, and reads nothing through it', () => {
    const content = readContent(diskFolder(root));
    expect(content.faults.map(told)).toStrictEqual(
      [
        'later',
        'people.yaml',
        'quay/cards/base/b002.md',
        'quay/cards/base/b003.md',
        'quay/cards/base/b004.md',
        'quay/cards/base/b006.md',
        'quay/cards/base/b007.md',
        'quay/more',
      ].map((file) => ({
        rule: 'path-outside',
        at: `${file}:1:1-1`,
        message: 'this link leads out of the content folder, or to a folder; it is not followed',
        expected: 'a file inside the content folder',
      })),
    );
    expect(content.sets[0]?.cards.map(({ id }) => id)).toStrictEqual(['b001', 'b005']);
    expect(JSON.stringify(content.sets)).not.toContain('Ysolde');
    expect(content.people).toBeNull();
  });

  test.each([
    'quay/cards/base/b002.md',
    '../outside/secret.md',
    'quay/../../outside/secret.md',
    '../content-2/near.md',
    'later/secret.md',
    '..',
    '.',
  ])('reads nothing that lies outside: %s', (path) => {
    expect(() => diskFolder(root).read(path)).toThrow(/leads out of the folder/);
  });

  test('reads a file, and a link to one inside', () => {
    const folder = diskFolder(root);
    expect(new TextDecoder().decode(folder.read(CARD))).toBe(GOOD_CARD);
    expect(folder.read('quay/cards/base/b005.md')).toStrictEqual(folder.read(CARD));
  });

  test('that is itself a link is read', () => {
    symlinkSync(root, join(top, 'link-to-content'));
    const folder = diskFolder(join(top, 'link-to-content'));
    expect(folder.list()).toStrictEqual(diskFolder(root).list());
    expect(folder.read(CARD)).toStrictEqual(diskFolder(root).read(CARD));
  });

  test('that is not there is an error of the disk', () => {
    expect(() => diskFolder(join(top, 'nothing')).list()).toThrow(/ENOENT/);
    expect(() => diskFolder(root).read('quay/cards/base/b999.md')).toThrow(/ENOENT/);
  });
});

describe('a folder of values', () => {
  test('is like one on disk', () => {
    const disk = diskFolder(root);
    const inside = disk.list().filter(({ outside }) => !outside);
    const memory = memoryFolder(new Map(inside.map(({ path }) => [path, disk.read(path)])));
    expect(memory.list()).toStrictEqual(inside);
    expect(readContent(memory).sets).toStrictEqual(readContent(disk).sets);
    expect(() => memory.read('quay')).toThrow(/no file quay/);
  });
});

describe('files that cannot be read as they are', () => {
  const only = (changes: Parameters<typeof contentWith>[0]) =>
    contentWith(changes).faults.map(told);

  test.each([
    ['property.yaml', 'property.yaml'],
    ['quay/plan.yaml', 'quay/plan.yaml'],
  ])('without %s', (path) => {
    const content = contentWith({ [path]: null });
    expect(content.faults.map(told)).toStrictEqual([
      {
        rule: 'schema',
        at: `${path}:1:1-1`,
        message: `there is no ${path}`,
        expected: `a file ${path} in the content folder`,
      },
    ]);
    expect(path === 'property.yaml' ? content.property : content.sets[0]).toBeFalsy();
    expect(content.cardFiles).toBe(1);
  });

  test('an empty folder has no property', () => {
    const content = readContent(memoryFolder(new Map()));
    expect(content.faults.map(({ message }) => message)).toStrictEqual([
      'there is no property.yaml',
    ]);
    expect([content.property, content.sets.length, content.cardFiles]).toStrictEqual([null, 0, 0]);
  });

  const latin1 = new Uint8Array([...new TextEncoder().encode('title: '), 0xe9, 0x0a]);
  const utf16 = new Uint8Array([0xff, 0xfe, 0x2d, 0x00, 0x2d, 0x00]);

  test.each([
    ['names.yaml', latin1, 'schema'],
    ['names.yaml', utf16, 'schema'],
    [CARD, latin1, 'front-matter'],
    [CARD, utf16, 'front-matter'],
    [CARD, new Uint8Array([0xed, 0xa0, 0x80]), 'front-matter'],
  ])('%s that is no UTF-8', (path, bytes, rule) => {
    expect(only({ [path]: bytes })).toStrictEqual([
      {
        rule,
        at: `${path}:1:1-1`,
        message: 'the file is not UTF-8 text',
        expected: 'a text file saved as UTF-8',
      },
    ]);
  });

  test.each([
    ['property.yaml', 'id: lake', 'id: Lake'],
    ['quay/plan.yaml', 'id: quay', 'id: ""'],
  ])('%s without a right id is no more than that', (path, from, to) => {
    const text = String(filesWith({}).get(path)).replace(from, to);
    expect(only({ [path]: text }).map(({ at }) => at)).toStrictEqual([
      `${path}:1:5-${String(to.length + 1)}`,
    ]);
  });

  test('an id must be what folder or file is called', () => {
    const plan = String(filesWith({}).get('quay/plan.yaml')).replace('id: quay', 'id: harbour');
    const back = `id: standart\ntrim: { width: 63.5, height: 88.9 }\nbleed: 3\nsafe: 3\nfonts: { body: { regular: a.ttf } }\nzones: {}\n`;
    const content = contentWith({ 'quay/plan.yaml': plan, 'backs/standard.yaml': back });
    expect(content.faults.map(told)).toStrictEqual([
      {
        rule: 'schema',
        at: 'backs/standard.yaml:1:5-13',
        message: '`id` is not what its file or folder is called',
        found: 'standart',
        expected: 'standard',
        fix: 'standard',
      },
      {
        rule: 'schema',
        at: 'quay/plan.yaml:1:5-12',
        message: '`id` is not what its file or folder is called',
        found: 'harbour',
        expected: 'quay',
        fix: 'quay',
      },
    ]);
    expect([content.sets.length, content.layouts.size]).toStrictEqual([0, 0]);
  });

  test.each([
    ['quay/cards/b001.md', 'this is no place for a card'],
    ['quay/cards/base/deep/b001.md', 'this is no place for a card'],
    ['quay/cards/base/B001.md', 'this is no place for a card'],
    ['quay/cards/base/b 1.md', 'this is no place for a card'],
    ['quay/cards/base/b_1.md', 'this is no place for a card'],
    ['quay/cards/base/-b1.md', 'this is no place for a card'],
    ['quay/cards/base/b001.MD', 'this is no place for a card'],
    ['quay/cards/base/b001.txt', 'this is no place for a card'],
    ['quay/cards/Base/b001.md', 'this is no place for a card'],
    ['quay/cards/bases/b001.md', 'this folder is no subset of the plan'],
    ['quay/cards/constructor/b001.md', 'this folder is no subset of the plan'],
  ])('a card at %s is misplaced, and not read', (path, message) => {
    const { sets, faults } = contentWith({ [path]: '---js\n' });
    expect(faults).toHaveLength(1);
    expect(faults.map(told)[0]).toMatchObject({
      rule: 'misplaced-card',
      at: `${path}:1:1-1`,
      message,
      found: path,
    });
    expect(sets[0]?.cards).toHaveLength(1);
  });

  test('cards come by subset and id, however their files sort', () => {
    const paths = [
      'base-two/b001',
      'base/b001',
      'base/b001-x',
      'base/b001b',
      'base/b010',
      'base/b2',
    ];
    const plan = String(filesWith({}).get('quay/plan.yaml')).replace(
      /subsets:.*/,
      'subsets: [{ id: base, title: Base, group: base, numbers: none }, { id: base-two, title: Two, group: base, numbers: none }]',
    );
    const cards = Object.fromEntries(paths.map((path) => [`quay/cards/${path}.md`, GOOD_CARD]));
    const [set] = contentWith({ 'quay/plan.yaml': plan, ...cards }).sets;
    expect(set?.cards.map(({ subset, id }) => `${subset}/${id}`)).toStrictEqual([
      'base/b001',
      'base/b001-x',
      'base/b001b',
      'base/b010',
      'base/b2',
      'base-two/b001',
    ]);
  });

  test('a card that cannot be read leaves its subset with numbers that are not known', () => {
    const { sets, cardFiles } = contentWith({
      [CARD]: '---js\n',
      'quay/cards/base/b002.md': GOOD_CARD,
    });
    expect(sets[0]?.unread).toStrictEqual(new Set(['base']));
    expect(sets[0]?.cards.map(({ id }) => id)).toStrictEqual(['b002']);
    expect(cardFiles).toBe(2);
  });

  test('front matter and body are both looked at: all that is wrong is said', () => {
    const { faults } = readCard('---\nnumber: "1"\nnmae: Pim\nspoiler: open\n---\n# Words\n');
    expect(faults.map(({ rule }) => rule)).toStrictEqual(['schema', 'unknown-key', 'copy-markup']);
  });
});
