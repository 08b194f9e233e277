/** A picture as a data: address, by its first bytes; null if it is of no kind that browsers show. */
export function pictureAddress(bytes: Uint8Array): string | null {
  const kind = KINDS.find(({ at, magic }) =>
    magic.every((octet, index) => bytes[at + index] === octet),
  );
  if (!kind) return null;
  return `data:${kind.type};base64,${Buffer.from(bytes).toString('base64')}`;
}

const KINDS = [
  { type: 'image/jpeg', at: 0, magic: [0xff, 0xd8, 0xff] },
  { type: 'image/png', at: 0, magic: [0x89, 0x50, 0x4e, 0x47] },
  { type: 'image/webp', at: 8, magic: [0x57, 0x45, 0x42, 0x50] },
];

/** The pictures of a page, each kept once: their texts would make the cards slow to read. */
export class PictureList {
  readonly #keys = new Map<string, string | null>();
  readonly #addresses: (readonly [key: string, address: string])[] = [];

  constructor(readonly art: (source: string) => Uint8Array | null) {}

  /** The key of the picture from a source; null if there is none, or none that browsers show. */
  keyOf(source: string): string | null {
    const known = this.#keys.get(source);
    if (known !== undefined) return known;
    const bytes = this.art(source);
    const address = bytes && pictureAddress(bytes);
    const key = address === null ? null : `picture-${String(this.#addresses.length)}`;
    if (address !== null && key !== null) this.#addresses.push([key, address]);
    this.#keys.set(source, key);
    return key;
  }

  /** The data: addresses by key. */
  addresses(): readonly (readonly [key: string, address: string])[] {
    return this.#addresses;
  }
}
