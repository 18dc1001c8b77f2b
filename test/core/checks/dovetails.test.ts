/** Dovetails, their wedges and pegged laps in frames: each check at work, and a near miss in which it is silent. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { ROOFED, under } from "../../roofed-shed.ts";
import { findingsOf, fixed, idsOf } from "./gate.ts";

/** The shed on piers broad enough to keep it from leaning. */
const SHED = ROOFED.replace("diameter: 14 in, depth: 48 in", "diameter: 16 in, depth: 48 in");

const joists = (joint: string, run = "from: 2 ft, to: 7 ft, count: 3", seasoning = "green"): string =>
  SHED.replace("seasoning: green", `seasoning: ${seasoning}`).replace(
    "joints:\n",
    `  joist: {kind: joist, section: 4x6, between: [plate@A, plate@B], ${run}}\njoints:\n  joist-end: {of: joist, into: plate, ${joint}}\n`,
  );

const tied = (keys: string, top = "7 ft"): string =>
  SHED.replace(
    /^ {2}tie-end: .*$/m,
    `  tie-end: {kind: wedged-half-dovetail, of: tie, into: post, tenon: {thickness: 2 in}, pegs: {count: 4, diameter: 3/4 in}${keys}}`,
  ).replace("tie-top: 7 ft", `tie-top: ${top}`);

const only = (text: string, check: string) =>
  findingsOf(text, true).flatMap(({ finding }) => (finding.check === check ? [finding] : []));

const SEEN = { whole: true, only: ["error", "warning"] } as const;

const FAR = "from: 3 ft, to: 6 ft, count: 3";

test("dovetail-draws-out: green joists get one note for their entry, dry ones none", () => {
  const [note, ...others] = only(joists("kind: housed-dovetail", FAR), "dovetail-draws-out");
  expect(others).toEqual([]);
  expect(note).toMatchObject({ level: "note", path: "/joints/joist-end", limit: 0.25 });
  expect(note?.places).toHaveLength(6);
  // 0.0366 × 4 in × 3 in ÷ (2 × 1/2 in) (derived; shrinkage by the Wood Handbook, memory)
  expect(note?.value).toBeCloseTo(0.4392, 9);
  expect(note?.message).toContain("has drawn out by 7/16 in of its 3 in: the shoulder may open that far");
  expect(only(joists("kind: housed-dovetail", FAR, "dry"), "dovetail-draws-out")).toEqual([]);
});

test("dovetail-draws-out: more flare shortens the way, and a quarter of an inch is not spoken of", () => {
  const flared = (flare: string) =>
    only(joists(`kind: housed-dovetail, dovetail: {flare: ${flare}}`, FAR), "dovetail-draws-out");
  // 0.2745 in at 4/5 in of flare, no more than 1/32 in past the limit; 0.2928 in at 3/4 in
  expect(flared("0.8 in")).toEqual([]);
  expect(flared("3/4 in")[0]?.value).toBeCloseTo(0.2928, 9);
});

test("dovetail-draws-out: in a metric frame 6 mm are not spoken of, 10 mm are (common practice, no source)", () => {
  const sample = readFileSync("samples/kayak-shelter.frame.yaml", "utf8");
  const flared = sample.replace("depth: 100, flare: 10}", "depth: 100, flare: 15}");
  expect(flared).not.toBe(sample);
  const note = only(flared, "dovetail-draws-out").find(({ path }) => path === "/joints/girt-drop")!;
  // the tail as wide at its tip as the girt, 125 mm; hemlock: 6.8 % × (1 − 12/30) (memory) of it × 60 ÷ (2 × 15)
  expect(note.value! * 25.4).toBeCloseTo(0.0408 * 125 * 2, 6);
  expect(note.limit! * 25.4).toBeCloseTo(6, 9);
  // 0.0408 × 125 × 60 ÷ (2 × 23) = 6.7 mm, no more than 1/32 in past it
  const more = sample.replace("depth: 100, flare: 10}", "depth: 100, flare: 23}");
  expect(only(more, "dovetail-draws-out").map(({ path }) => path)).not.toContain("/joints/girt-drop");
});

test("dovetail-draws-out: a lap's peg holds until its flanks do", () => {
  const [note] = only(joists("kind: dovetail-lap"), "dovetail-draws-out");
  expect(note?.message).toContain("Its peg holds it until then");
  expect(
    only(joists("kind: dovetail-lap, pegs: {count: 0}"), "dovetail-draws-out")[0]?.message,
  ).not.toContain("peg");
});

findingsFixture(
  "dovetail-draws-out: drying takes all of a flare of 1/16 in",
  under(
    joists("kind: housed-dovetail, dovetail: {flare: 1/16 in}", FAR),
    "joist-end: ",
    [
      "#@61-69 warning dovetail-overloaded: its dovetail holds nothing once joist.1 is dry: the tail is then no wider than the mouth of its socket",
      "#@79-86 warning dovetail-draws-out: its flare of 1/16 in on each side is no more than that: it slips through the mouth of its socket, and nothing holds",
    ].join("\n"),
  ),
  SEEN,
);
test("dovetail-draws-out: at 5/64 in it still draws tight, as a note, before it slips", () => {
  // 0.0366 × 4 in × 3 in ÷ (2 × 5/64 in) = 2.81 in of 3 in
  const [note] = only(joists("kind: housed-dovetail, dovetail: {flare: 5/64 in}", FAR), "dovetail-draws-out");
  expect(note?.level).toBe("note");
  expect(note?.value).toBeCloseTo(2.811, 3);
});

test("dovetail-draws-out: a wedge is to be left long and driven on, one note for all ties", () => {
  const [note, ...others] = only(tied(""), "dovetail-draws-out");
  expect(others).toEqual([]);
  expect(note?.level).toBe("note");
  expect(note?.places).toHaveLength(4);
  // 0.0366 × 10 in × 7 1/4 in ÷ 1 1/4 in
  expect(note?.value).toBeCloseTo(2.1228, 4);
  expect(note?.message).toContain("Driving the wedge on by 3 11/16 in in all takes that up");
});

// what a dovetail holds

findingsFixture(
  "dovetail-overloaded: joists that tie the plates together, near the ends of the plates",
  under(
    joists("kind: housed-dovetail"),
    "joist-end: ",
    "#@2-11 warning dovetail-overloaded: joist-end@A.foot is pulled apart with 511 lb under D + S (balanced snow), more than the 129 lb that its dovetail holds without friction after it has dried and drawn out by 7/16 in (397 %, C_D 1.15): plate@A splits along its grain behind the flanks.",
  ),
  SEEN,
);
test("dovetail-overloaded: a foot farther from the ends the same dovetails hold", () =>
  expectFindings(joists("kind: housed-dovetail", FAR), SEEN));
test("dovetail-overloaded: a tie that is no joist is an error", () => {
  const text = joists("kind: housed-dovetail").replace("{kind: joist,", "{kind: beam,");
  expect(only(text, "dovetail-overloaded").map(({ level }) => level)).toEqual(["error"]);
});
test("dovetail-overloaded: a dovetail lap through the whole plate holds", () =>
  expectFindings(joists("kind: dovetail-lap"), SEEN));
test("the larger of tail and peg is judged, never their sum", () => {
  const flat = "kind: dovetail-lap, dovetail: {flare: 1/8 in}";
  expect(idsOf(joists(flat), true)).not.toContain("dovetail-overloaded");
  const [pegged] = only(joists(flat), "peg-overloaded");
  // one section of a peg: π D² F_vy ÷ (4 × 3.5) × 1.15 (memory, TFEC 1 3.4)
  expect(pegged?.limit).toBeCloseTo((1.15 * Math.PI * 0.75 ** 2 * 4850 * 0.73 * 0.36 ** 0.75) / 14, 6);
  const [bare] = only(joists(`${flat}, pegs: {count: 0}`), "dovetail-overloaded");
  expect(bare?.limit).toBeLessThan(pegged?.limit ?? 0);
});

// pegged laps

test("peg-overloaded: a half-lap held by one thin peg; the fix writes one that holds", () => {
  const text = joists("kind: corner-half-lap", FAR);
  const [found] = only(text, "peg-overloaded");
  expect(found?.message).toContain(
    "more than the 239 lb that its peg of 3/4 in holds there (147 %, C_D 1.15): the pegs shear off between its two halves. One of 1 in holds it.",
  );
  expect(fixed(text, "peg-overloaded", 0, true)).toContain("pegs: {count: 1, diameter: 1 in}}");
});

const PURLINS = readFileSync("test/frames/purlins-on-principals.frame.yaml", "utf8");
const scarfed = (kind: string, count: number): string =>
  `${PURLINS.replace("kind: half-lap-scarf", `kind: ${kind}`)}joints:\n  plate-scarf: {kind: ${kind}, of: plate, into: plate, pegs: {count: ${count}, diameter: 3/4 in}}\n`;

test.each([
  ["half-lap-scarf", 2, "the pegs shear off between its two halves", 6],
  ["bladed-scarf", 1, "the pegs shear off at the faces of the blade", 3],
] as const)("peg-overloaded: a plate drawn apart at its %s with %i pegs", (kind, few, why, enough) => {
  const pulled = (count: number) =>
    only(scarfed(kind, count), "peg-overloaded").filter(({ path }) => path.includes("plate-scarf"));
  expect(pulled(few)[0]?.message).toContain(why);
  expect(pulled(enough)).toEqual([]);
});

// wedges

test.each([
  ["1:5", "warning", "steeper than 1 in 6: it springs out again"],
  ["1:6", undefined, ""],
  ["1:10", undefined, ""],
  ["1:20", undefined, ""],
  ["1:25", "note", "flatter than 1 in 20"],
] as const)("wedge-slope: 1 in … as %s", (slope, level, words) => {
  const found = only(tied(`, wedge: {slope: ${slope}}`), "wedge-slope");
  expect(found.map((finding) => finding.level)).toEqual(level === undefined ? [] : [level]);
  for (const { message, path } of found) {
    expect(message).toContain(words);
    expect(path).toBe("/joints/tie-end/wedge/slope");
  }
});
findingsFixture(
  "wedge-slope: a wedge of 1 in 5 springs out",
  under(
    tied(", wedge: {slope: 1:5}"),
    "tie-end: ",
    "#@138-141 warning wedge-slope: steeper than 1 in 6: it springs out again",
  ),
  SEEN,
);
test("wedge-slope: folding wedges of a scarf too, and the fix takes 1 in 10", () => {
  const text = scarfed("stop-splayed-scarf", 4).replace(
    "pegs: {count: 4",
    "wedge: {slope: 1:4}, pegs: {count: 4",
  );
  const [found] = only(text, "wedge-slope");
  expect(found?.path).toBe("/joints/plate-scarf/wedge/slope");
  expect(found?.message).toContain("rise 1 in 4, steeper than 1 in 6: they slide back on each other");
  expect(found?.message).not.toContain("mortise");
  expect(fixed(tied(", wedge: {slope: 1:5}"), "wedge-slope")).toContain("wedge: {slope: 1:10}");
});

// post of 8 in less the housing of 3/4 in; 3.66 in of reserve for 10 in of white pine at 1 in 10
test.each([
  ["7 in", "warning"],
  ["7 1/4 in", "note"],
  ["10 3/4 in", "note"],
  ["11 in", undefined],
] as const)("wedge-short: %s", (length, level) => {
  const found = only(tied(`, wedge: {length: ${length}}`), "wedge-short");
  expect(found.map((finding) => finding.level)).toEqual(level === undefined ? [] : [level]);
});
test.each([
  ["22 in", false],
  ["22 1/2 in", true],
  ["100 in", true],
] as const)("wedge-long: %s, of 11 in that the rule takes", (length, told) => {
  const text = tied(`, wedge: {length: ${length}}`);
  const found = only(text, "wedge-long");
  expect(found.map((finding) => [finding.level, finding.path, finding.limit])).toEqual(
    told ? [["warning", "/joints/tie-end/wedge/length", 22]] : [],
  );
  if (told) expect(fixed(text, "wedge-long")).toContain("wedge: {length: 11 in}");
});
findingsFixture(
  "wedge-long: a wedge of 100 in, in a mortise of 7 1/4 in",
  under(
    tied(", wedge: {length: 100 in}"),
    "tie-end: ",
    "#@139-145 warning wedge-long: is 8'-4\" long, and its mortise is 7 1/4 in deep: 11 in is all that is ever driven in",
  ),
  SEEN,
);
findingsFixture(
  "wedge-short: a wedge of 7 in does not reach through its mortise",
  under(tied(", wedge: {length: 7 in}"), "tie-end: ", "#@139-143 warning wedge-short: 7 in"),
  SEEN,
);
test("wedge-short: the fix writes what the rule takes where nothing is said", () => {
  expect(fixed(tied(", wedge: {length: 7 in}"), "wedge-short")).toContain("wedge: {length: 11 in}");
  expect(only(tied(", wedge: {slope: 1:12}"), "wedge-short")).toEqual([]);
});

/** The tie's tenons on wedged half-dovetails. @param keys of the joint, its tenon among them */
const tenoned = (keys: string): string =>
  tied("").replace("tenon: {thickness: 2 in}, pegs: {count: 4, diameter: 3/4 in}", keys);

findingsFixture(
  "wedge-blind: a wedge cannot be driven into a mortise that ends in the post",
  under(
    tenoned("tenon: {thickness: 2 in, length: 4 in}"),
    "tie-end: ",
    "#@94-98 error wedge-blind: is 4 in long and ends inside post@A1",
  ),
  { whole: true, only: ["error"] },
);
findingsFixture(
  "joint-key-ignored: the width of a half-dovetail's tenon",
  under(
    tenoned("tenon: {thickness: 2 in, width: 4 in}, pegs: {count: 4, diameter: 3/4 in}"),
    "tie-end: ",
    "#@86-91 warning joint-key-ignored: as deep at the shoulder as its timber",
  ),
  SEEN,
);
test("wedge-blind: a tenon that ends in its post, and its fix (plane geometry)", () => {
  const [found] = only(tenoned("tenon: {thickness: 2 in, length: 4 in}"), "wedge-blind");
  // posts 8 in thick, housed 3/4 in where nothing is said
  expect(found).toMatchObject({
    level: "error",
    path: "/joints/tie-end/tenon/length",
    value: 4,
    limit: 7.25,
  });
  expect(found?.message).toContain("is 4 in long and ends inside post@A1, which has 7 1/4 in of wood there");
  expect(fixed(tenoned("tenon: {thickness: 2 in, length: 4 in}"), "wedge-blind")).toContain(
    "length: 7 1/4 in}",
  );
  expect(fixed(tenoned("tenon: {length: 4 in}, tail: 3 in"), "wedge-blind")).toContain("length: 10 1/4 in}");
});
test.each([
  ["6 15/16 in", 2],
  ["7 in", 0],
  ["7 1/4 in", 0],
  ["9 in", 0],
])("wedge-blind: %s of 7 1/4 in, with 1/4 in of room at the tip", (length, expected) => {
  const found = only(tenoned(`tenon: {thickness: 2 in, length: ${length}}`), "wedge-blind");
  expect(found.length > 0 ? 2 : 0).toBe(expected);
});

test.each([
  [
    "tenon: {thickness: 2 in, width: 4 in}",
    "/joints/tie-end/tenon/width",
    "as deep at the shoulder as its timber",
  ],
  ["tenon: {length: 7 1/4 in}, tail: 3 in", "/joints/tie-end/tail", "the tenon's length of 7 1/4 in"],
  ["tail: 3 in", undefined, ""],
  ["tenon: {length: 7 1/4 in}, tail: 0", undefined, ""],
])("joint-key-ignored: a half-dovetail with %s", (keys, path, words) => {
  const found = only(tenoned(keys), "joint-key-ignored");
  expect(found.map((one) => one.path)).toEqual(path === undefined ? [] : [path]);
  if (path !== undefined) expect(found[0]).toMatchObject({ level: "warning" });
  expect(found[0]?.message ?? "").toContain(words);
});
test("joint-key-ignored: a tail on a blind tenon, which the fix takes through", () => {
  const tail = (keys: string): string =>
    SHED.replace(/^ {2}tie-end: .*$/m, `  tie-end: {kind: mortise-and-tenon, of: tie, into: post, ${keys}}`);
  const blind = tail("tenon: {thickness: 2 in}, tail: 4 in");
  const [found, ...others] = only(blind, "joint-key-ignored");
  expect(others).toEqual([]);
  expect(found?.message).toContain("The tail of 4 in at tie-end is ignored: its tenon is blind");
  const through = "tenon: {thickness: 2 in, through: true}, tail: 4 in";
  expect(fixed(blind, "joint-key-ignored")).toContain(through);
  expect(fixed(tail("tail: 4 in"), "joint-key-ignored")).toContain("tail: 4 in, tenon: {through: true}");
  expect(only(tail(through), "joint-key-ignored")).toEqual([]);
  expect(only(tail("tenon: {thickness: 2 in, length: 4 in}, tail: 4 in"), "joint-key-ignored")).toHaveLength(
    1,
  );
});

findingsFixture(
  "wedge-relish-short: a tie close under the plate, whose tail lifts the wood above its wedge",
  under(
    tied(", drop: 1 in", "7 ft 8 1/4 in"),
    "tie-end: ",
    "#@2-9 warning wedge-relish-short: tie-end@A1 is pulled with 694 lb under D + S (balanced snow), so that its tail lifts the wedge with 917 lb; that shears the 3/8 in of post@A1 above the mortise with 163 psi, more than 144 psi (F_v′, C_D 1.15)",
  ),
  SEEN,
);
test("wedge-relish-short: thrust, sheared planes and limit (derived; NDS Table 4D and friction of 0.3, memory)", () => {
  const [found] = only(tied(", drop: 1 in", "7 ft 8 1/4 in"), "wedge-relish-short");
  // post's end at 8'-6" − 8 in = 94 in; roof of the mortise at 92 1/4 + 1 + 7.25/20 in
  const relish = 94 - 92.25 - 1 - 7.25 / 20;
  const thrust = (found?.value ?? 0) * 2 * relish * 7.25;
  // an edge that rises by 1 in 7.25 at atan 0.3 of friction, and a level one under the wedge
  const angles = Math.tan(Math.atan(1 / 7.25) + Math.atan(0.3)) + 0.3;
  expect(Math.round(thrust * angles)).toBe(694);
  expect(found?.limit).toBeCloseTo(125 * 1.15, 9);
});
test("wedge-relish-short: a quarter of an inch lower the post has wood enough", () =>
  expectFindings(tied(", drop: 1 in", "7 ft 8 in"), SEEN));
