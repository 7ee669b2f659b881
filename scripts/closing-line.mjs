// The last line of npm test: N passed, N failed. Whatever did not pass has failed, skipped tests too.
/** @typedef {import("vitest/node").TestModule} TestModule */

export default class ClosingLine {
  /** @param {readonly TestModule[]} modules @param {readonly unknown[]} unhandled */
  onTestRunEnd(modules, unhandled) {
    const n = { passed: 0, failed: unhandled.length };
    for (const module of modules) {
      for (const test of module.children.allTests()) n[test.result().state === "passed" ? "passed" : "failed"]++;
      n.failed += module.errors().length; // files that do not load
      for (const suite of module.children.allSuites()) n.failed += suite.errors().length; // hooks that throw
    }
    if (n.passed + n.failed === 0) n.failed = 1; // an empty run, or globalSetup threw
    if (n.failed > 0) process.exitCode = 1;
    process.once("exit", () => process.stdout.write(`${n.passed} passed, ${n.failed} failed\n`));
  }
}
