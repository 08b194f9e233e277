import { afterAll, describe, test } from 'vitest';

describe('a suite', () => {
  afterAll(() => {
    throw new Error('on purpose');
  });
  test('passes', () => undefined);
});
