import type { Reporter, TestModule } from 'vitest/node';

/** Prints what was skipped, and as the last line of all "N passed, N failed". */
export default class PlainReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    let passed = 0;
    let failed = errors.length;
    const skipped: string[] = [];
    for (const module of modules) {
      let tests = 0;
      for (const test of module.children.allTests()) {
        tests++;
        const { state } = test.result();
        if (state === 'passed') passed++;
        else if (state === 'failed') failed++;
        else skipped.push(`${module.relativeModuleId}: ${test.fullName}`);
      }
      // A file that cannot be loaded has no tests and still has failed.
      if (module.state() === 'failed' && (tests === 0 || module.errors().length > 0)) failed++;
    }
    // After the default reporter's summary.
    process.once('exit', () => {
      for (const name of skipped) console.log(`skipped: ${name}`);
      console.log(`${passed} passed, ${failed} failed`);
    });
  }
}
