import { test } from 'vitest';

test('takes the process down', () => {
  process.kill(process.pid, 'SIGKILL');
  return new Promise(() => undefined);
});
test('never runs', () => undefined);
