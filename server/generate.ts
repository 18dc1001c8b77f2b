/**
 * Writes what is generated and committed: `npm run generate`; with `--check`, only says whether it is up to date.
 *
 * server/document/generated/validate.js   the validator, from schemas/frame.schema.json
 * schemas/check-reference.md              what every check is about, from the checks' metadata
 * client/syntax/frame.snippets.json       whole entries, from those that completion offers
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { checkReference } from "./core/checks/reference.ts";
import { validatorSource } from "./document/generate.ts";
import { snippetFile } from "./language/completion/snippet-file.ts";

const generated: readonly { readonly file: string; readonly text: () => string }[] = [
  { file: "server/document/generated/validate.js", text: validatorSource },
  { file: "schemas/check-reference.md", text: checkReference },
  { file: "client/syntax/frame.snippets.json", text: snippetFile },
];

const onlyCheck = process.argv.includes("--check");
for (const { file, text } of generated) {
  const target = new URL(`../${file}`, import.meta.url);
  if (!onlyCheck) writeFileSync(target, text());
  else if (!existsSync(target) || readFileSync(target, "utf8") !== text()) {
    process.stderr.write(`${file} is out of date: run "npm run generate".\n`);
    process.exitCode = 1;
  }
}
