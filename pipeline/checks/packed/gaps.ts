import { isInside } from '../inside.js';
import type { CardSet, YamlPath } from '../../model/index.js';
import { amount } from '../amount.js';
import { amountKeys } from './lines.js';

/** Something that is not said, or said twice, so that nothing can be worked out. */
export interface Gap {
  readonly path: YamlPath;
  readonly message: string;
  readonly found: string;
  readonly expected: string;
}

/** What a product must say before its places can be counted. */
const SIZES = [
  ['pack', 'cards a pack'],
  ['box', 'packs a box'],
  ['case', 'boxes a case'],
] as const;

/** Whether a set says anywhere what is in its packs. */
export function saysWhatIsPacked({ plan }: CardSet): boolean {
  return (plan.value.products ?? []).some(({ contents }) => contents !== undefined);
}

/** What keeps the packs of a set from being worked out. */
export function packedGaps({ plan }: CardSet): readonly Gap[] {
  return (plan.value.products ?? []).flatMap((product, at) => [
    ...missingSizes(product, ['products', at]),
    ...(product.contents ?? []).flatMap((content, position): readonly Gap[] => {
      const path = ['products', at, 'contents', position];
      const keys = amountKeys(content);
      const [, second] = keys;
      if (keys.length === 0) {
        return [
          {
            path: [...path, 'of'],
            message: `nothing says how much of \`${content.of}\` goes in \`${product.id}\``,
            found: content.of,
            expected: '`copies`, `each`, `perBox`, `perCase`, `all: run` or `odds`',
          },
        ];
      }
      if (second === undefined) return [];
      return [
        {
          path: [...path, second],
          message: `two keys say how much of \`${content.of}\` goes in \`${product.id}\``,
          found: keys.map((key) => `\`${key}\``).join(' and '),
          expected: 'one of them',
        },
      ];
    }),
  ]);
}

type Sized = NonNullable<CardSet['plan']['value']['products']>[number];

function missingSizes(product: Sized, path: YamlPath): readonly Gap[] {
  const { id, cases } = product;
  if (typeof cases !== 'number') return [];
  return SIZES.filter(([key]) => product[key] === undefined).map(([key, what]) => ({
    path: [...path, 'cases'],
    message: `${amount(cases, 'case')} of \`${id}\` are made, and nothing says how many ${what}`,
    found: `no \`${key}\``,
    expected: `\`${key}\`: ${what}`,
  }));
}

/** Whether all that is packed could be read, and every id in it names something. */
export function isPackedKnown({ plan, unread, rosters }: CardSet): boolean {
  const { subsets, parallels = [], products = [] } = plan.value;
  const ids = new Set([...subsets, ...parallels].map(({ id }) => id));
  const own = new Set(subsets.map(({ id }) => id));
  const named = products.flatMap(({ contents = [], guarantees = [] }) => [
    ...contents.map(({ of }) => of),
    ...guarantees.flatMap(({ of }) => of),
  ]);
  return (
    named.every((id) => ids.has(id)) &&
    parallels.every(({ of }) => of.every((id) => own.has(id))) &&
    subsets.every(
      ({ id, roster }) =>
        !unread.has(id) && (roster === undefined || !isInside(roster) || rosters.has(roster)),
    )
  );
}
