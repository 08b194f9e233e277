import { view } from '../gate/index.js';
import type { Released } from '../select/index.js';
import { FINE, REFUSED, type Io } from './io.js';
import { checkSet, instantFrom } from './options.js';
import type { PacksFlags } from './packs.js';

/** `packs --public`: what may be said, as of now or of an instant to come. */
export async function tellPublic(
  { at: asked, preview, set, format }: PacksFlags,
  released: Released,
  io: Io,
): Promise<number> {
  const at = instantFrom(asked, io);
  const isToCome = at > io.now;
  if (isToCome && preview !== true) {
    io.err(
      'that instant is still to come, and what is public then is held until it has: --preview shows it all the same\n',
    );
    return REFUSED;
  }
  const seen = view(released, { kind: 'public', at });
  if (!seen) {
    io.err('nothing of this property is public by then\n');
    return REFUSED;
  }
  // A set that is held and one that there is not are refused alike.
  checkSet(set, seen.sets);
  const { publicOdds, publicText } = await import('../out/packs/index.js');
  const odds = publicOdds(seen, { preview: isToCome, ...(set === undefined ? {} : { only: set }) });
  io.out(format === 'json' ? `${JSON.stringify(odds, null, 2)}\n` : publicText(odds));
  return FINE;
}
