import type { CardFront, Subset } from '../../schema/index.js';
import {
  cardHold,
  fieldHold,
  identityOf,
  inHands,
  isCoded,
  isIssued,
  liftOf,
  numberOf,
  sayHold,
  type Card,
  type CardSet,
  type Hold,
  type Instant,
} from '../model/index.js';
import { cutCopy } from './copy.js';
import { announcedOpening, type Lens, type Showing } from './lens.js';
import type { Tables } from './tables.js';
import type { HouseNotes, ViewCard, ViewImage, ViewSigner } from './view.js';

/** What a placeholder is called if its card has no public name. */
export const TO_BE_REVEALED = 'To be revealed';

/** Which field of `site.shows` a key of a card goes with. */
const GOES_WITH: Partial<Record<keyof CardFront, keyof Showing>> = {
  bio: 'bio',
  texts: 'bio',
  image: 'art',
  facts: 'facts',
  credits: 'credits',
};

/** A card with what the gate has worked out about it. */
interface Looked {
  readonly card: Card;
  readonly set: CardSet;
  readonly subset: Subset;
  readonly hold: Hold;
  readonly open: boolean;
  readonly lens: Lens;
  readonly tables: Tables;
}

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
  if (standing === 'absent' || !lens.sent(card, subset)) return null;
  const looked: Looked = { card, set, subset, hold, open: standing === 'open', lens, tables };
  const bio = viewBio(looked);
  const issued = !see(looked, 'issued') || isIssued(card);
  const nameHeld = !see(looked, 'name') || fieldStanding(looked, 'name') !== 'open';
  return {
    state: standing === 'placeholder' ? 'placeholder' : issued ? 'shown' : 'not issued',
    identity: lens.kind === 'public' ? null : identityOf(card),
    number: viewNumber(looked),
    letter: (see(looked, 'variation') ? card.front.variation?.letter : undefined) ?? null,
    name: nameHeld ? publicNameOf(looked) : card.front.name,
    opens: standing === 'placeholder' ? announcedOpening(lens, hold) : null,
    revealed: standing === 'open' ? revealedAt(lens, hold) : null,
    bio: issued ? bio.paragraphs : [],
    bioHeld: issued && bio.held,
    facts: issued ? viewFacts(looked) : [],
    texts: issued ? viewTexts(looked) : [],
    image: issued ? viewImage(looked) : null,
    signers: issued ? viewSigners(looked) : [],
    credits: issued ? viewCredits(looked) : [],
    tell: (issued && see(looked, 'variation') ? card.front.variation?.tell : undefined) ?? null,
    shortPrint: (see(looked, 'shortPrint') ? card.front.shortPrint : undefined) ?? null,
    run: (issued && see(looked, 'run') ? card.front.run : undefined) ?? null,
    layout: lens.admits(tables.card.back) ? (card.front.back ?? subset.back ?? null) : null,
    cut: standing !== 'open' || nameHeld || bio.cut || heldFields(looked),
    notes: houseNotes(looked),
  };
}

/** Whether a key of the card is to be seen at all, its own longer hold apart. */
function see({ open, lens, tables }: Looked, key: keyof CardFront): boolean {
  const decision = tables.card[key];
  const goesWith = GOES_WITH[key];
  return (
    lens.admits(decision) &&
    (open || decision === 'open') &&
    (goesWith === undefined || lens.showing[goesWith])
  );
}

/** How a field stands, with what `holds` says of it. */
function fieldStanding({ card, hold, lens }: Looked, field: string): ReturnType<Lens['standing']> {
  return lens.standing(fieldHold(lens.schedule, hold, card, field));
}

/** Whether a field is shown: its key is, and nothing holds it longer. */
function seeField(looked: Looked, key: keyof CardFront, field: string = key): boolean {
  return see(looked, key) && fieldStanding(looked, field) === 'open';
}

function publicNameOf(looked: Looked): string {
  return (
    (looked.lens.admits(looked.tables.card.publicName)
      ? looked.card.front.publicName
      : undefined) ?? TO_BE_REVEALED
  );
}

/** A code is held together with its card; a number is not. */
function viewNumber(looked: Looked): string | null {
  if (!looked.lens.admits(looked.tables.card.number)) return null;
  return looked.open || !isCoded(looked.subset.numbers) ? numberOf(looked.card) : null;
}

function revealedAt(lens: Lens, hold: Hold): Instant | null {
  const lift = liftOf(lens.schedule, hold);
  return Number.isFinite(lift) && lift <= lens.at ? lift : null;
}

function viewBio(looked: Looked): {
  paragraphs: ViewCard['bio'];
  held: boolean;
  cut: boolean;
} {
  const none = { paragraphs: [], held: false };
  const { card, hold, lens } = looked;
  if (!see(looked, 'bio') || card.bio.length === 0) return { ...none, cut: !looked.open };
  const standing = fieldStanding(looked, 'bio');
  if (standing !== 'open') return { ...none, held: standing === 'placeholder', cut: true };
  const base = fieldHold(lens.schedule, hold, card, 'bio');
  const { paragraphs, cut } = cutCopy(card.bio, base, lens);
  return { paragraphs, held: false, cut };
}

function viewFacts(looked: Looked): ViewCard['facts'] {
  return Object.entries(looked.card.front.facts ?? {})
    .filter(([name]) => seeField(looked, 'facts', `facts.${name}`))
    .map(([name, value]) => ({ name, value }));
}

function viewTexts(looked: Looked): ViewCard['texts'] {
  return Object.entries(looked.card.front.texts ?? {})
    .filter(([zone]) => seeField(looked, 'texts', `texts.${zone}`))
    .map(([zone, value]) => ({ zone, value }));
}

function viewImage(looked: Looked): ViewImage | null {
  const { card, lens, tables } = looked;
  const image = card.front.image;
  if (!image || !seeField(looked, 'image') || !lens.admits(tables.image.file)) return null;
  const alt = lens.admits(tables.image.alt) ? (image.alt ?? '') : '';
  return { source: `${card.set}/${image.file}`, alt };
}

/** Signers show when they have signed, or will by redemption. */
function viewSigners(looked: Looked): readonly ViewSigner[] {
  const { card, lens, tables } = looked;
  if (!seeField(looked, 'signers')) return [];
  return (card.front.signers ?? [])
    .filter((signer) => signer.state === 'signed' || signer.state === 'redemption')
    .filter(() => lens.admits(tables.signer.name))
    .map((signer) => ({
      name: signer.name,
      as: (lens.admits(tables.signer.as) ? signer.as : undefined) ?? null,
      redemption: signer.state === 'redemption',
    }));
}

function viewCredits(looked: Looked): ViewCard['credits'] {
  const { card, lens, tables } = looked;
  if (!seeField(looked, 'credits') || !lens.admits(tables.credit.name)) return [];
  return (card.front.credits ?? []).map((credit) => ({ role: credit.role, name: credit.name }));
}

/** Whether any field of an open card is held longer than the card. */
function heldFields(looked: Looked): boolean {
  return Object.keys(looked.card.front.holds ?? {}).some(
    (field) => fieldStanding(looked, field) !== 'open',
  );
}

function houseNotes({ card, set, hold, lens }: Looked): HouseNotes | null {
  if (lens.kind !== 'house') return null;
  return {
    hold: sayHold(lens.schedule, hold),
    level: lens.schedule.levels[hold.level]?.label ?? '',
    lift: liftOf(lens.schedule, hold),
    inHands: inHands(set.plan.value, card),
    state: card.front.state ?? 'draft',
    writer: card.front.writer ?? null,
    remark: card.front.remark ?? null,
    why: card.front.why ?? null,
  };
}
