/** Resolves once the process is asked to end, by a key or by the system. */
export function stopAsked(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
      process.once(signal, () => {
        resolve();
      });
    }
  });
}
