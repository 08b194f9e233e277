/** What stands for Node's Buffer in the page: the fonts' library takes plain octets there. */
export const Buffer = {
  from: (octets: ArrayBufferLike, offset: number, length: number): Uint8Array =>
    new Uint8Array(octets, offset, length),
};
