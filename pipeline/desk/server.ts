import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';

import type { Draw } from '../out/site/index.js';
import type { Folder } from '../read/index.js';
import type { Faces } from '../typeset/index.js';
import type { Disk } from '../write/index.js';
import { sendBytes, sendTrouble } from './answers.js';
import { readBody } from './body.js';
import { Desk } from './desk.js';
import { Events } from './events.js';
import { guard, type Guarding } from './guard.js';
import { Jobs } from './jobs.js';
import { Made } from './made.js';
import { withNonce, type PageFiles } from './page-files.js';
import type { PreviewGround } from './preview-job.js';
import { Refusal } from './refusal.js';
import { GETS, POSTS, answer, type Bench } from './routes.js';
import { Tickets } from './tickets.js';

/** What a desk needs of the world. */
export interface Serving {
  readonly contentPath: string;
  readonly folder: Folder;
  readonly now: () => number;
  /** 0 for any free one. */
  readonly port: number;
  /** So many octets of chance that nobody can foretell. */
  readonly random: (octets: number) => Uint8Array;
  /** The finished page. */
  readonly page: PageFiles;
  /** Where what is typed and not saved is kept. */
  readonly draftsFolder: string;
  /** A folder for things that are thrown away. */
  readonly temporary: string;
  readonly draw: Draw;
  readonly chrome: () => Faces;
  readonly sayRefusal: PreviewGround['sayRefusal'];
  /** Calls with the paths that change below the content, until what it returns is called. */
  readonly watch: (changed: (paths: readonly string[]) => void) => () => void;
  /** Told of errors that are nobody's mistake: for the terminal, never for the page. */
  readonly fail: (error: unknown) => void;
  readonly disk?: Disk;
}

/** A desk that is served. */
export interface ServedDesk {
  /** Where it is opened: with the token, which nobody else is told. */
  readonly address: string;
  readonly token: string;
  readonly port: number;
  close(): Promise<void>;
}

const LOOPBACK = '127.0.0.1';

/**
 * Serves the writers' desk on the loopback address.
 * @throws Error if the port is taken, or the server came to listen anywhere else.
 */
export async function serveDesk(serving: Serving): Promise<ServedDesk> {
  const { contentPath, folder, now, draftsFolder, disk } = serving;
  const chance = (octets: number): string =>
    Buffer.from(serving.random(octets)).toString('base64url');
  const token = chance(32);
  const session = Buffer.from(serving.random(6)).toString('hex');
  const events = new Events(session);
  const tell = events.tell.bind(events);
  const order = { contentPath, folder, now, draftsFolder, session, tell };
  const bench: Bench = {
    desk: new Desk({ ...order, ...(disk ? { disk } : {}) }),
    events,
    jobs: new Jobs(tell),
    made: new Made(() => chance(24)),
    tickets: new Tickets(() => chance(24)),
    folder,
    now,
    preview: pick(serving),
    chrome: serving.chrome,
    serving: { preview: null },
  };
  const server = createServer((request, response) => {
    void handle(request, response, { server, token, bench, serving, chance });
  });
  const port = await listening(server, serving.port).catch((error: unknown) => {
    bench.desk.end();
    throw error;
  });
  const unwatch = serving.watch((paths) => {
    bench.desk.changedOnDisk(paths);
  });
  return {
    address: `http://${LOOPBACK}:${String(port)}/#token=${token}`,
    token,
    port,
    async close() {
      unwatch();
      bench.jobs.end();
      events.end();
      bench.desk.end();
      await bench.serving.preview?.close();
      await new Promise((resolve) => {
        server.close(resolve);
        server.closeAllConnections();
      });
    },
  };
}

function pick({ draw, temporary, sayRefusal }: Serving): Bench['preview'] {
  return { draw, temporary, sayRefusal };
}

async function listening(server: Server, port: number): Promise<number> {
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, LOOPBACK, resolve);
  });
  const address = server.address();
  if (typeof address === 'object' && address?.address === LOOPBACK) return address.port;
  server.close();
  throw new Error('the desk is served on this machine alone, and could not be');
}

interface Handling {
  readonly server: Server;
  readonly token: string;
  readonly bench: Bench;
  readonly serving: Serving;
  readonly chance: (octets: number) => string;
}

async function handle(
  request: IncomingMessage,
  response: ServerResponse,
  handling: Handling,
): Promise<void> {
  const { bench, serving } = handling;
  const { method = '', url = '' } = request;
  const guarded = guard({ method, target: url, headers: request.rawHeaders }, guardingOf(handling));
  if (!guarded.ok) {
    const allow = guarded.allow === undefined ? {} : { allow: guarded.allow };
    const more = { ...allow, connection: 'close' };
    sendTrouble(response, guarded.status, { error: 'refused', message: guarded.why }, more);
    return;
  }
  const { path, query } = guarded;
  try {
    const file = serving.page.get(path);
    const made = bench.made.at(path);
    const [gets, posts] = [GETS[path], POSTS[path]];
    if (method === 'POST' && posts) await post(request, response, handling, posts, query);
    else if (gets) await answer(gets, bench, { query, body: null, request, response });
    else if (made) sendBytes(response, { type: made.type, policy: 'pdf' }, made.bytes);
    else if (file) sendPage(response, file, handling.chance(16));
  } catch (error) {
    refuse(response, error, serving);
  }
}

function sendPage(
  response: ServerResponse,
  file: NonNullable<ReturnType<PageFiles['get']>>,
  nonce: string,
): void {
  if (!file.type.startsWith('text/html')) sendBytes(response, { type: file.type }, file.bytes);
  else sendBytes(response, { type: file.type, policy: { nonce } }, withNonce(file, nonce));
}

async function post(
  request: IncomingMessage,
  response: ServerResponse,
  { bench }: Handling,
  route: (typeof POSTS)[string],
  query: URLSearchParams,
): Promise<void> {
  const body = await readBody(request);
  if (!body.ok) {
    const message = body.why;
    sendTrouble(response, body.status, { error: 'bad request', message }, { connection: 'close' });
    return;
  }
  await answer(route, bench, { query, body: body.value, request, response });
}

/** A page is told what it can do something about; all else is for the terminal. */
function refuse(response: ServerResponse, error: unknown, { fail }: Serving): void {
  if (error instanceof Refusal) {
    sendTrouble(response, error.status, error.trouble);
    return;
  }
  fail(error);
  const message = 'this could not be done: see the terminal in which the desk was opened';
  sendTrouble(response, 500, { error: 'failed', message });
}

function guardingOf({ server, token, bench, serving }: Handling): Guarding {
  const address = server.address();
  return {
    port: typeof address === 'object' && address !== null ? address.port : 0,
    token,
    methodsOf(path) {
      if (Object.hasOwn(POSTS, path)) return ['POST'];
      if (Object.hasOwn(GETS, path)) return ['GET'];
      const isThere = serving.page.has(path) || bench.made.at(path) !== null;
      return isThere ? ['GET', 'HEAD'] : null;
    },
    needsToken(path, query) {
      if (!path.startsWith('/api/')) return false;
      const ticket = path === '/api/events' ? query.get('ticket') : null;
      return ticket === null || !bench.tickets.take(ticket);
    },
  };
}
