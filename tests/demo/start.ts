import { cpSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { main, type Io } from '../../pipeline/cli/index.js';
import { servePreview } from '../../pipeline/desk/index.js';
import { DEMO_NOW, LAST_LIFT } from './day.js';

/**
 * `npm start`: the whole job on a copy of the demo, at the demo's day. Everything that it writes is
 * in out/demo; the clone itself stays as it was.
 */
const root = fileURLToPath(new URL('../../', import.meta.url));
const place = join(root, 'out', 'demo');
const say = (text: string): void => void process.stdout.write(`${text}\n`);

const io: Io = {
  now: DEMO_NOW,
  cwd: place,
  env: {},
  elapsed: () => performance.now(),
  random: (octets) => crypto.getRandomValues(new Uint8Array(octets)),
  terminal: false,
  out: (text) => void process.stdout.write(text.replace(/^(?=.)/gm, '   ')),
  err: (text) => void process.stderr.write(text.replace(/^(?=.)/gm, '   ')),
};

async function step(what: string, argv: readonly string[]): Promise<void> {
  say(`\n${what}\n   holdback ${argv.join(' ')}`);
  const code = await main(argv, io);
  if (code !== 0) {
    say(`That did not go well (exit ${String(code)}).`);
    process.exit(1);
  }
}

rmSync(place, { recursive: true, force: true });
mkdirSync(place, { recursive: true });
cpSync(join(root, 'content'), join(place, 'content'), { recursive: true });

say('The demo: The Ferrywrights, two sets, on 30 March 2027 at noon in London.');
say('The first set is in shops. The second goes on sale in seventeen days, and its story is held.');
say('The files are a copy in out/demo/content.');
await step('1. Every rule over every card.', ['check']);
await step('2. Proof sheets: each card at true size, front beside back.', [
  'proof',
  '--out',
  'proof-annotated.pdf',
]);
await step('3. The same cards nine to a page, for pocket pages.', [
  'proof',
  '--kind',
  'nine-up',
  '--out',
  'proof-nine-up.pdf',
]);
await step('4. The copy deck: the same words in running order, to read through.', [
  'proof',
  '--kind',
  'deck',
  '--out',
  'copy-deck.pdf',
]);
await step('5. The public checklist as of today: what is held is not in it.', [
  'publish',
  '--out',
  'site',
]);
await step('6. A preview of the checklist after the last lift, for the house alone.', [
  'publish',
  '--at',
  LAST_LIFT,
  '--preview',
  '--out',
  'site-after-the-last-lift',
]);
const preview = await servePreview(join(place, 'site'), 0);
say('\nYou can look at all of it in out/demo:');
say('   proof-annotated.pdf, proof-nine-up.pdf   what will print, with how each text fits');
say('   copy-deck.pdf                            the words alone');
say('   site                                     what may go public today');
say(
  '   site-after-the-last-lift                 what will be public in June; keep it in the house',
);
say('   content/review/releases                  what the team keeps about each release');
say(
  `\nToday’s site is served on this machine until you end this with Ctrl-C:\n   ${preview.address}`,
);

for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
  process.once(signal, () => {
    void preview.close().then(() => process.exit(0));
  });
}
