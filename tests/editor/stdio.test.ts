import { rm, rename, writeFile, mkdir } from 'node:fs/promises';
import { join } from 'node:path';

import { afterEach, beforeEach, describe, expect, test } from 'vitest';

import { check, sampleWith } from '../../pipeline/checks/index.js';
import { diagnosticsOf } from '../../pipeline/editor/index.js';
import {
  approvalsOf,
  diskFolder,
  keptDictionaries,
  readProperty,
  readReview,
} from '../../pipeline/read/index.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { Client, exitOf, startServer } from './client.js';

const NAMES = `names:
  - { name: Odalys Thrane, kind: character, aliases: [Odalys, { form: Captain *Thrane*, level: later }], avoid: [{ form: Miss Thrane, use: Captain Thrane, why: retitled }], say: oh-DAH-liss, level: open }
  - { name: Ysolde Marrack, kind: character, aliases: [Ysolde], level: later, publicName: The voice }
`;
const LAMP = 'one/cards/base/a2.md';
const WORDS = 'A lamp that nobody lit is burning.';

let placed: Placed;
let client: Client;

beforeEach(async () => {
  placed = await placeContent(sampleWith({ 'names.yaml': NAMES }));
  client = new Client(placed.content, placed.root);
});
afterEach(async () => {
  client.end();
  await placed[Symbol.asyncDispose]();
});

function textOf(path: string): string {
  return sampleWith({ 'names.yaml': NAMES }).get(path) ?? '';
}

/** What `check` finds in the folder as it lies on the disk, as diagnostics. */
function checked(uriOf: (path: string) => string): Record<string, unknown> {
  const folder = diskFolder(placed.content);
  const { content, fonts } = readProperty(folder);
  const approvals = approvalsOf(folder, content, fonts, readReview(folder));
  const { findings } = check(content, { fonts, dictionaries: keptDictionaries, approvals });
  const files = [...new Set(findings.map(({ file }) => file))].sort();
  return Object.fromEntries(files.map((file) => [file, diagnosticsOf(findings, file, uriOf)]));
}

describe('a language server over standard input and output', () => {
  test('tells what it can, and shows all that check finds in every file', async () => {
    await writeFile(join(placed.content, LAMP), textOf(LAMP).replace(WORDS, 'Ysolde waits.'));
    await rm(join(placed.content, 'one/cards/base/a1.md'));
    const { capabilities } = await client.start();
    expect(capabilities).toMatchObject({ positionEncoding: 'utf-16', hoverProvider: true });
    const whole = checked((path) => client.uriOf(path));
    expect(Object.keys(whole).length).toBeGreaterThan(1);
    await client.until(() => JSON.stringify(client.all()) === JSON.stringify(whole));
    expect(client.all()).toEqual(whole);
    expect(client.registered).toEqual(['workspace/didChangeWatchedFiles']);
  });

  test('follows what is typed, letter by letter, with the version of the document', async () => {
    await client.start();
    await client.open(LAMP, textOf(LAMP));
    await client.until(() => client.published.get(LAMP)?.version === 1);
    expect(client.diagnostics(LAMP)).toEqual([]);
    const version = await client.replace(LAMP, 'nobody', 'Ysolde Marrack');
    await client.until(() => client.published.get(LAMP)?.version === version);
    const places = 'names.yaml';
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
              uri: client.uriOf(places),
              range: { start: { line: 2, character: 12 }, end: { line: 2, character: 12 } },
            },
          },
        ],
      },
    ]);
    await client.replace(LAMP, 'Ysolde Marrack', 'nobody');
    await client.until(() => client.diagnostics(LAMP).length === 0);
  });

  test('counts in UTF-16 units, through CRLF and several changes at once', async () => {
    await client.start();
    await client.open(LAMP, textOf(LAMP).replaceAll('\n', '\r\n'));
    await client.until(() => client.published.has(LAMP));
    const { start } = client.rangeOf(LAMP, WORDS);
    await client.change(
      LAMP,
      { range: { start, end: start }, text: '\u{1f56f} and ' },
      { range: { start, end: { ...start, character: start.character + 2 } }, text: 'One' },
    );
    const version = await client.replace(LAMP, 'nobody', 'Ysolde');
    await client.until(
      () => client.published.get(LAMP)?.version === version && client.diagnostics(LAMP).length > 0,
    );
    const leak = client.diagnostics(LAMP).find(({ code }) => code === 'leak');
    expect(leak?.range).toEqual(client.rangeOf(LAMP, 'Ysolde'));
  });

  test('shows faults of YAML that is not whole, and keeps what was found in other files', async () => {
    await rm(join(placed.content, 'one/cards/base/a1.md'));
    await client.start();
    await client.until(() => Object.keys(client.all()).length > 0);
    const before = client.all();
    const plan = 'one/plan.yaml';
    await client.open('people.yaml', textOf('people.yaml'));
    await client.change('people.yaml', { text: 'people: [{ id: jonah' });
    await client.until(() => client.diagnostics('people.yaml').length > 0);
    expect(client.diagnostics('people.yaml')[0]?.code).toBe('schema');
    await client.open(LAMP, textOf(LAMP));
    await client.change(LAMP, { text: '---\nnumber: [\n---\nA' });
    await client.until(() => client.diagnostics(LAMP).length > 0);
    expect(client.diagnostics(LAMP)[0]?.code).toBe('front-matter');
    expect(client.diagnostics(plan)).toEqual(before[plan]);
    await client.change(LAMP, { text: textOf(LAMP) });
    await client.change('people.yaml', { text: textOf('people.yaml') });
    await client.until(() => JSON.stringify(client.all()) === JSON.stringify(before));
  });

  test('follows files that are made, renamed, taken away and closed', async () => {
    await client.start();
    await client.open(LAMP, textOf(LAMP));
    await client.replace(LAMP, 'nobody', 'Ysolde');
    await client.until(() => client.diagnostics(LAMP).length > 0);
    await client.close(LAMP);
    await client.until(() => client.diagnostics(LAMP).length === 0);
    const stray = 'one/cards/none/a9.md';
    await mkdir(join(placed.content, 'one/cards/none'));
    await writeFile(join(placed.content, stray), textOf(LAMP));
    await client.touch(stray, 1);
    await client.until(() => client.diagnostics(stray)[0]?.code === 'misplaced-card');
    await rename(join(placed.content, 'one/cards/none'), join(placed.content, 'one/cards/other'));
    await client.touch('one/cards/none', 3);
    await client.touch('one/cards/other', 1);
    await client.until(
      () =>
        client.diagnostics(stray).length === 0 &&
        client.diagnostics('one/cards/other/a9.md').length > 0,
    );
    await rm(join(placed.content, 'one/cards/other'), { recursive: true });
    await client.touch('one/cards/other/a9.md', 3);
    await client.until(() => Object.keys(client.all()).length === 0);
  });

  test('passes over files outside of the content, and says nothing of unknown ones', async () => {
    await client.start(placed.root);
    await client.open('../elsewhere.md', 'Ysolde');
    expect(await client.hover('../elsewhere.md', 'Ys|olde')).toBeNull();
    await client.open('one/notes.txt', 'Ysolde');
    expect(await client.complete('one/notes.txt', 'Ysolde|')).toEqual([]);
    expect(client.all()).toEqual({});
  });

  test('tells of names, holds, ids and keys', async () => {
    await client.start();
    const text = textOf(LAMP).replace(
      WORDS,
      'Odalys lit [nine lamps](held:later) of [two](count:base).',
    );
    await client.open(LAMP, text);
    expect((await client.hover(LAMP, 'Oda|lys'))?.contents).toEqual({
      kind: 'markdown',
      value: [
        '**Odalys Thrane**, character',
        'Said oh\\-DAH\\-liss',
        'Also Odalys, Captain \\*Thrane\\* \\(held until 16 April 2027, 20\\:00 London time\\)',
        'Not Miss Thrane\\: Captain Thrane \\(retitled\\)',
        'Known \\(`open`\\)\\: open',
      ].join('\n\n'),
    });
    const plain = async (words: string): Promise<string> => {
      const { contents } = (await client.hover(LAMP, words)) ?? {};
      return typeof contents === 'object' && 'value' in contents ? contents.value : '';
    };
    expect(await plain('nine la|mps')).toContain('held until'.replace('held', 'Held'));
    expect(await plain('[tw|o]')).toContain('Counts 3'.replace('3', '2'));
    expect(await plain('spoil|er: open')).toContain('Expected\\: an id');
    expect(await plain('spoiler: op|en')).toContain('Open');
  });

  test('ends with 0 after shutdown, with 1 without, and writes nothing else', async () => {
    await client.start();
    expect(await client.stop()).toBe(0);
    expect(client.stderr).toBe('');
    const other = startServer(placed.root);
    other.stdin.end();
    expect(await exitOf(other)).toBe(1);
  });

  test('answers a client again that has sent rubbish', async () => {
    await client.start();
    client.process.stdin.write('Content-Length: 9\r\n\r\n{"a": nul');
    client.process.stdin.write('Content-Length: 2\r\n\r\n{}');
    const note = JSON.stringify({
      jsonrpc: '2.0',
      method: 'textDocument/didChange',
      params: { textDocument: 7 },
    });
    client.process.stdin.write(`Content-Length: ${String(note.length)}\r\n\r\n${note}`);
    await client.open(LAMP, textOf(LAMP).replace('nobody', 'Ysolde'));
    await client.until(() => client.diagnostics(LAMP).length > 0);
    expect(await client.stop()).toBe(0);
  });
});
