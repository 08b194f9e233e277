import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';

import sirv from 'sirv';

/** A site served on this machine alone. */
export interface Preview {
  readonly address: string;
  close(): Promise<void>;
}

const LOOPBACK = '127.0.0.1';

/**
 * Serves a finished folder on the loopback address. Requests that name another host are refused,
 * so that no page elsewhere can read it through a name of its own.
 * @param port 0 for any free one.
 */
export async function servePreview(folder: string, port: number): Promise<Preview> {
  const serve = sirv(folder, { etag: true, dotfiles: false });
  const server = createServer((request, response) => {
    if (!isOwnHost(request, server)) refuse(response, 421);
    else if (request.method !== 'GET' && request.method !== 'HEAD') refuse(response, 405);
    else {
      serve(request, response, () => {
        refuse(response, 404);
      });
    }
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, LOOPBACK, resolve);
  });
  return {
    address: `http://${LOOPBACK}:${String(portOf(server))}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => {
          resolve();
        });
        server.closeAllConnections();
      }),
  };
}

function isOwnHost(request: IncomingMessage, server: Server): boolean {
  const port = String(portOf(server));
  return (
    request.headers.host === `${LOOPBACK}:${port}` || request.headers.host === `localhost:${port}`
  );
}

function portOf(server: Server): number {
  const address = server.address();
  return typeof address === 'object' && address !== null ? address.port : 0;
}

function refuse(response: ServerResponse, status: number): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' });
  response.end(`${String(status)}\n`);
}
