import type { Card } from '../model/index.js';

/** Fields that are held as a whole. */
const WHOLE = ['image', 'signers', 'credits', 'variation', 'shortPrint', 'run'] as const;

/** Fields of a card that `holds` can hold, of those that the card has: `facts` and `facts.Berth` both. */
export function holdableFields({ front, bio }: Card): string[] {
  const { facts, texts } = front;
  return [
    'name',
    ...(bio.length > 0 ? ['bio'] : []),
    ...WHOLE.filter((field) => front[field] !== undefined),
    ...keysOf('facts', facts),
    ...keysOf('texts', texts),
  ];
}

function keysOf(field: string, values: Readonly<Record<string, string>> | undefined): string[] {
  const keys = Object.keys(values ?? {});
  return keys.length === 0 ? [] : [field, ...keys.map((key) => `${field}.${key}`)];
}
