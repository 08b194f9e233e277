import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

import {
  DidChangeTextDocumentNotification,
  DidOpenTextDocumentNotification,
  InitializeRequest,
  InitializedNotification,
  PublishDiagnosticsNotification,
  StreamMessageReader,
  StreamMessageWriter,
  createProtocolConnection,
} from 'vscode-languageserver-protocol/node';

import { median, type Result } from './measure.js';

/** The card that is typed in, a letter at a time. */
const CARD = 'set-1/cards/base/c0500.md';
const LETTERS = 60;

/** Milliseconds between two letters: somebody who types well. */
const PAUSE = 120;

/** How a server answers a typed letter. */
export interface Typing {
  readonly median: number;
  readonly p95: number;
}

/**
 * Milliseconds from a typed letter to the diagnostics of its document over standard input and output,
 * in a set of 1,000 cards, beside a server of the same library that finds nothing in anything.
 */
export async function benchTyping(content: string): Promise<{ typing: Typing; beside: Result }> {
  const cli = fileURLToPath(new URL('../../pipeline/cli/bin.ts', import.meta.url));
  const bare = fileURLToPath(new URL('lsp-bare.ts', import.meta.url));
  const least = await typedIn(content, [bare]);
  const typing = await typedIn(content, [cli, '--content', content, 'lsp', '--stdio']);
  return {
    typing,
    beside: {
      name: 'a typed letter, 1,000 cards',
      milliseconds: typing.median,
      floor: 'a server that finds nothing',
      floorMilliseconds: least.median,
      goal: 50,
    },
  };
}

async function typedIn(content: string, args: readonly string[]): Promise<Typing> {
  const child = spawn(process.execPath, ['--import', import.meta.resolve('tsx'), ...args], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const uri = pathToFileURL(join(content, CARD)).href;
  const text = readFileSync(join(content, CARD), 'utf8');
  let heard: (version: number | undefined) => void = () => undefined;
  connection.onNotification(PublishDiagnosticsNotification.type, (params) => {
    if (params.uri === uri) heard(params.version);
  });
  connection.listen();
  const answer = (version: number): Promise<void> =>
    new Promise((resolve) => {
      heard = (told) => {
        if (told === version) resolve();
      };
    });
  try {
    await connection.sendRequest(InitializeRequest.type, {
      processId: process.pid,
      // eslint-disable-next-line @typescript-eslint/no-deprecated -- the protocol still asks for it
      rootUri: null,
      workspaceFolders: [{ uri: pathToFileURL(content).href, name: 'bench' }],
      capabilities: {},
    });
    await connection.sendNotification(InitializedNotification.type, {});
    const opened = answer(1);
    const textDocument = { uri, languageId: 'markdown', version: 1, text };
    await connection.sendNotification(DidOpenTextDocumentNotification.type, { textDocument });
    await opened;
    const times: number[] = [];
    const line = text.split('\n').length - 2;
    for (let letter = 1; letter <= LETTERS; letter++) {
      await new Promise((resolve) => setTimeout(resolve, PAUSE));
      const at = { line, character: 2 + letter };
      const answered = answer(letter + 1);
      const start = performance.now();
      await connection.sendNotification(DidChangeTextDocumentNotification.type, {
        textDocument: { uri, version: letter + 1 },
        contentChanges: [{ range: { start: at, end: at }, text: letter % 6 === 0 ? ' ' : 'e' }],
      });
      await answered;
      times.push(performance.now() - start);
    }
    const sorted = times.toSorted((a, b) => a - b);
    return { median: median(times), p95: sorted[Math.floor(sorted.length * 0.95)] ?? NaN };
  } finally {
    connection.dispose();
    child.kill();
  }
}
