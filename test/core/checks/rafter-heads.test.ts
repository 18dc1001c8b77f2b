/** Rafter heads in a ridge that wind draws out: forces by statics (derived), fasteners by NDS 12.2 to 12.5. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { mostScrews } from "../../../server/core/roof/fastener-room.ts";
import { isHousedHead } from "../../../server/core/roof/fastening.ts";
import { headHold, headUse } from "../../../server/core/roof/head-fasteners.ts";
import { sizedFasteners } from "../../../server/core/roof/sized-fasteners.ts";
import { headPulls } from "../../../server/core/statics/head-pulls.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { under } from "../../roofed-shed.ts";
import { findingsOf, fixed } from "./gate.ts";

const ERRORS = { whole: true, only: ["error"] } as const;
const PAVILION = readFileSync(
  new URL("../../../samples/cider-press-pavilion.frame.yaml", import.meta.url),
  "utf8",
);
const FASTEN = ", fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 8 in}";
const held = (fasten: string): string => {
  expect(PAVILION).toContain(FASTEN);
  return PAVILION.replace(FASTEN, fasten);
};

test("rafter-head-loose: two slanted screws hold", () => expectFindings(PAVILION, ERRORS));

const LOOSE = held("");
findingsFixture(
  "rafter-head-loose: nothing named",
  under(
    LOOSE,
    "  rafters: {section",
    "#@69-73 error rafter-head-loose: rafter-head@A.5 is drawn out of the ridge with 296 lb under 0.6 D + 0.6 W (wind toward -x, case A), and nothing is named that holds it. 2 screws of 5/16 in, 6 in long, hold it.",
  ),
  ERRORS,
);
test("rafter-head-loose: screws written by the fix hold", () => {
  const mended = fixed(LOOSE, "rafter-head-loose", 0, true);
  expect(mended).toContain(
    "into: ridge, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 6 in}}, overhang",
  );
  expectFindings(mended, ERRORS);
});

const SHORT = held(", fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 3 1/2 in}");
findingsFixture(
  "rafter-head-loose: screws that end in the rafter",
  under(
    SHORT,
    "  rafters: {section",
    "#@103-109 error rafter-head-loose: and its screws hold nothing: 2 of 5/16 in, slanting, end before they hold in the ridge. 2 screws of 5/16 in, 6 in long, hold it.",
  ),
  ERRORS,
);
const PAST = held(", fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 24 in}");
findingsFixture(
  "rafter-head-loose: screws whose thread has left the ridge",
  under(
    PAST,
    "  rafters: {section",
    "#@103-109 error rafter-head-loose: and its screws hold nothing: 2 of 5/16 in, slanting, have their thread past the ridge.",
  ),
  ERRORS,
);
test("rafter-head-loose: the fix writes longer ones", () =>
  expect(fixed(SHORT, "rafter-head-loose", 0, true)).toContain("diameter: 5/16 in, length: 6 in}"));

findingsFixture(
  "rafter-head-loose: nails without a size",
  under(
    held(", fasten: {kind: nails, count: 3}"),
    "  rafters: {section",
    "#@103-109 error rafter-head-loose: what holds it is named without a diameter and a length, and counts for nothing",
  ),
  ERRORS,
);
findingsFixture(
  "rafter-head-loose: toe-nails in a green ridge",
  under(
    held(", fasten: {kind: nails, count: 3, diameter: 0.162 in, length: 3 1/2 in}"),
    "  rafters: {section",
    "#@103-109 error rafter-head-loose: lb that its nails hold that way",
  ),
  ERRORS,
);

test.each([
  ["5/16 in, length: 8 in", "5/16x in, length: 8 in"],
  ["count: 2, diameter: 5/16 in, length: 8 in", "count: two, diameter: 5/16 in, length: 8 in"],
])("rafter-head-loose: one slip among the screws, one finding: %s → %s", (from, to) => {
  const found = findingsOf(held(FASTEN.replace(from, to)), true);
  expect(found.filter(({ finding }) => finding.level !== "note")).toHaveLength(1);
});

const frameOf = (text: string) => {
  const { evaluation } = createFrameService().open("file:///p.frame.yaml", 1, text);
  const results = evaluation?.results.frame;
  if (!results) throw new Error("no results");
  return results;
};
const WIND = { symbol: "C_D", value: 1.6, status: "published", source: "NDS", note: "wind" } as const;

describe("what holds a head, by hand", () => {
  const frame = frameOf(PAVILION);
  const [joint] = frame.model.joints.filter(isHousedHead);
  const holdOf = (fasten: Parameters<typeof headHold>[1]) => {
    const hold = joint && headHold(joint, fasten, WIND);
    if (!hold) throw new Error("no hold");
    return hold;
  };
  // eastern white pine ridge G 0.36; rafter 7 in deep at 7:12, from its top edge at 45° to half of 7/cos θ at the face
  const cos = 12 / Math.hypot(7, 12);
  const wood = (Math.SQRT2 * (7 / cos)) / 2 / (1 + 7 / 12);

  test("the way through the rafter, by meeting the two lines (derived)", () => {
    // y = h/2 − x tan θ is the top edge over the crossing point, y = x the screw
    const x = 7 / cos / 2 / (1 + 7 / 12);
    expect(7 / cos / 2 - (x * 7) / 12).toBeCloseTo(x, 9);
    expect(holdOf({ kind: "screws", count: 2, diameter: 5 / 16, length: 8 }).wood).toBeCloseTo(
      Math.hypot(x, x),
      9,
    );
  });
  test("screws (published): n × 1,800 G^1.5 D^0.75 × thread × C_D", () => {
    // an 8 in lag has 8/2 + 1/2 in of thread, 3/16 in of it tip (published, NDS Table L2)
    const thread = Math.min(8 / 2 + 1 / 2, 8 - wood) - 3 / 16;
    expect(holdOf({ kind: "screws", count: 2, diameter: 5 / 16, length: 8 }).withdrawal.value).toBeCloseTo(
      2 * 1800 * 0.36 ** 1.5 * 0.3125 ** 0.75 * thread * 1.6,
      6,
    );
  });
  test("toe-nails in a green ridge (memory): n × 1,380 G^2.5 D × reach × C_D × C_M × C_tn", () => {
    const reach = 3.5 * Math.cos(Math.PI / 6) - 3.5 / 3;
    expect(holdOf({ kind: "nails", count: 3, diameter: 0.162, length: 3.5 }).withdrawal.value).toBeCloseTo(
      3 * 1380 * 0.36 ** 2.5 * 0.162 * reach * 1.6 * 0.25 * 0.67,
      6,
    );
  });
  test("pull and lift alike run along a screw; a pull alone half across it (NDS 12.4-1)", () => {
    const hold = holdOf({ kind: "screws", count: 2, diameter: 5 / 16, length: 8 });
    const [W, Z] = [hold.withdrawal.value, hold.lateral.value];
    expect(headUse(hold, { pull: 100, lift: 100 }).ratio).toBeCloseTo(Math.hypot(100, 100) / W, 9);
    expect(headUse(hold, { pull: 100, lift: 0 }).ratio).toBeCloseTo(100 / ((W * Z) / (W / 2 + Z / 2)), 9);
    expect(headUse(hold, { pull: 0, lift: 100 }).ratio).toBeCloseTo(100 / ((W * Z) / (W / 2 + Z / 2)), 9);
  });
  test("without a size, nothing", () => {
    expect(sizedFasteners("unread")).toBeUndefined();
    expect(sizedFasteners(undefined)).toBeUndefined();
  });
});

describe("a screw that comes out of a ridge 2 in thick", () => {
  const thin = frameOf(
    PAVILION.replace("ridge:      {kind: ridge, section: 6x9", "ridge:      {kind: ridge, section: 2x9"),
  );
  const [joint] = thin.model.joints.filter(isHousedHead);
  const heldBy = (length: number): number => {
    const hold = joint && headHold(joint, { kind: "screws", count: 2, diameter: 5 / 16, length }, WIND);
    if (!hold) throw new Error("no hold");
    return hold.held;
  };
  test("holds with the wood between the faces: 2 √2 in at 45° (derived)", () => {
    expect(joint?.face.thickness).toBeCloseTo(2, 9);
    expect(heldBy(8)).toBeCloseTo(2 * Math.SQRT2, 9);
  });
  test("holds nothing where its thread lies beyond: the last 6 in of 14 (published, NDS Table L2)", () => {
    expect(heldBy(14)).toBe(0);
  });
});

test("as many as stand side by side in the rafter: 4 D apart and 1.5 D from its edges (memory)", () => {
  const [joint] = frameOf(PAVILION).model.joints.filter(isHousedHead);
  if (!joint) throw new Error("no head");
  const fits = (count: number) => count <= mostScrews(joint, 5 / 16);
  // (4 + 3) × 5/16 = 2.19 in, (8 + 3) × 5/16 = 3.44 in, in a rafter of 3 in
  expect([fits(2), fits(3)]).toEqual([true, false]);
});

test("rafter-head-loose: where the roof names no head, the fix writes one", () => {
  const bare = PAVILION.replace(/ head: \{kind: housed, into: ridge, fasten: \{[^}]*\}\},/, "");
  const mended = fixed(bare, "rafter-head-loose", 0, true);
  expect(mended).toContain(
    "head: {kind: housed, into: ridge, fasten: {kind: screws, count: 2, diameter: 5/16 in",
  );
  expectFindings(mended, ERRORS);
});

describe("principal rafters", () => {
  const FRAME = readFileSync(
    new URL("../../frames/purlins-on-principals.frame.yaml", import.meta.url),
    "utf8",
  );
  const found = (text: string): string[] =>
    findingsOf(text, true)
      .filter(({ finding }) => ["rafter-lifted", "rafter-head-loose"].includes(finding.check))
      .map(({ finding }) => `${finding.check} ${finding.path}`);
  test("are lifted off their seats and out of the ridge, and nothing is named that holds them", () => {
    expect(found(FRAME)).toEqual([
      "rafter-lifted /members/principal",
      "rafter-head-loose /members/principal",
    ]);
  });
  test("are held by what their joints name", () => {
    const screws = "fasten: {kind: screws, count: 6, diameter: 1/2 in, length: 14 in}";
    const named = `joints:
  seat: {kind: birds-mouth, of: principal, into: plate, ${screws}}
  top: {kind: housed, of: principal, into: ridge, ${screws}}
`;
    expect(FRAME).not.toMatch(/^joints:/m);
    expect(found(FRAME.replace("roof:\n", `${named}roof:\n`))).toEqual([]);
    const few = named.replace(
      /count: 6, diameter: 1\/2 in, length: 14 in/g,
      "count: 1, diameter: 1/4 in, length: 9 in",
    );
    expect(found(FRAME.replace("roof:\n", `${few}roof:\n`))).toEqual([
      "rafter-lifted /joints/seat/fasten",
      "rafter-head-loose /joints/top/fasten",
    ]);
  });
});

test("pulls and lifts of heads: only what presses neither in nor down, both of one combination (derived)", () => {
  const frame = frameOf(PAVILION);
  const pulls = headPulls(frame);
  expect(pulls.size).toBe(18);
  const all = [...pulls.values()].flat();
  expect(all.every(({ pull, lift }) => pull >= 0 && lift >= 0)).toBe(true);
  // snow alone neither draws nor lifts: the ridge carries
  expect(all.filter(({ caseId }) => /^D \+ S/.test(caseId))).toEqual([]);
  const most = Math.max(...all.map(({ pull }) => pull));
  const tension = Math.max(
    ...frame.model.joints.filter(isHousedHead).map(({ id }) => frame.joints.get(id)?.tension.most ?? 0),
  );
  expect(most).toBeCloseTo(tension, 6);
});
