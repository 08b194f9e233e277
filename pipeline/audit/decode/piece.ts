/** What a file holds, as its format has it. */
export type Piece =
  | {
      /** Words. */
      readonly is: 'text';
      readonly inside: readonly string[];
      readonly text: string;
    }
  | {
      /** Bytes that hold words here and there: of stretches of so many characters and more. */
      readonly is: 'stretches';
      readonly inside: readonly string[];
      readonly bytes: Uint8Array;
      readonly least: number;
    }
  | {
      /** A file of its own, to be opened in turn. */
      readonly is: 'file';
      readonly inside: readonly string[];
      readonly bytes: Uint8Array;
    }
  | {
      /** Something that could not be opened, so that nobody can say what it holds. */
      readonly is: 'closed';
      readonly inside: readonly string[];
      readonly why: string;
    };

/** Something that could not be opened. */
export type Closed = Extract<Piece, { readonly is: 'closed' }>;

/** Reads a format: null if the bytes are of another. */
export type Format = (bytes: Uint8Array, purse: Purse) => readonly Piece[] | null;

/** How many bytes may still be unpacked out of one file: none of it may be a bomb. */
export interface Purse {
  left: number;
}

export function textPiece(inside: string, text: string): Piece {
  return { is: 'text', inside: [inside], text };
}

export function filePiece(inside: string, bytes: Uint8Array): Piece {
  return { is: 'file', inside: [inside], bytes };
}

export function closedPiece(why: string, ...inside: readonly string[]): Closed {
  return { is: 'closed', inside, why };
}

/** Metadata: every stretch of two characters and more counts, if no more are asked for. */
export function metadataPiece(inside: string, bytes: Uint8Array, least = 2): Piece {
  return { is: 'stretches', inside: [inside], bytes, least };
}
