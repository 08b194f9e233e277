import { identityOf, type Card } from '../model/index.js';
import { digestOf, type Json } from './digest.js';

/**
 * The digest of a card's `copy` part: name, bio, texts, facts, credits and signers, with set and
 * identity. Held spans are no part of it: what they hold is the `web` part.
 */
export function copyDigest(card: Card): string {
  const { front } = card;
  return digestOf({
    part: 'copy',
    set: card.set,
    card: identityOf(card),
    name: front.name,
    bio: card.bio.map((paragraph) =>
      paragraph.map(({ text, italic, bold }) => ({ text, italic, bold })),
    ),
    texts: front.texts ?? {},
    facts: Object.entries(front.facts ?? {}),
    credits: (front.credits ?? []).map(({ role, name }) => ({ role, name })),
    signers: (front.signers ?? []).map(({ name, as, state }): Json => ({
      name,
      as: as ?? null,
      state,
    })),
  });
}

/** The first letters of a digest: what a person reads out to compare two. */
export function copyVersion(card: Card): string {
  return copyDigest(card).slice(0, 6);
}
