import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { validatorSource } from "../../server/document/generate.ts";

const COMMITTED = readFileSync("server/document/generated/validate.js", "utf8");

it("is what the schema gives today: run `npm run generate` after a change", () => {
  expect(validatorSource() === COMMITTED).toBe(true);
});

it("needs no module at run time", () => {
  expect(COMMITTED).not.toMatch(/\brequire\(|^import /m);
});
