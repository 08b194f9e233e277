import { test } from 'vitest';

test('is never known', () => undefined);
throw new Error('on purpose');
