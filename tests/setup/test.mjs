// npm test: all the set-up that a fresh clone needs, then the tests. Arguments go to Vitest.
import { ensureInstalled } from './ensure-installed.mjs';
import { ensurePrograms } from './programs.mjs';
import { run } from './run.mjs';

ensureInstalled();
ensurePrograms();
const node = process.execPath;
const passed =
  run(node, ['tests/setup/build.mjs']) &&
  run(node, ['node_modules/vitest/vitest.mjs', 'run', ...process.argv.slice(2)]);
process.exitCode = passed ? 0 : 1;
