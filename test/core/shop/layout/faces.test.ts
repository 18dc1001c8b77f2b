/** Reference faces: outward in outer walls and end bents, toward bent 1 and wall A in inner ones, the top of what lies. */
import { describe, expect, test } from "vitest";
import { referenceFrame } from "../../../../server/core/shop/layout/faces.ts";
import { build, sample, stick } from "../../model/frames.ts";

const MODEL = sample("cider-press-pavilion");

const faces = (id: string) => {
  const { normals, turn } = referenceFrame(stick(MODEL, id));
  return { normals: normals.map((n) => n.map((x) => Math.round(x * 1e6) / 1e6 || 0)), turn };
};

describe("two reference faces (common practice, no source: the rule of the language)", () => {
  test.each([
    ["post@A1", [0, -1, 0], [-1, 0, 0]],
    ["post@B1", [0, 1, 0], [-1, 0, 0]],
    ["post@A3", [0, -1, 0], [1, 0, 0]],
    ["post@B3", [0, 1, 0], [1, 0, 0]],
    ["post@A2", [0, -1, 0], [-1, 0, 0]],
    ["plate@A", [0, -1, 0], [0, 0, 1]],
    ["plate@B", [0, 1, 0], [0, 0, 1]],
    ["tie@1", [-1, 0, 0], [0, 0, 1]],
    ["tie@2", [-1, 0, 0], [0, 0, 1]],
    ["tie@3", [1, 0, 0], [0, 0, 1]],
    ["ridge", [0, -1, 0], [0, 0, 1]],
    ["king-post@2", [0, -1, 0], [-1, 0, 0]],
  ])("%s", (id, first, second) => {
    expect(faces(id).normals).toEqual([first, second]);
  });

  test("mirrored timbers turn the other way round", () => {
    for (const [one, other] of [
      ["post@A1", "post@B1"],
      ["post@A1", "post@A3"],
      ["plate@A", "plate@B"],
      ["tie@1", "tie@3"],
      ["knee@A1-A2", "knee@A2-A1"],
      ["rafter@A.2", "rafter@B.2"],
    ] as const)
      expect(faces(one).turn, `${one} ${other}`).not.toBe(faces(other).turn);
    expect(faces("post@A1").turn).toBe("counterclockwise");
  });

  test("a rafter's side looks toward bent 1, its second face is the top", () => {
    for (const wall of ["A", "B"] as const) {
      const [side, top] = referenceFrame(stick(MODEL, `rafter@${wall}.5`)).normals;
      expect(side[0]).toBeCloseTo(-1, 9);
      expect(top[2]).toBeCloseTo(Math.cos(Math.atan(7 / 12)), 9);
    }
  });

  test("a brace's side is flush with those of its timbers, its second face the long edge", () => {
    const [side, edge] = referenceFrame(stick(MODEL, "knee@B3-B2")).normals;
    expect(side[1]).toBeCloseTo(1, 9);
    // away from the corner: down and toward bent 2
    expect(edge[2]).toBeLessThan(-0.5);
    expect(edge[0]).toBeLessThan(-0.5);
  });

  test("a turned post keeps its faces, and its sizes follow them", () => {
    const model = build({
      members: {
        post: "{kind: post, section: 6x8, turned: true, at: [A1], from: base, to: plate}",
        plate: "{kind: plate, section: 8x10, walls: [A], top: top}",
      },
    });
    const { sizes, ways } = referenceFrame(stick(model, "post@A1"));
    expect([...ways, ...sizes]).toEqual(["depth", "width", 6, 8]);
  });

  test("principal rafters: out of an end bent on both slopes, toward bent 1 in an inner one", () => {
    const model = build({
      members: {
        post: "{kind: post, section: 8x8, at: [A1, B1, A3, B3], from: base, to: plate}",
        plate: "{kind: plate, section: 8x10, walls: [A, B], top: top}",
        ridge: "{kind: ridge, section: 6x10}",
        principal: "{kind: rafter, section: 6x8, bents: [1, 2, 3], to: ridge}",
      },
      roof: "{kind: gable, pitch: 8:12}",
    });
    const looks = (id: string): number =>
      Math.round(referenceFrame(stick(model, `principal@${id}`)).normals[0][0]);
    expect(["A1", "B1", "A2", "B2", "A3", "B3"].map(looks)).toEqual([-1, -1, -1, -1, 1, 1]);
  });

  test("purlins: the lower side on both slopes, so that they mirror", () => {
    const model = build({
      members: {
        post: "{kind: post, section: 8x8, at: [A1, B1, A3, B3], from: base, to: plate}",
        plate: "{kind: plate, section: 8x10, walls: [A, B], top: top}",
        ridge: "{kind: ridge, section: 6x10}",
        principal: "{kind: rafter, section: 6x8, bents: [1, 2, 3], to: ridge}",
        purlin: "{kind: purlin, section: 4x6, count: 3}",
      },
      roof: "{kind: gable, pitch: 8:12}",
    });
    for (const wall of ["A", "B"]) {
      const [side, top] = referenceFrame(stick(model, `purlin@${wall}.2`)).normals;
      expect(side[2]).toBeLessThan(-0.5);
      expect(top[2]).toBeGreaterThan(0.5);
    }
    const turns = ["A", "B"].map((wall) => referenceFrame(stick(model, `purlin@${wall}.2`)).turn);
    expect(new Set(turns).size).toBe(2);
  });
});
