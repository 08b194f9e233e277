import { AMOUNTS, type Content } from '../../../schema/index.js';
import type { CardSet, YamlPath } from '../../model/index.js';
import type { Entry, Guarantee, Kind } from '../../packs/index.js';

/** The ways in which a line may say how much of it goes in. */
export type AmountKey = (typeof AMOUNTS)[number] | 'odds';

/** A line of what is packed, and where it stands. */
export interface PackedLine {
  readonly entry: Entry;
  readonly path: YamlPath;
  /** The key that says how much; `perBox` of decoys. */
  readonly key: AmountKey;
  /** The odds that are said of it besides, if they are not what says how much. */
  readonly said: number | null;
}

/** Every way in which a line says how much goes in; its odds alone, if nothing else does. */
export function amountKeys(content: Content): readonly AmountKey[] {
  const keys = AMOUNTS.filter((key) => content[key] !== undefined);
  return keys.length === 0 && content.odds !== undefined ? ['odds'] : keys;
}

/** The lines of all products whose amounts are said, blank fillers after the cards of each. */
export function packedLines({ plan }: CardSet): readonly PackedLine[] {
  return (plan.value.products ?? []).flatMap(({ id: product, contents = [], decoys }, at) => {
    const lines = contents.flatMap((content, position): readonly PackedLine[] => {
      const [key] = amountKeys(content);
      if (key === undefined) return [];
      const { of: kind, odds = null, even } = content;
      const amount = amountOf(content, key);
      const entry = { product, kind, amount, ...(even === undefined ? {} : { even }) };
      const said = key === 'odds' ? null : odds;
      return [{ entry, path: ['products', at, 'contents', position], key, said }];
    });
    if (decoys === undefined) return lines;
    const amount = { by: 'box', copies: decoys.perBox } as const;
    const entry = { product, kind: decoyId(product), amount };
    return [
      ...lines,
      { entry, path: ['products', at, 'decoys'], key: 'perBox' as const, said: null },
    ];
  });
}

function amountOf(content: Content, key: AmountKey): Entry['amount'] {
  const { [key]: said } = content;
  if (typeof said !== 'number') return { by: 'run' };
  switch (key) {
    case 'odds':
      return { by: 'odds', packs: said };
    case 'copies':
      return { by: 'copies', copies: said };
    case 'each':
      return { by: 'each', copies: said };
    case 'perBox':
      return { by: 'box', copies: said };
    case 'perCase':
      return { by: 'case', copies: said };
    case 'all':
      return { by: 'run' };
  }
}

/** Blank fillers, each product's own: no id of a plan has a space in it. */
export function decoyKinds({ plan }: CardSet): readonly Kind[] {
  return (plan.value.products ?? []).flatMap(({ id, decoys }): readonly Kind[] =>
    decoys === undefined
      ? []
      : [
          {
            id: decoyId(id),
            title: 'blank fillers',
            what: 'decoy',
            cards: [],
            places: decoys.places,
          },
        ],
  );
}

function decoyId(product: string): string {
  return `decoys of ${product}`;
}

/** A promise, and where it stands. */
export interface PackedGuarantee {
  readonly guarantee: Guarantee;
  readonly path: YamlPath;
}

export function packedGuarantees({ plan }: CardSet): readonly PackedGuarantee[] {
  return (plan.value.products ?? []).flatMap(({ id: product, guarantees = [] }, at) =>
    guarantees.map(({ of, atLeast, per }, position) => ({
      guarantee: { product, kinds: of, atLeast, per },
      path: ['products', at, 'guarantees', position],
    })),
  );
}
