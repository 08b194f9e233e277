import { TextDocumentSyncKind, TextDocuments, createConnection } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';

/** The least that a language server does: it keeps the document and finds nothing in it. */
const connection = createConnection(process.stdin, process.stdout);
const documents = new TextDocuments(TextDocument);
connection.onInitialize(() => ({
  capabilities: { textDocumentSync: TextDocumentSyncKind.Incremental },
}));
documents.onDidChangeContent(({ document: { uri, version } }) => {
  void connection.sendDiagnostics({ uri, version, diagnostics: [] });
});
documents.listen(connection);
connection.listen();
