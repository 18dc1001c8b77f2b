/** Forces in hovers, hints and lenses: the same numbers as the analysis has, in words. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { FrameResults, MemberUse } from "../../server/core/statics/frame-results.ts";
import { codeLenses } from "../../server/language/code-lens.ts";
import { createFrameService, type Snapshot } from "../../server/language/frame-service.ts";
import { hoverAt } from "../../server/language/hover.ts";
import { hintDetails, hintOf, inlayHints } from "../../server/language/inlay-hints.ts";
import { SHED, SHED_IN_SNOW } from "../shed.ts";

const PAVILION = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
const ALL = { start: { line: 0, character: 0 }, end: { line: 10_000, character: 0 } };

const open = (text: string): Snapshot => createFrameService().open("file:///f.frame.yaml", 1, text);

function frameOf({ evaluation }: Snapshot): FrameResults {
  const frame = evaluation?.results.frame;
  if (!frame) throw new Error("no analysis");
  return frame;
}

/** The hover over the name of an entry of members, joints, piers or of the roof. */
function over(snapshot: Snapshot, path: string): string {
  const { document, reading } = snapshot;
  const range = reading?.index.keyRange(path);
  if (!range) throw new Error(path);
  return hoverAt(snapshot, document.positionAt(range.start + 1))?.contents.value ?? "";
}

/** The same frame with a use of its own for every post, so that wording does not hang on what the checks find today. */
function withUse(snapshot: Snapshot, use: MemberUse): Snapshot {
  const frame = frameOf(snapshot);
  const { evaluation } = snapshot;
  if (!evaluation) throw new Error("no evaluation");
  const posts = evaluation.model.sticks.get("post") ?? [];
  const [anyResult] = evaluation.results.rafters;
  if (!anyResult) throw new Error("no rafters");
  const members = new Map(
    posts.map((timber, n) => [
      timber.id,
      { timber, wood: anyResult.check.wood, uses: [n === 2 ? { ...use, ratio: use.ratio + 0.1 } : use] },
    ]),
  );
  const results = { ...evaluation.results, frame: { ...frame, members } };
  return { ...snapshot, evaluation: { ...evaluation, results } };
}

const pavilion = open(PAVILION);
const snow = frameOf(pavilion).solution.cases.find((c) => c.frameCase.combination.text === "D + S");

const USE: MemberUse = {
  what: "compression-and-bending",
  value: 0.731,
  limit: 1,
  unit: "ratio",
  ratio: 0.731,
  caseId: snow?.frameCase.id ?? "",
  combination: "D + S",
  at: 48,
  place: undefined,
  reference: { value: 900, status: "memory", source: "NDS Supplement Table 4D" },
  factors: [
    { symbol: "C_P", value: 0.914, status: "derived", source: "NDS 3.7.1", note: "effective length 230 in" },
  ],
};

describe("a timber's hover", () => {
  test("says how much roof it carries and what others bring", () => {
    expect(over(pavilion, "/members/plate")).toMatch(
      /^plate@[AB] carries \d+ ft² of roof; takes [\d,]+ lb from 9 × rafter.* under D/m,
    );
    expect(over(pavilion, "/members/post")).toMatch(/^post@[AB]2 takes [\d,]+ lb from .*\bunder D/m);
    expect(over(pavilion, "/roof/rafters")).toMatch(/^rafter@[AB]\.\d carries \d+ ft² of roof/m);
  });

  test("what the plate takes from the rafters is what they set down on it", () => {
    const found = /takes ([\d,]+) lb from 9 × rafter/.exec(over(pavilion, "/members/plate"));
    const taken = Number((found?.[1] ?? "").replaceAll(",", ""));
    // under the heaviest snow the two plates and the ridge share the whole roof
    const whole = Math.max(
      ...frameOf(pavilion).solution.cases.map((c) =>
        Math.abs(c.combined.reactions().reduce((s, r) => s + r.force[2], 0)),
      ),
    );
    expect(taken).toBeGreaterThan(whole / 6);
    expect(taken).toBeLessThan(whole / 2);
  });

  test("names the check that governs, its combination, the worst stick and every factor", () => {
    const text = over(withUse(pavilion, USE), "/members/post");
    expect(text).toMatch(
      /Used to \*\*0\.83\*\* by compression with bending: 0\.73 of 1 under D \+ S \([a-z ]+\), worst in post@A3, 48 in from its foot\./,
    );
    expect(over(withUse(pavilion, { ...USE, at: 0 }), "/members/post")).toContain(
      ", worst in post@A3, at its foot.",
    );
    expect(text).toMatch(/reference value +\| 900 psi +\| NDS Supplement Table 4D +\| remembered/);
    expect(text).toMatch(/C\\_P \(effective length 230 in\) +\| 0\.914 +\| NDS 3\.7\.1/);
  });

  test("lists the largest forces with the stick and the combination", () => {
    const text = over(pavilion, "/members/post");
    const frame = frameOf(pavilion);
    expect(text).toMatch(/\| pushes together +\| [\d,]+ lb +\| post@[AB]2 +\| D/);
    expect(text).toMatch(/\| bends in the (depth|width) +\| [\d,]+ lb·ft +\| post@/);
    expect(frame.solution.failed).toEqual([]);
    expect(text).not.toContain("no answer");
  });
});

test("a joint's hover lists what it passes on", () => {
  const text = over(pavilion, "/joints/post-head");
  expect(text).toMatch(/\| pulls out +\| (nothing|[\d,]+ lb) /);
  expect(text).toMatch(/\| pushes in +\| [\d,]+ lb +\| post-head@[AB]\d +\| D/);
  const most = Math.max(
    ...[...frameOf(pavilion).joints.values()]
      .filter(({ joint }) => joint.startsWith("post-head@"))
      .map(({ compression }) => compression.most),
  );
  expect(text).toContain(` ${Math.round(most).toLocaleString("en-US")} lb `);
});

test("a joint's hover tells what its pegs hold against what pulls them, at the place that is used most", () => {
  const text = over(pavilion, "/joints/post-head");
  // 2 × 415.5 lb × (7/8 ÷ 3/4)² × C_D 1.6 (TFEC 1, memory)
  expect(text).toMatch(
    /Pulls 1,\d{3} lb at post-head@[AB]2 under 0\.6 D \+ 0\.6 W \(wind toward .*\); pegs hold 1,809 lb: 0\.8\d\./,
  );
});

test("a dovetail's hover tells what it holds against what pulls it", () => {
  const shelter = open(readFileSync("samples/kayak-shelter.frame.yaml", "utf8"));
  expect(over(shelter, "/joints/girt-drop")).toMatch(
    /Pulls 0\.475 kN at girt-drop@A1-B1 under .*; its dovetail holds 1\.08 kN: 0\.44\./,
  );
});

test("a seat's hover tells what its screws hold", () => {
  const text = over(pavilion, "/roof/rafters/seat");
  expect(text).toMatch(/Pulls 226 lb at rafter-seat@[AB]\.5 .*; screws hold 1,381 lb: 0\.16\./);
});

test("a pier's hover tells what its weight holds", () => {
  expect(over(pavilion, "/piers/all")).toMatch(/\| 0\.6 of its weight \|/);
});

test("a pier's hover holds its reactions against the soil under it and beside it", () => {
  const text = over(pavilion, "/piers/all");
  expect(text).toMatch(/\| presses the soil with \| it carries +\| pushes the soil with \| it holds \|/);
  // sand carries 2,000 psf (IBC 2012 Table 1806.2)
  expect(text).toMatch(/^\| A2 +\| 1,791 psf +\| 2,000 psf +\| 874 lb +\| 1,247 lb +\|$/m);
  const unknown = over(open(PAVILION.replace(/^ *soil: sand\n/m, "")), "/piers/all");
  expect(unknown).toContain("What the ground carries is not known");
  expect(unknown).not.toContain("it carries");
});

test("a pier's hover lists its reactions, each with its combination", () => {
  const text = over(pavilion, "/piers/all");
  expect(text.match(/^\| [AB][123] +\| [\d,]+ lb, D .*\|$/gm)).toHaveLength(6);
});

test("a frame without an answer says so, and shows no force as nothing", () => {
  // rafters that lean on no ridge
  const loose = `${SHED_IN_SNOW}roof:
  kind: gable
  pitch: 8:12
  rafters: {section: 3x6, spacing: 30 in, seat: {kind: birds-mouth}, overhang: {eave: 12 in, rake: 8 in}}
`;
  const snapshot = open(loose);
  const { failed, cases } = frameOf(snapshot).solution;
  expect(failed.length).toBe(cases.length);
  for (const path of ["/members/post", "/joints/post-head", "/piers/all"]) {
    const text = over(snapshot, path);
    expect(text, path).toContain("Its forces are not known");
    expect(text, path).not.toContain("nothing |");
  }
});

describe("inlay hints", () => {
  test("stand behind the section, short, the worst stick's", () => {
    const snapshot = withUse(pavilion, USE);
    const hints = inlayHints(snapshot, ALL);
    const line = PAVILION.split("\n").findIndex((one) => /^ {2}post: +\{kind: post/.test(one));
    const found = hints.find(({ position }) => position.line === line);
    expect(found?.label).toBe("0.83 compression with bending, D+S");
    const before = (PAVILION.split("\n")[line] ?? "").slice(0, found?.position.character);
    expect(before).toMatch(/section: \d+x\d+$/);
    const entry = found && hintOf(found);
    expect(entry).toEqual({ uri: snapshot.uri, path: "/members/post" });
    expect(hintDetails(snapshot, "/members/post")).toMatchObject({
      kind: "markdown",
      value: expect.stringContaining("Used to **0.83**"),
    });
    expect(hintDetails(snapshot, "/members/none")).toBeUndefined();
  });

  test("rafters have one too", () => {
    const [, name] = /rafters: +\{section: (\S+),/.exec(PAVILION) ?? [];
    const line = PAVILION.split("\n").findIndex((one) => one.includes(`rafters: {section: ${name}`));
    const found = inlayHints(pavilion, ALL).find(({ position }) => position.line === line);
    expect(found?.label).toMatch(/^\d\.\d\d [a-z ]+, D/);
  });

  test("only within the range that is asked for, and none without a frame", () => {
    const nothing = { start: { line: 0, character: 0 }, end: { line: 1, character: 0 } };
    expect(inlayHints(pavilion, nothing)).toEqual([]);
    expect(inlayHints(open(""), ALL)).toEqual([]);
    expect(codeLenses(open("\u0000"))).toEqual([]);
  });

  test("what is over never reads as 1.00", () => {
    const hints = inlayHints(withUse(pavilion, { ...USE, ratio: 0.9001 }), ALL);
    expect(hints.map(({ label }) => label)).toContain("1.01 compression with bending, D+S");
  });
});

test("code lenses count the sticks and name use and force", () => {
  const lenses = codeLenses(withUse(pavilion, USE));
  const titles = lenses.map(({ command }) => command?.title ?? "");
  expect(titles).toContainEqual(
    expect.stringMatching(/^6 sticks · 0\.83 compression with bending · pressed by up to [\d,]+ lb$/),
  );
  expect(titles).toContainEqual(expect.stringMatching(/^1 stick( |$)/));
  for (const { range, command } of lenses) {
    expect(range.start.line).toBe(range.end.line);
    expect(command?.command).toBe("");
  }
});

describe("combinations without an answer", () => {
  // knees at bent 1 alone, without pegs: they only push, so the frame stands one way along the walls and not the other
  const ONE_WAY = SHED.replace(
    "  knee: {kind: brace, section: 4x6, between: [post, plate], leg: 30 in}",
    "  knee: {kind: brace, section: 4x6, between: [post@A1, plate], leg: 30 in}\n  knee-b: {kind: brace, section: 4x6, between: [post@B1, plate], leg: 30 in}",
  )
    .replace("of: [knee, tie-knee]", "of: [knee, knee-b, tie-knee]")
    .replace("count: 1, diameter", "count: 0, diameter");
  const snapshot = open(ONE_WAY);
  const { failed, cases } = frameOf(snapshot).solution;

  test("some have one, some have none", () => {
    expect(failed.length).toBeGreaterThan(0);
    expect(failed.length).toBeLessThan(cases.length);
  });
  test.each(["/members/post", "/joints/post-head", "/piers/all"])("%s says how many", (path) => {
    expect(over(snapshot, path)).toContain(
      `${failed.length} of ${cases.length} load combinations have no answer; they are not among these forces.`,
    );
  });
  test("without any answer it says that nothing is known", () => {
    const none = open(SHED.replace(/^ {2}(knee|tie-knee): .*\n/gm, "").replace(/^ {2}knee-ends: .*\n/m, ""));
    expect(frameOf(none).solution.failed).toHaveLength(frameOf(none).solution.cases.length);
    expect(over(none, "/members/post")).toContain("the frame has no answer under any load combination");
  });
});
