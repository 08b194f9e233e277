import { symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { LARGEST_BODY } from '../../pipeline/desk/body.js';
import { readPageFiles } from '../../pipeline/desk/index.js';
import { DeskGround, type Client } from './ground.js';
import { SET_FILES } from './sample-files.js';

let ground: DeskGround;
let client: Client;
beforeAll(async () => {
  ground = new DeskGround(SET_FILES);
  client = await ground.open();
});
afterAll(() => ground.end());

const CARD = '/api/card?card=one/base/a1';
const head = (lines: readonly string[], body = ''): string =>
  [...lines, 'Connection: close', '', body].join('\r\n');

function get(target: string, more: Readonly<Record<string, string>> = {}): string {
  const headers = {
    Host: `127.0.0.1:${String(client.desk.port)}`,
    'X-Holdback-Token': client.desk.token,
    ...more,
  };
  return head([
    `GET ${target} HTTP/1.1`,
    ...Object.entries(headers).map((each) => each.join(': ')),
  ]);
}

function post(target: string, body: string, more: Readonly<Record<string, string>> = {}): string {
  const headers = {
    Host: `127.0.0.1:${String(client.desk.port)}`,
    'X-Holdback-Token': client.desk.token,
    Origin: client.origin,
    'Content-Type': 'application/json',
    'Content-Length': String(Buffer.byteLength(body)),
    ...more,
  };
  const lines = Object.entries(headers).map((each) => each.join(': '));
  return head([`POST ${target} HTTP/1.1`, ...lines], body);
}

const DRAFT = (): string =>
  JSON.stringify({ card: 'one/base/a1', base: 'a'.repeat(64), edit: { copy: 'x' }, sequence: 1 });

describe('the wire', () => {
  it('gives a card to its page', async () => {
    expect(await client.raw(get(CARD))).toMatch(/^HTTP\/1\.1 200 [^]*The quay stands in water/);
  });

  it.each<[string, number, () => string]>([
    ['DNS rebinding', 421, () => get(CARD, { Host: 'evil.example' })],
    [
      'a name like ours',
      421,
      () => get(CARD, { Host: `localhost.evil.example:${String(client.desk.port)}` }),
    ],
    [
      'a POST from another origin',
      403,
      () => post('/api/draft', DRAFT(), { Origin: 'https://evil.example' }),
    ],
    ['a POST from nowhere', 403, () => post('/api/draft', DRAFT(), { Origin: 'null' })],
    ['a frame of another site', 403, () => get('/', { 'Sec-Fetch-Site': 'cross-site' })],
    ['no token', 401, () => get(CARD, { 'X-Holdback-Token': '' })],
    ['a wrong token', 401, () => get(CARD, { 'X-Holdback-Token': 'x'.repeat(43) })],
    ['a step up', 400, () => get('/../content/property.yaml')],
    ['a step up, encoded', 400, () => get('/%2e%2e/content/property.yaml')],
    ['a card that steps up', 404, () => get('/api/card?card=../../../etc/passwd')],
    ['a card that steps up, encoded', 404, () => get('/api/card?card=one/%2e%2e/people')],
    ['a card by its path', 404, () => get('/api/card?card=one/cards/base/a1.md')],
    ['two cards', 400, () => get('/api/card?card=one/base/a1&card=one/base/a2')],
    ['no card', 400, () => get('/api/card')],
    ['bad JSON', 400, () => post('/api/draft', '{"card":')],
    ['JSON of another shape', 400, () => post('/api/draft', '[]')],
    ['a key that is none', 400, () => post('/api/discard', '{"card":"one/base/a1","path":"/etc"}')],
    ['JSON that is no UTF-8', 400, () => post('/api/draft', '\ufffe{', { 'Content-Length': '2' })],
    [
      'a body that says it is too large',
      413,
      () => post('/api/draft', '{}', { 'Content-Length': String(LARGEST_BODY + 1) }),
    ],
    ['another method', 405, () => get('/api/save')],
    ['another server', 400, () => get('http://evil.example/')],
    ['a font that is none', 404, () => get('/api/font?key=../../x')],
    ['a proof that is none', 404, () => get('/made/AAAA/proof.pdf')],
    ['a ticket that is none', 401, () => get('/api/events?ticket=abc', { 'X-Holdback-Token': '' })],
    ['a prototype', 404, () => get('/__proto__')],
  ])('refuses %s with %i, and tells nothing', async (_what, status, request) => {
    const said = await client.raw(request());
    expect(said).toMatch(new RegExp(`^HTTP/1\\.1 ${String(status)} `));
    expect(said).not.toContain('The quay');
    expect(said).not.toContain(ground.root);
    expect(said).not.toMatch(/\n\s+at |access-control|set-cookie|node_modules/i);
  });

  it('stops reading a body without a stated length where it is too large', async () => {
    const part = 'x'.repeat(65_536);
    const chunk = `${part.length.toString(16)}\r\n${part}\r\n`;
    const start = post('/api/draft', '').replace('Content-Length: 0', 'Transfer-Encoding: chunked');
    const chunks = chunk.repeat(Math.ceil(LARGEST_BODY / part.length) + 2);
    expect(await client.raw(start + chunks)).toMatch(/^HTTP\/1\.1 413 /);
  });

  it('lets nothing run or load in what it answers', async () => {
    const [page, api] = [await client.raw(get('/')), await client.raw(get(CARD))];
    const nonce = /script-src 'nonce-([^']+)'/.exec(page)?.[1] ?? '';
    expect(nonce.length).toBeGreaterThan(20);
    expect(page).toContain(`<script nonce="${nonce}">`);
    expect(await client.raw(get('/'))).not.toContain(nonce);
    for (const said of [page, api]) {
      expect(said).toMatch(
        /^content-security-policy: default-src 'none';[^\n]*frame-ancestors 'none'/m,
      );
      expect(said).toMatch(/^x-content-type-options: nosniff/m);
      expect(said).toMatch(/^referrer-policy: no-referrer/m);
      expect(said).toMatch(/^cache-control: no-store/m);
      expect(said).not.toMatch(/unsafe|\*|access-control/i);
    }
  });

  it('listens on the loopback address, and on no other', async () => {
    const elsewhere = await fetch(`http://[::1]:${String(client.desk.port)}/`).catch(() => null);
    expect(elsewhere).toBeNull();
    expect(client.desk.address).toBe(
      `http://127.0.0.1:${String(client.desk.port)}/#token=${client.desk.token}`,
    );
  });

  it('has four streams at most, and room again once one is closed', async () => {
    const stops = [1, 2, 3, 4, 5].map(() => new AbortController());
    const headers = { 'x-holdback-token': client.desk.token };
    const open = (stop: AbortController | undefined): Promise<number> =>
      fetch(`${client.origin}/api/events`, { headers, signal: stop?.signal ?? null }).then(
        ({ status }) => status,
      );
    const statuses = [];
    for (const stop of stops) statuses.push(await open(stop));
    expect(statuses).toEqual([200, 200, 200, 200, 429]);
    expect((await client.get('/api/jobs')).status).toBe(200);
    for (const stop of stops) stop.abort();
    await new Promise((resolve) => setTimeout(resolve, 100));
    const last = new AbortController();
    expect(await open(last)).toBe(200);
    last.abort();
  });

  it('opens one stream for a ticket, once', async () => {
    const { value } = await client.post<{ ticket: string }>('/api/ticket', {});
    const address = `${client.origin}/api/events?ticket=${value.ticket}`;
    const stop = new AbortController();
    expect((await fetch(address, { signal: stop.signal })).status).toBe(200);
    stop.abort();
    expect((await fetch(address)).status).toBe(401);
  });

  it('serves of the page’s folder neither links nor hidden files', () => {
    const folder = join(ground.root, 'content', '..');
    writeFileSync(join(folder, 'index.html'), '<p>');
    writeFileSync(join(folder, '.hidden.js'), 'x');
    symlinkSync(join(ground.content, 'people.yaml'), join(folder, 'people.js'));
    expect([...readPageFiles(folder).keys()]).toEqual(['/index.html', '/']);
  });

  it('had nothing to say to the terminal', () => {
    expect(ground.failures).toEqual([]);
  });
});
