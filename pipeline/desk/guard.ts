import { createHash, timingSafeEqual } from 'node:crypto';

/** A request as the guard looks at it. Header names in small letters; a header that stands twice, twice. */
export interface GuardedRequest {
  readonly method: string;
  /** The request target, as it was sent. */
  readonly target: string;
  /** Names and values in turn, as `rawHeaders` of node:http. */
  readonly headers: readonly string[];
}

/** What the guard knows of the server. */
export interface Guarding {
  readonly port: number;
  /** The token of this session. */
  readonly token: string;
  /** The methods of a path; null for a path that is not served. */
  readonly methodsOf: (path: string) => readonly string[] | null;
  /** Whether a path needs the token: everything that holds content does. */
  readonly needsToken: (path: string, query: URLSearchParams) => boolean;
}

/** What is served, or the status of the refusal and a few words that tell nothing of the content. */
export type Guarded =
  | { readonly ok: true; readonly path: string; readonly query: URLSearchParams }
  | { readonly ok: false; readonly status: number; readonly why: string; readonly allow?: string };

/** Headers that tell who asks: one that stands twice may be read differently by two readers. */
const ONCE = ['host', 'origin', 'sec-fetch-site', 'content-type', 'x-holdback-token'];

/**
 * Whether a request comes from the desk's own page. Pages of other sites can make a browser send
 * requests to a loopback port, and by a name of their own that leads there (DNS rebinding) even read
 * the answers: so the `Host` must be the desk's own, `Origin` and `Sec-Fetch-Site` the desk's where
 * they are sent, a POST must have the `Origin`, and what holds content asks for the token.
 */
export function guard(request: GuardedRequest, guarding: Guarding): Guarded {
  const headers = headersOf(request.headers);
  const twice = ONCE.find((name) => (headers.get(name)?.length ?? 0) > 1);
  if (twice !== undefined) return refused(400, `the header ${twice} stands twice`);
  const one = (name: string): string | null => headers.get(name)?.[0] ?? null;
  const host = one('host');
  if (host === null || !hostsOf(guarding.port).includes(host)) {
    return refused(421, 'this server answers to its own address alone');
  }
  const isPost = request.method === 'POST';
  const origin = one('origin');
  if (origin === null ? isPost : origin !== `http://${host}`) {
    return refused(403, 'only the page of the desk itself may ask');
  }
  const site = one('sec-fetch-site');
  if (site !== null && site !== 'same-origin' && (isPost || site !== 'none')) {
    return refused(403, 'only the page of the desk itself may ask');
  }
  const place = placeOf(request.target);
  if (place === null) return refused(400, 'this is no address of the desk');
  const { path, query } = place;
  const methods = guarding.methodsOf(path);
  if (methods === null) return refused(404, 'there is nothing here');
  if (!methods.includes(request.method)) {
    return { ...refused(405, 'not in this way'), allow: methods.join(', ') };
  }
  if (guarding.needsToken(path, query) && !isToken(one('x-holdback-token'), guarding.token)) {
    return refused(401, 'open the desk at the address that it printed');
  }
  if (isPost && !isJson(one('content-type'))) return refused(415, 'send JSON');
  return { ok: true, path, query };
}

function refused(
  status: number,
  why: string,
): { readonly ok: false; readonly status: number; readonly why: string } {
  return { ok: false, status, why };
}

function hostsOf(port: number): readonly string[] {
  return [`127.0.0.1:${String(port)}`, `localhost:${String(port)}`];
}

function headersOf(raw: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const headers = new Map<string, string[]>();
  for (let at = 0; at + 1 < raw.length; at += 2) {
    const name = (raw[at] ?? '').toLowerCase();
    headers.set(name, [...(headers.get(name) ?? []), raw[at + 1] ?? '']);
  }
  return headers;
}

/** A target is a path from the top: no other address, no step up, nothing hidden, nothing encoded. */
function placeOf(target: string): { path: string; query: URLSearchParams } | null {
  const [path = '', ...query] = target.split('?');
  if (!/^(?:\/[A-Za-z0-9_-][A-Za-z0-9._-]*)+$|^\/$/.test(path) || path.length > 256) return null;
  if (target.length > 2048) return null;
  return { path, query: new URLSearchParams(query.join('?')) };
}

/** In a time that does not depend on how much of it is right. */
function isToken(given: string | null, token: string): boolean {
  if (given === null || token === '') return false;
  return timingSafeEqual(digestOf(given), digestOf(token));
}

function digestOf(text: string): Uint8Array {
  return createHash('sha256').update(text).digest();
}

function isJson(type: string | null): boolean {
  return type !== null && /^application\/json *(?:; *charset="?utf-8"?)?$/i.test(type);
}
