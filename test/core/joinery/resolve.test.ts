/** Which joint holds where: entries by specificity, assumed kinds, entries that hold nowhere (joint rules of the manual; derived). */
import { describe, expect, test } from "vitest";
import { jointApart } from "../../../server/core/checks/geometry/joint-apart.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import type { Model } from "../../../server/core/model/model.ts";
import { skeletonOf } from "../../../server/core/statics/skeleton.ts";
import { build, expectNear, joint, modelOf, problem, problemsOf, stick, textOf } from "../model/frames.ts";

const FRAME = {
  post: "{kind: post, section: 8x8, at: [A1, A2, B1, B2], from: base, to: plate}",
  plate: "{kind: plate, section: 8x9, walls: [A, B], from: 1, to: 2, top: top, overhang: 12 in}",
  tie: "{kind: tie, section: 8x8, bents: [1, 2], top: tie-top}",
};
const framed = (joints: Record<string, string>, members: Record<string, string> = {}) =>
  build({ bents: "{1: 0, 2: 10 ft}", members: { ...FRAME, ...members }, joints });
const tenon = (of: string, into: string, length = "5 in") =>
  `{kind: mortise-and-tenon, of: ${of}, into: ${into}, tenon: {length: ${length}}}`;
const entryAt = (model: Model, of: string, into: string): string | undefined =>
  model.joints.find((j) => j.of.id === of && j.into.id === into)?.entry?.name;

describe("specificity", () => {
  test("place before stick before entry before kind, in any order of the file", () => {
    const entries: [string, string][] = [
      ["by-kind", tenon("post", "beam")],
      ["by-entry", tenon("corner", "top-beam")],
      ["by-stick", tenon("corner@A2", "top-beam")],
      ["by-place", tenon("corner@A1", "top-beam@A")],
    ];
    const members = {
      corner: "{kind: post, section: 8x8, at: [A1, A2, A3], from: base, to: top-beam}",
      "top-beam": "{kind: beam, section: 8x8, walls: [A], top: top}",
      other: "{kind: post, section: 8x8, at: [A@4 ft], from: base, to: top-beam}",
    };
    for (const order of [entries, [...entries].reverse()]) {
      const model = build({ members, joints: Object.fromEntries(order) });
      expect(entryAt(model, "corner@A1", "top-beam@A")).toBe("by-place");
      expect(entryAt(model, "corner@A2", "top-beam@A")).toBe("by-stick");
      expect(entryAt(model, "corner@A3", "top-beam@A")).toBe("by-entry");
      expect(entryAt(model, "other@A@4-ft", "top-beam@A")).toBe("by-kind");
      expect(problemsOf(model)).toEqual([]);
    }
  });

  test("a stick on either side is equally close", () => {
    const joints = { one: tenon("post@A1", "plate"), two: tenon("post", "plate@A") };
    const twice = problem(framed(joints), "joint-twice");
    expect(twice).toMatchObject({
      place: "one@A1",
      names: ["one", "two"],
      path: "/joints/one",
      other: "/joints/two",
    });
  });

  test("two equal entries are said at each place, once a place", () => {
    const model = framed({ one: tenon("post", "plate"), two: tenon("[post, tie]", "plate", "4 in") });
    const twice = model.problems.filter((p) => p.kind === "joint-twice");
    expect(twice).toHaveLength(4);
    expectNear(joint(model, "one@A1").sizes.tenon?.length.value, 5, "the first holds");
  });

  test("lists name every pair", () => {
    const model = framed({ all: tenon("[post, tie]", "[plate, post]") });
    expect(model.joints.map((j) => j.entry?.name)).toEqual(Array(8).fill("all"));
  });
});

describe("assumed joints", () => {
  test("the usual kind, where the file names none", () => {
    const model = framed(
      {},
      {
        knee: "{kind: brace, section: 4x6, between: [post, plate], leg: 30 in}",
        joist: "{kind: joist, section: 4x6, between: [tie@1, tie@2], count: 1}",
        sill: "{kind: sill, section: 8x8, walls: [A], from: post, to: post, bottom: base}",
      },
    );
    const kinds = new Map(model.joints.map((j) => [`${j.of.member} ${j.into.member}`, j.kind]));
    expect(Object.fromEntries(kinds)).toEqual({
      "post plate": "mortise-and-tenon",
      "tie post": "mortise-and-tenon",
      "knee post": "brace-tenon",
      "knee plate": "brace-tenon",
      "joist tie": "pocket",
      "sill post": "mortise-and-tenon",
    });
    expect(model.joints.every((j) => j.assumed && j.path.startsWith("/members/"))).toBe(true);
  });

  test("lying timbers: corners lap, ends drop into sides", () => {
    const model = build({
      members: {
        long: "{kind: sill, section: 8x8, walls: [A, B], bottom: base}",
        short: "{kind: sill, section: 8x8, bents: [1, 2, 3], bottom: base}",
      },
    });
    const of = (id: string) =>
      model.joints.filter((j) => j.of.id === id).map((j) => `${j.kind} ${j.into.id}`);
    expect(of("short@1")).toEqual(["corner-half-lap long@A", "corner-half-lap long@B"]);
    expect(of("short@2")).toEqual(["housed-dovetail long@A", "housed-dovetail long@B"]);
  });

  test("nothing where timbers only cross", () => {
    const model = build({
      members: {
        low: "{kind: beam, section: 8x8, walls: [A], top: 4 ft, overhang: 2 ft}",
        high: "{kind: beam, section: 8x8, bents: [2], bottom: 4 ft, overhang: 2 ft}",
      },
    });
    expect(model.meetings).toHaveLength(1);
    expect(model.joints).toEqual([]);
  });

  test("none between timbers that run alike, one beside or inside the other; a scarf where they follow in line", () => {
    const kindsOf = (members: Record<string, string>) =>
      build({ members }).joints.map((j) => `${j.of.id} ${j.kind} ${j.into.id}`);
    const beam = "{kind: beam, section: 8x8, walls: [A], from: 0, to: 10 ft, top: top}";
    const other = (from: string, to: string, rest = "section: 6x6, top: top") =>
      `{kind: beam, ${rest}, walls: [A], from: ${from}, to: ${to}}`;
    expect(kindsOf({ beam, other: other("10 ft", "20 ft") })).toEqual([expect.stringContaining("scarf")]);
    expect(kindsOf({ beam, other: other("9 ft", "19 ft") })).toEqual([expect.stringContaining("scarf")]);
    expect(kindsOf({ beam, other: other("4 ft", "14 ft") })).toEqual([]);
    expect(kindsOf({ beam, other: other("0", "10 ft") })).toEqual([]);
    expect(kindsOf({ beam, other: other("2 ft", "8 ft") })).toEqual([]);
    expect(kindsOf({ beam, other: other("2 ft", "20 ft", "section: 3x6, top: top") })).toEqual([]);
  });

  test("a named joint leaves the others assumed", () => {
    const model = framed({ head: tenon("post", "plate") });
    expect(joint(model, "head@A1").assumed).toBe(false);
    expect(joint(model, "tie-post@A1").assumed).toBe(true);
  });
});

describe("entries that hold nowhere", () => {
  const words = (model: Model): string => {
    const found = problem(model, "joint-apart");
    return jointApart.words(found, makeSay("inch"));
  };

  test("timbers apart, with the nearest and the gap", () => {
    const model = framed({ wrong: tenon("tie", "plate") });
    // tie's top 84, plate's underside 87
    expect(problem(model, "joint-apart")).toMatchObject({
      path: "/joints/wrong/into",
      joint: "wrong",
      of: "tie",
      into: "plate",
    });
    expectNear(problem(model, "joint-apart").gap, 3, "gap");
    expect(words(model)).toContain("3 in");
    expect(problem(model, "joint-apart").reversed).toBeUndefined();
  });

  test("the names the wrong way round", () => {
    const model = framed({ wrong: tenon("plate", "post") });
    expect(problem(model, "joint-apart")).toMatchObject({ of: "plate", into: "post", reversed: true });
    expect(words(model)).toBe(
      "It is post’s end that meets plate, so wrong is cut nowhere and carries nothing. Swap “of” and “into”.",
    );
    // the place itself gets the usual joint
    expect(joint(model, "post-plate@A1").assumed).toBe(true);
  });

  test("one name of a list", () => {
    const model = framed({ wrong: tenon("post", "[plate, tie]") });
    expect(problem(model, "joint-apart")).toMatchObject({ path: "/joints/wrong/into/1", into: "tie" });
    expect(problemsOf(model)).toHaveLength(1);
  });

  test("unknown names, and names whose entry cannot be read", () => {
    const model = framed({ wrong: tenon("post", "plat"), other: tenon("post@A9", "plate") });
    const unknown = model.problems.map((p) =>
      p.kind === "unknown-id" ? `${p.sort} ${p.text} ${p.path}` : p.kind,
    );
    expect(unknown).toEqual(["member plat /joints/wrong/into", "stick post@A9 /joints/other/of"]);
    const text = textOf({
      members: { ...FRAME, plate: "{kind: plate, section: 8x9x, walls: [A], top: top}" },
      joints: { head: tenon("post", "plate") },
    });
    expect(modelOf(text, true).problems.filter((p) => p.kind === "joint-apart")).toEqual([]);
  });
});

describe("names of joints", () => {
  test("by the post they stand at, the brace they belong to, the end where one stick has two", () => {
    const model = framed(
      { ends: "{kind: brace-tenon, of: knee, into: [post, plate]}" },
      {
        knee: "{kind: brace, section: 4x6, between: [post, plate], leg: 30 in}",
      },
    );
    const ids = model.joints.map((j) => j.id);
    for (const id of ["post-plate@A1", "tie-post@B2", "ends@A1-A2.foot", "ends@A1-A2.head"])
      expect(ids).toContain(id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});

describe("an end that bears on one timber and grazes another", () => {
  test("has one joint, and stops where that one says", () => {
    const model = build({
      members: {
        tie: "{kind: tie, section: 8x10, bents: [1], top: tie-top}",
        king: "{kind: king-post, section: 6x8, bents: [1], from: tie, to: ridge}",
        plate: "{kind: plate, section: 8x8, walls: [A, B], top: top}",
        ridge: "{kind: ridge, section: 6x9}",
      },
      roof: '{kind: gable, pitch: "12:12", rafters: {section: 2x6, spacing: 24 in, seat: {kind: birds-mouth}, overhang: {eave: 1 ft}}}',
    });
    expect(model.joints.filter((j) => j.of.id === "king@1").map((j) => j.into.id)).toEqual([
      "tie@1",
      "ridge",
    ]);
    const ridge = stick(model, "ridge");
    expectNear(stick(model, "king@1").head.point[2], ridge.origin[2] - 4.5, "the ridge's underside");
  });
});

describe("a timber that ends in a post", () => {
  test("is not joined to a brace on another face of that post, though its end as placed would reach it", () => {
    const model = framed({}, { knee: "{kind: brace, section: 3x5, between: [post, plate], leg: 12 in}" });
    // the knee's foot stands at 87.5 - 12 = 75.5 to 82.6, beside the tie's tenon from 76 to 84
    expect(model.joints.filter((j) => j.of.member === "knee" && j.into.member === "tie")).toEqual([]);
    expect(model.meetings.some((m) => m.a.member === "tie" && m.b.member === "knee")).toBe(false);
    expect(model.joints.filter((j) => j.of.id === "knee@A1-A2").map((j) => j.into.id)).toEqual([
      "post@A1",
      "plate@A",
    ]);
  });
});

test("braces that run into each other are not joined", () => {
  const model = framed({}, { knee: "{kind: brace, section: 4x6, between: [post, plate], leg: 56 in}" });
  // 104 in clear between the posts, 112 in of legs
  const pair = model.meetings.filter((m) => m.a.member === "knee" && m.b.member === "knee");
  expect(pair.length).toBeGreaterThan(0);
  expect(model.joints.filter((j) => j.of.member === "knee" && j.into.member === "knee")).toEqual([]);
});

describe("a brace", () => {
  const girt = "{kind: girt, section: 6x6, walls: [A], from: 1, to: 2, top: 80 in}";
  const knee = "{kind: brace, section: 3x5, between: [post, plate], leg: 30 in}";

  test("joins the timbers that its entry names, and collides with what else runs through it", () => {
    const model = framed({}, { knee, girt });
    const with_ = (kind: string) => model.joints.filter((j) => [j.of, j.into].some((t) => t.member === kind));
    expect(model.meetings.some((m) => m.a.member === "knee" && m.b.member === "girt")).toBe(true);
    expect(with_("knee").some((j) => j.of.member === "girt" || j.into.member === "girt")).toBe(false);
    expect(with_("girt").every((j) => j.into.member === "post")).toBe(true);
  });

  test("acts in the structure through its joints alone", () => {
    const ties = skeletonOf(framed({}, { knee, girt })).ties;
    expect(ties.filter(({ meeting: m }) => m.a.kind === "brace" || m.b.kind === "brace")).toEqual([]);
  });
});
