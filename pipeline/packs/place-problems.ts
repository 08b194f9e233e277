import { problem, type Problem } from './problem.js';
import { takesBase, type Line, type Prepared, type Tally, type TalliedProduct } from './tally.js';
import { copiesWords, counted as count, grouped } from './words.js';

/** Places that are over, empty, or in packs too small for what should stand in them. */
export function placeProblems(prepared: Prepared, counted: Tally): readonly Problem[] {
  const { baseKinds } = prepared;
  return [
    ...counted.products.flatMap((each) => [
      ...tooThick(each),
      ...over(each),
      ...empty(each, baseKinds.length > 0),
      ...tooFewPacks(each),
      ...alike(each, prepared),
    ]),
    ...(counted.pool === 0 &&
    baseKinds.length > 0 &&
    counted.products.every(({ left }) => left >= 0)
      ? [problem('no-base-left', {}, 'No place in any pack is left for base cards.')]
      : []),
  ];
}

function tooThick({ product, lines }: TalliedProduct): readonly Problem[] {
  return lines.flatMap((line) => {
    const { places = 1, title } = line.kind;
    if (places <= product.cardsAPack) return [];
    return [
      problem(
        'too-thick',
        aboutLine(line),
        `${product.title}: one card of ${title} takes ${count(places, 'place')}, but a pack has ${grouped(product.cardsAPack)}.`,
        { places, cardsAPack: product.cardsAPack },
      ),
    ];
  });
}

/** The first line for which no room is left. */
function over({ product, volume, lines, left }: TalliedProduct): readonly Problem[] {
  if (left >= 0) return [];
  let free = volume.places;
  for (const line of lines) {
    if (line.places > free) {
      const { copies, places, kind } = line;
      return [
        problem(
          'places-over',
          aboutLine(line),
          `${product.title}: ${copiesWords(copies, kind.title)} take ${count(places, 'place')}, but ${grouped(free)} are left; all lines together take ${grouped(-left)} too many.`,
          { copies, places, left: free, over: -left },
        ),
      ];
    }
    free -= line.places;
  }
  return [];
}

function empty({ product, volume, left }: TalliedProduct, hasBase: boolean): readonly Problem[] {
  if (left <= 0 || (takesBase(product) && hasBase)) return [];
  return [
    problem(
      'places-empty',
      { product: product.id },
      `${product.title}: ${grouped(left)} of ${count(volume.places, 'place')} stay empty, and no base cards go in them.`,
      { empty: left, places: volume.places },
    ),
  ];
}

/** A pack of six holds one card that takes four places, not one and a half. */
function tooFewPacks({ product, volume, lines }: TalliedProduct): readonly Problem[] {
  const thick = lines.filter(({ kind }) => (kind.places ?? 1) > 1);
  const sizes = [...new Set(thick.map(({ kind }) => kind.places ?? 1))].sort((a, b) => b - a);
  for (const size of sizes.filter((each) => each <= product.cardsAPack)) {
    const copies = thick
      .filter(({ kind }) => (kind.places ?? 1) >= size)
      .reduce((sum, line) => sum + line.copies, 0);
    const inPack = Math.floor(product.cardsAPack / size);
    const room = inPack * volume.packs;
    if (copies > room) {
      return [
        problem(
          'packs-too-few',
          { product: product.id },
          `${product.title}: a pack holds ${grouped(inPack)} of the cards that take ${count(size, 'place')} or more, ${grouped(room)} in all, but there are ${grouped(copies)}.`,
          { copies, room, size },
        ),
      ];
    }
  }
  return [];
}

/** Lines of which some pack must hold the same card twice. */
function alike(
  { product, volume, lines, left }: TalliedProduct,
  { baseKinds }: Prepared,
): readonly Problem[] {
  const base = takesBase(product) ? left : 0;
  const cards = baseKinds.reduce((sum, kind) => sum + kind.cards.length, 0);
  return [
    ...lines
      .filter(
        ({ kind, copies }) => kind.what !== 'decoy' && copies > kind.cards.length * volume.packs,
      )
      .map((line) =>
        problem(
          'alike-in-pack',
          aboutLine(line),
          alikeWords(product.title, line.kind.title, line.copies, line.kind.cards.length),
          { copies: line.copies, cards: line.kind.cards.length },
        ),
      ),
    ...(baseKinds.length > 0 && base > cards * volume.packs
      ? [
          problem(
            'alike-in-pack',
            { product: product.id },
            alikeWords(product.title, 'base cards', base, cards),
            { copies: base, cards },
          ),
        ]
      : []),
  ];
}

function alikeWords(product: string, title: string, copies: number, cards: number): string {
  return `${product}: some packs hold the same card twice, since there are ${copiesWords(copies, title)} for ${count(cards, 'card')}.`;
}

function aboutLine({ entry: { product, kind }, at }: Line): Problem['about'] {
  return { product, kind, list: 'entries', at };
}
