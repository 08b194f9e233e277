import type { Readable, Writable } from 'node:stream';

import {
  CodeActionKind,
  DidChangeWatchedFilesNotification,
  MarkupKind,
  MessageType,
  ProposedFeatures,
  ShowMessageNotification,
  TextDocumentSyncKind,
  TextDocuments,
  createConnection,
  type Connection,
  type InitializeParams,
  type InitializeResult,
} from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';

import type { Instant } from '../model/index.js';
import type { Folder } from '../read/index.js';
import { answerActions, answerCompletion, answerHover, type Asking } from './answers.js';
import { Places, fileOf } from './places.js';
import { Publisher } from './publisher.js';
import { Session } from './session.js';

/** What a language server needs of the world. */
export interface Serving {
  readonly input: Readable;
  readonly output: Writable;
  readonly now: () => Instant;
  /** The content folder that these folders or files lie in or hold; null if there is none. */
  readonly find: (places: readonly string[]) => string | null;
  readonly open: (content: string) => Folder;
  /** Calls with the path of whatever changes below a folder, until what it returns is called. */
  readonly watch: (content: string, changed: (path: string) => void) => () => void;
}

/**
 * Serves the Language Server Protocol 3.17 on two streams, with UTF-16 positions. It tells everything
 * of a content folder to whoever is connected. When the editor says `exit`, or its stream ends, the
 * process ends: with 0 after `shutdown`, else with 1, as the protocol asks.
 */
export function serve(serving: Serving): void {
  new Server(serving).listen();
}

/** What the editor can show. */
interface Abilities {
  readonly related: boolean;
  readonly markdown: boolean;
  readonly versionedEdits: boolean;
  readonly watches: boolean;
}

interface Opened {
  readonly places: Places;
  readonly session: Session;
  readonly publisher: Publisher;
}

const NO_CONTENT =
  'Holdback found no content folder here: a folder with property.yaml, or one called content that has it.';

class Server {
  readonly #serving: Serving;
  readonly #connection: Connection;
  readonly #documents = new TextDocuments(TextDocument);
  #abilities: Abilities | null = null;
  #opened: Opened | null = null;
  #unwatch: (() => void) | null = null;

  constructor(serving: Serving) {
    this.#serving = serving;
    this.#connection = createConnection(ProposedFeatures.all, serving.input, serving.output);
  }

  listen(): void {
    const connection = this.#connection;
    connection.onInitialize((params) => this.#initialize(params));
    connection.onInitialized(() => void this.#initialized());
    connection.onShutdown(() => {
      this.#unwatch?.();
      this.#opened?.session.end();
    });
    connection.onDidChangeWatchedFiles(({ changes }) => {
      const paths = changes.flatMap(({ uri }) => this.#opened?.places.pathOf(uri) ?? []);
      if (paths.length > 0) this.#opened?.session.changedOnDisk(paths);
    });
    this.#documents.onDidChangeContent(({ document }) => {
      const path = this.#open([fileOf(document.uri) ?? ''], false)?.places.pathOf(document.uri);
      if (path === null || path === undefined) return;
      this.#opened?.places.note(path, document.uri);
      this.#opened?.session.show(path, document.getText());
    });
    this.#documents.onDidClose(({ document }) => {
      const path = this.#opened?.places.pathOf(document.uri) ?? null;
      if (path !== null) this.#opened?.session.hide(path);
    });
    connection.onHover(({ textDocument, position }) => {
      const asking = this.#asking(textDocument.uri);
      return asking && answerHover(asking, position);
    });
    connection.onCompletion(({ textDocument, position, context }) => {
      const asking = this.#asking(textDocument.uri);
      return asking && answerCompletion(asking, position, context?.triggerCharacter);
    });
    connection.onCodeAction(async ({ textDocument, range, context }) => {
      await this.#opened?.session.settled();
      const asking = this.#asking(textDocument.uri);
      return asking && answerActions(asking, range, context.only);
    });
    this.#documents.listen(connection);
    connection.listen();
  }

  #initialize(params: InitializeParams): InitializeResult {
    this.#abilities = abilitiesOf(params);
    const roots = rootsOf(params).flatMap((uri) => fileOf(uri) ?? []);
    this.#open(roots, true);
    return {
      serverInfo: { name: 'holdback' },
      capabilities: {
        positionEncoding: 'utf-16',
        textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
        hoverProvider: true,
        completionProvider: { triggerCharacters: [':', '(', '/', '"', "'", '[', '{', ',', ' '] },
        codeActionProvider: {
          codeActionKinds: [CodeActionKind.QuickFix, CodeActionKind.SourceFixAll],
        },
      },
    };
  }

  /** To read a folder takes a while: what the editor waits for is said before. */
  async #initialized(): Promise<void> {
    if (!this.#opened) this.#warn(NO_CONTENT);
    setImmediate(() => this.#opened?.session.start());
    if (this.#abilities?.watches !== true) return;
    const watchers = [{ globPattern: '**/*' }];
    try {
      await this.#connection.client.register(DidChangeWatchedFilesNotification.type, { watchers });
    } catch {
      this.#watch();
    }
  }

  /** A notice and no question: an editor need not know how to answer. */
  #warn(message: string): void {
    void this.#connection.sendNotification(ShowMessageNotification.type, {
      type: MessageType.Warning,
      message,
    });
  }

  /** The content folder, opened once: the first that is found. */
  #open(places: readonly string[], isStart: boolean): Opened | null {
    if (this.#opened) return this.#opened;
    const root = this.#serving.find(places);
    const abilities = this.#abilities;
    if (root === null || !abilities) return null;
    const where = new Places(root);
    const publisher = new Publisher(
      (path) => this.#documents.get(where.uriOf(path))?.version ?? null,
      abilities.related ? (path) => where.uriOf(path) : undefined,
      ({ path, version, diagnostics }) => {
        void this.#connection.sendDiagnostics({
          uri: where.uriOf(path),
          ...(version === null ? {} : { version }),
          diagnostics: [...diagnostics],
        });
      },
    );
    const session = new Session(this.#serving.open(where.root), {
      tell: (findings) => {
        const open = this.#documents.keys().flatMap((uri) => where.pathOf(uri) ?? []);
        publisher.tell(findings, open);
      },
      fail: (error) => {
        this.#connection.console.error(error instanceof Error ? error.message : String(error));
      },
    });
    this.#opened = { places: where, session, publisher };
    if (!abilities.watches || !isStart) this.#watch();
    if (!isStart) session.start();
    return this.#opened;
  }

  /** Where the editor does not watch the files, the server does. */
  #watch(): void {
    const opened = this.#opened;
    if (!opened || this.#unwatch) return;
    this.#unwatch = this.#serving.watch(opened.places.root, (path) => {
      opened.session.changedOnDisk([path]);
    });
  }

  /** A document, and all that is known where it lies; null for one outside of the content. */
  #asking(uri: string): Asking | null {
    const opened = this.#opened;
    const path = opened?.places.pathOf(uri) ?? null;
    const document = this.#documents.get(uri);
    const known = opened?.session.now();
    if (!opened || path === null || !document || !known) return null;
    return {
      path,
      document,
      known,
      now: this.#serving.now(),
      markdown: this.#abilities?.markdown === true,
      versionedEdits: this.#abilities?.versionedEdits === true,
      uriOf: opened.places.uriOf.bind(opened.places),
    };
  }
}

/** Addresses of the folders that the editor works in; older editors name one, by another key. */
function rootsOf(params: InitializeParams): readonly string[] {
  const folders = (params.workspaceFolders ?? []).map(({ uri }) => uri);
  const older: unknown = Object.entries(params).find(([key]) => key === 'rootUri')?.[1];
  return typeof older === 'string' ? [...folders, older] : folders;
}

function abilitiesOf({ capabilities: { textDocument, workspace } }: InitializeParams): Abilities {
  return {
    related: textDocument?.publishDiagnostics?.relatedInformation === true,
    markdown: textDocument?.hover?.contentFormat?.includes(MarkupKind.Markdown) === true,
    versionedEdits: workspace?.workspaceEdit?.documentChanges === true,
    watches: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
  };
}
