import { existsSync } from "node:fs";
import { defineConfig, type TestProjectConfiguration } from "vitest/config";

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

// Where changes are accepted, leaving these tests out would look like passing them; there they fail instead.
const withEditor = existsSync(".editor/stamp") || Boolean(process.env.CI);
if (!withEditor) {
  process.stderr.write("The editor tests are left out: run test/editor/setup.sh once to have them.\n");
}

export default defineConfig({ test: { projects: withEditor ? [unit, editor] : [unit] } });
