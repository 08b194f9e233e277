import type { IncomingMessage } from 'node:http';

/** Most bytes of a request: a card's file has at most a million, and JSON writes some signs longer. */
export const LARGEST_BODY = 4_000_000;

/** The JSON of a request, or the status of the refusal. */
export type BodyReading =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly status: 400 | 413; readonly why: string };

const TOO_LARGE: BodyReading = { ok: false, status: 413, why: 'this is too much to take' };

/** Reads the body of a request; what is too large is not read to its end. */
export async function readBody(request: IncomingMessage): Promise<BodyReading> {
  const stated = request.headers['content-length'];
  if (stated !== undefined && Number(stated) > LARGEST_BODY) return TOO_LARGE;
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of request.iterator({ destroyOnReturn: false })) {
    if (!(part instanceof Uint8Array)) continue;
    length += part.length;
    if (length > LARGEST_BODY) return TOO_LARGE;
    parts.push(part);
  }
  return parsed(Buffer.concat(parts));
}

function parsed(bytes: Uint8Array): BodyReading {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { ok: true, value: JSON.parse(text) };
  } catch {
    return { ok: false, status: 400, why: 'this is no JSON' };
  }
}
