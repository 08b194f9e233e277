import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

/** A family of type, and the package that brings it. */
export interface Family {
  readonly family: string;
  readonly package: string;
}

/** The families of a site: one for words, one for figures and labels. */
export interface TypeChoice {
  readonly words: Family;
  readonly labels: Family;
}

const ALEGREYA: TypeChoice = {
  words: { family: 'Alegreya', package: 'alegreya' },
  labels: { family: 'Alegreya Sans', package: 'alegreya-sans' },
};

const SOURCE_SANS: Family = { family: 'Source Sans 3', package: 'source-sans-3' };

const CHOICES: ReadonlyMap<string, TypeChoice> = new Map([
  ['alegreya', ALEGREYA],
  [
    'source',
    { words: { family: 'Source Serif 4', package: 'source-serif-4' }, labels: SOURCE_SANS },
  ],
  ['garamond', { words: { family: 'EB Garamond', package: 'eb-garamond' }, labels: SOURCE_SANS }],
]);

/** A choice of type by its id; the usual one if it is null or not known here. */
export function typeChoice(id: string | null): TypeChoice {
  return CHOICES.get(id ?? '') ?? ALEGREYA;
}

const require = createRequire(import.meta.url);

/** A font file of a family, such as `latin-400-italic.woff2`. */
export function readCut({ package: name }: Family, cut: string): Promise<Uint8Array> {
  return readFile(require.resolve(`@fontsource/${name}/files/${name}-${cut}`));
}
