import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

import { sampleWith } from '../../pipeline/checks/index.js';
import { serveDesk, type ServedDesk, type Serving } from '../../pipeline/desk/index.js';
import type { CardAnswer, DeskEvent } from '../../pipeline/desk/protocol.js';
import { diskFolder, drawnBy, rasterise } from '../../pipeline/read/index.js';
import { openFace, type Faces } from '../../pipeline/typeset/index.js';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);

/** Faces that a proof's own words are set in. */
export function chrome(): Faces {
  const file = 'alegreya-sans-latin-400-normal.woff';
  const face = openFace(
    readFileSync(require.resolve(`@fontsource/alegreya-sans/files/${file}`)),
    file,
  );
  return { regular: face, italic: face, bold: face, boldItalic: face };
}

/** The page's files in these tests: the page itself has tests of its own. */
const PAGE = new Map([
  [
    '/',
    { type: 'text/html; charset=utf-8', bytes: Buffer.from('<script nonce="{{nonce}}"></script>') },
  ],
  ['/desk.js', { type: 'text/javascript; charset=utf-8', bytes: Buffer.from('void 0;') }],
]);

/** A content folder on the disk, and desks on it. */
export class DeskGround {
  readonly root = mkdtempSync(join(tmpdir(), 'holdback-desk-'));
  readonly content = join(this.root, 'content');
  readonly #desks: ServedDesk[] = [];
  /** What was told to the terminal: nothing, where all is well. */
  readonly failures: unknown[] = [];

  constructor(files: Readonly<Record<string, string>> = {}) {
    for (const [path, text] of sampleWith(files)) this.write(path, text);
  }

  write(path: string, text: string | Uint8Array): void {
    mkdirSync(dirname(join(this.content, path)), { recursive: true });
    writeFileSync(join(this.content, path), text);
  }

  read(path: string): string {
    return readFileSync(join(this.content, path), 'utf8');
  }

  async open(more: Partial<Serving> = {}): Promise<Client> {
    const desk = await serveDesk({
      contentPath: this.content,
      folder: diskFolder(this.content),
      now: () => Date.UTC(2027, 0, 10),
      port: 0,
      random: (octets) => crypto.getRandomValues(new Uint8Array(octets)),
      page: PAGE,
      draftsFolder: join(this.root, 'drafts'),
      temporary: this.root,
      draw: {
        picture: (art, width) => rasterise(art, width, 'webp'),
        share: async (svg) => (await rasterise(svg, 1200, 'png')).bytes,
        by: drawnBy,
      },
      chrome,
      sayRefusal: ({ why }) => why,
      watch: () => () => undefined,
      fail: (error) => this.failures.push(error),
      ...more,
    });
    this.#desks.push(desk);
    return new Client(desk);
  }

  async end(): Promise<void> {
    await Promise.all(this.#desks.map((desk) => desk.close()));
    rmSync(this.root, { recursive: true, force: true });
  }
}

/** What was answered. */
export interface Answer<T> {
  readonly status: number;
  readonly value: T;
}

/** Speaks to a desk as its page does. */
export class Client {
  constructor(readonly desk: ServedDesk) {}

  get origin(): string {
    return `http://127.0.0.1:${String(this.desk.port)}`;
  }

  async get<T>(path: string): Promise<Answer<T>> {
    return this.#ask(path, { headers: { 'x-holdback-token': this.desk.token } });
  }

  async post<T>(path: string, body: unknown): Promise<Answer<T>> {
    const headers = {
      'x-holdback-token': this.desk.token,
      origin: this.origin,
      'content-type': 'application/json',
    };
    return this.#ask(path, { method: 'POST', headers, body: JSON.stringify(body) });
  }

  async card(card: string): Promise<CardAnswer> {
    const { status, value } = await this.get<CardAnswer>(`/api/card?card=${card}`);
    if (status !== 200) throw new Error(JSON.stringify(value));
    return value;
  }

  async #ask<T>(path: string, init: RequestInit): Promise<Answer<T>> {
    const response = await fetch(this.origin + path, init);
    return { status: response.status, value: (await response.json()) as T };
  }

  /** Sends bytes as they are, and gives all that comes back. */
  raw(text: string): Promise<string> {
    return new Promise((resolve, reject) => {
      const socket = connect(this.desk.port, '127.0.0.1', () => socket.write(text));
      let said = '';
      socket.on('data', (bytes) => (said += bytes.toString()));
      socket.on('error', reject);
      socket.on('close', () => {
        resolve(said);
      });
    });
  }

  /** Listens to events until `enough` says so, or for so many milliseconds. */
  async listen(
    enough: (event: DeskEvent) => boolean,
    most = 20_000,
  ): Promise<readonly DeskEvent[]> {
    const stop = AbortSignal.timeout(most);
    const headers = { 'x-holdback-token': this.desk.token };
    const response = await fetch(`${this.origin}/api/events`, { headers, signal: stop });
    const events: DeskEvent[] = [];
    let text = '';
    for await (const bytes of response.body ?? []) {
      text += new TextDecoder().decode(bytes);
      for (let end = text.indexOf('\n\n'); end >= 0; end = text.indexOf('\n\n')) {
        const data = /^data: (.*)$/m.exec(text.slice(0, end))?.[1];
        text = text.slice(end + 2);
        if (data === undefined) continue;
        const event = JSON.parse(data) as DeskEvent;
        events.push(event);
        if (enough(event)) return events;
      }
    }
    return events;
  }
}
