import { CardFront } from '../../schema/index.js';

/** The keys of a card in the order of its schema: where a new one stands in a file. */
export const CARD_KEYS: readonly string[] = Object.keys(CardFront.properties);
