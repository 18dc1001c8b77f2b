/**
 * Writes what is generated and committed: `npm run generate`; with `--check`, only says whether it is up to date.
 *
 * server/document/generated/validate.js   the validator, from schemas/frame.schema.json
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { validatorSource } from "./server/document/generate.ts";

const target = join("server", "document", "generated", "validate.js");
const fresh = validatorSource();

if (!process.argv.includes("--check")) {
  writeFileSync(target, fresh);
} else if (!existsSync(target) || readFileSync(target, "utf8") !== fresh) {
  process.stderr.write(`${target} is out of date: run "npm run generate".\n`);
  process.exitCode = 1;
}
