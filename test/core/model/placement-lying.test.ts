/** Where lying timbers begin and end: from, to, splices, girts between posts; free ends (placement rules; derived). */
import { describe, expect, test } from "vitest";
import { boxOf, build, expectBox, expectNear, idsOf, joint, problem, problemsOf, stick } from "./frames.ts";

describe("from and to of lying timbers", () => {
  const posts = { post: "{kind: post, section: 8x8, at: [A1, A2, A3, B1, B2, B3], from: base, to: top}" };
  const beam = (keys: string) =>
    build({ members: { ...posts, m: `{kind: beam, section: 8x8, walls: [A], bottom: 3 ft, ${keys}}` } });

  test("grid lines, their places, lengths from the first line", () => {
    const joined = (keys: string): readonly [number, number] => {
      const t = stick(
        build({ members: { m: `{kind: beam, section: 8x8, walls: [A], bottom: 3 ft, ${keys}}` } }),
        "m@A",
      );
      return boxOf(t).x;
    };
    expect(joined("from: 1, to: 2")).toEqual([0, 120]);
    expect(joined("from: A2, to: A3")).toEqual([120, 240]);
    expect(joined("from: 2 ft, to: 12 ft")).toEqual([24, 144]);
    expect(joined("from: A@2 ft, to: 3")).toEqual([24, 240]);
    expect(joined("from: 1, to: 2, overhang: 1 ft")).toEqual([-12, 132]);
    expect(joined("from: 1, to: 2, overhang: {from: 6 in, to: 1 ft}")).toEqual([-6, 132]);
    expect(joined("from: 1, to: 2, overhang: {to: 1 ft}")).toEqual([0, 132]);
    expect(joined("overhang: {from: 6 in}")).toEqual([-6, 240]);
  });

  test("a timber's near face", () => {
    const model = beam("from: post@A1, to: post@A2");
    // between the faces 8 and 116; assumed mortises and tenons leave the shoulders there
    expect(boxOf(stick(model, "m@A")).x).toEqual([8, 116]);
    expect(boxOf(stick(beam("from: post, to: post"), "m@A")).x).toEqual([8, 232]);
  });

  test("across the bents", () => {
    const model = build({
      members: { m: "{kind: tie, section: 8x8, bents: [2], from: A, to: B2, top: tie-top}" },
    });
    expectBox(model, "m@2", [116, 124], [0, 144], [76, 84]);
  });

  test("a name of nothing is said once and places nothing", () => {
    const model = beam("from: 1, to: pots");
    expect(idsOf(model, "m")).toEqual([]);
    expect(problemsOf(model)).toEqual(["unknown-id /members/m/to"]);
    expect(problem(model, "unknown-id")).toMatchObject({ text: "pots", sort: "reference" });
  });
});

describe("splices", () => {
  const model = build({
    members: {
      plate: "{kind: plate, section: 8x9, walls: [A, B], top: top, overhang: 12 in, splice: {at: 5 ft}}",
      post: "{kind: post, section: 8x8, at: [A1, A2, A3], from: base, to: plate}",
    },
  });

  test("divide a plate into two sticks, each longer by half the lap", () => {
    expect(idsOf(model, "plate").sort()).toEqual(["plate@A.1", "plate@A.2", "plate@B.1", "plate@B.2"]);
    const lap = joint(model, "plate-scarf@A.1").sizes.lap!;
    expectNear(lap.length.value, 36, "four depths");
    // cut at 60: 72 + 18 and 192 + 18
    expectNear(stick(model, "plate@A.1").length, 90, "first");
    expectNear(stick(model, "plate@A.2").length, 210, "second");
    expect(boxOf(stick(model, "plate@A.1")).x).toEqual([-12, 78]);
    expect(boxOf(stick(model, "plate@A.2")).x).toEqual([42, 252]);
  });

  test("the halves are cut where the two sticks lie on each other", () => {
    const { solids } = joint(model, "plate-scarf@A.1");
    for (const prism of [solids.notches[0]!, solids.mortises[0]!]) {
      const xs = prism.outline.map(([u]) => prism.base[0] + u * prism.u[0]);
      expectNear(Math.min(...xs), 42, "from");
      expectNear(Math.max(...xs), 78, "to");
    }
  });

  test("named by the entry, so nothing is assumed", () => {
    const scarf = joint(model, "plate-scarf@B.1");
    expect(scarf.assumed).toBe(false);
    expect(scarf.path).toBe("/members/plate/splice");
  });

  test("sizes come from a joint entry, and the place may be a bent", () => {
    const sized = build({
      members: {
        sill: "{kind: sill, section: 8x8, walls: [A], bottom: base, splice: {at: 2, kind: half-lap-scarf}}",
      },
      joints: { scarf: "{kind: half-lap-scarf, of: sill, into: sill, lap: 20 in}" },
    });
    expectNear(stick(sized, "sill@A.1").length, 130, "120 + 10");
    expect(joint(sized, "scarf@A.1").sizes.lap?.depth).toBe(4);
  });

  test("outside of the timber there is none", () => {
    const whole = build({
      members: { sill: "{kind: sill, section: 8x8, walls: [A], to: 2, bottom: base, splice: {at: 3}}" },
    });
    expect(idsOf(whole, "sill")).toEqual(["sill@A"]);
  });
});

describe("girts", () => {
  const at = "[A1, A2, A3, B1, B3]";
  const model = build({
    members: {
      post: `{kind: post, section: 8x8, at: ${at}, from: base, to: plate}`,
      plate: "{kind: plate, section: 8x9, walls: [A, B], top: top}",
      girt: "{kind: girt, section: 6x8, walls: [A, B], top: 4 ft}",
    },
  });

  test("are split at posts, and run past a line where none stands", () => {
    expect(idsOf(model, "girt")).toEqual(["girt@A1-A2", "girt@A2-A3", "girt@B1-B3"]);
    expectBox(model, "girt@A1-A2", [8, 116], [0, 6], [40, 48]);
    expectBox(model, "girt@A2-A3", [124, 232], [0, 6], [40, 48]);
    expectBox(model, "girt@B1-B3", [8, 232], [138, 144], [40, 48]);
  });

  test("join the posts at both sides, never each other", () => {
    const kinds = model.joints.filter((j) => j.of.member === "girt");
    expect(kinds.map((j) => `${j.kind} ${j.of.id} ${j.into.id}`)).toEqual([
      "mortise-and-tenon girt@A1-A2 post@A1",
      "mortise-and-tenon girt@A1-A2 post@A2",
      "mortise-and-tenon girt@A2-A3 post@A2",
      "mortise-and-tenon girt@A2-A3 post@A3",
      "mortise-and-tenon girt@B1-B3 post@B1",
      "mortise-and-tenon girt@B1-B3 post@B3",
    ]);
  });

  test("lie uncut under posts that stand on them", () => {
    const queen = build({
      members: {
        girt: "{kind: girt, section: 8x8, walls: [A], top: 4 ft}",
        queen: "{kind: post, section: 6x6, at: [A2], from: girt, to: top}",
      },
    });
    expect(idsOf(queen, "girt")).toEqual(["girt@A1-A3"]);
    expect(boxOf(stick(queen, "queen@A2")).z).toEqual([48, 96]);
    expect(problemsOf(queen)).toEqual([]);
  });

  test("run from the posts of one wall to a beam of the other", () => {
    const shelter = build({
      members: {
        post: "{kind: post, section: 8x8, at: [A1, A3], from: base, to: top}",
        beam: "{kind: beam, section: 8x8, walls: [B], top: 4 ft, overhang: 12 in}",
        girt: "{kind: girt, section: 8x8, bents: [1, 3], top: 4 ft}",
      },
    });
    expect(idsOf(shelter, "girt")).toEqual(["girt@A1-B1", "girt@A3-B3"]);
    const [kind] = shelter.joints.filter((j) => j.of.id === "girt@A1-B1" && j.into.id === "beam@B");
    expect(kind?.kind).toBe("housed-dovetail");
    // shoulders on the post's inside face 8 and 1/2 in into the beam's at 136
    expect(boxOf(stick(shelter, "girt@A1-B1")).y).toEqual([8, 136.5]);
  });
});

describe("free ends", () => {
  test("lie on the line between two points, depth as upright as the slope allows", () => {
    const model = build({
      members: {
        strut:
          "{kind: strut, section: 4x6, ends: [{at: A1, level: base, offset: [0, 4 in, 0]}, {at: A2, level: top}]}",
      },
    });
    const t = stick(model, "strut");
    expect(t.origin).toEqual([0, 4, 0]);
    expect(t.head.point).toEqual([120, 0, 96]);
    expectNear(t.length, Math.hypot(120, 4, 96), "length");
    expectNear(
      t.axis[0] * t.depthDir[0] + t.axis[1] * t.depthDir[1] + t.axis[2] * t.depthDir[2],
      0,
      "square",
    );
    expect(t.depthDir[2]).toBeGreaterThan(0.7);
  });

  test("an upright one has its depth across the bents; two equal ends are a timber without length", () => {
    const up = build({
      members: { m: "{kind: post, section: 4x6, ends: [{at: A1, level: base}, {at: A1, level: top}]}" },
    });
    expectBox(up, "m", [-2, 2], [-3, 3], [0, 96]);
    const none = build({
      members: { m: "{kind: post, section: 4x6, ends: [{at: A1, level: base}, {at: A1, level: base}]}" },
    });
    expect(problemsOf(none)).toEqual(["no-length /members/m"]);
    expect(none.timbers).toEqual([]);
  });
});
