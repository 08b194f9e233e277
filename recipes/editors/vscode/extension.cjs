const { LanguageClient, TransportKind } = require('vscode-languageclient/node');

let client;

exports.activate = () => {
  const server = {
    command: 'npx',
    args: ['holdback', 'lsp'],
    transport: TransportKind.stdio,
    options: { shell: process.platform === 'win32' },
  };
  const documentSelector = [
    { scheme: 'file', pattern: '**/*.md' },
    { scheme: 'file', pattern: '**/*.yaml' },
  ];
  client = new LanguageClient('holdback', 'Holdback', server, { documentSelector });
  return client.start();
};

exports.deactivate = () => client?.stop();
