import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { extname } from 'node:path';

import type { DeskEvent, Edit } from '../../../pipeline/desk/protocol.js';
import { deskFiles } from '../../setup/bundle.mjs';
import { MadeUpCard, trouble } from './stub-answers.js';

export const TOKEN = 'a-token-of-the-test';

const CSP =
  "default-src 'none'; script-src 'nonce-N'; style-src 'self' 'nonce-N'; font-src 'self'; " +
  "img-src 'self' blob: data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** The page, bundled once. */
let bundled: Promise<ReadonlyMap<string, Uint8Array>> | undefined;

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.woff2': 'font/woff2',
};

/** What a request may ask for, as far as the stub reads it. */
interface Asked {
  readonly base: string;
  readonly edit: Edit;
  readonly sequence: number;
}

/** A desk of one card that is made up: for what a real one is seldom seen to do. */
export class Stub {
  readonly streams = new Set<ServerResponse>();
  /** Answers to saves wait until it is done. */
  holdSaves: Promise<void> = Promise.resolve();
  /** What is answered of a card is what it was when it was asked for, however long it takes. */
  holdCards: Promise<void> = Promise.resolve();
  /** How often the card was asked for. */
  asked = 0;
  /** How many saves have come in. */
  saves = 0;
  #files: ReadonlyMap<string, Uint8Array> = new Map();
  readonly #server = createServer((request, response) => void this.#answer(request, response));

  constructor(readonly card: MadeUpCard) {}

  async open(): Promise<string> {
    this.#files = await (bundled ??= deskFiles());
    await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
    const place = this.#server.address();
    return `http://127.0.0.1:${typeof place === 'object' ? String(place?.port) : ''}/`;
  }

  tell(event: DeskEvent): void {
    for (const stream of this.streams) {
      stream.write(`event: ${event.type}\ndata: ${JSON.stringify(event)}\n\n`);
    }
  }

  close(): Promise<void> {
    return new Promise((resolve) => {
      this.#server.close(() => resolve());
      this.#server.closeAllConnections();
    });
  }

  async #answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const path = (request.url ?? '/').split('?')[0] ?? '/';
    const name = path === '/' ? 'index.html' : path.slice(1);
    const file = this.#files.get(name);
    if (file) {
      const type = TYPES[extname(name)] ?? '';
      response.writeHead(200, { 'content-type': type, 'content-security-policy': CSP });
      const isPage = name === 'index.html';
      response.end(isPage ? new TextDecoder().decode(file).replaceAll('{{nonce}}', 'N') : file);
      return;
    }
    if (request.headers['x-holdback-token'] !== TOKEN) {
      response.writeHead(403, { 'content-type': 'application/json' });
      response.end(JSON.stringify(trouble('no token')));
      return;
    }
    if (path === '/api/events') {
      this.#stream(response);
      return;
    }
    const chunks: Buffer[] = [];
    for await (const chunk of request) chunks.push(Buffer.from(chunk as Uint8Array));
    const text = Buffer.concat(chunks).toString();
    if (path === '/api/save') {
      this.saves += 1;
      await this.holdSaves;
    }
    const value = this.#said(path, (text === '' ? {} : JSON.parse(text)) as Asked);
    if (path === '/api/card') {
      this.asked += 1;
      await this.holdCards;
    }
    const isTrouble = typeof value === 'object' && value !== null && 'error' in value;
    response.writeHead(isTrouble ? 409 : 200, { 'content-type': 'application/json' });
    response.end(JSON.stringify(value));
    if (path === '/api/draft') this.#tellFindings(JSON.parse(text) as Asked);
  }

  /** A desk tells what is found in a draft after it has answered. */
  #tellFindings({ edit, sequence }: Asked): void {
    const { findings, settled } = this.card.look(this.card.edited(edit).copy);
    const card = MadeUpCard.key;
    this.tell({ type: 'findings', card, sequence, settled, findings });
  }

  #stream(response: ServerResponse): void {
    response.writeHead(200, { 'content-type': 'text/event-stream' });
    response.write('event: hello\ndata: {"type":"hello","session":"one"}\n\n');
    this.streams.add(response);
    response.on('close', () => this.streams.delete(response));
  }

  #said(path: string, { base, edit, sequence }: Asked): unknown {
    if (path === '/api/status') return this.card.status();
    if (path === '/api/card' || path === '/api/discard') return this.card.answer();
    if (path === '/api/draft') return this.card.draft(edit, sequence);
    if (path === '/api/fix') return this.card.mended(edit, sequence);
    if (path === '/api/save') return this.card.save(base, edit);
    if (path === '/api/reveals') return { steps: [], difference: null };
    if (path === '/api/jobs') return { jobs: [] };
    return trouble('not here');
  }
}
