/**
 * The tests that run inside the editor's extension host, whichever launcher started it.
 * Writes what came of them to the file named by BENTWRIGHT_TEST_RESULTS and throws when one failed.
 */
import { writeFile } from "node:fs/promises";
import { fixTests } from "./fixes.ts";
import { closeAll } from "./frame-editor.ts";
import type { SuiteResult } from "./results.ts";
import { tests } from "./tests.ts";

const TEST_TIMEOUT = 40_000;

export async function run(): Promise<void> {
  const results: SuiteResult[] = [];
  for (const [name, test] of Object.entries({ ...tests, ...fixTests })) {
    const start = Date.now();
    const error = await withEnd(test).then(
      () => "",
      (reason: unknown) => (reason instanceof Error ? (reason.stack ?? reason.message) : String(reason)),
    );
    results.push({ name, error, milliseconds: Date.now() - start });
    await closeAll();
  }
  const file = process.env.BENTWRIGHT_TEST_RESULTS;
  if (file !== undefined) await writeFile(file, JSON.stringify(results, null, 2));
  const failed = results.filter(({ error }) => error !== "");
  if (failed.length > 0) {
    throw new Error(failed.map(({ name, error }) => `${name}\n${error}`).join("\n\n"));
  }
}

async function withEnd(test: () => Promise<void>): Promise<void> {
  let timer: NodeJS.Timeout | undefined;
  const end = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`Not done after ${TEST_TIMEOUT} ms.`)), TEST_TIMEOUT);
  });
  await Promise.race([test(), end]).finally(() => clearTimeout(timer));
}
