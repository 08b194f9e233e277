import type { View, ViewCard } from '../../gate/index.js';

/** A card of a submission: what its reviewer is shown. */
export interface PacketCard {
  readonly set: string;
  readonly subset: string;
  readonly card: ViewCard;
}

/**
 * The cards of a submission, in the order of the checklist.
 * @throws RangeError for a view that is not a person's.
 */
export function packetCards(view: View): readonly PacketCard[] {
  if (view.audience !== 'person') throw new RangeError('a packet is made of a person’s view alone');
  return view.sets.flatMap((set) =>
    set.subsets.flatMap((subset) =>
      subset.cards.map((card) => ({
        set: set.id,
        subset: subset.id,
        card,
      })),
    ),
  );
}

export {
  NONCE_OCTETS,
  PASSPHRASE_OCTETS,
  SALT_OCTETS,
  passphraseFrom,
  passphraseLetters,
  seal,
  type Chance,
} from './seal.js';
