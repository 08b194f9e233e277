import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { scenes } from './scenes.js';
import { Sheet } from './sheet.js';

const content = fileURLToPath(new URL('../../../content/', import.meta.url));
const limit = 12_000;
let heavy = 0;

for (const { set, id, format, seed, draw } of scenes) {
  const sheet = new Sheet(format, seed ?? id);
  draw(sheet);
  const text = sheet.toString();
  const folder = join(content, set, 'art');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${id}.svg`), text);
  if (text.length >= limit) {
    heavy += 1;
    console.error(`${id}: ${text.length} bytes, the limit is ${limit}`);
  }
}
console.log(`${scenes.length} pictures`);
if (heavy > 0) process.exitCode = 1;
