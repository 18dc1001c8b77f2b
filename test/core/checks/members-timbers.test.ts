/** What is said of timbers that are overtaxed, too slender, crushed, sagging, or of unknown strength. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Finding } from "../../../server/core/checks/check.ts";
import { bearingCrushed } from "../../../server/core/checks/members/bearing-crushed.ts";
import { timberOverstressed } from "../../../server/core/checks/members/timber-overstressed.ts";
import { timberSags } from "../../../server/core/checks/members/timber-sags.ts";
import { timberSlender } from "../../../server/core/checks/members/timber-slender.ts";
import { timberUnchecked } from "../../../server/core/checks/members/timber-unchecked.ts";
import { overPercent } from "../../../server/core/checks/members/use-words.ts";
import { anyCheck, runChecks } from "../../../server/core/checks/run.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import type { TimberClass } from "../../../server/core/frame/frame.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults, type Results } from "../../../server/core/results.ts";
import { readFrame } from "../../../server/document/read.ts";
import { readFixture } from "../../fixtures.ts";
import { SHED } from "../../shed.ts";
import { loft } from "../statics/members.ts";

const OWN = [timberOverstressed, timberSlender, bearingCrushed, timberSags, timberUnchecked].map((c) =>
  anyCheck<"results", never>(c as never),
);

/** @param own design values, psi, in place of those of every class: some weaker than a file may state them */
function resultsOf(
  text: string,
  own?: TimberClass["values"],
): { readonly results: Results; readonly findings: readonly Finding[] } {
  const { frame: read, source } = readFrame(text);
  expect(source.facts, text).toEqual([]);
  const frame = own
    ? { ...read, classes: read.classes.map((c) => ({ ...c, values: own, because: "for a test" })) }
    : read;
  const model = buildModel(frame);
  const results = computeResults(model);
  const inputs = { source, frame, model, results, whole: { source, model } };
  return { results, findings: runChecks(OWN, inputs, [], makeSay(frame.units)).findings };
}

/** Findings of these checks in a marked text: check, level, words, and where they point. */
function expectMarked(marked: string): readonly Finding[] {
  const { text, markers } = readFixture(marked);
  const { findings } = resultsOf(text);
  const { index } = readFrame(text);
  const said = findings.map((f) => {
    const { start, end } = f.onKey ? index.keyRange(f.path) : index.range(f.path);
    return { check: f.check, level: f.level, from: start, to: end, message: f.message };
  });
  const lines = text.split("\n");
  const start = (line: number): number => lines.slice(0, line).reduce((sum, l) => sum + l.length + 1, 0);
  expect(said.map((s) => `${s.check} ${s.level} ${s.from}-${s.to}`).sort()).toEqual(
    markers.map((m) => `${m.check} ${m.level} ${start(m.line) + m.from}-${start(m.line) + m.to}`).sort(),
  );
  for (const m of markers) expect(said.find((s) => s.check === m.check)?.message).toContain(m.words);
  return findings;
}

/** The line of an entry with marks under it. */
const marked = (text: string, entry: string, ...marks: string[]): string =>
  text
    .split("\n")
    .flatMap((line) => (line.trimStart().startsWith(`${entry}:`) ? [line, ...marks] : [line]))
    .join("\n");

test("a sound shed is silent", () => expectMarked(SHED));

describe("timber-overstressed", () => {
  const heavy = marked(
    loft("4x6", "200 psf, deck: {kind: boards, thickness: 1 in}"),
    "joist",
    "#                               ^^^ error timber-overstressed: joist.2 (4 in × 6 in) has",
    "#                               ^^^ warning timber-sags: more than the",
  );

  test("names stick, stress, limit, ratio, place, combination, factors and a depth that would do", () => {
    const [found] = expectMarked(heavy);
    expect(found?.message).toMatch(
      /^joist\.[23] \(4 in × 6 in\) has 1,\d{3} psi of bending against 1,\d{3} psi allowed \(1\d\d %\) 48 in from its foot, under D \+ L\. Allowed: F_b 775 psi × C_F 1\.3 × C_r 1\.15\. A depth of about [78][ /\d]*in would carry it;/,
    );
    expect(found).toMatchObject({ unit: "psi", check: "timber-overstressed" });
    expect(found!.value! / found!.limit!).toBeGreaterThan(1);
  });

  test("all sticks of an entry that fail are one finding, the worst first", () => {
    const [found] = expectMarked(heavy);
    expect(found?.places).toEqual(["joist.2", "joist.3"]);
  });

  test("posts bent and pressed: the interaction, at the knee", () => {
    const { findings } = resultsOf(loft("8x8", "1000 psf"));
    const post = findings.find((f) => f.places[0]?.startsWith("post"))!;
    expect(post.message).toMatch(
      /^post@A1 \(8 in × 8 in\) is used to \d+ % by compression and bending together at knee-ends@A1-B1\.foot, under D \+ L\. Allowed: F_b 800 psi( × [^;]*)?; F_c \d+ psi × .*C_P 0\.\d+\./,
    );
    expect(post.message).toContain("brace it nearer its foot");
    expect(post.unit).toBe("ratio");
  });

  test("posts that buckle whatever their wood: they are too slender", () => {
    const slender = loft("8x8", "1000 psf").replace(
      "post: {kind: post, section: 8x8",
      "post: {kind: post, section: 4x4",
    );
    const post = resultsOf(slender).findings.find(
      (f) => f.check === "timber-overstressed" && f.places[0]?.startsWith("post"),
    )!;
    expect(post.message).toMatch(
      /^post@A1 \(4 in × 4 in\) buckles under D \+ L: it is too slender for its compression and bending together at .* and gives way, however strong its wood is\. Take a larger section, brace it nearer its foot/,
    );
    expect(post.value).toBeUndefined();
  });

  test("joists that roll over sideways: a wider section, or holds", () => {
    // the second has R_B over 50, where NDS 3.3.3.7 allows no stress
    for (const [section, live] of [
      ["2x14", "1800 psf"],
      ["1 1/2x28", "200 psf"],
    ] as const) {
      const thin = resultsOf(loft(section, live))
        .findings.filter((f) => f.check === "timber-overstressed")
        .find((f) => f.places[0]?.startsWith("joist"))!;
      expect(thin.message).toMatch(
        / buckles under .*: it is too slender for its bending .* Take a wider section, or hold it sideways/,
      );
    }
  });

  test("a timber that its joints cut through: no wood is left", () => {
    // a housing as deep as the post, and one whose pegs take what it leaves
    for (const housing of ["8 in", "7 3/4 in"]) {
      const [found] = resultsOf(
        SHED.replace("into: post, housing: 1/2 in", `into: post, housing: ${housing}`),
      ).findings;
      expect(found!.message).toMatch(
        /^post@A1 \(8 in × 8 in\) is cut through at tie-end@A1: no wood is left there for what acts on it under D.*\. Take a larger section, or cut less away there\./,
      );
    }
  });

  test("the depth that is named does carry it", () => {
    const { findings } = resultsOf(loft("4x6", "200 psf"));
    const depth = /A depth of about ([\d]+)( 1\/2)? in/.exec(findings[0]!.message)!;
    const deeper = `${depth[1]}${depth[2] ?? ""}`;
    const after = resultsOf(loft(`4x${deeper}`, "200 psf")).findings;
    expect(after.map((f) => f.check)).not.toContain("timber-overstressed");
  });

  test("rafters that their own check finds are not said twice", () => {
    const text = readFileSync(
      new URL("../../../samples/cider-press-pavilion.frame.yaml", import.meta.url),
      "utf8",
    ).replace("rafters: {section: 3x7", "rafters: {section: 2x3");
    const { results, findings } = resultsOf(text);
    expect(results.rafters.every((r) => r.check.governing.ratio > 1)).toBe(true);
    expect(results.frame?.members.get("rafter@A.3")?.uses[0]?.ratio).toBeGreaterThan(1);
    expect(findings.filter((f) => f.places?.some((place) => place.startsWith("rafter@")))).toEqual([]);
  });
});

describe("timber-sags", () => {
  test("a soft joist only sags: warning", () => {
    const soft = loft("4x6").replace(
      "seasoning: green}",
      'seasoning: green, values: {E: 200000 psi}, because: "a soft wood, for a test"}',
    );
    const [found] = expectMarked(
      marked(
        soft,
        "joist",
        "#                               ^^^ warning timber-sags: snow, wind or live load alone",
      ),
    );
    expect(found?.unit).toBe("in");
    expect(found!.value!).toBeGreaterThan(found!.limit!);
  });
});

describe("timber-slender", () => {
  // without wind, which bends such posts besides
  const tall = SHED.replace(/ {2}wind: .*\n/, "")
    .replace("post: {kind: post, section: 8x8", "post: {kind: post, section: 5x5")
    .replace("leg: 30 in", "leg: 12 in")
    .replace("tie-top: 7 ft", "tie-top: 12 ft")
    .replace("eave: 8 ft 6 in", "eave: 14 ft");

  test("counts 2.4 × foot to knee where only knees hold the frame", () => {
    const [found] = expectMarked(
      marked(
        tall,
        "post",
        "#                             ^^^ error timber-slender: more than 50: it buckles (length counted 2.4 times: from the foot to the knee in a frame that sways",
      ),
    );
    expect(found?.value).toBeGreaterThan(50);
    expect(found?.limit).toBe(50);
    expect(found?.places).toHaveLength(4);
  });

  test("says lengths in the units of the reader", () => {
    const { results } = resultsOf(tall);
    const [found] = [...timberSlender.find(results)];
    expect(timberSlender.words(found!.data, makeSay("mm"))).toMatch(
      /from the foot to the knee in a frame that sways, [\d,]+ mm\)/,
    );
    expect(timberSlender.words(found!.data, makeSay("inch"))).toMatch(
      /in a frame that sways, \d+'-[\d/ ]+"\)/,
    );
  });
});

test("what is a hair over its limit never reads as all of it", () => {
  const say = makeSay("inch");
  expect(overPercent(1.0001, say)).toBe("101 %");
  expect(overPercent(1.5, say)).toBe("150 %");
});

describe("bearing-crushed", () => {
  // without wind its own weight is all that presses
  const soft = (psi: number): Finding | undefined =>
    crushed(SHED.replace(/ {2}wind: .*\n/, ""), new Map([["Fc-perp", psi]])).find(
      (f) => f.path === "/joints/post-head",
    );
  const crushed = (text: string, own?: TimberClass["values"]): Finding[] =>
    resultsOf(text, own).findings.filter((f) => f.check === "bearing-crushed");
  const at = (text: string, path: string): Finding | undefined => crushed(text).find((f) => f.path === path);

  test("where no size of the joint makes it larger it points at the joint: a little over is a dent", () => {
    const found = soft(1.6);
    expect(found).toMatchObject({ level: "warning", onKey: true });
    expect(found?.message).toContain("at post-head@");
    expect(found?.message).toContain("F_c⊥ 1.6 psi × C_M 0.67");
    // 8 × 8 less a tenon of 2 × 8
    expect(found?.message).toMatch(
      /It bears on 48 in² \(shoulder without the tenon\) and needs 5\d\.\d in²\. Take a wider timber/,
    );
  });

  test("far over is a failure: error", () => {
    expect(soft(1)?.level).toBe("error");
  });

  /** Joists that hang in their ties by less than they need. */
  const hung = (joint: string, live = "150 psf"): string =>
    loft("4x8", live).replace("joints:\n", `joints:\n  joist-end: {of: joist, into: tie, ${joint}}\n`);

  test("a pocket that is too short is marked at its size", () => {
    expectMarked(
      marked(
        hung("kind: pocket, housing: 1/2 in"),
        "joist-end",
        "#                                                          ^^^^^^ error bearing-crushed: floor that it lies on, 4 in × 1/2 in",
      ),
    );
  });

  test("a pocket: at its size, with the one that would carry it, which does", () => {
    const text = hung("kind: pocket, housing: 1/2 in");
    const found = at(text, "/joints/joist-end/housing");
    expect(found?.message).toContain("floor that it lies on, 4 in × 1/2 in");
    const size = /A pocket in which it bears (.+?) would carry it/.exec(found?.message ?? "")?.[1];
    expect(size).toBeDefined();
    expect(crushed(hung(`kind: pocket, housing: ${size}`))).toEqual([]);
  });

  test("a housed dovetail: the housing that would carry it", () => {
    const found = at(
      hung("kind: housed-dovetail, housing: 1/4 in, dovetail: {length: 2 in, depth: 6 in, flare: 1/4 in}"),
      "/joints/joist-end/housing",
    );
    expect(found?.message).toMatch(/A housing .+ deep would carry it\./);
  });

  test("what no cut carries asks for another timber", () => {
    const found = at(hung("kind: pocket, housing: 1/8 in", "900 psf"), "/joints/joist-end/housing");
    expect(found?.message).toContain("No cut here is deep enough");
  });
});

describe("timber-unchecked", () => {
  test("a wood without values is said, once for each entry", () => {
    const text = loft("4x6").replace("grid:\n", "  odd: {species: black-locust, grade: no-1}\ngrid:\n");
    const odd = text.replace("joist: {kind: joist,", "joist: {kind: joist, timber: odd,");
    const [found] = expectMarked(
      marked(
        odd,
        "joist",
        "# ^^^^^ warning timber-unchecked: black-locust, no-1 for a section of 4 in × 6 in",
      ),
    );
    expect(found?.places).toHaveLength(4);
  });
});
