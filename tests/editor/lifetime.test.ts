import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

import { afterAll, beforeAll, describe, expect, test } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { Client, exitOf, startServer } from './client.js';

const LAMP = 'one/cards/base/a2.md';
const EARLY = 'A lamp that Ysolde Marrack lit is burning.';
const NAMES = `names:
  - { name: Ysolde Marrack, kind: character, level: later, publicName: The voice }
`;

let placed: Placed;

beforeAll(async () => {
  placed = await placeContent(sampleWith({ 'names.yaml': NAMES }));
});
afterAll(() => placed[Symbol.asyncDispose]());

function early(): string {
  const lamp = sampleWith({}).get(LAMP) ?? '';
  return lamp.replace('A lamp that nobody lit is burning.', EARLY);
}

/** A library that chatters on the console from the moment on that the server listens. */
const CHATTER =
  'data:text/javascript,process.stdin.on("newListener",(name)=>' +
  '{if(name==="data")setInterval(()=>{console.log("chatter");console.info("more")},5)})';

describe.concurrent('a server from its start to its end', () => {
  test('ends with 1 where its editor is gone without a word', async () => {
    const server = startServer(placed.root);
    server.stdin.end();
    expect(await exitOf(server)).toBe(1);
  });

  test('ends with 1 at `exit` alone', async () => {
    const client = new Client(placed.content, placed.root);
    await client.start();
    expect(await client.exit()).toBe(1);
    client.end();
  });

  test('writes the protocol alone, whatever libraries say, and ends with 0', async () => {
    const client = new Client(placed.content, placed.root, [], ['--import', CHATTER]);
    await client.start();
    await client.open(LAMP, early());
    await client.until(() => client.diagnostics(LAMP)[0]?.code === 'leak');
    expect(client.noise).toEqual([]);
    expect(client.stderr).toContain('chatter');
    expect(await client.stop()).toBe(0);
    client.end();
  });

  test('says so where there is no content, and serves a card that is opened from elsewhere', async () => {
    const client = new Client(placed.content, '/');
    await client.start(null);
    await client.open(LAMP, early());
    await client.until(() => client.diagnostics(LAMP)[0]?.code === 'leak');
    expect(client.shown).toEqual([
      'Holdback found no content folder here: a folder with property.yaml, or one called content that has it.',
    ]);
    expect(await client.stop()).toBe(0);
    client.end();
  });

  test('watches the files itself for an editor that does not', async () => {
    const own = await placeContent(sampleWith({ 'names.yaml': NAMES }));
    const client = new Client(own.content, '/', ['--content', own.content]);
    await client.start(null, {});
    await client.open('property.yaml', sampleWith({}).get('property.yaml') ?? '');
    await client.until(() => client.published.has('property.yaml'));
    expect(client.all()).toEqual({});
    const again = setInterval(() => void writeFile(join(own.content, LAMP), early()), 300);
    await client.until(() => client.diagnostics(LAMP)[0]?.code === 'leak');
    clearInterval(again);
    expect(client.diagnostics(LAMP)[0]?.relatedInformation).toBeUndefined();
    await rm(join(own.content, LAMP));
    await client.until(() => !(LAMP in client.all()));
    expect(client.registered).toEqual([]);
    client.end();
    await own[Symbol.asyncDispose]();
  });
});
