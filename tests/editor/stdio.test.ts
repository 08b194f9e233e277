import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { FileChangeType } from 'vscode-languageserver-protocol/node';

import { sampleWith } from '../../pipeline/checks/index.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { Client } from './client.js';
import { checkedAs } from './checked.js';

/** One server serves all of these, as an editor leaves it on all day. */
const NAMES = `names:
  - { name: Odalys Thrane, kind: character, aliases: [Odalys, Captain Thrane, { form: Lady *Thrane*, level: later }], avoid: [{ form: Miss Thrane, use: Captain Thrane, why: retitled }], say: oh-DAH-liss, level: open }
  - { name: Ysolde Marrack, kind: character, aliases: [Ysolde], level: later, publicName: The voice }
`;
const PLAN = 'one/plan.yaml';
const LAMP = 'one/cards/base/a2.md';
const WORDS = 'A lamp that nobody lit is burning.';
const SAMPLE = sampleWith({ 'names.yaml': NAMES });

let placed: Placed;
let client: Client;

beforeAll(async () => {
  placed = await placeContent(SAMPLE);
  client = new Client(placed.content, placed.root);
  const { capabilities } = await client.start(placed.root);
  expect(capabilities).toMatchObject({
    positionEncoding: 'utf-16',
    textDocumentSync: { openClose: true, change: 2 },
    hoverProvider: true,
    codeActionProvider: { codeActionKinds: ['quickfix', 'source.fixAll'] },
  });
});

afterEach(async () => {
  await client.closeAll();
  for (const path of changed.splice(0)) {
    const text = SAMPLE.get(path);
    if (text === undefined) await rm(join(placed.content, path), { recursive: true, force: true });
    else await write(path, text);
    await client.touch(path);
  }
  await client.until(() => Object.keys(client.all()).length === 0);
  expect([client.stderr, client.noise, client.logged]).toEqual(['', [], []]);
});

afterAll(async () => {
  expect(await client.stop()).toBe(0);
  client.end();
  await placed[Symbol.asyncDispose]();
});

const changed: string[] = [];

function textOf(path: string): string {
  return SAMPLE.get(path) ?? '';
}

async function write(path: string, text: string): Promise<void> {
  changed.push(path);
  await mkdir(dirname(join(placed.content, path)), { recursive: true });
  await writeFile(join(placed.content, path), text);
}

async function takeAway(path: string): Promise<void> {
  changed.push(path);
  await rm(join(placed.content, path), { recursive: true });
}

/** Every diagnostic is what `check` finds in the same files, with what is open laid over them. */
async function expectChecked(): Promise<void> {
  await client.settled();
  expect(client.all()).toEqual(
    checkedAs(placed.content, client.opened(), (path) => client.uriOf(path)),
  );
}

/** Opens the card with other words in its bio. */
async function openLamp(bio: string): Promise<void> {
  await client.open(LAMP, textOf(LAMP).replace(WORDS, bio));
}

describe('what is found', () => {
  test('is all that check finds, in every file, open or not', async () => {
    await write(LAMP, textOf(LAMP).replace(WORDS, 'Ysolde waits.'));
    await takeAway('one/cards/base/a1.md');
    await client.touch(LAMP);
    await client.touch('one/cards/base/a1.md', FileChangeType.Deleted);
    await client.open(PLAN, textOf(PLAN).replace('is: 3', 'is: 4'));
    await expectChecked();
    expect(client.registered).toEqual(['workspace/didChangeWatchedFiles']);
    expect(Object.keys(client.all())).toEqual(expect.arrayContaining([LAMP, PLAN]));
  });

  test('follows what is typed, letter by letter, with the version of the document', async () => {
    await client.open(LAMP, textOf(LAMP));
    await client.until(() => client.published.get(LAMP)?.version === 1);
    expect(client.diagnostics(LAMP)).toEqual([]);
    await client.replace(LAMP, 'nobody', '');
    for (const letter of 'Ysolde Marrack') {
      const start = client.placeOf(LAMP, '| lit is');
      await client.change(LAMP, { range: { start, end: start }, text: letter });
    }
    const { version } = client.document(LAMP);
    await client.until(() => client.published.get(LAMP)?.version === version);
    await client.settled();
    expect(client.diagnostics(LAMP)).toEqual([
      {
        range: client.rangeOf(LAMP, 'Ysolde Marrack'),
        severity: 1,
        code: 'leak',
        source: 'holdback',
        message:
          'the bio names what opens later than it; found Ysolde Marrack: Ysolde Marrack is held by later until 16 April 2027, 20:00; expected nothing that opens later than open',
        relatedInformation: [
          {
            message: 'the name',
            location: {
              uri: client.uriOf('names.yaml'),
              range: { start: { line: 2, character: 12 }, end: { line: 2, character: 12 } },
            },
          },
        ],
      },
    ]);
    await expectChecked();
    await client.replace(LAMP, 'Ysolde Marrack', 'nobody');
    await expectChecked();
    expect(client.diagnostics(LAMP)).toEqual([]);
  });

  test('stands in UTF-16 units, through CRLF and several changes at once', async () => {
    await client.open(LAMP, textOf(LAMP).replaceAll('\n', '\r\n'));
    const { start } = client.rangeOf(LAMP, WORDS);
    await client.change(
      LAMP,
      { range: { start, end: start }, text: '\u{1f56f} and ' },
      { range: { start, end: { ...start, character: start.character + 2 } }, text: 'One' },
    );
    await client.replace(LAMP, 'nobody', '\u{1f56f} Ysolde');
    await expectChecked();
    const leak = client.diagnostics(LAMP).find(({ code }) => code === 'leak');
    expect(leak?.range).toEqual(client.rangeOf(LAMP, 'Ysolde'));
  });

  test('is the faults of a file that is not whole, and all else of the other files', async () => {
    await takeAway('one/cards/base/a1.md');
    await client.touch('one/cards/base/a1.md', FileChangeType.Deleted);
    await client.until(() => client.diagnostics(PLAN).length > 0);
    const before = client.all();
    await client.open('people.yaml', textOf('people.yaml'));
    await client.change('people.yaml', { text: 'people: [{ id: jonah' });
    await client.until(() => client.diagnostics('people.yaml')[0]?.code === 'schema');
    await client.open(LAMP, textOf(LAMP));
    await client.change(LAMP, { text: '---\nnumber: [\n---\nA' });
    await client.until(() => client.diagnostics(LAMP)[0]?.code === 'front-matter');
    await client.settled();
    expect(client.diagnostics(PLAN)).toEqual(before[PLAN]);
    await client.change(LAMP, { text: textOf(LAMP) });
    await client.change('people.yaml', { text: textOf('people.yaml') });
    await expectChecked();
    expect(client.all()).toEqual(before);
  });

  test('follows files that are made, renamed, taken away and closed', async () => {
    await openLamp('A lamp that Ysolde lit is burning.');
    await client.until(() => client.diagnostics(LAMP).length > 0);
    await client.close(LAMP);
    await client.until(() => client.diagnostics(LAMP).length === 0);
    const stray = 'one/cards/none/a9.md';
    await write(stray, textOf(LAMP));
    await client.touch(stray, FileChangeType.Created);
    await client.until(() => client.diagnostics(stray)[0]?.code === 'misplaced-card');
    await rename(join(placed.content, 'one/cards/none'), join(placed.content, 'one/cards/other'));
    changed.push('one/cards/other');
    await client.touch('one/cards/none', FileChangeType.Deleted);
    await client.touch('one/cards/other', FileChangeType.Created);
    await client.until(
      () =>
        client.diagnostics(stray).length === 0 &&
        client.diagnostics('one/cards/other/a9.md').length > 0,
    );
    await client.open(PLAN, textOf(PLAN));
    await expectChecked();
  });

  test('is nothing of a file outside of the content, or of one that is nothing to it', async () => {
    await client.open('../elsewhere.md', 'Ysolde');
    expect(await client.hover('../elsewhere.md', 'Ys|olde')).toBeNull();
    expect(await client.actions('../elsewhere.md', client.rangeOf('../elsewhere.md', 'Y'))).toEqual(
      [],
    );
    await client.open('one/notes.txt', 'Ysolde');
    expect(await client.complete('one/notes.txt', 'Ysolde|')).toEqual([]);
    expect(client.all()).toEqual({});
  });

  test('is told as before to a client that has sent rubbish', async () => {
    client.process.stdin.write('Content-Length: 9\r\n\r\n{"a": nul');
    client.process.stdin.write('Content-Length: 2\r\n\r\n{}');
    for (const rubbish of [
      { method: 'textDocument/didChange', params: { textDocument: 7 } },
      { method: 'textDocument/hover', id: 9001, params: null },
      { method: 'no/such', id: 9002 },
    ]) {
      const note = JSON.stringify({ jsonrpc: '2.0', ...rubbish });
      client.process.stdin.write(`Content-Length: ${String(note.length)}\r\n\r\n${note}`);
    }
    await openLamp('A lamp that Ysolde lit is burning.');
    await expectChecked();
    expect(client.diagnostics(LAMP).map(({ code }) => code)).toEqual(['leak']);
    client.logged.splice(0);
  });
});

describe('what is told of a place', () => {
  async function told(path: string, words: string): Promise<string> {
    const { contents } = (await client.hover(path, words)) ?? {};
    return typeof contents === 'object' && 'value' in contents ? contents.value : '';
  }

  test('a name: how it is said, its forms, what to avoid, and when it opens', async () => {
    await openLamp('Odalys lit it.');
    expect(await told(LAMP, 'Oda|lys')).toBe(
      [
        '**Odalys Thrane**, character',
        'Said oh\\-DAH\\-liss',
        'Also Odalys, Captain Thrane, Lady \\*Thrane\\* \\(held until 16 April 2027, 20\\:00 London time\\)',
        'Not Miss Thrane\\: Captain Thrane \\(retitled\\)',
        'Known \\(`open`\\)\\: open',
      ].join('\n\n'),
    );
  });

  test('a held name: what stands for it until it opens', async () => {
    await openLamp('Ysolde lit it.');
    const lines = await told(LAMP, 'Yso|lde');
    expect(lines).toContain('The voice');
    expect(lines).toContain('held until 16 April 2027, 20\\:00 London time');
  });

  test('a link: what it names, when it opens, what it counts', async () => {
    await openLamp('Some [nine lamps](held:later) of [two](count:base).');
    expect(await told(LAMP, 'nine la|mps')).toContain('Held until 16 April 2027');
    expect(await told(LAMP, '[tw|o]')).toContain('Counts 2');
  });

  test('an id and a key', async () => {
    await openLamp(WORDS);
    expect(await told(LAMP, 'spoiler: op|en')).toContain('**Known**, level `open`');
    expect(await told(LAMP, 'spoil|er: open')).toContain('Expected\\: an id');
    await client.open('people.yaml', textOf('people.yaml'));
    expect(await told('people.yaml', 'clearance: la|st')).toContain('Episode 2');
  });
});

describe('what is offered', () => {
  /** What the server offers where | stands in these words, in place of others of the card. */
  async function offers(instead: string, words: string, mark = words): Promise<string[]> {
    const text = textOf(LAMP).replace(instead, words.replace('|', ''));
    if (client.opened().has(LAMP)) await client.change(LAMP, { text });
    else await client.open(LAMP, text);
    return (await client.complete(LAMP, mark)).map(({ label }) => label);
  }

  test('keys that are not there yet, with what they are for', async () => {
    await client.open(LAMP, textOf(LAMP).replace('story: 1/4', 'story: 1/4\npu'));
    const items = await client.complete(LAMP, '\npu|\n');
    const labels = items.map(({ label }) => label);
    expect(labels).toEqual(expect.arrayContaining(['publicName', 'facts', 'image', 'signers']));
    expect(labels).not.toContain('spoiler');
    const key = items.find(({ label }) => label === 'holds');
    expect(key?.documentation).toBe(
      'Fields held longer than the card: a field and a level or an embargo.',
    );
    expect(key?.textEdit).toEqual({ range: client.rangeOf(LAMP, 'pu'), newText: 'holds: ' });
  });

  test('words that a key takes, and the ids that there are', async () => {
    expect(await offers('story: 1/4', 'state: |', 'state: |')).toEqual(['draft', 'ready']);
    expect(await offers('spoiler: open', 'spoiler: |', 'spoiler: |')).toEqual([
      'open',
      'later',
      'last',
    ]);
    expect(await offers('story: 1/4', 'embargo: [|]')).toEqual(['guest']);
    expect(await offers('story: 1/4', 'writer: |', 'writer: |')).toEqual(['jonah']);
    expect(await offers('story: 1/4', 'variation: { of: | }')).toEqual(
      expect.arrayContaining(['base/a1', 'extra/b1']),
    );
  });

  test('names, whole, where a picture shows somebody and after a capital in a bio', async () => {
    expect(await offers('story: 1/4', 'image: { depicts: [|] }')).toEqual(
      expect.arrayContaining(['Odalys Thrane', 'Ysolde Marrack']),
    );
    const named = await offers('nobody', 'Od|');
    expect(named).toContain('Odalys Thrane');
    expect(named).not.toContain('Ysolde Marrack');
  });

  test('labels beside ids, by which they may be looked for', async () => {
    await client.open(LAMP, textOf(LAMP).replace('spoiler: open', 'spoiler: x'));
    const later = (await client.complete(LAMP, 'spoiler: x|')).find(
      ({ label }) => label === 'later',
    );
    expect(later?.labelDetails).toEqual({ description: 'Episode 1' });
    expect(later?.filterText).toBe('later Episode 1');
  });

  test('what a link may name', async () => {
    expect(await offers('nobody', '[nobody](|)')).toEqual(['held:', 'count:']);
    expect(await offers('nobody', '[nobody](held:|)')).toEqual(['open', 'later', 'last', 'guest']);
    expect(await offers('nobody', '[nobody](count:|)')).toEqual(
      expect.arrayContaining(['base', 'extra', 'inserts', 'all', 'none']),
    );
  });
});

describe('what is done about a finding', () => {
  async function only(path: string, code: string): Promise<readonly string[]> {
    await client.settled();
    return client
      .diagnostics(path)
      .map((each) => String(each.code))
      .filter((each) => each === code);
  }

  test('a quick fix leaves no finding, and says which it is of', async () => {
    await openLamp('A lamp that Miss Thrane lit is burning.');
    const [fix, ...others] = await client.actions(LAMP, client.rangeOf(LAMP, 'Miss Thrane'), [
      'quickfix',
    ]);
    expect(client.diagnostics(LAMP).map(({ code }) => code)).toEqual(['name-avoided']);
    if (!fix) throw new Error('no fix');
    expect(fix).toMatchObject({ title: 'Write Captain Thrane', isPreferred: true });
    expect(fix.diagnostics?.map(({ code }) => code)).toEqual(['name-avoided']);
    expect(others.every(({ isPreferred }) => isPreferred !== true)).toBe(true);
    await client.apply(fix);
    await expectChecked();
    expect(client.diagnostics(LAMP)).toEqual([]);
    expect(client.document(LAMP).getText()).toBe(textOf(LAMP).replace('nobody', 'Captain Thrane'));
  });

  test('a value in quotes stays in them', async () => {
    await client.open(LAMP, textOf(LAMP).replace('spoiler: open', 'spoiler: "laetr"'));
    const [fix] = await client.actions(LAMP, client.rangeOf(LAMP, 'laetr'), ['quickfix']);
    if (!fix) throw new Error('no fix');
    expect(fix.isPreferred).toBeUndefined();
    await client.apply(fix);
    expect(client.document(LAMP).getText()).toContain('spoiler: "later"\n');
    expect(await only(LAMP, 'level-unknown')).toEqual([]);
  });

  test('every certain fix of a file at once', async () => {
    await openLamp('A lamp that that Miss Thrane lit. Miss Thrane is is here.');
    const anywhere = client.rangeOf(LAMP, 'number');
    const [all, ...others] = await client.actions(LAMP, anywhere, ['source']);
    expect(others).toEqual([]);
    if (!all) throw new Error('no fix');
    expect(all.kind).toBe('source.fixAll');
    const certain = client.diagnostics(LAMP).filter(({ code }) => code === 'name-avoided');
    expect(certain).toHaveLength(2);
    await client.apply(all);
    expect(client.document(LAMP).getText()).toContain('Captain Thrane lit. Captain Thrane is');
    expect(await only(LAMP, 'name-avoided')).toEqual([]);
    await expectChecked();
  });

  test('a finding is accepted once somebody has said why', async () => {
    await openLamp('A lamp that Corvin Dray lit is burning.');
    const range = client.rangeOf(LAMP, 'Corvin Dray');
    const accept = (await client.actions(LAMP, range)).find(({ title }) => /^Accept/.test(title));
    if (!accept) throw new Error('no acceptance');
    expect(accept.diagnostics?.map(({ code }) => code)).toEqual(['name-unknown']);
    await client.apply(accept);
    expect(await only(LAMP, 'name-unknown')).toEqual([]);
    expect(client.diagnostics(LAMP).length).toBeGreaterThan(0);
    await client.replace(LAMP, 'why: ""', 'why: a keeper of the last film');
    await client.replace(LAMP, 'by: ""', 'by: jonah');
    await expectChecked();
    expect(client.diagnostics(LAMP)).toEqual([]);
  });

  test('what tells too early is never accepted', async () => {
    await openLamp('A lamp that Ysolde lit is burning.');
    const titles = (await client.actions(LAMP, client.rangeOf(LAMP, 'Ysolde'))).map(
      ({ title }) => title,
    );
    expect(titles.filter((title) => /^Accept/.test(title))).toEqual([]);
  });
});
