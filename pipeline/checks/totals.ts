import { countableKind, type CardSet } from '../model/index.js';

type Totals = NonNullable<CardSet['plan']['value']['totals']>;
type Total = Totals[string];

/** What a total counts: subsets, by id. Or why that cannot be told. */
export type Parts =
  | { readonly ok: true; readonly subsets: ReadonlySet<string> }
  | { readonly ok: false; readonly why: 'undefined' }
  | { readonly ok: false; readonly why: 'doubled' }
  | { readonly ok: false; readonly why: 'circular' }
  | { readonly ok: false; readonly why: 'unknown'; readonly at: number; readonly name: string }
  | { readonly ok: false; readonly why: 'elsewhere' };

/** The subsets that a total of the plan counts. */
export function partsOf(set: CardSet, key: string): Parts {
  return resolve(set, key, new Set());
}

/** What the plan says that a total is. */
export function statedTotal(total: Total): number {
  return typeof total === 'number' ? total : total.is;
}

function membersOf(total: Total | undefined): readonly string[] | undefined {
  return typeof total === 'object' ? total.of : undefined;
}

function resolve(set: CardSet, key: string, above: ReadonlySet<string>): Parts {
  const plan = set.plan.value;
  const members = membersOf(plan.totals?.[key]);
  const kind = countableKind(set, key);
  if (kind === 'subset' || kind === 'group') {
    if (members && above.size === 0) return { ok: false, why: 'doubled' };
    const subsets = plan.subsets.filter(
      (subset) => (kind === 'subset' ? subset.id : subset.group) === key,
    );
    return { ok: true, subsets: new Set(subsets.map((subset) => subset.id)) };
  }
  if (!members) return { ok: false, why: 'undefined' };
  return resolveMembers(set, members, new Set([...above, key]));
}

function resolveMembers(
  set: CardSet,
  members: readonly string[],
  above: ReadonlySet<string>,
): Parts {
  const subsets = new Set<string>();
  for (const [at, name] of members.entries()) {
    if (countableKind(set, name) === null) return { ok: false, why: 'unknown', at, name };
    if (above.has(name)) return { ok: false, why: 'circular' };
    const parts = resolve(set, name, above);
    if (!parts.ok) return parts.why === 'circular' ? parts : { ok: false, why: 'elsewhere' };
    for (const subset of parts.subsets) subsets.add(subset);
  }
  return { ok: true, subsets };
}
