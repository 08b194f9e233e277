import type { Reporter, TestModule, TestSuite } from 'vitest/node';

/**
 * Writes `N passed, N failed` as the very last line. A test counts once, by its final state; one
 * that never got to run counts as failed. A file that does not load, a suite whose hook throws and
 * an error outside every test count as one failed each, and so does a run that ends badly without.
 */
export default class TotalReporter implements Reporter {
  private readonly total = { passed: 0, failed: 0, skipped: 0 };

  onInit(): void {
    process.on('exit', (code) => {
      const { passed, failed, skipped } = this.total;
      const line = `${passed} passed, ${failed || (code === 0 ? 0 : 1)} failed`;
      process.stdout.write(`${line}${skipped > 0 ? `, ${skipped} skipped` : ''}\n`);
    });
  }

  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    Object.assign(this.total, { passed: 0, failed: errors.length, skipped: 0 });
    for (const module of modules) this.count(module);
  }

  private count(group: TestModule | TestSuite): void {
    if (group.errors().length > 0) this.total.failed += 1;
    for (const child of group.children) {
      if (child.type === 'suite') this.count(child);
      else this.total[stateOf(child.result().state)] += 1;
    }
  }
}

const stateOf = (state: 'passed' | 'failed' | 'skipped' | 'pending') =>
  state === 'pending' ? 'failed' : state;
