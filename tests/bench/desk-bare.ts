import { createServer } from 'node:http';

/** The least that a desk does: it takes JSON and sends it back. Prints its port. */
const server = createServer((request, response) => {
  const parts: Uint8Array[] = [];
  request.on('data', (part: Uint8Array) => parts.push(part));
  request.on('end', () => {
    const text: unknown = JSON.parse(Buffer.concat(parts).toString());
    response.writeHead(200, { 'content-type': 'application/json' });
    response.end(JSON.stringify(text));
  });
});
server.listen(0, '127.0.0.1', () => {
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  process.stdout.write(`http://127.0.0.1:${String(port)}/#token=none\n`);
});
