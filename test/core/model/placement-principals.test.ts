/** Principal rafters and purlins (placement rules, plane trigonometry; derived). */
import { describe, expect, test } from "vitest";
import { boxOf, build, expectBox, expectNear, idsOf, joint, stick } from "./frames.ts";
import { GABLE, gable, rafters, TOP0 } from "./gables.ts";

describe("principal rafters", () => {
  const principals = (keys: string, members: Record<string, string> = {}) =>
    build({
      members: { ...GABLE, ...members, principal: `{kind: rafter, section: 6x8, bents: [1, 3], ${keys}}` },
      roof: '{kind: gable, pitch: "12:12"}',
    });

  test("a pair in each bent, from the plates' outside faces to the middle", () => {
    const model = principals("overhang: 0");
    expect(idsOf(model, "principal").sort()).toEqual([
      "principal@A1",
      "principal@A3",
      "principal@B1",
      "principal@B3",
    ]);
    const { x, y } = boxOf(stick(model, "principal@A3"));
    expect(x).toEqual([234, 240]);
    expectNear(y[0], 0, "foot");
    expectNear(y[1], 72, "head");
    // depth 8: seat 2 / 0.7071 = 2.83 → 2.75; 72 in of run and 8 × tan 45° from point to point
    expectNear(stick(model, "principal@A1").length, 72 * Math.SQRT2 + 8, "length");
    expect(joint(model, "principal-seat@A1").sizes.seat?.level.value).toBe(2.75);
  });

  test("a foot on a tie stands level on its top, a head plumb against the king-post", () => {
    const model = principals("from: tie, to: king", {
      tie: "{kind: tie, section: 8x10, bents: [1, 3], bottom: top}",
      king: "{kind: king-post, section: 8x8, bents: [1, 3], from: tie, to: 16 ft}",
    });
    const { y, z } = boxOf(stick(model, "principal@A1"));
    expectNear(z[0], 106, "foot");
    expectNear(y[1], 68, "head");
    // center line at the tie's top: 2.75 + 10 - 4 √2 from the plate's outside face, 4 √2 of level cut either way
    expectNear(y[0], 2.75 + 10 - 8 * Math.SQRT2, "heel");
    const kinds = model.joints
      .filter((j) => j.of.id === "principal@A1")
      .map((j) => `${j.end} ${j.kind} ${j.into.id}`);
    expect(kinds.sort()).toEqual(["foot rafter-heel tie@1", "head mortise-and-tenon king@1"]);
  });
});

describe("principal rafters over a plate that is named", () => {
  const model = build({
    members: {
      ...GABLE,
      principal: "{kind: rafter, section: 6x8, bents: [1, 3], from: plate, overhang: 12 in}",
    },
    roof: '{kind: gable, pitch: "12:12"}',
  });

  test("run on to their overhang and sit on it with a seat, as without the name", () => {
    const { y, z } = boxOf(stick(model, "principal@A1"));
    expectNear(y[0], -12, "tip");
    expectNear(y[1], 72, "head");
    // seat 2.75, so tops at 96 - 2.75 + 8 √2 over the outside face, and 12 lower at the tip, 8 √2 of plumb cut
    expectNear(z[0], 96 - 2.75 - 12, "underside of the tip");
    expect(joint(model, "principal-seat@A1").sizes.seat?.level.value).toBe(2.75);
  });

  test("make the slopes that a roof's loads lie on, with their own overhang", () => {
    expect(model.roof?.slopes.map((s) => [s.wall, s.rafters.length, s.spacing, s.eaveOverhang])).toEqual([
      ["A", 0, 0, 12],
      ["B", 0, 0, 12],
    ]);
  });
});

describe("purlins", () => {
  test("end at the near face of a ridge timber", () => {
    const model = build({
      members: {
        ...GABLE,
        ridge: "{kind: ridge, section: 6x10, from: 1, to: 3}",
        principal: "{kind: rafter, section: 6x8, bents: [1, 3], to: ridge}",
        purlin: "{kind: purlin, section: 4x3, spacing: 30 in}",
      },
      roof: '{kind: gable, pitch: "12:12"}',
    });
    // near face 72 - 3 = 69; slope length 69 √2; middles from 2 to 69 √2 - 2
    const top = stick(model, "purlin@A.5");
    expect(model.byId.has("purlin@A.6")).toBe(false);
    expectNear(top.origin[1], (69 * Math.SQRT2 - 2) / Math.SQRT2 - 1.5 / Math.SQRT2, "highest purlin");
    expect(boxOf(top).y[1]).toBeLessThan(69 + 1e-6);
    expect(top.rule).toBe("purlins-up-slope");
  });

  test("lie on the rafters from rake to rake, spaced up the slope", () => {
    const model = gable({}, { purlin: "{kind: purlin, section: 4x3, spacing: 30 in, overhang: 6 in}" });
    // slope length 72 √2 = 101.82; middles 2 to 99.82: 97.82 / 30 = 3.3, so 4 bays
    expect(idsOf(model, "purlin").filter((id) => id.startsWith("purlin@A"))).toHaveLength(5);
    const purlin = stick(model, "purlin@A.2");
    const up = 2 + (72 * Math.SQRT2 - 4) / 4;
    const [x, y, z] = purlin.origin;
    expectNear(x, -6, "overhang");
    expectNear(y, up / Math.SQRT2 - 1.5 / Math.SQRT2, "up the slope, half its depth off it");
    expectNear(z, TOP0 + up / Math.SQRT2 + 1.5 / Math.SQRT2, "on the rafters' tops");
    expect(purlin.length).toBe(252);
    // nailed crossings count as joined
    expect(model.joints.filter((j) => j.of.member === "purlin" || j.into.member === "purlin")).toEqual([]);
  });

  test("from rake to rake, or with an overhang so far past the grid lines; an end named inside stays there", () => {
    const extent = (keys: string): readonly [number, number] => {
      const model = build({
        members: {
          ...GABLE,
          plate: "{kind: plate, section: 8x8, walls: [A, B], top: top, overhang: 12 in}",
          purlin: `{kind: purlin, section: 4x3, spacing: 30 in${keys}}`,
        },
        roof: `{kind: gable, pitch: "12:12", ${rafters()}}`,
      });
      return boxOf(stick(model, "purlin@A.2")).x;
    };
    expect(extent("")).toEqual([-12, 252]);
    expect(extent(", from: 1, to: 3")).toEqual([-12, 252]);
    expect(extent(", overhang: 6 in")).toEqual([-6, 246]);
    expect(extent(", from: 2, overhang: {from: 0, to: 6 in}")).toEqual([120, 246]);
    expect(extent(", from: 2")).toEqual([120, 252]);
  });

  test("reach the rake of the roof’s rafters past plates that end at the bents", () => {
    const model = build({
      members: { ...GABLE, purlin: "{kind: purlin, section: 4x3, spacing: 30 in}" },
      roof: '{kind: gable, pitch: "12:12", rafters: {section: 4x6, seat: {kind: birds-mouth}, spacing: 24 in, overhang: {eave: 0, rake: 10 in}}}',
    });
    expect(boxOf(stick(model, "purlin@A.2")).x).toEqual([-10, 250]);
  });

  test("along walls they lie like plates", () => {
    const model = gable({}, { purlin: "{kind: purlin, section: 4x6, walls: [A], top: 10 ft}" });
    expectBox(model, "purlin@A", [0, 240], [0, 4], [114, 120]);
  });
});
