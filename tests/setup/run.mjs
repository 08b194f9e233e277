// What the set-up scripts share. They run before anything is installed, so they use Node alone.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../../', import.meta.url));

/** How the user reaches the registry; everything else that npm hands to its scripts is dropped. */
const KEPT =
  /^npm_config_(registry|cache|userconfig|globalconfig|proxy|https_proxy|noproxy|cafile|strict_ssl)$/;

/**
 * The environment without what `npm run` adds to it, so that a command behaves the same whether it
 * was started by npm or by hand.
 * @returns {NodeJS.ProcessEnv}
 */
export function environment() {
  const kept = Object.entries(process.env).filter(
    ([name]) => name !== 'INIT_CWD' && (!name.startsWith('npm_') || KEPT.test(name)),
  );
  return Object.fromEntries(kept);
}

/**
 * Runs a command in the project's folder, on this terminal.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {boolean} whether it ended with 0
 */
export function run(command, args, env = environment()) {
  return spawnSync(command, args, { cwd: root, env, stdio: 'inherit' }).status === 0;
}

/**
 * Ends this process with 1 and one sentence.
 * @param {string} sentence
 * @returns {never}
 */
export function giveUp(sentence) {
  console.error(sentence);
  process.exit(1);
}
