// Both compilers over every project: what runs in Node, and the scripts that run in browsers.
import { spawnSync } from 'node:child_process';

const COMPILERS = ['node_modules/typescript/bin/tsc', 'node_modules/tsc7/bin/tsc'];
const PROJECTS = [
  '.',
  'pipeline/desk/page',
  'pipeline/out/packet/page',
  'site/scripts',
  'site/scripts/worker',
];

for (const compiler of COMPILERS) {
  for (const project of PROJECTS) {
    const { status } = spawnSync(process.execPath, [compiler, '-p', project], { stdio: 'inherit' });
    if (status !== 0) process.exitCode = 1;
  }
}
