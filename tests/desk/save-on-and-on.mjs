// node save-on-and-on.mjs <content>: saves a card without end, and says after each save which it was.
import { writeSync } from 'node:fs';

const room = new URL('../../dist/pipeline/desk/', import.meta.url);
const { cardFileOf } = await import(new URL('card-files.js', room).href);
const { readCardFile, writeCard } = await import(new URL('saving.js', room).href);
const { withText } = await import(new URL('texts.js', room).href);

const place = { contentPath: process.argv[2], now: () => Date.now() };
const file = cardFileOf('one/cards/base/a1.md');
for (let number = 1; ; number += 1) {
  const before = readCardFile(place, file.path);
  const after = withText(before, `words ${String(number)}\n${'more\n'.repeat(number % 50)}`);
  const outcome = await writeCard(place, file, before, after);
  if (outcome !== 'written') throw new Error(outcome);
  writeSync(1, `${String(number)}\n`);
}
