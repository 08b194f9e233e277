import type { PublicCard, PublicData, PublicSet, PublicSubset } from '../../schema/index.js';

/** Something that a site shows: in words, what it is a part of, and how many held marks are in it. */
interface Part {
  readonly words: string;
  readonly of: string | null;
  readonly marks?: number;
}

/**
 * What the site of the first data shows and that of the second does not: sets, subsets, cards and
 * fields, in words and in the order in which they are shown. Of what is gone as a whole, the parts
 * are not told. Other words in a field are not less; more held marks are.
 */
export function partsGone(was: PublicData, is: PublicData): readonly string[] {
  const marks = new Map(partsOf(is).map((part) => [part.words, part.marks ?? 0]));
  const gone = partsOf(was).filter((part) => {
    const now = marks.get(part.words);
    return now === undefined || now > (part.marks ?? 0);
  });
  const goneWords = new Set(gone.map(({ words }) => words));
  return [
    ...gone.filter(({ of }) => of === null || !goneWords.has(of)).map(({ words }) => words),
    ...unnumberedGone(was, is),
  ];
}

function partsOf(data: PublicData): readonly Part[] {
  const { legal, dataTerms } = data.property;
  const own = [
    ...(legal === null ? [] : ['the legal line']),
    ...(dataTerms === null ? [] : ['the terms of the data']),
  ];
  return [...own.map((words) => ({ words, of: null })), ...data.sets.flatMap(partsOfSet)];
}

function partsOfSet(set: PublicSet): readonly Part[] {
  const own = [
    ...set.street.map(({ region }) => `in shops${region === null ? '' : ` in ${region}`}`),
    ...set.parallels.flatMap(({ id, run, tell }) => [
      `parallel ${id}`,
      ...(run === null ? [] : [`run of parallel ${id}`]),
      ...(tell === null ? [] : [`how to tell parallel ${id}`]),
    ]),
    ...set.products.flatMap(({ id, pack, box, odds }) => [
      `product ${id}`,
      ...(pack === null ? [] : [`cards a pack of product ${id}`]),
      ...(box === null ? [] : [`packs a box of product ${id}`]),
      ...odds.map(({ title }) => `odds of ${title} in product ${id}`),
    ]),
    ...set.corrections.map(
      ({ number, at }) => `correction of ${at}${number ? ` to ${number}` : ''}`,
    ),
  ];
  return [
    { words: set.id, of: null },
    ...own.map((part) => ({ words: `${set.id}: ${part}`, of: set.id })),
    ...set.subsets.flatMap((subset) => partsOfSubset(set, subset)),
  ];
}

function partsOfSubset(set: PublicSet, subset: PublicSubset): readonly Part[] {
  const id = `${set.id}/${subset.id}`;
  const found = subset.found === null ? [] : ['where it is found'];
  return [
    { words: id, of: set.id },
    ...[...found, ...subset.artists.map((artist) => `artist ${artist}`)].map((part) => ({
      words: `${id}: ${part}`,
      of: id,
    })),
    ...subset.cards.flatMap((card) => {
      const label = labelOf(card);
      if (label === null) return [];
      const words = `${id} ${label}`;
      const fields = fieldsOf(card).map((field) => ({ words: `${words}: ${field}`, of: words }));
      const name = card.state === 'shown' ? [{ words: `${words}: name`, of: words }] : [];
      return [{ words, of: id }, ...name, ...bioOf(card, words), ...fields];
    }),
  ];
}

/** What a card is told apart by; null for a placeholder without a number. */
function labelOf({ number, letter, state, name }: PublicCard): string | null {
  if (number !== null) return `${number}${letter ?? ''}`;
  return state === 'placeholder' ? null : name;
}

function fieldsOf(card: PublicCard): readonly string[] {
  return [
    ...card.facts.map(({ name }) => `fact ${name}`),
    ...card.texts.map(({ zone }) => `text ${zone}`),
    ...(card.image === null ? [] : ['image']),
    ...card.signers.map(({ name }) => `signer ${name}`),
    ...card.credits.map(({ role, name }) => `credit ${role} ${name}`),
    ...(card.tell === null ? [] : ['how to tell it']),
    ...(card.shortPrint === null ? [] : ['short print']),
    ...(card.run === null ? [] : ['run']),
    ...(card.revealed === null ? [] : ['when it was revealed']),
  ];
}

function bioOf({ bio, bioHeld }: PublicCard, of: string): readonly Part[] {
  if (bioHeld || bio.length === 0) return [];
  return [{ words: `${of}: bio`, of, marks: bio.flat().filter((run) => 'held' in run).length }];
}

/** Placeholders without a number that no card which is new in their subset accounts for. */
function unnumberedGone(was: PublicData, is: PublicData): readonly string[] {
  const after = subsetsOf(is);
  return [...subsetsOf(was)].flatMap(([id, old]) => {
    const now = after.get(id);
    if (!now) return [];
    const before = new Set(old.map(labelOf));
    const grown = now.filter((card) => {
      const label = labelOf(card);
      return label === null || !before.has(label);
    }).length;
    const lost = old.filter((card) => labelOf(card) === null).length - grown;
    return lost > 0 ? [`${id}: ${String(lost)} without a number`] : [];
  });
}

function subsetsOf(data: PublicData): ReadonlyMap<string, readonly PublicCard[]> {
  return new Map(
    data.sets.flatMap((set) =>
      set.subsets.map((subset) => [`${set.id}/${subset.id}`, subset.cards] as const),
    ),
  );
}
