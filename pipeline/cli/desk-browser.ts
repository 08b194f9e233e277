import { spawn } from 'node:child_process';

/** What opens an address in the user's browser, by system; where there is none, nothing happens. */
const OPENERS: Readonly<Record<string, readonly string[]>> = {
  darwin: ['open'],
  win32: ['rundll32', 'url.dll,FileProtocolHandler'],
  linux: ['xdg-open'],
};

/** Opens an address in the user's browser, as far as one can be found: it is printed as well. */
export function openInBrowser(address: string): void {
  const [program, ...args] = OPENERS[process.platform] ?? [];
  if (program === undefined) return;
  const child = spawn(program, [...args, address], { stdio: 'ignore', detached: true });
  child.on('error', () => undefined);
  child.unref();
}
