import { createHash } from 'node:crypto';
import { existsSync, realpathSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import type { Command } from 'commander';

import { readPageFiles, serveDesk, type ServedDesk, type Serving } from '../desk/index.js';
import { chromeFaces } from './chrome-faces.js';
import { openInBrowser } from './desk-browser.js';
import { stopAsked } from './desk-stop.js';
import { watchDesk } from './desk-watch.js';
import { drawWith } from './draw.js';
import { FINE, UsageError, type Io } from './io.js';
import { contentOf, type Common } from './options.js';
import { sayRefusal } from './publish-text.js';

interface DeskFlags extends Common {
  readonly port: string;
  readonly open: boolean;
}

/** `holdback desk`: the writers' desk, on this machine alone. */
export function addDesk(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('desk')
    .description(
      'the writers’ desk: a page on this machine alone, for writing cards (for the house)',
    )
    .option('--port <number>', 'the port; any free one, if it is not said', '0')
    .option('--no-open', 'print the address and open no browser')
    .action(async (_flags: unknown, command: Command) => {
      await runDesk(command.optsWithGlobals<DeskFlags>(), io);
      finish(FINE);
    });
}

async function runDesk(flags: DeskFlags, io: Io): Promise<void> {
  const port = portFrom(flags.port);
  const { path, folder } = contentOf(flags, io);
  const started = io.elapsed();
  const desk = await served(port, {
    contentPath: path,
    folder,
    // Elapsed time has fractions, and an instant is whole milliseconds.
    now: () => Math.floor(io.now + io.elapsed() - started),
    random: io.random,
    page: readPageFiles(pageFolder()),
    draftsFolder: draftsFolder(path, io),
    temporary: tmpdir(),
    draw: drawWith(io),
    chrome: chromeFaces,
    sayRefusal: (refusal) => sayRefusal(refusal, 'the preview', false).trimEnd(),
    watch: (changed) => watchDesk(path, changed),
    fail: (error) => {
      io.err(`${sayFailure(error, flags.debug === true)}\n`);
    },
  });
  io.out(`the desk is open at ${desk.address}\n`);
  io.out('it is for you alone: whoever has this address can read all of the content\n');
  if (flags.open) openInBrowser(desk.address);
  await stopAsked();
  await desk.close();
}

/** @throws UsageError if the port cannot be had. */
async function served(port: number, serving: Omit<Serving, 'port'>): Promise<ServedDesk> {
  try {
    return await serveDesk({ ...serving, port });
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : null;
    const why =
      code === 'EADDRINUSE'
        ? 'something else is served there'
        : code === 'EACCES'
          ? 'it is kept for the system'
          : null;
    if (why === null) throw error;
    throw new UsageError(`--port ${String(port)}: ${why}; name another, or none for any free one`);
  }
}

function sayFailure(error: unknown, debug: boolean): string {
  if (!(error instanceof Error)) return String(error);
  return debug ? (error.stack ?? error.message) : error.message;
}

/** @throws UsageError for what is no port. */
function portFrom(text: string): number {
  const port = Number(text);
  if (/^\d{1,5}$/.test(text) && port <= 65_535) return port;
  throw new UsageError(`--port ${text}: it is a number from 0 to 65535`);
}

/**
 * The finished page: beside this room where it is compiled, else in what was last built.
 * @throws UsageError if nothing was built.
 */
function pageFolder(): string {
  const places = ['../desk-page/', '../../dist/pipeline/desk-page/'];
  const found = places
    .map((place) => fileURLToPath(new URL(place, import.meta.url)))
    .find((place) => existsSync(join(place, 'index.html')));
  if (found !== undefined) return found;
  throw new UsageError('the page of the desk is not built: run `npm run build`');
}

/**
 * Where what is typed and not saved is kept: with the user's own state, outside of the content, a
 * folder for each content folder. Not among caches, which may be emptied at any time.
 */
function draftsFolder(contentPath: string, io: Io): string {
  const stated = io.env['XDG_STATE_HOME'] ?? io.env['LOCALAPPDATA'];
  const state =
    stated !== undefined && stated !== ''
      ? stated
      : join(io.env['HOME'] ?? homedir(), '.local', 'state');
  const name = createHash('sha256').update(realpathSync(contentPath)).digest('hex').slice(0, 24);
  return join(state, 'holdback', 'desk', name);
}
