import type { Subset } from '../../schema/index.js';
import {
  cardHold,
  fieldHold,
  identityOf,
  isCoded,
  subsetHold,
  type Card,
  type CardSet,
  type Hold,
} from '../model/index.js';
import { cutCopy } from './copy.js';
import { admitted, read, see, standingOf, toldBy, type Looked } from './field.js';
import { announcedOpening, revealedAt, type Lens } from './lens.js';
import { houseNotes } from './notes.js';
import { reviewNotes } from './review-notes.js';
import type { Tables } from './tables.js';
import type { ViewCard, ViewImage, ViewSigner } from './view.js';

/** What a placeholder is called if its card has no public name. */
export const TO_BE_REVEALED = 'To be revealed';

/** A card as an audience may see it; null if it leaves no trace there. */
export function viewCard(
  card: Card,
  set: CardSet,
  subset: Subset,
  lens: Lens,
  tables: Tables,
): ViewCard | null {
  const hold = cardHold(lens.schedule, set.plan.value, card);
  const standing = lens.standing(hold);
  if (standing === 'absent' || !lens.sent(subset, depicted(card, hold, lens))) return null;
  const looked: Looked = { card, set, subset, hold, open: standing === 'open', lens, tables };
  const issued = read(looked, 'issued') !== 'no';
  const variation = read(looked, 'variation');
  const tell = lens.admits(tables.variation.tell) ? variation?.tell : undefined;
  const level = standing === 'open' ? lens.told(hold) : 0;
  const signers = issued ? viewSigners(looked) : [];
  const credits = issued ? viewCredits(looked) : [];
  return {
    state: standing === 'placeholder' ? 'placeholder' : issued ? 'shown' : 'not issued',
    identity: lens.kind === 'public' ? null : identityOf(card),
    number: viewNumber(looked),
    letter: (lens.admits(tables.variation.letter) ? variation?.letter : undefined) ?? null,
    name: read(looked, 'name') ?? read(looked, 'publicName') ?? TO_BE_REVEALED,
    level,
    // A public name that stands for a held one must not be told from a name.
    nameLevel: see(looked, 'name') ? toldBy(looked, 'name') : level,
    opens: standing === 'placeholder' ? announcedOpening(lens, hold) : null,
    revealed: standing === 'open' ? revealedAt(lens, hold) : null,
    bio: issued ? viewBio(looked) : [],
    bioHeld: issued && bioHeld(looked),
    facts: issued ? viewFacts(looked) : [],
    texts: issued ? viewTexts(looked) : [],
    image: issued ? viewImage(looked) : null,
    signers,
    signersLevel: signers.length === 0 ? 0 : toldBy(looked, 'signers'),
    credits,
    creditsLevel: credits.length === 0 ? 0 : toldBy(looked, 'credits'),
    tell: (issued ? tell : undefined) ?? null,
    shortPrint: read(looked, 'shortPrint') ?? null,
    run: (issued ? read(looked, 'run') : undefined) ?? null,
    layout: read(looked, 'back') ?? subsetLayout(looked),
    notes: houseNotes(looked),
    review: reviewNotes(looked),
  };
}

/** Whoever is recognisable in the picture, as far as this audience may know it. */
function depicted(card: Card, hold: Hold, lens: Lens): readonly string[] {
  const held = lens.standing(fieldHold(lens.schedule, hold, card, 'image.depicts')) !== 'open';
  return held ? [] : (card.front.image?.depicts ?? []);
}

/** A code is held together with its card; a number is not. */
function viewNumber(looked: Looked): string | null {
  const number = read(looked, 'number') ?? 'none';
  return number === 'none' || (!looked.open && isCoded(looked.subset.numbers)) ? null : number;
}

/** The layout of a subset is told where the subset is open, for its placeholders too. */
function subsetLayout({ set, subset, lens, tables }: Looked): string | null {
  const hold = subsetHold(lens.schedule, set.plan.value, subset.id);
  const told = lens.admits(tables.subset.back) && lens.standing(hold) === 'open';
  return (told ? subset.back : undefined) ?? null;
}

function viewBio(looked: Looked): ViewCard['bio'] {
  const { card, hold, lens } = looked;
  if (!see(looked, 'bio')) return [];
  return cutCopy(card.bio, fieldHold(lens.schedule, hold, card, 'bio'), lens);
}

/** A held bio of a shown card has its mark whether or not it is written yet. */
function bioHeld(looked: Looked): boolean {
  return (
    looked.open && admitted(looked, 'bio') && standingOf(looked, 'bio', 'bio') === 'placeholder'
  );
}

function viewFacts(looked: Looked): ViewCard['facts'] {
  return Object.entries(looked.card.front.facts ?? {})
    .filter(([name]) => see(looked, 'facts', `facts.${name}`))
    .map(([name, value]) => ({ name, value, level: toldBy(looked, 'facts', `facts.${name}`) }));
}

function viewTexts(looked: Looked): ViewCard['texts'] {
  return Object.entries(looked.card.front.texts ?? {})
    .filter(([zone]) => see(looked, 'texts', `texts.${zone}`))
    .map(([zone, value]) => ({ zone, value, level: toldBy(looked, 'texts', `texts.${zone}`) }));
}

function viewImage(looked: Looked): ViewImage | null {
  const { card, lens, tables } = looked;
  const image = card.front.image;
  if (!image || !see(looked, 'image', 'image.file') || !lens.admits(tables.image.file)) return null;
  const described = lens.admits(tables.image.alt) && see(looked, 'image', 'image.alt');
  return {
    source: `${card.set}/${image.file}`,
    alt: (described ? image.alt : undefined) ?? '',
    level: Math.max(
      toldBy(looked, 'image', 'image.file'),
      described ? toldBy(looked, 'image', 'image.alt') : 0,
    ),
  };
}

/** Signers show when they have signed, or will by redemption. */
function viewSigners(looked: Looked): readonly ViewSigner[] {
  const { lens, tables } = looked;
  if (!lens.admits(tables.signer.name, tables.signer.state)) return [];
  return (read(looked, 'signers') ?? [])
    .filter(({ state }) => state === 'signed' || state === 'redemption')
    .map(({ name, as, state }) => ({
      name,
      as: (lens.admits(tables.signer.as) ? as : undefined) ?? null,
      redemption: state === 'redemption',
    }));
}

function viewCredits(looked: Looked): ViewCard['credits'] {
  const { lens, tables } = looked;
  if (!lens.admits(tables.credit.role, tables.credit.name)) return [];
  return (read(looked, 'credits') ?? []).map(({ role, name }) => ({ role, name }));
}
