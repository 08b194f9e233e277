import { expect, test } from 'vitest';

let tries = 0;

test('passes', () => undefined);
test('fails', () => expect(1).toBe(2));
test('passes at the second try, and counts once', { retry: 1 }, () => {
  tries += 1;
  expect(tries).toBe(2);
});
test.skip('is left out', () => undefined);
