import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { programPath } from '../setup/programs.mjs';

type Tool = Parameters<typeof programPath>[0];

/** What a program says of a PDF. `FILE` stands for its path among the arguments. */
export function ask(tool: Tool, args: readonly string[], pdf: Uint8Array): string {
  const folder = mkdtempSync(join(tmpdir(), 'proof-'));
  try {
    const file = join(folder, 'proof.pdf');
    writeFileSync(file, pdf);
    const said = execFileSync(
      programPath(tool),
      args.map((arg) => (arg === 'FILE' ? file : arg)),
      { encoding: 'utf8', maxBuffer: 1 << 28, env: { LC_ALL: 'C.UTF-8', TZ: 'UTC' } },
    );
    return said;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The words of each page, in the order in which they are drawn. */
export function pageTexts(pdf: Uint8Array): readonly string[] {
  return ask('pdftotext', ['-raw', 'FILE', '-'], pdf).split('\f').slice(0, -1);
}

/** The words of each page in one line, lines joined by a space. */
export function pageLines(pdf: Uint8Array): readonly string[] {
  return pageTexts(pdf).map((text) => text.replace(/\s+/g, ' '));
}

export interface FoundWord {
  readonly text: string;
  readonly xMin: number;
  readonly yMin: number;
  readonly xMax: number;
  readonly yMax: number;
}

/** Where poppler finds the words of each page; points from the top left corner. */
export function foundWords(pdf: Uint8Array): readonly (readonly FoundWord[])[] {
  const pages = ask('pdftotext', ['-bbox', 'FILE', '-'], pdf).split('<page ').slice(1);
  return pages.map((page) =>
    [...page.matchAll(WORD)].map(([, xMin, yMin, xMax, yMax, text = '']) => ({
      text: text.replace(/&(amp|lt|gt|quot|#39);/g, (entity) => ENTITIES[entity] ?? entity),
      xMin: Number(xMin),
      yMin: Number(yMin),
      xMax: Number(xMax),
      yMax: Number(yMax),
    })),
  );
}

const WORD = /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*?)</g;
const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
};

/** The drawing operators of each page, unpacked. */
export function pageOperators(pdf: Uint8Array): readonly string[] {
  const plain = ask('qpdf', ['--qdf', '--object-streams=disable', 'FILE', '-'], pdf);
  return plain.split('%% Contents for page ').slice(1);
}
