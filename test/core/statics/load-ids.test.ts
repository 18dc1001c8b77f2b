/** Combinations are told apart by their ids and by their words: reports, drawings and settings name them by either. */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { basicLoads } from "../../../server/core/statics/basic-loads.ts";
import { frameCaseWords } from "../../../server/core/statics/case-words.ts";
import { frameCases } from "../../../server/core/statics/combine.ts";
import { readFrame } from "../../../server/document/read.ts";
import { type Shed, sheds, shedText } from "./random-shed.ts";

const SAY = makeSay("inch");

function loaded(text: string) {
  const { frame } = readFrame(text);
  const { all } = basicLoads(buildModel(frame));
  return { all, cases: frameCases(frame.basis.loads, all) };
}
const twice = (names: readonly string[]): string[] => names.filter((name, i) => names.indexOf(name) !== i);

function apart(text: string): void {
  const { all, cases } = loaded(text);
  expect(twice(all.map((l) => l.id))).toEqual([]);
  expect(twice(cases.map((c) => c.id))).toEqual([]);
  expect(twice(cases.map((c) => frameCaseWords(c, SAY)))).toEqual([]);
}

const FOLDERS = ["../../../samples/", "../../frames/"].map((folder) => new URL(folder, import.meta.url));
const FILES = FOLDERS.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".frame.yaml"))
    .map((name): [string, URL] => [name, new URL(name, folder)]),
);

describe("every load and every combination has an id and words of its own", () => {
  test.each(FILES)("%s", (_, url) => apart(readFileSync(url, "utf8")));
  test("sheds of any usual size, also steeper than 7:12, where snow lies on some spans of a slope", () => {
    const steep = sheds.map((shed): Shed => ({ ...shed, pitch: shed.pitch + 3 }));
    fc.assert(
      fc.property(fc.oneof(sheds, steep), (shed) => apart(shedText(shed))),
      { numRuns: 30, seed: 4 },
    );
  });
});

test("snow up the slopes of a steep gable names the wall at each eave", () => {
  const goats = FILES.find(([name]) => name.startsWith("goat-shed"));
  if (!goats) throw new Error("no goat shed");
  const { cases } = loaded(readFileSync(goats[1], "utf8"));
  const up = cases.filter((c) => c.combination.text === "D + S" && c.id.includes("/slope-"));
  const named = up.map((c): [string, string] => [c.id, frameCaseWords(c, SAY)]);
  expect(named).toContainEqual([
    "3-S:S/balanced/slope-A-1",
    "D + S (balanced snow, half of it on span 1 of 2 up the slope at wall A)",
  ]);
  expect(named).toContainEqual([
    "3-S:S/balanced/slope-B-1",
    "D + S (balanced snow, half of it on span 1 of 2 up the slope at wall B)",
  ]);
});
