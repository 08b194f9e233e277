import { view } from '../gate/index.js';
import { identityOf, undividedNames } from '../model/index.js';
import { rasterise, readArt, readProperty, type Folder } from '../read/index.js';
import { copyVersion } from '../review/index.js';
import { select, type Released } from '../select/index.js';
import type { Faces } from '../typeset/index.js';
import { JobFailure, type Working } from './jobs.js';
import type { ProofRequest } from './protocol.js';

/** Width in pixels of art on a proof: 300 dpi on a card that is 5 inches wide with its bleed. */
const ART_WIDTH = 1575;

/** What a proof is made of. */
export interface ProofGround {
  readonly folder: Folder;
  readonly now: number;
  readonly chrome: () => Faces;
}

/**
 * The PDF of a proof of what is saved.
 * @throws JobFailure where there is nothing to show or files cannot be read; what `signal` says.
 */
export async function makeProof(
  { folder, now, chrome }: ProofGround,
  asked: ProofRequest,
  { step, pause, signal }: Working,
): Promise<Uint8Array> {
  step('reading');
  await pause();
  const { content, fonts } = readProperty(folder);
  const whole = select(content);
  if (!whole) throw new JobFailure('some files cannot be read: mend their findings first');
  const released = only(whole, asked);
  const seen = view(released, { kind: 'house' });
  if (!seen) throw new JobFailure('there is nothing to show');
  const { proofArt, proofSheets } = await import('../out/proof/index.js');
  const { kind = 'annotated', paper = 'a4' } = asked;
  const isPictured = kind === 'annotated' || kind === 'nine-up';
  const sources = isPictured ? proofArt(seen) : [];
  const art = new Map<string, Uint8Array>();
  for (const [at, source] of sources.entries()) {
    step(`drawing pictures: ${String(at + 1)} of ${String(sources.length)}`);
    await pause();
    art.set(source, (await rasterise(readArt(folder, source), ART_WIDTH, 'jpeg')).bytes);
  }
  step('setting sheets');
  await pause();
  const { pdf } = await proofSheets(seen, {
    kind,
    paper,
    fonts,
    chrome: chrome(),
    art(source) {
      signal.throwIfAborted();
      return art.get(source) ?? null;
    },
    made: now,
    versions: versionsOf(released),
    undivided: undividedNames(content.names?.value ?? null),
  });
  return pdf;
}

/** The sets with the cards alone that are asked for. */
function only(released: Released, { set, subset, card }: ProofRequest): Released {
  const sets = released.sets
    .filter(({ id }) => set === undefined || id === set)
    .map((each) => ({
      ...each,
      cards: each.cards.filter(
        (one) =>
          (subset === undefined || one.subset === subset) &&
          (card === undefined || `${one.set}/${identityOf(one)}` === card),
      ),
    }))
    .filter(({ cards }) => cards.length > 0);
  if (sets.length === 0) throw new JobFailure('there is no such card');
  return { ...released, sets };
}

/** The version of each card's copy, by `set/subset/id`. */
function versionsOf({ sets }: Released): ReadonlyMap<string, string> {
  const cards = sets.flatMap((set) => set.cards);
  return new Map(cards.map((card) => [`${card.set}/${identityOf(card)}`, copyVersion(card)]));
}
