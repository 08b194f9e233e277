import type { Card } from '../model/index.js';

/** Fields of a card that `holds` can hold, of those that the card has: `facts` and `facts.Berth` both. */
export function holdableFields({ front, bio }: Card): string[] {
  const { image, facts, texts, signers, credits } = front;
  return [
    'name',
    ...(bio.length > 0 ? ['bio'] : []),
    ...(image ? ['image'] : []),
    ...keysOf('facts', facts),
    ...keysOf('texts', texts),
    ...(signers ? ['signers'] : []),
    ...(credits ? ['credits'] : []),
  ];
}

function keysOf(field: string, values: Readonly<Record<string, string>> | undefined): string[] {
  const keys = Object.keys(values ?? {});
  return keys.length === 0 ? [] : [field, ...keys.map((key) => `${field}.${key}`)];
}
