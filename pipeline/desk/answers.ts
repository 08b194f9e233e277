import type { ServerResponse } from 'node:http';

import type { Trouble } from './protocol.js';

/** Headers of every answer: nothing is kept, guessed, framed or told to other sites. */
const SAFE: Readonly<Record<string, string>> = {
  'cache-control': 'no-store',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
};

/** The policy of everything that is no page: nothing may run or load in it. */
const NOTHING = "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** A viewer of PDF in a browser loads parts of its own, which the policy must not stop. */
const FRAMED_BY_NOBODY = "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** The policy of the page: its own files, what carries the nonce, pictures that it holds itself. */
function pagePolicy(nonce: string): string {
  return [
    "default-src 'none'",
    `script-src 'nonce-${nonce}'`,
    `style-src 'self' 'nonce-${nonce}'`,
    "img-src 'self' blob:",
    "font-src 'self' blob:",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
  ].join('; ');
}

/** What an answer is, besides its bytes. */
export interface Answered {
  readonly status?: number;
  readonly type: string;
  readonly policy?: 'nothing' | 'pdf' | { readonly nonce: string };
  readonly more?: Readonly<Record<string, string>>;
}

/** Writes the head of an answer; a HEAD request gets no more. */
export function begin(response: ServerResponse, answered: Answered): void {
  const { status = 200, type, policy = 'nothing', more = {} } = answered;
  const says =
    policy === 'nothing' ? NOTHING : policy === 'pdf' ? FRAMED_BY_NOBODY : pagePolicy(policy.nonce);
  response.writeHead(status, {
    ...SAFE,
    'content-security-policy': says,
    'content-type': type,
    ...more,
  });
}

/** Answers with bytes. */
export function sendBytes(
  response: ServerResponse,
  answered: Answered,
  bytes: Uint8Array | string,
): void {
  if (response.headersSent || response.destroyed) return;
  const length = { 'content-length': String(Buffer.byteLength(bytes)) };
  begin(response, { ...answered, more: { ...length, ...answered.more } });
  response.end(response.req.method === 'HEAD' ? undefined : bytes);
}

/** Answers with JSON. */
export function sendJson(response: ServerResponse, value: unknown, status = 200): void {
  const type = 'application/json; charset=utf-8';
  sendBytes(response, { status, type }, JSON.stringify(value));
}

/** Answers with what is wrong. After a refusal the connection is not used again. */
export function sendTrouble(
  response: ServerResponse,
  status: number,
  trouble: Trouble,
  more: Readonly<Record<string, string>> = {},
): void {
  const type = 'application/json; charset=utf-8';
  sendBytes(response, { status, type, more }, JSON.stringify(trouble));
}
