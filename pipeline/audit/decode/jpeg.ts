import { eightBit } from './characters.js';
import { filePiece, metadataPiece, textPiece, type Format, type Piece } from './piece.js';
import { has, highFirst, joinBytes } from './view.js';

const XMP = 'http://ns.adobe.com/xap/1.0/\0';
const MORE_XMP = 'http://ns.adobe.com/xmp/extension/\0';
/** After its name: a digest of 32 characters, the whole length, the offset of this part. */
const MORE_XMP_HEAD = MORE_XMP.length + 40;

interface Segment {
  readonly marker: number;
  readonly data: Uint8Array;
}

/** The words of a JPEG file (ITU T.81): comments, Exif, XMP (also in parts), and all other headers. */
export const jpeg: Format = (bytes) => {
  if (!has(bytes, 0, '\xff\xd8\xff')) return null;
  const { segments, rest } = segmentsOf(bytes);
  const more = segments
    .filter(({ data }) => has(data, 0, MORE_XMP))
    .map(({ data }) => data.subarray(MORE_XMP_HEAD));
  return [
    ...segments.flatMap((segment) => segmentPieces(segment)),
    textPiece('XMP', eightBit(joinBytes(more))),
    filePiece('after the picture', rest),
  ];
};

function segmentsOf(bytes: Uint8Array): { segments: Segment[]; rest: Uint8Array } {
  const segments: Segment[] = [];
  let at = 2;
  while (at + 1 < bytes.length) {
    const marker = bytes[at + 1] ?? 0;
    if (bytes[at] !== 0xff) break;
    if (marker === 0xd9) return { segments, rest: bytes.subarray(at + 2) };
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const end = at + 2 + highFirst(bytes, at + 2, 2);
    segments.push({ marker, data: bytes.subarray(at + 4, end) });
    at = marker === 0xda ? afterScan(bytes, end) : Math.max(at + 2, end);
  }
  return { segments, rest: bytes.subarray(at) };
}

/** Where the next marker stands after the lines of the picture. */
function afterScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at += 1) {
    const marker = bytes[at + 1] ?? 0;
    if (bytes[at] === 0xff && marker !== 0 && !(marker >= 0xd0 && marker <= 0xd7)) return at;
  }
  return bytes.length;
}

/** Comments, and what programs put beside a picture; tables and scans hold no words. */
function segmentPieces({ marker, data }: Segment): Piece[] {
  if (marker === 0xfe) return [textPiece('comment', eightBit(data))];
  if (has(data, 0, XMP)) return [textPiece('XMP', eightBit(data.subarray(XMP.length)))];
  if (has(data, 0, MORE_XMP)) return [];
  const isTable = !(marker >= 0xe0 && marker <= 0xef);
  return isTable ? [] : [metadataPiece(`APP${String(marker - 0xe0)}`, data)];
}
