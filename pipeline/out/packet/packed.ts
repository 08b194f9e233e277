import { deflateSync } from 'fflate';

import { base64Of } from './octets.js';

/** Octets, or a text in UTF-8, packed by DEFLATE (RFC 1951), in base64. */
export function packed(content: Uint8Array | string): string {
  const octets = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  return base64Of(deflateSync(octets, { level: 6 }));
}
