import { defineConfig, type TestProjectConfiguration } from "vitest/config";
import type { Reporter } from "vitest/node";

// A busy machine is no failure: limits of time only catch what hangs; speed is measured in test/bench.
const unit: TestProjectConfiguration = {
  test: { name: "unit", include: ["test/**/*.test.ts"], exclude: ["test/editor/**"], testTimeout: 60_000 },
};

/** Starts a real editor and a browser: one file at a time, after the quick tests have had the machine to themselves. */
const editor: TestProjectConfiguration = {
  test: {
    name: "editor",
    include: ["test/editor/**/*.test.ts"],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 180_000,
    sequence: { groupOrder: 1 },
  },
};

/** Says after the summary what was skipped here, group by group: the groups carry the reason in their titles. */
const sayWhatIsSkipped: Reporter = {
  onTestRunEnd(modules) {
    for (const module of modules) {
      for (const suite of module.children.suites()) {
        if (suite.state() !== "skipped") continue;
        const tests = [...suite.children.allTests()].length;
        process.stdout.write(`↓ ${tests} skipped: ${module.relativeModuleId} > ${suite.name}\n`);
      }
    }
  },
};

export default defineConfig({
  test: { projects: [unit, editor], reporters: ["default", sayWhatIsSkipped] },
});
