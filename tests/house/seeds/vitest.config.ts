import { defineConfig } from 'vitest/config';

/** Test files that go wrong on purpose, run by total.test.ts alone. */
export default defineConfig({
  test: { include: ['tests/house/seeds/*.seed.ts'], reporters: ['./tests/setup/reporter.ts'] },
});
