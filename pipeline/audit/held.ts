import {
  cardHold,
  copyText,
  fieldHold,
  heldSpans,
  holdNamed,
  join,
  liftOf,
  paragraphText,
  scheduleOf,
  statedHold,
  type Card,
  type Content,
  type Hold,
  type Instant,
  type Schedule,
} from '../model/index.js';

/** Words that must not stand in anything public at an instant, and where they come from. */
export interface HeldWords {
  readonly words: string;
  /** What they are, for the team: a name, a bio, an alt text. */
  readonly from: string;
  /** A held name is looked for even where the same words are open elsewhere. */
  readonly always: boolean;
}

/** Everything that is held from the public at an instant, worked out anew from the model. */
export function heldWords(content: Content, at: Instant): readonly HeldWords[] {
  if (!content.property) return [];
  const schedule = scheduleOf(content.property.value);
  const held = (hold: Hold): boolean => liftOf(schedule, hold) > at;
  const names = namesHeld(content, schedule, held);
  const labels = [...schedule.levels, ...schedule.embargoes.values()]
    .filter((opening) => opening.lift > at)
    .map((opening) => ({
      words: opening.label,
      from: `the label of ${opening.id}`,
      always: false,
    }));
  const cards = content.sets.flatMap((set) =>
    set.cards.flatMap((card) =>
      cardHeld(card, cardHold(schedule, set.plan.value, card), schedule, held),
    ),
  );
  return [...names, ...labels, ...cards].filter((entry) => entry.words.trim().length > 2);
}

function namesHeld(
  content: Content,
  schedule: Schedule,
  held: (hold: Hold) => boolean,
): HeldWords[] {
  return (content.names?.value.names ?? []).flatMap((name) => {
    const own = statedHold(schedule, name);
    const forms = (name.aliases ?? []).map((alias) =>
      typeof alias === 'string'
        ? { form: alias, hold: own }
        : { form: alias.form, hold: join(own, statedHold(schedule, alias)) },
    );
    return [{ form: name.name, hold: own }, ...forms]
      .filter((entry) => held(entry.hold))
      .map((entry) => ({ words: entry.form, from: `the name ${name.name}`, always: true }));
  });
}

function cardHeld(
  card: Card,
  hold: Hold,
  schedule: Schedule,
  held: (hold: Hold) => boolean,
): HeldWords[] {
  const from = `${card.set}/${card.subset}/${card.id}`;
  const fields = textsOf(card).filter((text) => held(fieldHold(schedule, hold, card, text.field)));
  const spans = heldSpans(card.bio)
    .filter((span) => held(join(hold, holdNamed(schedule, span.hold))))
    .map((span) => ({ words: span.text, from: `a held span of ${from}`, always: false }));
  return [
    ...fields.map(({ field, words }) => ({ words, from: `${field} of ${from}`, always: false })),
    ...spans,
  ];
}

/** Every text of a card that a public page could carry, by the field that holds it. */
export function textsOf(card: Card): readonly { field: string; words: string }[] {
  const { front, bio } = card;
  const entries: (readonly [string, string | undefined])[] = [
    ['name', front.name],
    ['image', front.image?.alt],
    ['variation', front.variation?.tell],
    ...Object.entries(front.facts ?? {}).map(([name, value]) => [`facts.${name}`, value] as const),
    ...Object.entries(front.texts ?? {}).map(([zone, value]) => [`texts.${zone}`, value] as const),
    ...(front.signers ?? []).map((signer) => ['signers', signer.name] as const),
    ...(front.credits ?? []).map((credit) => ['credits', credit.name] as const),
    ['bio', copyText(bio)],
    ...(bio.length > 1 ? bio : []).map((paragraph) => ['bio', paragraphText(paragraph)] as const),
  ];
  return entries.flatMap(([field, words]) => (words === undefined ? [] : [{ field, words }]));
}
