/** Ground heights and piers (placement rules; derived). */
import { describe, expect, test } from "vitest";
import { build, expectNear, expectPoint, type Parts, problem, problemsOf } from "./frames.ts";

const POST = { post: "{kind: post, section: 8x8, at: [A1, A2, B3], from: base, to: top}" };
const TUBE = "kind: tube, diameter: 12 in, depth: 40 in";
const on = (ground: string, more: Partial<Parts> = {}) =>
  build({ members: POST, ...more, site: `{ground: ${ground}}` });

describe("the ground", () => {
  test("is straight between bents and level beyond them", () => {
    const { ground } = on("{1: 0, 2: -12 in, 3: -12 in}");
    expect(ground(-50, 0)).toBe(0);
    expect(ground(60, 70)).toBe(-6);
    expect(ground(120, 0)).toBe(-12);
    expect(ground(500, 0)).toBe(-12);
  });

  test("may skip a line, or go by wall", () => {
    expect(on("{1: 0, 3: -24 in}").ground(120, 0)).toBe(-12);
    const { ground } = on("{A: 6 in, B: 18 in}");
    expect(ground(0, 36)).toBe(9);
    expect(ground(200, 144)).toBe(18);
  });

  test("by single places only: exact there, between them in between", () => {
    const { ground } = on("{A1: 0, A3: 12 in}");
    expect(ground(0, 0)).toBe(0);
    expect(ground(240, 0)).toBe(12);
    expectNear(ground(120, 0), 6, "half way");
  });

  test("by bents and by walls are two readings, and that is said", () => {
    const model = on("{1: 0, B: 5 in}");
    expect(problem(model, "two-readings")).toMatchObject({ path: "/site/ground", what: "ground" });
    expect(problemsOf(on("{1: 0, 2: 5 in, A2: 3 in}"))).toEqual([]);
  });

  test("of an unknown line is said", () => {
    expect(problem(on("{9: 0}"), "unknown-id")).toMatchObject({ text: "9", path: "/site/ground/9" });
  });

  test("is not known where nothing is given", () => {
    expect(build({ members: POST }).ground(0, 0)).toBeUndefined();
  });
});

describe("piers", () => {
  const pierOf = (model: ReturnType<typeof build>, id: string) => {
    const pier = model.piers.find((p) => p.id === id);
    expect(pier, `${id} among ${model.piers.map((p) => p.id).join(", ")}`).toBeDefined();
    return pier!;
  };

  test("one under each post of the entry, from the level below its stand-off", () => {
    const model = build({ members: POST, piers: { all: `{under: post, ${TUBE}}` } });
    expect(model.piers.map((p) => p.id)).toEqual(["all@A1", "all@A2", "all@B3"]);
    expectPoint(pierOf(model, "all@B3").top, [236, 140, 0], "top");
    expectNear(pierOf(model, "all@A1").bottom, -40, "level ground at the datum");
    expect(pierOf(model, "all@A2").timber?.id).toBe("post@A2");
  });

  test("reach their depth below the lowest ground that touches them, a footing lies below that", () => {
    const model = on("{1: 0, 2: -12 in, 3: -24 in}", {
      piers: { all: `{under: post, ${TUBE}, footing: {diameter: 24 in, thickness: 10 in}}` },
    });
    // A2 stands at 120: 6 in toward bent 3 the ground is 12 × 6/120 lower
    const pier = pierOf(model, "all@A2");
    expectNear(pier.groundLow, -12.6, "low");
    expectNear(pier.groundHigh, -11.4, "high");
    expectNear(pier.tubeBottom, -52.6, "tube");
    expectNear(pier.bottom, -62.6, "footing");
  });

  test("a place's own height goes before its bent's", () => {
    const model = on("{1: 0, 2: -12 in, 3: -24 in, A2: -20 in}", {
      piers: { all: `{under: post, ${TUBE}}` },
    });
    // the slope of the ground is kept, its height is the place's
    expectNear(pierOf(model, "all@A2").groundLow, -20.6, "low");
    expectNear(pierOf(model, "all@A1").groundHigh, 0, "the others as before");
  });

  test("an entry for single places goes before the one for all", () => {
    const model = build({
      members: POST,
      piers: {
        all: `{under: post, ${TUBE}}`,
        rock: "{under: post, at: [A2], kind: pad, width: 20 in, depth: 10 in}",
      },
    });
    expect(model.piers.map((p) => `${p.id} ${p.diameter}`)).toEqual(["all@A1 12", "all@B3 12", "rock@A2 20"]);
  });

  test("one post alone", () => {
    const model = build({ members: POST, piers: { one: `{under: post@A2, ${TUBE}}` } });
    expect(model.piers.map((p) => p.id)).toEqual(["one@A2"]);
  });

  test("under a beam they need places, also between grid lines", () => {
    const beam = { beam: "{kind: beam, section: 6x8, walls: [B], top: 4 ft}" };
    const model = build({
      members: beam,
      piers: {
        bank: `{under: beam, at: [B1, B@4 ft 9 in, B3], ${TUBE}, anchor: {kind: embedded-strap, stand-off: 2 in}}`,
      },
    });
    // underside 40, 2 in of stand-off
    expectPoint(pierOf(model, "bank@B@4-ft-9-in").top, [57, 141, 38], "between");
    expectPoint(
      pierOf(model, "bank@B1").top,
      [3, 141, 38],
      "first: where a post as wide as the beam would stand",
    );
    expectPoint(pierOf(model, "bank@B3").top, [237, 141, 38], "last");
    const none = build({ members: beam, piers: { bank: `{under: beam, ${TUBE}}` } });
    expect(problem(none, "placement-missing")).toMatchObject({ path: "/piers/bank", needs: ["at"] });
    expect(none.piers).toEqual([]);
  });

  test("what an entry leaves open is said, not left out: nothing to carry, no height, a timber elsewhere", () => {
    const beam = { beam: "{kind: beam, section: 6x8, walls: [B], top: 4 ft}" };
    const of = (pier: string) => build({ members: beam, piers: { bank: `{${pier}, ${TUBE}}` } });
    expect(problem(of("at: [B@5 ft]"), "placement-missing")).toMatchObject({
      path: "/piers/bank",
      member: "bank@B@5-ft",
      needs: ["under", "top"],
    });
    expect(problem(of("under: beam, at: [A2]"), "placement-missing")).toMatchObject({
      member: "bank@A2",
      needs: ["beam here"],
    });
    // under several timbers each place has one of them
    const both = build({
      members: { ...beam, ...POST },
      piers: { bank: `{under: [beam, post], at: [A1, B@5 ft], ${TUBE}}` },
    });
    expect(problemsOf(both)).toEqual([]);
    expect(both.piers.filter((p) => p.timber).map((p) => p.timber?.id)).toEqual(["beam@B", "post@A1"]);
  });

  test("without `under` it carries what lies on its top; a pad under the eave carries nothing", () => {
    // underside 40, 1 in of stand-off
    const model = build({
      members: { beam: "{kind: beam, section: 6x8, walls: [B], top: 4 ft}" },
      piers: { bank: `{at: [B@5 ft], top: 39 in, ${TUBE}}`, step: `{at: [B@8 ft], top: 4 in, ${TUBE}}` },
    });
    expect(problemsOf(model)).toEqual([]);
    expect(model.piers.map((p) => p.timber?.id)).toEqual(["beam@B", undefined]);
    const low = build({
      members: { beam: "{kind: beam, section: 6x8, walls: [B], top: 4 ft}" },
      piers: { bank: `{under: beam, at: [B@5 ft], top: 30 in, ${TUBE}}` },
    });
    expect(problem(low, "derived-differs")).toMatchObject({ what: "pier-top", typed: 30, derived: 39 });
    // laid on the concrete itself, as sills are; an anchor that says how far off it stands is held to it
    const laid = (anchor: string) =>
      build({
        members: { beam: "{kind: beam, section: 6x8, walls: [B], top: 4 ft}" },
        piers: { bank: `{under: beam, at: [B@5 ft], top: 40 in, ${TUBE}${anchor}}` },
      });
    expect(problemsOf(laid(""))).toEqual([]);
    expect(laid("").piers.map((p) => p.top[2])).toEqual([40]);
    const off = laid(", anchor: {kind: embedded-strap, stand-off: 1 in}");
    expect(problem(off, "derived-differs")).toMatchObject({ typed: 40, derived: 39 });
  });

  test("a top that is typed is checked against the post's", () => {
    const agree = build({ members: POST, piers: { all: `{under: post, ${TUBE}, top: base}` } });
    expect(problemsOf(agree)).toEqual([]);
    const apart = build({ members: POST, piers: { all: `{under: post, ${TUBE}, top: 3 in}` } });
    expect(problem(apart, "derived-differs")).toMatchObject({
      path: "/piers/all/top",
      what: "pier-top",
      typed: 3,
      derived: 0,
    });
  });

  test("a post may take its foot from the pier's top", () => {
    const model = build({
      members: { post: "{kind: post, section: 8x8, at: [A1], to: top}" },
      piers: { all: `{under: post, ${TUBE}, top: 6 in}` },
    });
    expectPoint(pierOf(model, "all@A1").top, [4, 4, 6], "top");
    expectNear(model.byId.get("post@A1")?.origin[2], 7, "foot");
  });

  test("under nothing that is known", () => {
    const model = build({ members: POST, piers: { all: `{under: pots, ${TUBE}}` } });
    expect(problem(model, "unknown-id")).toMatchObject({ text: "pots", path: "/piers/all/under" });
  });
});
