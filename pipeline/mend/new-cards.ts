import type { Subset } from '../../schema/index.js';
import {
  NAME_TO_COME,
  isVariation,
  plannedNumbers,
  runningNumber,
  subsetOf,
  type CardSet,
} from '../model/index.js';
import { readContent, readReview, type Folder } from '../read/index.js';
import { readNumberList } from './number-list.js';
import { noSuch } from './renumber.js';
import { stubIds } from './stub-ids.js';
import { bytesOf } from './texts.js';
import type { FileChange } from './write.js';

/** What is asked of `new cards`. */
export interface NewCardsOrder {
  readonly folder: Folder;
  readonly set: string;
  readonly subset: string;
  /** Such as `5-12`; every number without a card, if it is not said. */
  readonly numbers?: string;
  readonly writer?: string;
}

/** A card to be written. */
export interface Stub {
  readonly file: string;
  readonly number: string;
}

/** The files of new cards, or every reason why there are none. */
export type Stubs =
  | {
      readonly ok: true;
      readonly stubs: readonly Stub[];
      readonly files: ReadonlyMap<string, FileChange>;
    }
  | { readonly ok: false; readonly why: readonly string[] };

/** Makes a card for each number of a subset's plan that has none. Writes nothing. */
export function newCards(order: NewCardsOrder): Stubs {
  const { folder, writer } = order;
  const content = readContent(folder);
  const set = content.sets.find(({ id }) => id === order.set);
  if (!set) {
    return {
      ok: false,
      why: [
        noSuch(
          'set',
          order.set,
          content.sets.map(({ id }) => id),
        ),
      ],
    };
  }
  const plan = subsetOf(set.plan.value, order.subset);
  const people = content.people?.value.people.map(({ id }) => id) ?? [];
  const why = [
    ...(plan
      ? []
      : [
          noSuch(
            'subset',
            order.subset,
            set.plan.value.subsets.map(({ id }) => id),
          ),
        ]),
    ...(writer === undefined || people.includes(writer) ? [] : [noSuch('person', writer, people)]),
    ...(set.unread.has(order.subset)
      ? [
          `a card of \`${order.subset}\` cannot be read, so nobody knows its number: run \`holdback check\``,
        ]
      : []),
  ];
  if (!plan) return { ok: false, why };
  const wanted = wantedNumbers(set, plan, order.numbers);
  if (!wanted.ok) return { ok: false, why: [...why, ...wanted.why] };
  if (why.length > 0) return { ok: false, why };
  return { ok: true, ...filesFor(wanted.numbers, set, plan, order) };
}

type Wanted =
  | { readonly ok: true; readonly numbers: readonly string[] }
  | { readonly ok: false; readonly why: readonly string[] };

/** Numbers of the plan that no card has. Whoever names a single one that has a card is told so. */
function wantedNumbers(set: CardSet, plan: Subset, asked: string | undefined): Wanted {
  const planned = plannedNumbers(plan.numbers);
  if (planned === null) {
    return { ok: false, why: [`\`${plan.id}\` has no numbers, so no card of it is missing`] };
  }
  const bearers = new Map(
    set.cards
      .filter((card) => card.subset === plan.id && !isVariation(card))
      .map(({ front, id }) => [front.number, id]),
  );
  if (asked === undefined) {
    return { ok: true, numbers: planned.filter((number) => !bearers.has(number)) };
  }
  const list = readNumberList(asked, plan, planned);
  const taken = [...list.named].flatMap((number) => {
    const id = bearers.get(number);
    return id === undefined ? [] : [`${plan.id}/${id} has the number ${number}`];
  });
  const why = [...list.why, ...taken];
  if (why.length > 0) return { ok: false, why };
  return { ok: true, numbers: list.numbers.filter((number) => !bearers.has(number)) };
}

function filesFor(
  numbers: readonly string[],
  set: CardSet,
  plan: Subset,
  { folder, writer }: NewCardsOrder,
): { readonly stubs: readonly Stub[]; readonly files: ReadonlyMap<string, FileChange> } {
  const prefix = plan.numbers !== 'none' && 'from' in plan.numbers ? plan.numbers.prefix : null;
  const runningOf = (number: string): number | null =>
    prefix === null ? null : runningNumber(number, prefix ?? '');
  const known = set.cards
    .filter((card) => card.subset === plan.id)
    .map(({ id, front }) => [id, runningOf(front.number)] as const);
  const ids = stubIds(plan.id, known, usedIds(folder, set.id, plan.id), numbers.map(runningOf));
  const spoiler = plan.spoiler ?? set.plan.value.spoiler;
  const stubs = numbers.map((number, at) => ({
    file: `${set.id}/cards/${plan.id}/${ids[at] ?? ''}.md`,
    number,
  }));
  return {
    stubs,
    files: new Map(
      stubs.map(({ file, number }) => [
        file,
        { before: null, after: bytesOf({ text: stubText({ number, spoiler, writer }) }) },
      ]),
    ),
  };
}

function stubText(stub: {
  readonly number: string;
  readonly spoiler: string;
  readonly writer: string | undefined;
}): string {
  const lines = [
    `number: ${JSON.stringify(stub.number)}`,
    `name: ${NAME_TO_COME}`,
    `spoiler: ${stub.spoiler}`,
    'state: draft',
    ...(stub.writer === undefined ? [] : [`writer: ${stub.writer}`]),
  ];
  return ['---', ...lines, '---', ''].join('\n');
}

/** Ids of a subset that are on the disk, or that packets and the ledger know. */
export function usedIds(folder: Folder, set: string, subset: string): ReadonlySet<string> {
  const place = `${set}/cards/${subset}/`;
  const there = folder
    .list()
    .flatMap(({ path }) => (path.startsWith(place) ? [path.slice(place.length)] : []))
    .map((name) => name.replace(/\.[^.]*$/, '').toLowerCase());
  const { ledger, packets } = readReview(folder);
  const known = JSON.stringify([ledger.entries, [...packets.values()]]);
  const pattern = new RegExp(`"${set}/${subset}/([a-z0-9-]+)"`, 'g');
  return new Set([...there, ...[...known.matchAll(pattern)].map(([, id]) => id ?? '')]);
}
