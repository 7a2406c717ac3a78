/** Closes a test run with one plain line: `N passed, N failed`, and what was skipped. */
import type { Reporter, TestModule } from 'vitest/node';

export default class CountReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const count = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules) {
      // A module that fails to load has no tests that could fail.
      if (module.errors().length > 0) count.failed++;
      for (const test of module.children.allTests()) count[test.result().state]++;
    }
    const skipped = count.skipped + count.pending;
    process.stdout.write(
      `${count.passed} passed, ${count.failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}\n`,
    );
  }
}
