import { statSync } from 'node:fs';
import { basename, dirname, join, relative, resolve, sep } from 'node:path';

import { watch } from 'chokidar';
import type { Command } from 'commander';

import { serve } from '../editor/index.js';
import { UsageError, type Io } from './io.js';
import { contentOf, type Common } from './options.js';

interface LspFlags extends Common {
  readonly stdio?: boolean;
}

/** `holdback lsp --stdio`: the same rules in an editor. Standard output is the protocol alone. */
export function addLsp(program: Command, io: Io): void {
  program
    .command('lsp')
    .description('serve editors by the Language Server Protocol: it tells everything')
    .option('--stdio', 'on standard input and output, the one way there is')
    .allowUnknownOption()
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<LspFlags>();
      if (flags.stdio !== true) throw new UsageError('lsp needs --stdio: the one way it serves');
      const isStated = program.getOptionValueSource('content') === 'cli';
      const stated = isStated ? contentOf(flags, io).path : null;
      globalThis.console = new console.Console(process.stderr);
      const started = io.elapsed();
      serve({
        input: process.stdin,
        output: process.stdout,
        now: () => io.now + io.elapsed() - started,
        find: (places) => stated ?? findContent([...places, io.cwd]),
        open: (content) => contentOf({ content }, io).folder,
        watch: watchPaths,
      });
      await new Promise<never>(() => undefined);
    });
}

/** The content folder that a place is, holds, or lies in: of several places, that of the first. */
function findContent(places: readonly string[]): string | null {
  for (const place of places.filter((each) => each !== '')) {
    const within = [place, join(place, 'content')].find(isContent);
    const around = parentsOf(place).find(isContent);
    const found = within ?? around;
    if (found !== undefined) return found;
  }
  return null;
}

/** A place that cannot be looked at is none: an editor may name a file, or what is not there yet. */
function isContent(folder: string): boolean {
  try {
    return statSync(join(folder, 'property.yaml')).isFile();
  } catch {
    return false;
  }
}

function parentsOf(place: string): readonly string[] {
  const parents: string[] = [];
  for (let at = resolve(place); dirname(at) !== at;) {
    at = dirname(at);
    parents.push(at);
  }
  return parents;
}

function watchPaths(content: string, changed: (path: string) => void): () => void {
  const watcher = watch(content, {
    ignoreInitial: true,
    ignored: (path) => path !== content && basename(path).startsWith('.'),
  });
  watcher.on('all', (_event, path) => {
    changed(relative(content, path).split(sep).join('/'));
  });
  watcher.on('error', () => undefined);
  return () => void watcher.close();
}
