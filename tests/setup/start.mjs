// npm start: all the set-up that a fresh clone needs, then the demo.
import { spawn } from 'node:child_process';
import { ensureInstalled } from './ensure-installed.mjs';
import { environment, root, run } from './run.mjs';

ensureInstalled();
console.log('Building.');
if (!run(process.execPath, ['tests/setup/build.mjs'])) process.exit(1);

const demo = spawn(
  process.execPath,
  ['--import', 'tsx', 'tests/demo/start.ts', ...process.argv.slice(2)],
  {
    cwd: root,
    env: environment(),
    stdio: 'inherit',
  },
);
for (const signal of /** @type {const} */ (['SIGINT', 'SIGTERM', 'SIGHUP'])) {
  process.on(signal, () => {
    const fromTerminal = signal === 'SIGINT' && process.stdin.isTTY;
    if (!fromTerminal) demo.kill(signal); // a terminal has sent its ^C to the demo already
  });
}
if (process.env['npm_lifecycle_event']) {
  // npm runs this below a shell that hands on no signal: when the shell is gone, so is the user.
  const shell = process.ppid;
  setInterval(() => process.ppid !== shell && demo.kill(), 500).unref();
}
demo.on('exit', (code) => {
  process.exitCode = code ?? 1;
});
