/** Room and reach of nails: commentary to NDS 12.1.6.6, Table C12.1.6.6, and NDS 12.1.6.3 and 12.1.6.5 (all memory); plane geometry. */
import { describe, expect, test } from "vitest";
import { DRIVEN, mostNails, PREBORED } from "../../../server/core/fasteners/nail-room.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { readFrame } from "../../../server/document/read.ts";
import { findingsFixture } from "../../fixtures.ts";
import { ROOFED, under } from "../../roofed-shed.ts";
import { findingsOf, fixed } from "./gate.ts";

const SEAT = "seat: {kind: birds-mouth}";
/** Rafters of 4×6 (true size) on seats of a given length, on plates of 8×8. */
const seated = (nails: string, seat = "2 1/2 in"): string =>
  ROOFED.replace(SEAT, `seat: {kind: birds-mouth, length: ${seat}}`).replace(
    /fasten: \{[^}]*\}/,
    `fasten: {kind: nails, ${nails}}`,
  );
const heard = (text: string): string[] =>
  findingsOf(text, true)
    .map(({ finding }) => finding)
    .filter(({ check }) => check.startsWith("nails-"))
    .map(({ check, level, value, limit }) => `${level} ${check} ${value?.toFixed(3)} ${limit?.toFixed(3)}`);
const many = (count: number, seat?: string): string[] =>
  heard(seated(`count: ${count}, diameter: 0.162 in, length: 3 1/2 in`, seat));

const WARNINGS = { only: ["warning"] } as const;
test("mostNails: one after another from 2.5 D in, until the next stands too near the edge", () => {
  for (const { along, edge } of [DRIVEN, PREBORED])
    for (const D of [0.131, 0.162, 0.192])
      for (let room = 0.1; room < 9; room += 0.23) {
        let stand = 0;
        for (let at = edge * D; at + edge * D <= room + 1 / 32; at += along * D) stand++;
        expect(mostNails(room, along, edge, D), `${room} in, ${D} in`).toBe(stand);
      }
  expect(mostNails(4, 15, 2.5, 0)).toBe(0);
});

describe("nails-crowded: toe-nails of 0.162 in on both sides of a rafter over its seat", () => {
  // a row of two takes (15 + 5) × 0.162 = 3.24 in, in bored holes (10 + 5) × 0.162 = 2.43 in
  test("seat of 2 1/2 in: one on each side, two in bored holes", () => {
    expect(many(2)).toEqual([]);
    expect(many(3)).toEqual(["note nails-crowded 3.000 2.000"]);
    expect(many(4)).toEqual(["note nails-crowded 4.000 2.000"]);
    expect(many(5)).toEqual(["warning nails-crowded 5.000 4.000"]);
  });
  test("seat of 3 1/4 in: two on each side", () => {
    expect(many(4, "3 1/4 in")).toEqual([]);
    expect(many(4, "3 3/16 in")).toEqual(["note nails-crowded 4.000 2.000"]);
  });
  const FIVE = seated("count: 5, diameter: 0.162 in, length: 3 1/2 in");
  findingsFixture(
    "it says so",
    under(
      FIVE,
      "kind: nails",
      "#@140-141 warning nails-crowded: 5 nails of 0.162 in are too many at rafter-seat@A.1, in 2 1/2 in of rafter@A.1: 4 have room in bored holes, 2 without, and the wood splits.",
    ),
    WARNINGS,
  );
  test("its fix takes as many as have room", () =>
    expect(heard(fixed(FIVE, "nails-crowded", 0, true))).toEqual([]));
});

describe("nails-reach", () => {
  test("a toe-nail reaches L cos 30° − L ÷ 3 = 0.533 L: six diameters from 11.3 D of length on", () => {
    // 6 × 0.162 in = 0.972 in; 0.533 × 1 13/16 in = 0.966 in, × 1 7/8 in = 0.999 in
    expect(heard(seated("count: 2, diameter: 0.162 in, length: 1 13/16 in"))).toEqual([
      "warning nails-reach 0.966 0.972",
    ]);
    expect(heard(seated("count: 2, diameter: 0.162 in, length: 1 7/8 in"))).toEqual([]);
  });
  findingsFixture(
    "it says so",
    under(
      seated("count: 2, diameter: 0.162 in, length: 1 1/2 in"),
      "kind: nails",
      "#@171-179 warning nails-reach: At rafter-seat@A.1 nails of 1 1/2 in reach 13/16 in into plate@A, less than the 1 in of six diameters from which they count: they work loose. Take longer ones.",
    ),
    WARNINGS,
  );
  test("long spikes from above pass the rafter and may not come out under the plate of 8 in", () => {
    const model = buildModel(readFrame(seated("count: 1, diameter: 1/4 in, length: 14 in")).frame);
    const seat = model.joints.find(({ id }) => id.startsWith("rafter-seat"))?.sizes.seat;
    const wood = (seat?.heightAbovePlate ?? 0) + (seat?.plumb ?? 0) / 2;
    const at = (length: number) =>
      heard(seated(`count: 1, diameter: 1/4 in, length: ${length.toFixed(4)} in`));
    expect(at(wood + 8)).toEqual([]);
    expect(at(wood + 8.1)).toEqual(["warning nails-reach 8.100 8.000"]);
  });
  test("screws are none of it", () => expect(heard(ROOFED)).toEqual([]));
});
