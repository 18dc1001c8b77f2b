/** The bundled command line as a person calls it. `npm test` builds it first. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";

const SAMPLE = "samples/cider-press-pavilion.frame.yaml";
const WRONG = "samples/wrong-on-purpose.frame.yaml";

function bentwright(args: readonly string[], input?: string) {
  return spawnSync(process.execPath, ["dist/cli.js", ...args], { encoding: "utf8", input: input ?? "" });
}

test("a sound sample, and one that is wrong on purpose", () => {
  const sound = bentwright(["check", SAMPLE]);
  expect([sound.status, sound.stderr]).toEqual([0, ""]);
  expect(sound.stdout).toMatch(/^0 errors, 0 warnings, /m);
  // remembered design values are said once for each wood, in one line
  expect(sound.stdout.match(/^Design values of .*$/gm)).toEqual([
    "Design values of eastern white pine, no-1 (frame) were written down from memory. Before you build, compare F_b, F_t, F_v, F_c⊥, F_c, E with a print: NDS Supplement 2015/2018 Table 4D (sticks of 5 in and thicker) and NDS Supplement 2015/2018 Table 4A (sticks thinner than 5 in).",
    "Design values of eastern hemlock tamarack, no-2 (rafters) were written down from memory. Before you build, compare F_b, F_t, F_v, F_c⊥, F_c, E with a print: NDS Supplement 2015/2018 Table 4A (sticks thinner than 5 in).",
  ]);
  // so is what of snow and wind was not seen in print
  expect(
    sound.stdout.match(
      /^Of snow and wind by ASCE 7-16 these stand as remembered: .*ASCE 7 Table 7\.3-1; .*$/gm,
    ),
  ).toHaveLength(1);
  const wrong = bentwright(["check", WRONG]);
  expect([wrong.status, wrong.stderr]).toEqual([1, ""]);
  expect(wrong.stdout).toMatch(/^samples\/wrong-on-purpose\.frame\.yaml:\d+:\d+ error [a-z-]+ /m);
});

test("standard input", () => {
  const piped = bentwright(["check", "-"], readFileSync(WRONG, "utf8"));
  expect(piped.status).toBe(1);
  expect(piped.stdout).toMatch(/^-:\d+:\d+ error /m);
});

test("a file that is not there, and a folder", () => {
  const missing = bentwright(["check", "none.frame.yaml"]);
  expect([missing.status, missing.stdout]).toEqual([2, ""]);
  expect(missing.stderr).toBe("none.frame.yaml cannot be opened: there is no such file or folder.\n");
  expect(bentwright(["check", "samples"]).stderr).toBe("samples cannot be opened: it is a folder.\n");
});

test("a picture into a file", () => {
  const folder = mkdtempSync(join(tmpdir(), "bentwright-"));
  try {
    const file = join(folder, "bent.svg");
    expect(bentwright(["draw", SAMPLE, "--view", "2", "-o", file]).status).toBe(0);
    expect(readFileSync(file, "utf8")).toContain("</svg>");
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("a reader that goes away early is no fault", () => {
  const { stderr } = spawnSync("sh", ["-c", `"${process.execPath}" dist/cli.js explain | head -c 10`], {
    encoding: "utf8",
  });
  expect(stderr).toBe("");
});
