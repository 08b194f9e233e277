import type { Finding } from '../../schema/index.js';
import { RULES, type About } from '../checks/index.js';
import { renumbered, splice } from '../edit/index.js';
import {
  compareNumbers,
  identityOf,
  streetOf,
  subsetOf,
  type Card,
  type CardSet,
  type Instant,
} from '../model/index.js';
import type { Folder } from '../read/index.js';
import { nearest } from '../text/index.js';
import { laidOver, look, type LookOptions, type Looked } from './look.js';
import { newNumbers, type Wish } from './new-numbers.js';
import { bytesOf, textOf } from './texts.js';
import {
  mentions,
  movedAddresses,
  voidedApprovals,
  type Mention,
  type MovedAddress,
  type VoidedApproval,
} from './touched.js';
import { moreErrors } from './worse.js';
import type { FileChange } from './write.js';

/** What is asked of `renumber`. */
export interface RenumberOrder {
  readonly folder: Folder;
  readonly now: Instant;
  readonly set: string;
  readonly subset: string;
  readonly wish: Wish;
  readonly closeGaps: boolean;
  readonly mayWrite: (file: string) => boolean;
  readonly progress?: LookOptions['progress'];
}

/** A card that gets another number. */
export interface Moved {
  readonly card: string;
  readonly name: string;
  readonly from: string;
  readonly to: string;
}

/** What would change, and what it touches; or every reason why it cannot be done. */
export type Renumbering =
  | {
      readonly ok: true;
      readonly moved: readonly Moved[];
      readonly files: ReadonlyMap<string, FileChange>;
      readonly approvals: readonly VoidedApproval[];
      readonly addresses: readonly MovedAddress[];
      readonly mentions: readonly Mention[];
      /** Why numbers of this set should not change any more. */
      readonly late: readonly string[];
    }
  | { readonly ok: false; readonly why: readonly string[]; readonly worse: readonly Finding[] };

/** What rules may say that has to do with numbers: they print, and stand for a place in a story. */
const ABOUT_NUMBERS: ReadonlySet<About> = new Set([
  'files',
  'levels',
  'numbers',
  'counts',
  'fit',
  'spoilers',
  'packs',
]);
const ASKED = RULES.filter(({ id, about }) => ABOUT_NUMBERS.has(about) && id !== 'accepted-unused');

/** Works out new numbers, the files with them, and what that touches. Writes nothing. */
export function renumber(order: RenumberOrder): Renumbering {
  const { folder, wish, closeGaps, now, progress } = order;
  const only = ASKED.map(({ id }) => id);
  const options = progress === undefined ? { only } : { only, progress };
  const was = look(folder, options);
  const place = placeIn(was, order);
  if (!place.ok) return refusedFor(place.why);
  const { set, plan } = place;
  const given = newNumbers({ set, plan, wish, closeGaps });
  if (!given.ok) return refusedFor(given.why);
  const { numbers } = given;
  const linked = [...numbers.keys()].filter(({ source }) => !order.mayWrite(source.file));
  if (linked.length > 0) {
    return refusedFor(
      linked.map(({ source }) => `${source.file} is a link, which is not written to`),
    );
  }
  const files = filesOf(folder, numbers);
  const after = new Map([...files].map(([path, change]) => [path, change.after]));
  const worse = numbers.size === 0 ? [] : moreErrors(was, look(laidOver(folder, after), options));
  if (worse.length > 0) {
    return {
      ok: false,
      why: ['with these numbers `check` would find what it does not find now'],
      worse,
    };
  }
  const addresses = movedAddresses(was.content, set, numbers, now);
  return {
    ok: true,
    moved: movedOf(numbers),
    files,
    approvals: voidedApprovals(was, set, numbers),
    addresses,
    mentions: numbers.size === 0 ? [] : mentions(set, numbers),
    late: numbers.size === 0 ? [] : lateness(set, addresses, now),
  };
}

function refusedFor(why: readonly string[]): Renumbering {
  return { ok: false, why, worse: [] };
}

type Placed =
  | {
      readonly ok: true;
      readonly set: CardSet;
      readonly plan: CardSet['plan']['value']['subsets'][number];
    }
  | { readonly ok: false; readonly why: readonly string[] };

function placeIn({ content }: Looked, { set: setId, subset }: RenumberOrder): Placed {
  if (content.faults.length > 0) {
    return { ok: false, why: ['some files cannot be read: run `holdback check` first'] };
  }
  const set = content.sets.find(({ id }) => id === setId);
  if (!set)
    return {
      ok: false,
      why: [
        noSuch(
          'set',
          setId,
          content.sets.map(({ id }) => id),
        ),
      ],
    };
  const plan = subsetOf(set.plan.value, subset);
  const known = set.plan.value.subsets.map(({ id }) => id);
  return plan ? { ok: true, set, plan } : { ok: false, why: [noSuch('subset', subset, known)] };
}

/** "there is no set hihg-water; did you mean high-water?" */
export function noSuch(what: string, id: string, known: readonly string[]): string {
  const near = nearest(id, known);
  return `there is no ${what} ${id}${near === null ? `; there is ${known.join(', ')}` : `; did you mean ${near}?`}`;
}

function filesOf(folder: Folder, numbers: ReadonlyMap<Card, string>): Map<string, FileChange> {
  return new Map(
    [...numbers].map(
      ([
        {
          source: { file },
        },
        number,
      ]) => {
        const { source, isMarked } = textOf(folder, file);
        const after = splice(source, [renumbered(source, number)]);
        return [file, { before: folder.read(file), after: bytesOf(after, isMarked) }];
      },
    ),
  );
}

function movedOf(numbers: ReadonlyMap<Card, string>): readonly Moved[] {
  return [...numbers]
    .map(([card, to]) => ({
      card: identityOf(card),
      name: card.front.name,
      from: card.front.number,
      to,
    }))
    .sort((a, b) => compareNumbers(a.to, b.to) || (a.card < b.card ? -1 : 1));
}

/** Numbers may change until press: why it is later than that. */
function lateness(
  { plan: { value: plan } }: CardSet,
  addresses: readonly MovedAddress[],
  now: Instant,
): readonly string[] {
  const printed = plan.dates?.toPrinter;
  const isPrinted =
    plan.stage === 'locked' && printed !== undefined && Date.parse(`${printed}T00:00:00Z`) <= now;
  return [
    ...(isPrinted ? [`the set is locked and went to the printer on ${printed}`] : []),
    ...(streetOf(plan) <= now ? ['the set is in shops'] : []),
    ...(addresses.length > 0 ? ['the public can look these cards up by their numbers'] : []),
  ];
}
