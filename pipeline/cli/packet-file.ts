import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

import { PACKET_SCRIPTS, packetPage } from '../out/packet/index.js';
import { rasterise, readArt, type Folder } from '../read/index.js';
import type { Sending } from '../submission/index.js';
import type { Whole } from './interrupts.js';
import type { Io } from './io.js';
import type { Progress, Working } from './progress.js';
import { chromeFaces } from './chrome-faces.js';
import { passphraseFor, sealedWith } from './sealing.js';

export type PacketForm = 'html' | 'pdf';

/** Makes the file of a packet, and what is to be said once it is written. */
export interface Delivery {
  readonly make: (sending: Sending) => Promise<Uint8Array>;
  readonly said: string;
}

interface Asked {
  readonly as: PacketForm;
  readonly passphraseFile?: string;
  readonly set?: string;
  readonly subset?: string;
}

/** Width in pixels of art: on a screen, and at 300 dpi on a card that is 5 inches wide with bleed. */
const WIDTHS: Readonly<Record<PacketForm, number>> = { html: 640, pdf: 1575 };

/**
 * How a packet is made in a form.
 * @throws UsageError as `passphraseFor` does.
 */
export function deliveryOf(asked: Asked, io: Io, { progress, whole }: Working): Delivery {
  const { passphrase, said } = passphraseFor(asked.passphraseFile, io);
  const make = async (sending: Sending): Promise<Uint8Array> => {
    const art = await artFor(sending, WIDTHS[asked.as], progress);
    progress('setting cards');
    return asked.as === 'pdf'
      ? pdfOf(sending, art, passphrase, asked, io, whole)
      : htmlOf(sending, art, passphrase, io, whole);
  };
  return { make, said };
}

type Art = ReadonlyMap<string, Uint8Array>;

async function htmlOf(
  { view, submission, ground }: Sending,
  art: Art,
  passphrase: string,
  io: Io,
  whole: Whole,
): Promise<Uint8Array> {
  const [page, setter] = PACKET_SCRIPTS.map(scriptText);
  const scripts = { page: page ?? '', setter: setter ?? '' };
  const html = await whole(() =>
    packetPage(view, submission, {
      fonts: ground.fonts,
      art: (source) => art.get(source) ?? null,
      scripts,
    }),
  );
  const sealed = await sealedWith(html, passphrase, io, Object.values(scripts));
  return new TextEncoder().encode(sealed);
}

/** A script that was built beside the room that makes the page. */
function scriptText(file: string): string {
  return readFileSync(fileURLToPath(new URL(`../out/packet/${file}`, import.meta.url)), 'utf8');
}

async function pdfOf(
  { view, submission, ground }: Sending,
  art: Art,
  passphrase: string,
  { set, subset }: Asked,
  io: Io,
  whole: Whole,
): Promise<Uint8Array> {
  const { proofSheets } = await import('../out/proof/index.js');
  const proof = await whole(() =>
    proofSheets(view, {
      kind: 'submission',
      paper: 'a4',
      fonts: ground.fonts,
      chrome: chromeFaces(),
      art: (source) => art.get(source) ?? null,
      made: io.now,
      submission: {
        round: submission.round,
        person: submission.person.name,
        decides: new Map(
          submission.texts.map(({ key, parts }) => [key, parts.map(({ part }) => part)]),
        ),
      },
      password: { open: passphrase, owner: Buffer.from(io.random(32)).toString('hex') },
      ...(set === undefined ? {} : { set }),
      ...(subset === undefined ? {} : { subset }),
    }),
  );
  return proof.pdf;
}

/** The art of what is sent, as far as it is there. */
async function artFor(
  { view, submission, ground }: Sending,
  width: number,
  progress: Progress,
): Promise<Art> {
  const sent = new Set(submission.texts.map(({ key }) => key));
  const sources = view.sets.flatMap((set) =>
    set.subsets
      .flatMap(({ cards }) => cards)
      .flatMap(({ identity, image }) =>
        image && sent.has(`${set.id}/${identity ?? ''}`) ? [image.source] : [],
      ),
  );
  return drawn(ground.folder, [...new Set(sources)], width, progress);
}

async function drawn(
  folder: Folder,
  sources: readonly string[],
  width: number,
  progress: Progress,
): Promise<Art> {
  const there = new Set(folder.list().map(({ path }) => path));
  const art = new Map<string, Uint8Array>();
  for (const [at, source] of sources.entries()) {
    if (!there.has(source)) continue;
    progress(`drawing pictures: ${String(at + 1)} of ${String(sources.length)}`);
    const { bytes } = await rasterise(readArt(folder, source), width, 'jpeg');
    art.set(source, bytes);
  }
  return art;
}
