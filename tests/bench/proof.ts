import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import { create } from 'fontkit';
import PDFDocument from 'pdfkit';

import { view } from '../../pipeline/gate/index.js';
import { proofSheets } from '../../pipeline/out/proof/index.js';
import { diskFolder, readProperty } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { openFace, type Faces } from '../../pipeline/typeset/index.js';
import { DEMO_NOW } from '../demo/day.js';
import { inTurn, type Result } from './measure.js';

/** A call that drew text or chose a font or a page: what a bare pdfkit is made to repeat. */
type Call = readonly [
  'registerFont' | 'text' | 'font' | 'fontSize' | 'addPage',
  readonly unknown[],
];

/**
 * Proof sheets beside bare pdfkit drawing the same strings with the same features, from the same
 * font files, as a program would that hands all to the library and measures nothing itself.
 */
export async function benchProof(content: string): Promise<Result> {
  const { content: read, fonts } = readProperty(diskFolder(content));
  const released = select(read);
  const seen = released && view(released, { kind: 'house' });
  if (!seen) throw new Error('the bench property cannot be released');
  const chrome = chromeFaces();
  const job = () =>
    proofSheets(seen, {
      kind: 'annotated',
      paper: 'a4',
      fonts,
      chrome,
      art: () => null,
      made: DEMO_NOW,
    });
  const calls = await recorded(job);
  const families = [...fonts.values()].flatMap((shelf) => [...shelf.values()]);
  const files = fontFiles([...families, chrome]);
  const times = await inTurn(3, job, () => replay(calls, files));
  return {
    name: `proof of ${String(read.cardFiles)} cards`,
    milliseconds: times.job,
    floor: 'bare pdfkit, same strings',
    floorMilliseconds: times.floor,
    goal: 1.5,
  };
}

async function recorded(job: () => Promise<unknown>): Promise<readonly Call[]> {
  const calls: Call[] = [];
  const names = ['registerFont', 'text', 'font', 'fontSize', 'addPage'] as const;
  const prototype = PDFDocument.prototype as unknown as Record<
    string,
    (...args: unknown[]) => unknown
  >;
  const originals = names.map((name) => [name, prototype[name]] as const);
  for (const [name, original] of originals) {
    prototype[name] = function (this: unknown, ...args: unknown[]) {
      calls.push([name, args]);
      return original?.apply(this, args);
    };
  }
  try {
    await job();
  } finally {
    for (const [name, original] of originals) if (original) prototype[name] = original;
  }
  return calls;
}

function replay(calls: readonly Call[], files: ReadonlyMap<string, Buffer>): Promise<void> {
  const document = new PDFDocument({ autoFirstPage: false });
  const done = new Promise<void>((resolve) => document.on('end', resolve));
  document.on('data', () => undefined);
  const target = document as unknown as Record<string, (...args: readonly unknown[]) => unknown>;
  for (const [name, args] of calls) target[name]?.(...args.map((value) => bare(value, files)));
  document.end();
  return done;
}

/** An argument of the sheet's call without what only the sheet knows: opened fonts and widths. */
function bare(argument: unknown, files: ReadonlyMap<string, Buffer>): unknown {
  if (typeof argument !== 'object' || argument === null) return argument;
  if ('postscriptName' in argument) return files.get(String(argument.postscriptName));
  if ('textWidth' in argument) return { ...argument, textWidth: undefined };
  return argument;
}

/** The font files by the name that the font gives itself. */
function fontFiles(families: readonly Faces[]): ReadonlyMap<string, Buffer> {
  const faces = families.flatMap(({ regular, italic, bold, boldItalic }) => [
    regular,
    italic,
    bold,
    boldItalic,
  ]);
  return new Map(
    faces.map(({ bytes }) => {
      const file = Buffer.from(bytes);
      const font = create(file);
      if (!('postscriptName' in font)) throw new Error('a collection of fonts is no font');
      return [font.postscriptName, file];
    }),
  );
}

function chromeFaces(): Faces {
  const require = createRequire(import.meta.url);
  const open = (file: string) =>
    openFace(readFileSync(require.resolve(`@fontsource/alegreya-sans/files/${file}`)), file);
  const regular = open('alegreya-sans-latin-400-normal.woff');
  const bold = open('alegreya-sans-latin-700-normal.woff');
  const italic = open('alegreya-sans-latin-400-italic.woff');
  return { regular, italic, bold, boldItalic: bold };
}
