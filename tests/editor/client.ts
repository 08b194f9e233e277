import { spawn, type ChildProcessByStdio } from 'node:child_process';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { fileURLToPath, pathToFileURL } from 'node:url';

import {
  CodeActionRequest,
  CompletionRequest,
  DidChangeTextDocumentNotification,
  DidChangeWatchedFilesNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  ExitNotification,
  FileChangeType,
  HoverRequest,
  InitializeRequest,
  InitializedNotification,
  LogMessageNotification,
  PublishDiagnosticsNotification,
  RegistrationRequest,
  ShowMessageNotification,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
  createProtocolConnection,
  type ClientCapabilities,
  type CodeAction,
  type CompletionItem,
  type Diagnostic,
  type Hover,
  type InitializeResult,
  type Position,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  type Range,
  type TextDocumentContentChangeEvent,
} from 'vscode-languageserver-protocol/node';
import { TextDocument } from 'vscode-languageserver-textdocument';

const bin = fileURLToPath(new URL('../../pipeline/cli/bin.ts', import.meta.url));
const tsx = import.meta.resolve('tsx');

/** Longest that a test waits for something that it expects, in milliseconds. */
const LONGEST = 30_000;

export type Process = ChildProcessByStdio<Writable, Readable, Readable>;

/** Starts the language server as an editor does. */
export function startServer(
  cwd: string,
  flags: readonly string[] = [],
  node: readonly string[] = [],
): Process {
  return spawn(process.execPath, [...node, '--import', tsx, bin, ...flags, 'lsp', '--stdio'], {
    cwd,
    env: { PATH: process.env['PATH'] ?? '', HOME: cwd, TZ: 'UTC' },
    stdio: ['pipe', 'pipe', 'pipe'],
  });
}

const CAPABILITIES: ClientCapabilities = {
  workspace: {
    workspaceEdit: { documentChanges: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
  },
  textDocument: {
    publishDiagnostics: { relatedInformation: true, versionSupport: true },
    hover: { contentFormat: ['markdown', 'plaintext'] },
    codeAction: {
      codeActionLiteralSupport: { codeActionKind: { valueSet: ['quickfix', 'source'] } },
    },
  },
};

/** An editor that speaks the protocol by its own library, and keeps what it is told. */
export class Client {
  readonly process: Process;
  readonly connection: ProtocolConnection;
  readonly published = new Map<string, PublishDiagnosticsParams>();
  readonly registered: string[] = [];
  /** What the server shows its user. */
  readonly shown: string[] = [];
  /** What on its standard output is not the protocol. */
  readonly noise: string[] = [];
  /** What the server says of itself. */
  readonly logged: string[] = [];
  /** Everything that the server has written on its standard error. */
  stderr = '';
  readonly #root: string;
  readonly #documents = new Map<string, TextDocument>();
  #heard: (() => void)[] = [];

  constructor(
    root: string,
    cwd = root,
    flags: readonly string[] = [],
    node: readonly string[] = [],
  ) {
    this.#root = root;
    this.process = startServer(cwd, flags, node);
    this.process.stderr.on('data', (data: Buffer) => (this.stderr += data.toString()));
    const reader = new StreamMessageReader(this.process.stdout);
    reader.onError(({ message }) => this.noise.push(message));
    this.connection = createProtocolConnection(reader, new StreamMessageWriter(this.process.stdin));
    this.connection.onNotification(PublishDiagnosticsNotification.type, (params) => {
      this.published.set(this.pathOf(params.uri), params);
      const heard = this.#heard;
      this.#heard = [];
      for (const each of heard) each();
    });
    this.connection.onRequest(RegistrationRequest.type, ({ registrations }) => {
      this.registered.push(...registrations.map(({ method }) => method));
    });
    this.connection.onNotification(ShowMessageNotification.type, ({ message }) => {
      this.shown.push(message);
    });
    this.connection.onNotification(LogMessageNotification.type, ({ message }) => {
      this.logged.push(message);
    });
    this.connection.listen();
  }

  async start(
    workspace: string | null = this.#root,
    capabilities = CAPABILITIES,
  ): Promise<InitializeResult> {
    const uri = workspace === null ? null : pathToFileURL(workspace).href;
    const result = await this.connection.sendRequest(InitializeRequest.type, {
      processId: process.pid,
      // eslint-disable-next-line @typescript-eslint/no-deprecated -- the protocol still asks for it
      rootUri: uri,
      workspaceFolders: uri === null ? null : [{ uri, name: 'work' }],
      capabilities,
    });
    await this.connection.sendNotification(InitializedNotification.type, {});
    return result;
  }

  uriOf(path: string): string {
    return pathToFileURL(join(this.#root, path)).href;
  }

  pathOf(uri: string): string {
    return decodeURIComponent(uri.slice(pathToFileURL(this.#root).href.length + 1));
  }

  document(path: string): TextDocument {
    const document = this.#documents.get(path);
    if (!document) throw new Error(`${path} is not open`);
    return document;
  }

  async open(path: string, text: string): Promise<void> {
    const languageId = path.endsWith('.md') ? 'markdown' : 'yaml';
    const document = TextDocument.create(this.uriOf(path), languageId, 1, text);
    this.#documents.set(path, document);
    await this.connection.sendNotification(DidOpenTextDocumentNotification.type, {
      textDocument: { uri: document.uri, languageId, version: 1, text },
    });
  }

  async close(path: string): Promise<void> {
    this.#documents.delete(path);
    await this.connection.sendNotification(DidCloseTextDocumentNotification.type, {
      textDocument: { uri: this.uriOf(path) },
    });
  }

  /** Sends changes of a document as they are, and makes them in its own copy. */
  async change(path: string, ...changes: TextDocumentContentChangeEvent[]): Promise<number> {
    const document = this.document(path);
    const version = document.version + 1;
    TextDocument.update(document, changes, version);
    await this.connection.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri: document.uri, version },
      contentChanges: changes,
    });
    return version;
  }

  /** Puts words in place of others, which must stand there once. */
  async replace(path: string, from: string, to: string): Promise<number> {
    return this.change(path, { range: this.rangeOf(path, from), text: to });
  }

  rangeOf(path: string, words: string): Range {
    const document = this.document(path);
    const text = document.getText();
    const at = text.indexOf(words);
    if (at < 0 || text.indexOf(words, at + 1) >= 0) throw new Error(`not just one ${words}`);
    return { start: document.positionAt(at), end: document.positionAt(at + words.length) };
  }

  /** The place before the mark | in these words, which stand once in the document without it. */
  placeOf(path: string, words: string): Position {
    const at = words.indexOf('|');
    const { start } = this.rangeOf(path, words.replace('|', ''));
    const document = this.document(path);
    return document.positionAt(document.offsetAt(start) + at);
  }

  /** The documents that are open, by their paths. */
  opened(): ReadonlyMap<string, string> {
    return new Map([...this.#documents].map(([path, document]) => [path, document.getText()]));
  }

  async closeAll(): Promise<void> {
    for (const path of [...this.#documents.keys()]) await this.close(path);
  }

  /** Waits until all that was sent has been looked at, and what was found has been told. */
  async settled(): Promise<void> {
    const [path] = this.#documents.keys();
    if (path === undefined) throw new Error('nothing is open');
    const start = { line: 0, character: 0 };
    await this.actions(path, { start, end: start });
  }

  async touch(path: string, type: FileChangeType = FileChangeType.Changed): Promise<void> {
    const changes = [{ uri: this.uriOf(path), type }];
    await this.connection.sendNotification(DidChangeWatchedFilesNotification.type, { changes });
  }

  async hover(path: string, words: string): Promise<Hover | null> {
    return this.connection.sendRequest(HoverRequest.type, {
      textDocument: { uri: this.uriOf(path) },
      position: this.placeOf(path, words),
    });
  }

  async complete(path: string, words: string): Promise<CompletionItem[]> {
    const answer = await this.connection.sendRequest(CompletionRequest.type, {
      textDocument: { uri: this.uriOf(path) },
      position: this.placeOf(path, words),
    });
    return Array.isArray(answer) ? answer : (answer?.items ?? []);
  }

  async actions(path: string, range: Range, only?: string[]): Promise<CodeAction[]> {
    const answer = await this.connection.sendRequest(CodeActionRequest.type, {
      textDocument: { uri: this.uriOf(path) },
      range,
      context: { diagnostics: [], ...(only ? { only } : {}) },
    });
    return (answer ?? []).filter((each): each is CodeAction => 'edit' in each);
  }

  /** Makes the edit of an action in its document. */
  async apply({ edit }: CodeAction): Promise<void> {
    for (const change of edit?.documentChanges ?? []) {
      if (!('edits' in change)) throw new Error('an edit of files');
      const path = this.pathOf(change.textDocument.uri);
      if (change.textDocument.version !== this.document(path).version) throw new Error('version');
      const text = TextDocument.applyEdits(
        this.document(path),
        change.edits.flatMap((each) => ('newText' in each ? [each] : [])),
      );
      await this.change(path, { text });
    }
  }

  diagnostics(path: string): readonly Diagnostic[] {
    return this.published.get(path)?.diagnostics ?? [];
  }

  /** Every file of which something is told. */
  all(): Record<string, readonly Diagnostic[]> {
    return Object.fromEntries(
      [...this.published]
        .filter(([, { diagnostics }]) => diagnostics.length > 0)
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([path, { diagnostics }]) => [path, diagnostics]),
    );
  }

  /** Waits until what was told is so. */
  async until(isSo: (client: this) => boolean): Promise<void> {
    const end = performance.now() + LONGEST;
    while (!isSo(this)) {
      const left = end - performance.now();
      if (left <= 0)
        throw new Error(
          `never: ${JSON.stringify(this.all())} ${this.stderr} ${this.logged.join()}`,
        );
      let timer: NodeJS.Timeout | undefined;
      await Promise.race([
        new Promise<void>((resolve) => this.#heard.push(resolve)),
        new Promise<void>((resolve) => (timer = setTimeout(resolve, left))),
      ]);
      clearTimeout(timer);
    }
  }

  /** Says goodbye as the protocol asks; the exit code. */
  async stop(): Promise<number | null> {
    await this.connection.sendRequest(ShutdownRequest.type);
    const code = exitOf(this.process);
    await this.connection.sendNotification(ExitNotification.type);
    return code;
  }

  /** Says `exit` and nothing before; the exit code. */
  async exit(): Promise<number | null> {
    const code = exitOf(this.process);
    await this.connection.sendNotification(ExitNotification.type);
    return code;
  }

  end(): void {
    this.connection.dispose();
    this.process.kill('SIGKILL');
  }
}

/** How a process ends. */
export function exitOf(child: Process): Promise<number | null> {
  if (child.exitCode !== null) return Promise.resolve(child.exitCode);
  return new Promise((resolve) => {
    child.once('exit', (code) => {
      resolve(code);
    });
  });
}
