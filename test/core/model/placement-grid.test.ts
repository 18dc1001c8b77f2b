/** Grid lines as reference faces, sections as they lie, heights, and what `from` and `to` may name (placement rules, derived). */
import { describe, expect, test } from "vitest";
import {
  boxOf,
  build,
  expectBox,
  expectNear,
  idsOf,
  joint,
  MM,
  modelOf,
  problem,
  problemsOf,
  referenceFaces,
  stick,
  textOf,
} from "./frames.ts";

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

describe("frames that lack something", () => {
  test("no roof, one bent, one wall", () => {
    const model = build({
      walls: "{A: 0}",
      bents: "{1: 0}",
      members: { post: "{kind: post, section: 6x6, at: [A1], from: base, to: top}" },
    });
    expectBox(model, "post@A1", [0, 6], [0, 6], [0, 96]);
    expect(model.roof).toBeUndefined();
    const beam = build({
      bents: "{1: 0}",
      members: { m: "{kind: beam, section: 6x6, walls: [A], top: top}" },
    });
    expect(problemsOf(beam)).toEqual(["no-length /members/m"]);
    const over = build({
      bents: "{1: 0}",
      members: { m: "{kind: beam, section: 6x6, walls: [A], top: top, overhang: 2 ft}" },
    });
    expect(boxOf(stick(over, "m@A")).x).toEqual([-24, 24]);
  });

  test("a timber without height or end is said, with the keys that would do", () => {
    const model = build({
      members: {
        plate: "{kind: plate, section: 8x9, walls: [A]}",
        post: "{kind: post, section: 8x8, at: [A1], from: base}",
        knee: "{kind: brace, section: 4x6, between: [post, plate]}",
      },
    });
    expect(problem(model, "placement-missing")).toMatchObject({
      path: "/members/plate",
      needs: ["top", "bottom"],
    });
    expect(problemsOf(model)).toEqual([
      "placement-missing /members/plate",
      "placement-missing /members/post",
    ]);
  });

  test("zero and negative lengths are said and not placed", () => {
    const model = build({
      members: {
        a: "{kind: post, section: 6x6, at: [A1], from: top, to: base}",
        b: "{kind: beam, section: 6x6, walls: [A], top: top, from: 2, to: 2}",
      },
    });
    expect(problemsOf(model)).toEqual(["no-length /members/a", "no-length /members/b"]);
    expect(problem(model, "no-length")).toMatchObject({ stick: "a@A1", length: -96 });
  });

  test("timbers that wait for each other are said, not waited for", () => {
    const model = build({
      members: {
        low: "{kind: post, section: 6x6, at: [A1], from: base, to: high}",
        high: "{kind: beam, section: 6x6, walls: [A], top: top, from: low}",
      },
    });
    expect(problem(model, "placement-circular").chain).toEqual(["low", "high", "low"]);
    const own = build({ members: { post: "{kind: post, section: 6x6, at: [A1], from: base, to: post}" } });
    expect(problemsOf(own)).toEqual(["placement-circular /members/post"]);
  });

  test("unknown names: line, place, level, class, with what is known", () => {
    const model = build({
      members: {
        plate: "{kind: plate, section: 8x9, walls: [C], top: top}",
        post: "{kind: post, section: 8x8, at: [A1, A7], from: base, to: top}",
        beam: "{kind: beam, section: 8x8, walls: [A], top: tops}",
        tie: "{kind: tie, section: 8x8, bents: [1], top: tie-top, timber: oak}",
      },
    });
    const sorts = model.problems.map((p) =>
      p.kind === "unknown-id" ? `${p.sort} ${p.text} ${p.path}` : p.kind,
    );
    expect(sorts.sort()).toEqual([
      "level tops /members/beam/top",
      "place A7 /members/post/at/1",
      "timber-class oak /members/tie/timber",
      "wall C /members/plate/walls/0",
    ]);
    expect(idsOf(model, "post")).toEqual(["post@A1"]);
  });

  test("whoever names an entry that cannot be read keeps silent", () => {
    const text = textOf({
      members: {
        plate: "{kind: plate, section: 8x9x, walls: [A], top: top}",
        post: "{kind: post, section: 8x8, at: [A1], from: base, to: plate}",
        knee: "{kind: brace, section: 4x6, between: [post, plate], leg: 2 ft}",
      },
      joints: { head: "{kind: mortise-and-tenon, of: post, into: plate}" },
    });
    expect(problemsOf(modelOf(text, true))).toEqual([]);
  });

  test("a place named twice has one stick", () => {
    const model = build({
      members: { post: "{kind: post, section: 8x8, at: [A1, A1], from: base, to: top}" },
    });
    expect(model.timbers).toHaveLength(1);
    expect(model.joints).toEqual([]);
  });

  test("names: levels, members and joints share one set", () => {
    const model = build({
      members: { top: "{kind: post, section: 8x8, at: [A1], from: base, to: 5 ft}" },
    });
    expect(problem(model, "duplicate-id")).toMatchObject({ path: "/members/top", first: "/grid/levels/top" });
  });
});

describe("timber classes", () => {
  const members = {
    post: "{kind: post, section: 8x8, at: [A1], from: base, to: top}",
    beam: "{kind: beam, section: 8x8, walls: [A], top: 4 ft, timber: oak}",
  };
  const species = (name: string) => `{species: ${name}, grade: no-1}`;

  test("named, or frame, or the only one", () => {
    const both = build({
      members,
      timber: `{oak: ${species("white-oak")}, frame: ${species("eastern-hemlock")}}`,
    });
    expect(stick(both, "post@A1").class?.name).toBe("frame");
    expect(stick(both, "beam@A").class?.name).toBe("oak");
    const one = build({ members, timber: `{pegs: ${species("white-oak")}, oak: ${species("white-oak")}}` });
    expect(stick(one, "post@A1").class?.name).toBe("oak");
  });

  test("of several none is guessed, whatever their order", () => {
    for (const order of [
      ["oak", "pine"],
      ["pine", "oak"],
    ]) {
      const model = build({
        members,
        timber: `{${order.map((n) => `${n}: ${species("white-oak")}`).join(", ")}}`,
      });
      expect(stick(model, "post@A1").class).toBeUndefined();
      expect(problem(model, "two-readings")).toMatchObject({
        path: "/timber",
        what: "timber-class",
        readings: ["oak", "pine"],
      });
      expect(problemsOf(model)).toHaveLength(1);
    }
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
