import { cardHold, type Card, type CardSet, type Content } from '../model/index.js';
import type { PlacedContent } from './files.js';
import { byteAt, findingOf, type AuditFinding } from './finding.js';
import { keyOf, openFields } from './held-cards.js';
import { ALIKE, distance, DRAWN_AT, likenessOf, type Likeness } from './likeness.js';
import type { Standing } from './standing.js';
import { target, type Target } from './target.js';

/** What the audit needs to look at pictures. */
export interface Eyes {
  /** A picture of the content folder by its path there; null if there is none that can be read. */
  readonly art: (path: string) => Uint8Array | null;
  /** Draws a picture as PNG of 8 bits at a width in pixels. It throws for a damaged one. */
  readonly draw: (picture: Uint8Array, width: number) => Promise<Uint8Array>;
  /** SHA-256 (FIPS 180-4). */
  readonly digest: (bytes: Uint8Array) => Promise<Uint8Array>;
}

/** Art that is known: the card that it is of if it is held, and what it looks like. */
interface KnownArt {
  /** Null for art that is open. */
  readonly of: Target | null;
  readonly digest: string;
  /** What it looks like: drawn when somebody asks, and once. */
  readonly look: () => Promise<Likeness | null>;
}

/** A gallery of all art, held and open. */
export interface Gallery {
  readonly art: readonly KnownArt[];
  /** The digests of held art, which nobody may have to check a guess with. */
  readonly targets: readonly Target[];
}

/** Looks at all the art of a property. */
export async function galleryOf(
  content: Content,
  standing: Standing,
  eyes: Eyes,
): Promise<Gallery> {
  const cards = content.sets.flatMap((set) => set.cards.map((card) => ({ set, card })));
  const open = new Set(
    cards.filter((each) => isArtOpen(each, standing)).flatMap(({ card }) => pathsOf(card)),
  );
  const known = new Map<string, KnownArt>();
  const targets: Target[] = [];
  for (const { card } of cards) {
    for (const path of pathsOf(card)) {
      const bytes = known.has(path) ? null : eyes.art(path);
      if (bytes === null) continue;
      const key = keyOf(card);
      const digest = await eyes.digest(bytes);
      const of = open.has(path) ? null : target(path, `art of ${key}`, { card: key });
      if (of) targets.push(...digestTargets(digest, key));
      known.set(path, { of, digest: hex(digest), look: once(() => lookAt(bytes, eyes)) });
    }
  }
  return { art: [...known.values()], targets };
}

function isArtOpen({ set, card }: { set: CardSet; card: Card }, standing: Standing): boolean {
  const hold = cardHold(standing.schedule, set.plan.value, card);
  return openFields(card, hold, standing)('image.file');
}

function pathsOf(card: Card): string[] {
  return card.front.image ? [`${card.set}/${card.front.image.file}`] : [];
}

/** Digits of a digest that are looked for: what is cut short is found too. */
const HEX_DIGITS = 16;
const BASE64_DIGITS = 22;

function digestTargets(digest: Uint8Array, key: string): Target[] {
  const base64 = Buffer.from(digest).toString('base64');
  return [hex(digest).slice(0, HEX_DIGITS), base64.slice(0, BASE64_DIGITS)].map((words) =>
    target(words, `digest of the art of ${key}`, { card: key, always: true }),
  );
}

function hex(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('hex');
}

function once<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => (made ??= make());
}

async function lookAt(bytes: Uint8Array, eyes: Eyes): Promise<Likeness | null> {
  try {
    return likenessOf(await eyes.draw(bytes, DRAWN_AT));
  } catch {
    return null;
  }
}

/** Finds held art among what an output holds: by its bytes, and raster pictures by their looks. */
export async function searchArt(
  contents: readonly PlacedContent[],
  gallery: Gallery,
  eyes: Eyes,
): Promise<readonly AuditFinding[]> {
  const byDigest = new Map(gallery.art.map((art) => [art.digest, art]));
  const findings: AuditFinding[] = [];
  for (const { file, inside, bytes, raster } of contents) {
    const same = byDigest.get(hex(await eyes.digest(bytes)));
    const found = same ?? (raster ? await lookedLike(await lookAt(bytes, eyes), gallery) : null);
    if (found?.of) findings.push(findingOf(file, byteAt(inside, null), found.of));
  }
  return findings;
}

/** The held art that a picture looks like, if it looks less like any that is open. */
async function lookedLike(likeness: Likeness | null, { art }: Gallery): Promise<KnownArt | null> {
  if (!likeness) return null;
  const held = await nearest(
    likeness,
    art.filter(({ of }) => of !== null),
  );
  if (!held) return null;
  const open = await nearest(
    likeness,
    art.filter(({ of }) => of === null),
  );
  return open && open.apart <= held.apart ? null : held.art;
}

interface Near {
  readonly art: KnownArt;
  readonly apart: number;
}

/** The one of some art that a picture looks most like; null if it looks like none. */
async function nearest(likeness: Likeness, some: readonly KnownArt[]): Promise<Near | null> {
  const looks = await Promise.all(some.map(({ look }) => look()));
  return some.reduce<Near | null>((best, art, at) => {
    const look = looks[at] ?? null;
    const apart = look ? distance(likeness, look) : Infinity;
    return apart <= ALIKE && apart < (best?.apart ?? Infinity) ? { art, apart } : best;
  }, null);
}
