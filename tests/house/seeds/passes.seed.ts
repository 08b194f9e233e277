import { test } from 'vitest';

test('passes', () => undefined);
