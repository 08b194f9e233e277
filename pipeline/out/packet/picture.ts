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
