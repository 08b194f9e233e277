import { createHash } from 'node:crypto';
import { readCut, typeChoice, type Family } from './type-choice.js';

/** A font file as the site serves it. `range` is a CSS `unicode-range`. */
export interface FontFace {
  readonly family: string;
  /** What it is for: words, or figures and labels. */
  readonly role: 'words' | 'labels';
  readonly style: 'normal' | 'italic';
  readonly weight: number;
  readonly script: string;
  readonly range: string;
  readonly file: string;
}

/** A face and the bytes of its file. */
export interface FontFile {
  readonly face: FontFace;
  readonly bytes: Uint8Array;
}

const CUTS = {
  words: ['400', '400-italic', '500', '700', '700-italic'],
  labels: ['400', '500'],
} as const;

/**
 * `unicode-range` of the two files of each cut: what @fontsource 5.3.0 states in `unicode.json`,
 * without the combining marks that both files would claim.
 */
const SCRIPTS = {
  latin:
    'U+0000-00FF, U+0131, U+0152-0153, U+02BB-02BC, U+02C6, U+02DA, U+02DC, U+2000-206F, U+20AC, U+2122, U+2191, U+2193, U+2212, U+2215, U+FEFF, U+FFFD',
  'latin-ext':
    'U+0100-0130, U+0132-0151, U+0154-02BA, U+02BD-02C5, U+02C7-02CC, U+02CE-02D7, U+02DD-02FF, U+0300-0329, U+1D00-1DBF, U+1E00-1E9F, U+1EF2-1EFF, U+20A0-20AB, U+20AD-20C0, U+2113, U+2C60-2C7F, U+A720-A7FF',
} as const;

/**
 * The fonts of the site, each under a name that carries the digest of its bytes.
 * @param type the id of a choice of type; the usual one if it is null.
 */
export async function loadFonts(type: string | null): Promise<readonly FontFile[]> {
  const choice = typeChoice(type);
  const wanted = (['words', 'labels'] as const).flatMap((role) =>
    CUTS[role].flatMap((cut) =>
      Object.entries(SCRIPTS).map(([script, range]) => ({ role, cut, script, range })),
    ),
  );
  return Promise.all(wanted.map((face) => loadFace(choice[face.role], face)));
}

async function loadFace(
  family: Family,
  wanted: Pick<FontFace, 'role' | 'script' | 'range'> & { readonly cut: string },
): Promise<FontFile> {
  const { cut, role, script, range } = wanted;
  const style = cut.endsWith('-italic') ? 'italic' : 'normal';
  const weight = Number.parseInt(cut, 10);
  const stem = `${script}-${String(weight)}-${style}`;
  const bytes = await readCut(family, `${stem}.woff2`);
  const digest = createHash('sha256').update(bytes).digest('hex').slice(0, 16);
  const file = `assets/${family.package}-${stem}-${digest}.woff2`;
  return { face: { family: family.family, role, style, weight, script, range, file }, bytes };
}
