import type {
  PublicCard,
  PublicData,
  PublicRun,
  PublicSet,
  PublicSubset,
} from '../../../schema/index.js';
import type { View, ViewCard, ViewRun, ViewSet, ViewSubset } from '../../gate/index.js';
import { writeInstant, type Instant } from '../../model/index.js';
import { toldFigures } from '../packs/index.js';
import { newsOf } from './news.js';
import { publicMade, publicProduct } from './public-packs.js';

/** The files of a picture, by the path of its art in the content. */
export type PictureFiles = ReadonlyMap<string, NonNullable<PublicCard['image']>['files']>;

/**
 * The public data of a site, from the public's view and nothing else.
 * @param earlier the public's views of the steps before, newest first: what is new is told by them.
 * @throws RangeError for a view that is not the public's.
 */
export function publicData(
  view: View,
  earlier: readonly View[],
  pictures: PictureFiles,
  preview: boolean,
): PublicData {
  if ([view, ...earlier].some(({ audience, asOf }) => audience !== 'public' || asOf === null)) {
    throw new RangeError('a site is made of the public’s view alone');
  }
  const say = (at: Instant): string => writeInstant(at, view.property.zone);
  return {
    format: 1,
    asOf: say(view.asOf ?? 0),
    preview,
    property: publicProperty(view),
    openings: openingsOf(view).map(say),
    news: newsOf(view, earlier, say),
    sets: [...view.sets].sort(newestFirst).map((set) => publicSet(set, pictures, say)),
  };
}

/** By the first day in shops, the latest first; a set without a day is still to come. */
function newestFirst(a: ViewSet, b: ViewSet): number {
  const [first = Infinity, second = Infinity] = [a, b].map(({ street }) => street[0]?.at);
  return first === second ? 0 : second - first;
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

function publicProperty({ property }: View): PublicData['property'] {
  const { title, zone, legal, levels, site } = property;
  const { accent, paper, ink, type } = site;
  return {
    title,
    zone,
    legal,
    look: { accent, paper, ink, type },
    siteTitle: site.title ?? title,
    address: site.address,
    dataTerms: site.dataTerms,
    levels: [...levels],
  };
}

function publicSet(set: ViewSet, pictures: PictureFiles, say: Say): PublicSet {
  const subsets = set.subsets.map((subset) => publicSubset(set, subset, pictures, say));
  const { made, products } = toldFigures(set);
  const told = new Map(products.map((product) => [product.id, product]));
  return {
    id: set.id,
    title: set.title,
    short: set.short,
    street: set.street.map(({ region, at }) => ({ region, at: say(at) })),
    listed: set.listed,
    products: set.products.map((product) => publicProduct(product, told.get(product.id))),
    subsets,
    parallels: set.parallels.map(({ id, title, of, run, tell, revealed }) => {
      const at = revealed === null ? null : say(revealed);
      return { id, title, of: [...of], run, tell, revealed: at };
    }),
    ...(made.length > 0 && { made: made.map(publicMade) }),
    corrections: set.corrections.map((correction) => {
      const { number, letter, level, at, was, now, note } = correction;
      return { number, letter, page: pageAmong(subsets, correction), level, at, was, now, note };
    }),
  };
}

/** The page of the card that a number and letter of a subset stand for. */
function pageAmong(
  subsets: readonly PublicSubset[],
  { subset, number, letter }: Pick<ViewSet['corrections'][number], 'subset' | 'number' | 'letter'>,
): string | null {
  const cards = subsets.find(({ id }) => id === subset)?.cards ?? [];
  return cards.find((card) => card.number === number && card.letter === letter)?.page ?? null;
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
export function pageOf(
  set: Pick<ViewSet, 'id'>,
  subset: Pick<ViewSubset, 'id'>,
  card: Pick<ViewCard, 'number' | 'letter'>,
): string | null {
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
    level: card.level,
    nameLevel: card.nameLevel,
    opens: card.opens === null ? null : say(card.opens),
    revealed: card.revealed === null ? null : say(card.revealed),
    bio: card.bio.map((paragraph) => paragraph.map(publicRun)),
    bioHeld: card.bioHeld,
    facts: card.facts.map(({ name, value, level }) => ({ name, value, level })),
    texts: card.texts.map(({ zone, value, level }) => ({ zone, value, level })),
    image: publicImage(card, pictures),
    signers: card.signers.map(({ name, as, redemption }) => ({ name, as, redemption })),
    signersLevel: card.signersLevel,
    credits: card.credits.map(({ role, name }) => ({ role, name })),
    creditsLevel: card.creditsLevel,
    tell: card.tell,
    shortPrint: card.shortPrint,
    run: card.run,
  };
}

function publicRun(run: ViewRun): PublicRun {
  if ('held' in run) return { held: true };
  const { text, italic, bold, level } = run;
  return { text, italic, bold, level };
}

function publicImage({ image }: ViewCard, pictures: PictureFiles): PublicCard['image'] {
  if (image === null) return null;
  const files = pictures.get(image.source) ?? [];
  return files.length === 0 ? null : { alt: image.alt, level: image.level, files: [...files] };
}
