declare module 'wawoff2' {
  export function decompress(file: Uint8Array): Promise<Uint8Array>;
}
