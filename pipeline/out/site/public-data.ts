import type {
  PublicCard,
  PublicData,
  PublicParallel,
  PublicRun,
  PublicSet,
  PublicSubset,
} from '../../../schema/index.js';
import type { View, ViewCard, ViewRun, ViewSet, ViewSubset } from '../../gate/index.js';
import { writeInstant, type Instant } from '../../model/index.js';

/** The files of a picture, by the path of its art in the content. */
export type PictureFiles = ReadonlyMap<string, NonNullable<PublicCard['image']>['files']>;

/**
 * The public data of a site, from the public's view and nothing else.
 * @throws RangeError for a view that is not the public's.
 */
export function publicData(view: View, pictures: PictureFiles, preview: boolean): PublicData {
  if (view.audience !== 'public' || view.asOf === null) {
    throw new RangeError('a site is made of the public’s view alone');
  }
  const say = (at: Instant): string => writeInstant(at, view.property.zone);
  const sets = view.sets.map((set) => publicSet(set, pictures, say));
  return {
    format: 1,
    asOf: say(view.asOf),
    preview,
    property: {
      title: view.property.title,
      zone: view.property.zone,
      legal: view.property.legal,
      accent: view.property.accent,
    },
    openings: openingsOf(view).map(say),
    sets,
  };
}

/** The paths of all art that a view shows: what may be fetched for its site. */
export function artOf(view: View): readonly string[] {
  return [...new Set(cardsOf(view).flatMap((card) => card.image?.source ?? []))].sort();
}

function cardsOf(view: View): ViewCard[] {
  return view.sets.flatMap((set) => set.subsets.flatMap((subset) => subset.cards));
}

/** Announced instants at which something that the site lists opens, in order, each once. */
function openingsOf(view: View): Instant[] {
  return [...new Set(cardsOf(view).flatMap((card) => card.opens ?? []))].sort((a, b) => a - b);
}

type Say = (at: Instant) => string;

function publicSet(set: ViewSet, pictures: PictureFiles, say: Say): PublicSet {
  return {
    id: set.id,
    title: set.title,
    short: set.short,
    street: set.street.map(({ region, at }) => ({ region, at: say(at) })),
    listed: set.listed,
    subsets: set.subsets.map((subset) => publicSubset(set, subset, pictures, say)),
    parallels: set.parallels.map(({ id, title, of, run, tell }): PublicParallel => ({
      id,
      title,
      of: [...of],
      run,
      tell,
    })),
    corrections: set.corrections.map(({ number, at, was, now, note }) => ({
      number,
      at,
      was,
      now,
      note,
    })),
  };
}

function publicSubset(
  set: ViewSet,
  subset: ViewSubset,
  pictures: PictureFiles,
  say: Say,
): PublicSubset {
  const taken = new Set<string>();
  return {
    id: subset.id,
    title: subset.title,
    group: subset.group,
    found: subset.found,
    listed: subset.listed,
    artists: [...subset.artists],
    cards: subset.cards.map((card) => {
      const page = pageOf(set, subset, card);
      const free = page !== null && !taken.has(page.toLowerCase());
      if (free) taken.add(page.toLowerCase());
      return publicCard(card, free ? page : null, pictures, say);
    }),
  };
}

/** The address of a card below the site: by subset and number, so that no lift changes it. */
function pageOf(set: ViewSet, subset: ViewSubset, card: ViewCard): string | null {
  if (card.number === null) return null;
  const number = card.number.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-|-$/g, '');
  return number === '' ? null : `${set.id}/${subset.id}/${number}${card.letter ?? ''}/`;
}

function publicCard(
  card: ViewCard,
  page: string | null,
  pictures: PictureFiles,
  say: Say,
): PublicCard {
  return {
    state: card.state,
    number: card.number,
    letter: card.letter,
    page,
    name: card.name,
    opens: card.opens === null ? null : say(card.opens),
    revealed: card.revealed === null ? null : say(card.revealed),
    bio: card.bio.map((paragraph) => paragraph.map(publicRun)),
    bioHeld: card.bioHeld,
    facts: card.facts.map(({ name, value }) => ({ name, value })),
    texts: card.texts.map(({ zone, value }) => ({ zone, value })),
    image: publicImage(card, pictures),
    signers: card.signers.map(({ name, as, redemption }) => ({ name, as, redemption })),
    credits: card.credits.map(({ role, name }) => ({ role, name })),
    tell: card.tell,
    shortPrint: card.shortPrint,
    run: card.run,
  };
}

function publicRun(run: ViewRun): PublicRun {
  return 'held' in run ? { held: true } : { text: run.text, italic: run.italic, bold: run.bold };
}

function publicImage(card: ViewCard, pictures: PictureFiles): PublicCard['image'] {
  if (card.image === null) return null;
  const files = pictures.get(card.image.source) ?? [];
  return files.length === 0 ? null : { alt: card.image.alt, files: [...files] };
}
