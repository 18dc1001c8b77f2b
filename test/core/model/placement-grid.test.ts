/** Grid lines as reference faces, sections as they lie, heights, places between lines (placement rules; derived). */
import { describe, expect, test } from "vitest";
import { boxOf, build, expectBox, MM, problem, referenceFaces, stick } from "./frames.ts";

const POSTS = "{kind: post, section: 6x8, at: [A1, A2, A3, B1, B2, B3], from: base, to: top}";

describe("which face lies on a grid line", () => {
  const x = (bents: string, id: string, members = POSTS) =>
    boxOf(stick(build({ bents, members: { post: members } }), id)).x;

  test("outer bents outward, inner ones center", () => {
    const model = build({ members: { post: POSTS } });
    expectBox(model, "post@A1", [0, 6], [0, 8], [0, 96]);
    expectBox(model, "post@A2", [117, 123], [0, 8], [0, 96]);
    expectBox(model, "post@B3", [234, 240], [136, 144], [0, 96]);
    expect(referenceFaces(stick(model, "post@A1"))).toEqual(["-x", "-y"]);
    expect(referenceFaces(stick(model, "post@A2"))).toEqual(["-x", "-y"]);
    expect(referenceFaces(stick(model, "post@B3"))).toEqual(["+x", "+y"]);
  });

  test("center, also on outer lines", () => {
    const bents = "{1: {at: 0, reference: center}, 2: 10 ft, 3: {at: 20 ft, reference: center}}";
    expect(x(bents, "post@A1")).toEqual([-3, 3]);
    expect(x(bents, "post@B3")).toEqual([237, 243]);
  });

  test("toward-1: the face toward bent 1 is the one on the line, and the reference face", () => {
    const bents = "{1: 0, 2: {at: 10 ft, reference: toward-1}, 3: {at: 20 ft, reference: toward-1}}";
    expect(x(bents, "post@A2")).toEqual([120, 126]);
    expect(x(bents, "post@A3")).toEqual([240, 246]);
    const model = build({ bents, members: { post: POSTS } });
    expect(referenceFaces(stick(model, "post@A3"))).toEqual(["-x", "-y"]);
  });

  test("toward-a on the last wall", () => {
    const model = build({ walls: "{A: 0, B: {at: 12 ft, reference: toward-a}}", members: { post: POSTS } });
    expect(boxOf(stick(model, "post@B1")).y).toEqual([144, 152]);
    expect(referenceFaces(stick(model, "post@B1"))).toEqual(["-x", "-y"]);
  });

  test("outward says what outer lines do anyway", () => {
    const bents = "{1: {at: 0, reference: outward}, 2: 10 ft, 3: {at: 20 ft, reference: outward}}";
    expect(x(bents, "post@A1")).toEqual([0, 6]);
    expect(x(bents, "post@A3")).toEqual([234, 240]);
  });

  test("inner walls are centered", () => {
    const model = build({
      walls: "{A: 0, B: 6 ft, C: 12 ft}",
      members: { post: "{kind: post, section: 6x8, at: [B2], from: base, to: top}" },
    });
    expectBox(model, "post@B2", [117, 123], [68, 76], [0, 96]);
  });

  test("the order of lines in the file does not make a line an outer one", () => {
    expect(x("{2: 10 ft, 3: 20 ft, 1: 0}", "post@A1")).toEqual([0, 6]);
    expect(x("{3: 20 ft, 1: 0, 2: 10 ft}", "post@A2")).toEqual([117, 123]);
  });
});

describe("sections as they lie", () => {
  const section = (entry: string, id: string, timber?: string) => {
    const t = stick(build({ members: { m: entry }, ...(timber ? { timber } : {}) }), id);
    return [t.width, t.depth];
  };
  const planed = "{frame: {species: eastern-white-pine, grade: no-1, seasoning: dry, surface: planed}}";

  test("width by depth: depth across the bent in a post, upright in a lying timber", () => {
    const model = build({
      members: {
        post: POSTS,
        plate: "{kind: plate, section: 6x9, walls: [A], top: top}",
        tie: "{kind: tie, section: 6x9, bents: [2], top: tie-top}",
      },
    });
    expectBox(model, "plate@A", [0, 240], [0, 6], [87, 96]);
    const tie = boxOf(stick(model, "tie@2"));
    expect(tie.x).toEqual([117, 123]);
    expect(tie.z).toEqual([75, 84]);
  });

  test("turned swaps them", () => {
    expect(
      section("{kind: post, section: 6x8, turned: true, at: [A1], from: base, to: top}", "m@A1"),
    ).toEqual([8, 6]);
    expect(section("{kind: plate, section: 4x10, turned: true, walls: [A], top: top}", "m@A")).toEqual([
      10, 4,
    ]);
  });

  test("nominal and planed sizes are dressed, once (memory: PS 20)", () => {
    const post = (size: string) => `{kind: post, section: ${size}, at: [A1], from: base, to: top}`;
    expect(section(post("2x8 nominal"), "m@A1")).toEqual([1.5, 7.25]);
    expect(section(post("8x8"), "m@A1", planed)).toEqual([7.5, 7.5]);
    expect(section(post("2x8 nominal"), "m@A1", planed)).toEqual([1.5, 7.25]);
    expect(section(post("8x8"), "m@A1")).toEqual([8, 8]);
  });

  test("a planed post stands with its true face on the line", () => {
    const model = build({
      timber: planed,
      members: { post: "{kind: post, section: 8x8, at: [A1, B3], from: base, to: top}" },
    });
    expectBox(model, "post@A1", [0, 7.5], [0, 7.5], [0, 96]);
    expectBox(model, "post@B3", [232.5, 240], [136.5, 144], [0, 96]);
  });
});

describe("heights", () => {
  test("top and bottom put that face at a level or a length", () => {
    const model = build({
      members: {
        high: "{kind: beam, section: 6x9, walls: [A], top: top}",
        low: "{kind: beam, section: 6x9, walls: [B], bottom: 2 ft}",
      },
    });
    expect(boxOf(stick(model, "high@A")).z).toEqual([87, 96]);
    expect(boxOf(stick(model, "low@B")).z).toEqual([24, 33]);
  });

  test("a post ends at the near face of the timber it names, below and above", () => {
    const model = build({
      members: {
        sill: "{kind: sill, section: 8x6, walls: [A], bottom: base}",
        plate: "{kind: plate, section: 8x9, walls: [A], top: top}",
        post: "{kind: post, section: 8x8, at: [A1, A2], from: sill, to: plate}",
      },
    });
    expectBox(model, "post@A1", [0, 8], [0, 8], [6, 87]);
  });

  test("a post on the pier's top stands its stand-off above it: as written, 1 in when nothing is said", () => {
    const pier = (anchor: string) => ({
      all: `{under: post, kind: tube, diameter: 12 in, depth: 40 in${anchor}}`,
    });
    const foot = (anchor: string): number =>
      boxOf(stick(build({ members: { post: POSTS }, piers: pier(anchor) }), "post@A1")).z[0];
    expect(foot(", anchor: {kind: post-base, stand-off: 2 in}")).toBe(2);
    expect(foot(", anchor: {kind: post-base}")).toBe(1);
    expect(foot("")).toBe(1);
  });
});

describe("places between grid lines", () => {
  const model = build({
    members: {
      beam: "{kind: beam, section: 6x8, walls: [B], top: 4 ft}",
      post: "{kind: post, section: 6x6, at: [B1, B@4 ft 9 in, B2], from: base, to: beam}",
    },
  });

  test("stand so far from the first bent, centered", () => {
    expectBox(model, "post@B@4-ft-9-in", [54, 60], [138, 144], [0, 40]);
    expectBox(model, "post@B1", [0, 6], [138, 144], [0, 40]);
  });

  test("count from the first bent, wherever it lies", () => {
    const moved = build({
      bents: "{1: 5 ft, 2: 15 ft}",
      members: { post: "{kind: post, section: 6x6, at: [A@2 ft], from: base, to: top}" },
    });
    expect(boxOf(stick(moved, "post@A@2-ft")).x).toEqual([81, 87]); // 60 + 24 ± 3
  });
});

describe("millimetre files", () => {
  test("bare numbers are millimetres", () => {
    const model = build({
      units: "mm",
      walls: "{A: 0, B: 3000}",
      bents: "{1: 0, 2: 2500}",
      levels: "{base: 0, top: 2400}",
      members: { post: "{kind: post, section: 150x200, at: [B2], from: base, to: top}" },
    });
    expectBox(model, "post@B2", [2350, 2500], [2800, 3000], [0, 2400], MM);
  });
});

describe("posts and what is narrower than they are", () => {
  const model = (plate: string, post = "8x12") =>
    build({
      members: {
        post: `{kind: post, section: ${post}, at: [A1, A3], from: base, to: plate}`,
        plate,
      },
    });

  test("a plate flush with the outside of deeper posts lies over them, though not over their middles", () => {
    // the plate takes y 0 to 5, the posts 0 to 12
    expectBox(
      model("{kind: plate, section: 5x8, walls: [A], top: top}"),
      "post@A1",
      [0, 8],
      [0, 12],
      [0, 88],
    );
  });

  test("one that takes less than an inch of the end is not over it", () => {
    const far = model("{kind: plate, section: 5x8, walls: [B], top: top}");
    expect(problem(far, "placement-missing").needs).toEqual(["plate here"]);
  });
});
