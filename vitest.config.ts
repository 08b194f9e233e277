import { defineConfig } from 'vitest/config';

import LongestFirst from './tests/setup/order.js';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/setup/temporary.ts'],
    setupFiles: ['tests/setup/fast-check.ts'],
    // Eleventy in this process does without a worker, as it does where a site is published.
    env: { ELEVENTY_SKIP_ESM_RESOLVER: '1' },
    // Modules hold no state here, so test files may share a process: libraries load once for each
    // worker instead of once for each file, which takes a tenth of the time.
    isolate: false,
    pool: 'forks',
    maxWorkers: '100%',
    sequence: { sequencer: LongestFirst },
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // What a page comes to on a machine that does other things too.
    expect: { poll: { timeout: 15_000 } },
    silent: 'passed-only',
    reporters: [['default', { summary: false }], './tests/setup/reporter.ts'],
  },
});
