import { test } from 'vitest';

test('passes, but leaves a promise behind that nobody handles', () => {
  void Promise.reject(new Error('on purpose'));
});
