import { describe, expect, test } from "vitest";
import { type CheckMeta, defineCheck, type Found } from "../../../server/core/checks/check.ts";
import { anyCheck, runChecks } from "../../../server/core/checks/run.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import type { Accepted, Frame } from "../../../server/core/frame/frame.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults } from "../../../server/core/results.ts";
import { readFrame } from "../../../server/document/read.ts";
import { gate } from "./gate.ts";

const reading = readFrame(gate({}));
const model = buildModel(reading.frame);
const inputs = {
  source: reading.source,
  frame: reading.frame,
  model,
  results: computeResults(model),
  whole: { source: reading.source, model },
};

const meta = (id: string): CheckMeta => ({
  id,
  title: "A test",
  level: "warning",
  area: "file",
  source: { text: "a test", status: "file-format" },
  explanation: { what: "What.", why: "Why.", remedy: "Do." },
});

const finds = (id: string, found: readonly Found<string>[]) =>
  anyCheck(
    defineCheck<"frame", string>({
      meta: meta(id),
      input: "frame",
      find: () => found,
      words: (d) => `${d}.`,
    }),
  );

const run = (checks: Parameters<typeof runChecks>[0], accepted: readonly Accepted[] = []) =>
  runChecks(checks, inputs, accepted, makeSay("inch"));

describe("a check that breaks", () => {
  const broken = anyCheck(
    defineCheck<"frame", string>({
      meta: meta("broken"),
      input: "frame",
      find: (_: Frame) => {
        throw new Error("cannot read undefined");
      },
      words: () => "",
    }),
  );
  const wordless = anyCheck(
    defineCheck<"frame", string>({
      meta: meta("wordless"),
      input: "frame",
      find: () => [{ path: "/a", data: "x" }],
      words: () => {
        throw new Error("no words");
      },
    }),
  );

  test("is named as an error, and the others go on", () => {
    const { findings } = run([
      finds("first", [{ path: "/a", data: "one" }]),
      broken,
      wordless,
      finds("last", [{ path: "/b", data: "two" }]),
    ]);
    expect(findings.map(({ check, level }) => [check, level])).toEqual([
      ["check-failed", "error"],
      ["check-failed", "error"],
      ["first", "warning"],
      ["last", "warning"],
    ]);
    expect(findings[0]?.message).toContain("The check broken broke on this file");
    expect(findings[1]?.message).toContain("The check wordless broke on this file");
  });

  test("does not show what it broke on", () => {
    expect(run([broken]).findings[0]?.message).not.toContain("undefined");
  });
});

describe("places on one path", () => {
  const at = (place: string, severity: number): Found<string> => ({
    path: "/a",
    place,
    severity,
    data: place,
  });

  test("are one finding, the worst first, the others by name", () => {
    const { findings } = run([finds("one", [at("b@1", 1), at("b@2", 3), at("b@3", 2)])]);
    expect(findings.map(({ message, places }) => [message, places])).toEqual([
      ["b@2. The same holds at b@3 and b@1.", ["b@2", "b@3", "b@1"]],
    ]);
  });

  test("four and more are counted", () => {
    const many = [1, 2, 3, 4, 5, 6].map((n) => at(`b@${n}`, 10 - n));
    expect(run([finds("one", many)]).findings[0]?.message).toBe(
      "b@1. The same holds at 5 more places, b@2, b@3, b@4 and others.",
    );
  });

  test("one place twice is one place", () => {
    expect(run([finds("one", [at("b@1", 1), at("b@1", 2)])]).findings[0]?.message).toBe("b@1.");
  });

  test("stand apart by level, by key or value, by part and by what sets them apart", () => {
    const { findings } = run([
      finds("one", [
        { path: "/a", data: "plain" },
        { path: "/a", level: "error", data: "grave" },
        { path: "/a", onKey: true, data: "key" },
        { path: "/a", part: { from: 2, to: 3 }, data: "part" },
        { path: "/a", apart: "other", data: "apart" },
      ]),
    ]);
    expect(findings.map(({ message }) => message)).toEqual(["grave.", "plain.", "key.", "part.", "apart."]);
  });
});

test("errors come before warnings and notes, each in the order of the registry", () => {
  const { findings } = run([
    finds("a", [{ path: "/a", level: "note", data: "note" }]),
    finds("b", [{ path: "/a", data: "warning" }]),
    finds("c", [{ path: "/a", level: "error", data: "error" }]),
  ]);
  expect(findings.map(({ level }) => level)).toEqual(["error", "warning", "note"]);
});

test("a number that is none is left out instead of shown", () => {
  const [only] = run([
    finds("a", [{ path: "/a", data: "x", value: Number.NaN, limit: Number.POSITIVE_INFINITY, unit: "in" }]),
  ]).findings;
  expect(only).not.toHaveProperty("value");
  expect(only).not.toHaveProperty("limit");
});

test("entries of accept that cover nothing are told", () => {
  const entry = (check: string, at?: string): Accepted => ({
    path: `/accept/${check}`,
    check,
    at,
    because: "so",
  });
  const used = entry("a", "p@1");
  const elsewhere = entry("a", "p@2");
  const { findings, idle } = run([finds("a", [{ path: "/a", place: "p@1", data: "x" }])], [used, elsewhere]);
  expect(findings[0]?.accepted).toBe("so");
  expect(idle).toEqual([elsewhere]);
});
