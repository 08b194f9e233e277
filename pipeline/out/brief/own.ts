import type {
  View,
  ViewCard,
  ViewName,
  ViewParallel,
  ViewSet,
  ViewSubset,
} from '../../gate/index.js';

/** What a person knows of and the public will not: what they must not raise on camera. */
export interface OwnBrief {
  readonly person: string;
  readonly names: readonly ViewName[];
  /** Sets, subsets, cards and parts of them, each in a few words. */
  readonly subjects: readonly string[];
  /** Cards that are not to be seen on camera, by subset. */
  readonly stack: readonly {
    readonly set: string;
    readonly subset: string;
    readonly cards: readonly string[];
  }[];
}

/**
 * What a person must keep to themselves, from the difference of two views of one instant.
 * @param own the person's view.
 * @param anybody the view that they would have if they were cleared for nothing.
 * @throws RangeError for views that are not one person's.
 */
export function ownBrief(own: View, anybody: View): OwnBrief {
  if (own.person === null || anybody.person !== own.person) {
    throw new RangeError('it is made of a person’s view, and of theirs without any clearance');
  }
  return {
    person: own.person,
    names: own.names.flatMap((name) => untold(name, anybody)),
    subjects: own.sets.flatMap((set) => subjectsOf(set, setIn(anybody, set))),
    stack: own.sets.flatMap((set) => stackOf(set, setIn(anybody, set))),
  };
}

/** A name with the forms that may not be told; none if all may. */
function untold(name: ViewName, { names }: View): readonly ViewName[] {
  const told = names.find((other) => other.name === name.name);
  if (!told) return [name];
  const aliases = name.aliases.filter((alias) => !told.aliases.includes(alias));
  return aliases.length === 0 ? [] : [{ ...name, aliases }];
}

function setIn({ sets }: View, { id }: ViewSet): ViewSet | null {
  return sets.find((set) => set.id === id) ?? null;
}

function subsetIn(set: ViewSet | null, { id }: ViewSubset): ViewSubset | null {
  return set?.subsets.find((subset) => subset.id === id) ?? null;
}

function cardIn(subset: ViewSubset | null, { identity }: ViewCard): ViewCard | null {
  if (identity === null) return null;
  return subset?.cards.find((card) => card.identity === identity) ?? null;
}

function subjectsOf(set: ViewSet, known: ViewSet | null): readonly string[] {
  const parallels = set.parallels.flatMap((one) => parallelSubject(one, known));
  const own = known ? [] : [`The set ${set.title}`];
  return [
    ...own,
    ...set.subsets.flatMap((subset) => {
      const other = subsetIn(known, subset);
      return [
        ...(other ? [] : [`${set.short}: the subset ${subset.title}`]),
        ...subset.cards.flatMap((card) =>
          cardSubjects(card, cardIn(other, card)).map((words) => `${subset.title}, ${words}`),
        ),
      ];
    }),
    ...parallels.map((words) => `${set.short}: ${words}`),
  ];
}

function parallelSubject(one: ViewParallel, known: ViewSet | null): readonly string[] {
  return known?.parallels.some(({ id }) => id === one.id) ? [] : [`the parallel ${one.title}`];
}

/** "17 Odalys Thrane", or "17 Odalys Thrane: Berth, its picture". */
function cardSubjects(card: ViewCard, known: ViewCard | null): readonly string[] {
  if (card.state !== 'shown') return [];
  if (known?.state !== 'shown') return [cardName(card)];
  const more = partsBeyond(card, known);
  return more.length === 0 ? [] : [`${cardName(card)}: ${more.join('; ')}`];
}

/** What of a card shows in a view and not in another. */
function partsBeyond(card: ViewCard, known: ViewCard): readonly string[] {
  const isNew = <T>(one: T, others: readonly T[]): boolean =>
    others.every((other) => JSON.stringify(other) !== JSON.stringify(one));
  return [
    ...(card.name === known.name ? [] : ['the name']),
    ...(bioOf(card) === bioOf(known) ? [] : ['its text, where words are held']),
    ...card.facts.filter((fact) => isNew(fact, known.facts)).map(({ name }) => name),
    ...card.texts.filter((text) => isNew(text, known.texts)).map(({ zone }) => `its ${zone}`),
    ...(card.image !== null && known.image === null ? ['its picture'] : []),
    ...card.signers
      .filter((signer) => isNew(signer, known.signers))
      .map(({ name }) => `signed by ${name}`),
    ...card.credits
      .filter((credit) => isNew(credit, known.credits))
      .map(({ role, name }) => `${role}: ${name}`),
    ...(card.tell !== known.tell && card.tell !== null ? [`how it differs: ${card.tell}`] : []),
    ...(card.shortPrint === known.shortPrint ? [] : ['that it is a short print']),
    ...(card.run === known.run ? [] : ['its run']),
  ];
}

function bioOf({ bio, bioHeld }: ViewCard): string {
  const words = bio.map((runs) => runs.map((run) => ('held' in run ? null : run.text)));
  return JSON.stringify([bioHeld, words.map((each) => joined(each))]);
}

/** Words in a row are one, however they are marked. */
function joined(words: readonly (string | null)[]): readonly string[] {
  return words
    .map((each) => each ?? '\u0000')
    .join('')
    .split('\u0000');
}

/**
 * Cards that print what is held: those of which anybody sees less, and those that anybody sees to be
 * held. What the person is not cleared for and leaves no trace is in neither view.
 */
function stackOf(set: ViewSet, known: ViewSet | null): OwnBrief['stack'] {
  return set.subsets.flatMap((subset) => {
    const other = subsetIn(known, subset);
    const cards = subset.cards.filter((card) => isToTakeOut(card, cardIn(other, card)));
    if (cards.length === 0) return [];
    return [{ set: set.short, subset: subset.title, cards: cards.map(stackName) }];
  });
}

function isToTakeOut(card: ViewCard, known: ViewCard | null): boolean {
  if (card.state === 'not issued') return false;
  if (card.state === 'placeholder' || known?.state !== 'shown') return true;
  const isMarked = known.bioHeld || known.bio.some((runs) => runs.some((run) => 'held' in run));
  return isMarked || partsBeyond(card, known).length > 0;
}

function stackName({ number, letter, name }: ViewCard): string {
  return number === null ? name : `${number}${letter ?? ''}`;
}

function cardName({ number, letter, name }: ViewCard): string {
  return number === null ? name : `${number}${letter ?? ''} ${name}`;
}
