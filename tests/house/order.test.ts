import { expect, test } from 'vitest';

import { LONGEST } from '../setup/order.js';
import { repositoryFiles } from './files.js';

test('the test files that are begun first are there', () => {
  const files = new Set(repositoryFiles());
  expect(LONGEST.filter((path) => !files.has(path))).toEqual([]);
});
