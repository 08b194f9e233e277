// npm run build: compiles schema and pipeline into dist, with the scripts of a packet's page and the
// page of the desk. The new folder takes the old one's place only when it is whole, so a build that
// fails or is cut short leaves a working dist behind.
import { chmodSync, existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { deskFiles, packetScripts } from './bundle.mjs';
import { giveUp, root, run } from './run.mjs';

const dist = join(root, 'dist');
const fresh = join(root, 'out', `build-${process.pid}`);
const old = `${fresh}-old`;

mkdirSync(join(root, 'out'), { recursive: true });
try {
  compile();
  await bundle();
  chmodSync(join(fresh, 'pipeline/cli/bin.js'), 0o755);
  if (existsSync(dist)) renameSync(dist, old);
  renameSync(fresh, dist);
} finally {
  rmSync(old, { recursive: true, force: true });
}

function compile() {
  const tsc = join(root, 'node_modules/typescript/bin/tsc');
  const project = join(root, 'tests/setup/tsconfig.build.json');
  if (run(process.execPath, [tsc, '-p', project, '--outDir', fresh])) return;
  rmSync(fresh, { recursive: true, force: true });
  giveUp('The build failed: dist is as it was.');
}

/** Puts the scripts of a packet's page, and the page of the desk, beside the rooms that use them. */
async function bundle() {
  const [{ page, setter }, files] = await Promise.all([packetScripts(), deskFiles()]);
  const room = join(fresh, 'pipeline/out/packet');
  writeFileSync(join(room, 'packet-page.js'), page);
  writeFileSync(join(room, 'packet-setter.js'), setter);
  const deskPage = join(fresh, 'pipeline/desk-page');
  mkdirSync(deskPage);
  for (const [name, bytes] of files) writeFileSync(join(deskPage, name), bytes);
}
