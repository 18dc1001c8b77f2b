/** Room of screws: NDS Table 12.5.1E (memory) and plane geometry (derived). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { mostInRow, rowWidth } from "../../../server/core/fasteners/screw-room.ts";
import { screwDistances } from "../../../server/core/joinery/brace-screw-room.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { headHold } from "../../../server/core/roof/head-fasteners.ts";
import { readFrame } from "../../../server/document/read.ts";
import { findingsFixture } from "../../fixtures.ts";
import { ROOFED, under } from "../../roofed-shed.ts";
import { SHED } from "../../shed.ts";
import { findingsOf, fixed } from "./gate.ts";

const ROOM = { whole: true, only: ["warning"] } as const;

/** The shed on screwed knees of 4×6 (true size) in posts and plates of 8×8, at 45°. */
const screwed = (screws: string): string =>
  SHED.replace(
    /^ {2}knee-ends: .*$/m,
    `  knee-ends: {kind: screwed-brace, of: [knee, tie-knee], into: [post, plate, tie], screws: ${screws}}`,
  );
const seated = (count: number, length: string): string =>
  ROOFED.replace(
    "fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 10 in}",
    `fasten: {kind: screws, count: ${count}, diameter: 5/16 in, length: ${length}}`,
  );
const roomOf = (text: string) =>
  findingsOf(text, true)
    .map(({ finding }) => finding)
    .filter(({ check }) => check === "fasteners-crowded" || check === "screw-comes-out");
const jointOf = (text: string, id: RegExp) => {
  const found = buildModel(readFrame(text).frame).joints.find((j) => id.test(j.id));
  if (!found) throw new Error(`No joint ${id}`);
  return found;
};

test("mostInRow: screws set down one after another, 1.5 D from the edge and 4 D on, until the next breaks out", () => {
  for (const diameter of [3 / 16, 1 / 4, 5 / 16, 3 / 8, 10 / 25.4])
    for (let room = 0.05; room < 12; room += 0.37) {
      let stand = 0;
      for (let at = 1.5 * diameter; at + 1.5 * diameter <= room + 1 / 32; at += 4 * diameter) stand++;
      expect(mostInRow(room, diameter), `${room} in, ${diameter} in`).toBe(stand);
      if (stand > 0) expect(rowWidth(stand, diameter)).toBeLessThanOrEqual(room + 1 / 32);
      expect(rowWidth(stand + 1, diameter)).toBeGreaterThan(room);
    }
  expect(mostInRow(5, 0)).toBe(0);
});

test("screwDistances: of a knee at 45°, by hand (plane geometry, derived)", () => {
  const joint = jointOf(screwed("{count: 6, diameter: 5/16 in}"), /^knee-ends@.*/);
  const of = (count: number) =>
    Object.fromEntries(screwDistances(joint, count, 5 / 16).map((d) => [d.what, d.have]));
  const { width, depth } = joint.of;
  // pairs stand half the brace's width apart; rows share its bearing of depth × √2
  const row = (depth * Math.SQRT2) / 3;
  expect(of(2)).toMatchObject({ "brace-edge": width / 4, spacing: width / 2 });
  expect(of(6).spacing).toBeCloseTo(Math.min(row, width / 2), 9);
  // at 45° as far from the toe along the face as into the brace: of that half, × √2 along the grain
  expect(of(6)["brace-end"]).toBeCloseTo(((row / 2) * Math.SQRT2) / 2, 9);
  expect(of(2)["brace-end"]).toBeCloseTo(((depth * Math.SQRT2) / 2 / 2) * Math.SQRT2, 9);
  // the short edge, square to the grain
  expect(of(24)["brace-edge"]).toBeCloseTo(depth / 24, 9);
  expect(of(24).spacing).toBeCloseTo((depth * Math.SQRT2) / 12, 9);
  // flush with its timber's face, whose edge is then the brace's own
  expect(of(2)["timber-edge"]).toBeCloseTo(width / 4, 6);
  const peg = joint.solids.screws?.[0];
  const along = peg ? peg.from.map((x, i) => x - (joint.face.origin[i] ?? 0)) : [];
  const at = along.reduce((sum, x, i) => sum + x * (joint.face.grain[i] ?? 0), 0);
  // six screws in three rows: the outermost row that is drawn is the one nearest that end
  expect(of(6)["timber-end"]).toBeLessThanOrEqual(
    Math.min(at - joint.face.ends[0], joint.face.ends[1] - at) + 1e-6,
  );
});

describe("fasteners-crowded", () => {
  test("two and four screws have room in a brace of 4 in, two over a seat", () => {
    for (const text of [
      screwed("{count: 2, diameter: 5/16 in, length: 10 in}"),
      screwed("{count: 4, diameter: 5/16 in, length: 10 in}"),
      ROOFED,
    ])
      expect(roomOf(text)).toEqual([]);
  });
  const CROWD = screwed("{count: 24, diameter: 5/16 in, length: 8 in}");
  findingsFixture(
    "fasteners-crowded: 24 screws at the end of a knee",
    under(
      CROWD,
      "screws: ",
      "#@83-89 warning fasteners-crowded: they stand 1/4 in from the slanting end of knee@A1-A2 along its grain, less than 1 1/4 in, and the wood splits. No more than 4 fit",
    ),
    ROOM,
  );
  test("six in three rows stand too near the slanting end of a 4x6, and have room in a 4x8", () => {
    const six = screwed("{count: 6, diameter: 5/16 in, length: 8 in}");
    expect(roomOf(six)[0]).toMatchObject({ check: "fasteners-crowded", limit: 1.25 });
    expect(roomOf(six)[0]?.value).toBeCloseTo(1, 9);
    expect(roomOf(six)[0]?.message).toMatch(
      /1 in from the slanting end of \S+ along its grain, less than 1 1\/4 in/,
    );
    expect(roomOf(six.replaceAll("kind: brace, section: 4x6", "kind: brace, section: 4x8"))).toEqual([]);
  });
  test("its fix takes as many as fit", () => {
    const mended = fixed(CROWD, "fasteners-crowded", 0, true);
    expect(roomOf(mended)).toEqual([]);
    const count = Number(/screws: \{count: (\d+),/.exec(mended)?.[1]);
    // one more does not
    expect(roomOf(mended.replace(`count: ${count},`, `count: ${count + 2},`))).not.toEqual([]);
  });
  test("screws in thin braces: not even one has room", () => {
    const thin = screwed("{count: 1, diameter: 3/4 in, length: 8 in}").replace(
      /knee: \{kind: brace, section: 4x6/g,
      "knee: {kind: brace, section: 2x6",
    );
    expect(roomOf(thin)[0]?.message).toMatch(/^1 screws? of 3\/4 in have no room at knee-ends/);
  });
  test("over a seat they stand side by side and one behind the other", () => {
    const { of, sizes } = jointOf(ROOFED, /^rafter-seat/);
    const rows = (room: number) => Math.floor((room / (5 / 16) - 3) / 4) + 1;
    const most = rows(of.width) * rows(sizes.seat?.level.value ?? 0);
    expect(most).toBeGreaterThan(2);
    expect(roomOf(seated(most, "10 in"))).toEqual([]);
    const [found] = roomOf(seated(most + 1, "10 in"));
    expect(found).toMatchObject({ check: "fasteners-crowded", value: most + 1, limit: most, unit: "count" });
  });
});

describe("screw-comes-out", () => {
  const LONG = screwed("{count: 2, diameter: 5/16 in, length: 16 in}");
  findingsFixture(
    "screw-comes-out: a long screw through a knee and its post",
    under(
      LONG,
      "screws: ",
      "#@129-134 warning screw-comes-out: screws of 16 in pass 12 1/4 in of wood and come out of the far face of post@A1 by 3 3/4 in: that thread holds nothing, and the point stands free. 10 in is long enough.",
    ),
    ROOM,
  );
  test("its fix leaves wood behind the point", () => {
    const mended = fixed(LONG, "screw-comes-out", 0, true);
    expect(roomOf(mended)).toEqual([]);
  });
  test("limit by hand: wood from the long edge to the far face (plane geometry, derived)", () => {
    const [found] = roomOf(LONG);
    const { of, face } = jointOf(LONG, /^knee-ends@.*A1/);
    // at 45°, the middle of the bearing lies half of depth × √2 below the long edge
    expect(found?.limit).toBeCloseTo((of.depth * Math.SQRT2) / 2 + face.thickness, 6);
    expect(found?.value).toBe(16);
  });
  test("over a seat: the plate's depth and the rafter over it, to 1/32 in", () => {
    const { sizes, face } = jointOf(ROOFED, /^rafter-seat/);
    const { seat } = sizes;
    const through = (seat?.heightAbovePlate ?? 0) + (seat?.plumb ?? 0) / 2 + face.thickness;
    const eighths = (inches: number) => `${Math.floor(inches * 8)}/8 in`;
    expect(roomOf(seated(2, eighths(through)))).toEqual([]);
    const [found] = roomOf(seated(2, eighths(through + 1 / 4)));
    expect(found).toMatchObject({ check: "screw-comes-out", unit: "in" });
    expect(found?.limit).toBeCloseTo(through, 9);
  });
});

describe("screws-short", () => {
  const shortOf = (text: string) =>
    findingsOf(text, true)
      .map(({ finding }) => finding)
      .filter(({ check }) => check === "screws-short");
  const knees = (length: string) => screwed(`{count: 2, diameter: 5/16 in, length: ${length}}`);
  // at 45° the middle of a 6 in brace lies 4 1/4 in below its long edge; a tip of 3/16 in (NDS Table L2; memory)
  findingsFixture(
    "screws-short: screws that end in the brace",
    under(
      knees("3 in"),
      "screws: ",
      "#@129-133 warning screws-short: screws of 3 in have 4 1/4 in of knee@A1-A2 to pass and end before they hold in post@A1: they fasten it to nothing. 6 in reaches.",
    ),
    ROOM,
  );
  test("by hand: 4 D and the tip past the wood under the head (NDS Table 12J notes; memory)", () => {
    const wood = (6 * Math.SQRT2) / 2;
    const least = wood + 4 * (5 / 16) + 3 / 16;
    const eighths = (inches: number) => `${Math.ceil(inches * 8)}/8 in`;
    expect(shortOf(knees(eighths(least)))).toEqual([]);
    const [found, ...more] = shortOf(knees(eighths(least - 1 / 8)));
    expect(more).toEqual([]);
    expect(found).toMatchObject({ level: "warning", limit: 1.25, unit: "in" });
    expect(found?.value).toBeLessThan(1.25);
    expect(found?.value).toBeGreaterThan(1.1);
    expect(found?.message).toMatch(
      /pass 4 1\/4 in of \S+ and hold with 1 [\d/]+ in in \S+, their tips left out/,
    );
  });
  test("its fix reaches", () => {
    const mended = fixed(knees("3 in"), "screws-short", 0, true);
    expect(mended).toContain("length: 6 in}");
    expect(shortOf(mended)).toEqual([]);
    expect(roomOf(mended)).toEqual([]);
  });
  test("over a seat they shall reach the plate", () => {
    const { sizes } = jointOf(ROOFED, /^rafter-seat/);
    const rafter = (sizes.seat?.heightAbovePlate ?? 0) + (sizes.seat?.plumb ?? 0) / 2;
    const [found] = shortOf(seated(2, "4 in"));
    expect(rafter).toBeGreaterThan(4);
    expect(found?.message).toMatch(
      /^At rafter-seat@\S+ screws of 4 in have .* of rafter@\S+ to pass and end before/,
    );
    expect(shortOf(ROOFED)).toEqual([]);
  });
  test("thin ones count from six diameters (NDS 12.1.5.6; memory)", () => {
    const [found] = shortOf(screwed("{count: 2, diameter: 3/16 in, length: 5 in}"));
    expect(found?.limit).toBeCloseTo(6 * (3 / 16), 9);
    expect(found?.value).toBeCloseTo(5 - (6 * Math.SQRT2) / 2, 6);
  });
});

describe("heads of rafters in a ridge, on screws that slant down at 45° (plane geometry, derived)", () => {
  const PAVILION = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
  const FASTEN = "housed, into: ridge, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 8 in}";
  const RIDGE = "kind: ridge, section: 6x9";
  const headed = (count: number, length: string, ridge = "6x9"): string => {
    expect(PAVILION).toContain(FASTEN);
    expect(PAVILION).toContain(RIDGE);
    return PAVILION.replace(
      FASTEN,
      `housed, into: ridge, fasten: {kind: screws, count: ${count}, diameter: 5/16 in, length: ${length}}`,
    ).replace(RIDGE, `kind: ridge, section: ${ridge}`);
  };
  const slope = Math.atan(7 / 12);
  const plumb = 7 / Math.cos(slope);
  const rafter = (Math.SQRT2 * plumb) / 2 / (1 + 7 / 12);
  // the ridge's top edges touch the rafters' tops, and the screws enter half the rafter's plumb depth lower
  const under = (depth: number): number => Math.SQRT2 * (depth - plumb / 2);

  test("as the sample has them they stand and end in the ridge", () => expect(roomOf(PAVILION)).toEqual([]));
  test("out of the underside of a ridge of 9 in, long before its far face", () => {
    expect(under(9)).toBeLessThan(Math.SQRT2 * 6);
    expect(roomOf(headed(2, "10 1/2 in"))).toEqual([]);
    const [found, ...more] = roomOf(headed(2, "12 in"));
    expect(more).toEqual([]);
    expect(found).toMatchObject({ check: "screw-comes-out", value: 12, unit: "in" });
    expect(found?.limit).toBeCloseTo(rafter + under(9), 9);
    expect(found?.message).toMatch(
      /^At rafter-head@[AB]\.\d screws of 12 in pass 10 5\/8 in of wood and come out of the underside of ridge by 1 3\/8 in: .* 10 in is long enough\./,
    );
    expect(roomOf(fixed(headed(2, "12 in"), "screw-comes-out", 0, true))).toEqual([]);
  });
  test("out of the far face of a ridge that is deep enough", () => {
    expect(under(12)).toBeGreaterThan(Math.SQRT2 * 6);
    expect(roomOf(headed(2, "12 in", "6x12"))).toEqual([]);
    const [found] = roomOf(headed(2, "12 1/4 in", "6x12"));
    expect(found?.limit).toBeCloseTo(rafter + Math.SQRT2 * 6, 9);
    expect(found?.message).toContain("come out of the far face of ridge by");
  });
  test("past a ridge that ends above where they would enter it, and hold nothing", () => {
    const text = headed(2, "8 in", "6x4");
    expect(roomOf(text)[0]?.limit).toBeCloseTo(rafter, 9);
    const joint = jointOf(text, /^rafter-head/);
    const hold = headHold(
      joint,
      { kind: "screws", count: 2, diameter: 5 / 16, length: 8 },
      { symbol: "C_D", value: 1.6, status: "published", source: "NDS" },
    );
    expect(hold?.held).toBe(0);
    expect(hold?.withdrawal.value).toBe(0);
  });
  test("what thread is past the underside does not hold", () => {
    const hold = (ridge: string) =>
      headHold(
        jointOf(headed(2, "12 in", ridge), /^rafter-head/),
        { kind: "screws", count: 2, diameter: 5 / 16, length: 12 },
        { symbol: "C_D", value: 1.6, status: "published", source: "NDS" },
      );
    const [shallow, deep] = [hold("6x9"), hold("6x12")];
    expect((deep?.held ?? 0) - (shallow?.held ?? 0)).toBeCloseTo(
      Math.min(12 - 5 / 16, rafter + Math.SQRT2 * 6) - (rafter + under(9)),
      0,
    );
    expect(shallow?.held).toBeLessThan(deep?.held ?? 0);
  });
  test("three abreast are too many in a rafter of 3 in, and the fix takes two", () => {
    const crowd = headed(3, "8 in");
    const [found, ...more] = roomOf(crowd);
    expect(more).toEqual([]);
    expect(found).toMatchObject({ check: "fasteners-crowded", value: 3, limit: 2, unit: "count" });
    // (4 × 2 + 3) × 5/16 in
    expect(found?.message).toMatch(
      /^3 screws of 5\/16 in are too many at rafter-head@[AB]\.\d: rafter@[AB]\.\d is 3 in wide, and in their row they need 3 7\/16 in, and the wood splits\. No more than 2 fit/,
    );
    const mended = fixed(crowd, "fasteners-crowded", 0, true);
    expect(mended).toContain("fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 8 in}");
    expect(roomOf(mended)).toEqual([]);
  });
});
