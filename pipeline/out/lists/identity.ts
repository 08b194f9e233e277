import { createHash } from 'node:crypto';

import type { PublicData } from '../../../schema/index.js';
import { utc } from '../wording/index.js';

/** The name space of what stands in lists of sites. Another one would give everything a new id. */
const NAME_SPACE = '3b0e4a52-6f0d-4a8e-9a57-c1d2f7b6e894';

/**
 * A UUID by name (version 5), RFC 9562, 5.5.
 * @param space the name space, itself a UUID.
 */
export function uuidOf(space: string, name: string): string {
  const hash = createHash('sha1')
    .update(Buffer.from(space.replaceAll('-', ''), 'hex'))
    .update(name)
    .digest();
  hash.writeUInt8((hash.readUInt8(6) & 0x0f) | 0x50, 6);
  hash.writeUInt8((hash.readUInt8(8) & 0x3f) | 0x80, 8);
  const digits = hash.toString('hex', 0, 16);
  return digits.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}

/**
 * A UUID for a thing of the site, the same as long as the site keeps its address, or its title
 * where it has none.
 */
export function siteUuid({ property }: PublicData, ...thing: readonly string[]): string {
  const site = property.address ?? property.siteTitle;
  return uuidOf(NAME_SPACE, JSON.stringify([site, ...thing]));
}

/**
 * The id of what a step of time told, which later steps leave as it is: a tag URI (RFC 4151) of the
 * site's host, the day and the address, or a UUID (RFC 9562) where the site has no address.
 * @param step an RFC 9557 instant.
 */
export function stepId(data: PublicData, step: string): string {
  const at = utc(step);
  const [, host, path] =
    /^https:\/\/([^/:]+)(?::\d+)?(\/.*)$/.exec(data.property.address ?? '') ?? [];
  if (host === undefined || path === undefined) return `urn:uuid:${siteUuid(data, 'step', at)}`;
  return `tag:${host},${at.slice(0, 10)}:${path}new/${at}`;
}
