import { describe, expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, fixed, gate, idsOf } from "./gate.ts";

findingsFixture(
  "side-cover-short: less than three inches",
  gate({
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 12 in, depth: 40 in, anchor: {kind: embedded-strap}}
      #                                          ^^^^^ warning side-cover-short: all@A1 is 12 in across, which leaves 2 in of concrete beside the straps of a timber 8 in wide, less than 3 in: the concrete breaks out under uplift. Take 14 in or more. The same holds at all@A2.
    `,
  }),
);

findingsFixture(
  "side-cover-short: less than two is an error, also where the timber is wider than the tube",
  gate({
    piers: `
      piers:
        first: {under: post@A1, kind: tube, diameter: 11 3/4 in, depth: 40 in, anchor: {kind: embedded-strap}}
      #                                               ^^^^^^^^^ error side-cover-short: leaves 1 7/8 in
        second: {under: post@A2, kind: tube, diameter: 6 in, depth: 40 in, anchor: {kind: embedded-strap}}
      #                                                ^^^^ error side-cover-short: leaves 0 in
    `,
  }),
);

findingsFixture(
  "side-cover-short: beside a pad’s straps too, where it says how wide it is",
  gate({
    piers: `
      piers:
        all: {under: post, kind: pad, width: 12 in, depth: 40 in, anchor: {kind: embedded-strap}}
      #                                      ^^^^^ warning side-cover-short: all@A1 is 12 in across, which leaves 2 in of concrete beside the straps
    `,
  }),
);

findingsFixture(
  "side-cover-short: three inches are enough, and other anchors are not judged by it",
  gate({
    piers: `
      piers:
        first: {under: post@A1, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
        second: {under: post@A2, kind: tube, diameter: 10 in, depth: 40 in, anchor: {kind: dowel}}
    `,
  }),
);

describe("side-cover-short", () => {
  const slim = (diameter: string, section: string, head?: string): string =>
    gate({
      ...(head === undefined ? {} : { head }),
      piers: `piers: {all: {under: post, kind: tube, diameter: ${diameter}, depth: 40 in, anchor: {kind: embedded-strap}}}\n`,
    }).replace("section: 8x8, at", `section: ${section}, at`);

  test("its fix takes the next tube on sale for the real timber", () => {
    const after = fixed(slim("12 in", "7 1/2 x 8 1/4"), "side-cover-short");
    expect(after).toContain("diameter: 16 in");
  });

  test("and of a pad the next width", () => {
    const pad = slim("12 in", "8x8").replace("kind: tube, diameter:", "kind: pad, width:");
    expect(fixed(pad, "side-cover-short")).toContain("width: 14 in");
  });

  test("and one in steps of 50 mm in a file of millimetres", () => {
    const head = "frame: Gate\nformat: 1\nunits: mm\n";
    const metric = slim("250", "200x200", head).replace("section: 8x8", "section: 200x200");
    expect(fixed(metric, "side-cover-short")).toContain("diameter: 400 mm");
  });
});

findingsFixture(
  "pier-above-frost: a sixteenth above the frost",
  gate({
    site: `
      site: {frost-depth: 40 1/16 in, soil: sand}
    `,
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
      #                                                        ^^^^^ error pier-above-frost: all@A1 ends 40 in below the lowest ground beside it. Frost goes down 40 1/16 in, and freezing ground lifts what stands in it. Go 1/16 in deeper. The same holds at all@A2.
    `,
  }),
);

findingsFixture(
  "pier-above-frost: down to the frost is enough, and the footing counts",
  gate({
    site: `
      site: {frost-depth: 40 in, soil: sand}
    `,
    piers: `
      piers:
        first: {under: post@A1, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
        second: {under: post@A2, kind: tube, diameter: 14 in, depth: 32 in, footing: {diameter: 20 in, thickness: 8 in}, anchor: {kind: embedded-strap}}
    `,
  }),
);

findingsFixture(
  "pier-above-frost: a foot at least where it hardly freezes",
  gate({
    site: `
      site: {frost-depth: 4 in, soil: sand}
    `,
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 14 in, depth: 11 in, anchor: {kind: embedded-strap}}
      #                                                        ^^^^^ error pier-above-frost: A footing goes at least 12 in into undisturbed ground. Go 1 in deeper.
    `,
  }),
);

test("pier-above-frost: the depth counts from the lowest ground beside the pier, worst place first", () => {
  const site = "site: {frost-depth: 40 in, soil: sand, ground: {1: 0, 2: -18 in}}\n";
  const [only, ...others] = findingsOf(gate({ site })).filter(
    ({ finding }) => finding.check === "pier-above-frost",
  );
  expect(others).toEqual([]);
  // the ground falls 18 in over 9 ft, so 7 in from the post's center it lies another inch and a bit lower or higher
  // (and with the fall the gate stands higher than 8 ft, which asks for the wind)
  expect(idsOf(gate({ site: site.replace("40 in", "39 in") }))).toEqual(["site-value-missing"]);
  expect(only).toBeUndefined();
});

const BARS = "rebar: {count: 3, size: 4}";
/** @param more of the pier */
const onRock = (depth: string, more = "", soil = "bedrock"): string =>
  gate({
    site: `site: {frost-depth: 30 in, soil: ${soil}}\n`,
    piers: `piers: {all: {under: post, kind: tube, diameter: 14 in, depth: ${depth}, anchor: {kind: embedded-strap}${more}}}\n`,
  });

test("pier-above-frost: rock does not heave", () => {
  expect(idsOf(onRock("8 in", `, ${BARS}`))).toEqual([]);
  expect(idsOf(onRock("8 in", `, ${BARS}`, "gravel"))).toEqual(["pier-above-frost"]);
});

findingsFixture(
  "pier-on-rock-loose: a shallow pier on rock asks for bars in it",
  gate({
    site: "site: {frost-depth: 30 in, soil: bedrock}\n",
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 14 in, depth: 8 in, anchor: {kind: embedded-strap}}
      # ^^^ warning pier-on-rock-loose: all@A1 stands on rock 8 in below the ground, and nothing pins it there: a push slides it off. Drill bars into the rock, grout them in, and write them as “rebar: {count: 3, size: 4}”; 30 in deep it would need none. The same holds at all@A2.
    `,
  }),
);

describe("pier-on-rock-loose", () => {
  test("its fix names the bars", () => {
    const [only, ...others] = findingsOf(onRock("8 in"));
    expect(others).toEqual([]);
    expect(only?.finding).toMatchObject({ value: 8, limit: 30, unit: "in" });
    expect(fixed(onRock("8 in"), "pier-on-rock-loose")).toContain(BARS);
  });
  test("as deep as in earth it needs none, and other soil is not rock", () => {
    expect(idsOf(onRock("29 15/16 in"))).toEqual(["pier-on-rock-loose"]);
    expect(idsOf(onRock("30 in"))).toEqual([]);
    expect(idsOf(onRock("30 in", "", "sand"))).toEqual([]);
  });
});

describe("pier-above-frost", () => {
  const shallow = gate({
    piers:
      "piers: {all: {under: post, kind: tube, diameter: 14 in, depth: 20 in, footing: {diameter: 20 in, thickness: 6 1/2 in}, anchor: {kind: embedded-strap}}}\n",
  });

  test("its fix digs to the next whole inch, footing counted", () => {
    const after = fixed(shallow, "pier-above-frost");
    expect(after).toContain("depth: 24 in");
    expect(idsOf(after)).toEqual([]);
  });

  test("and to the next centimetre in a file of millimetres", () => {
    const metric = shallow.replace("format: 1", "format: 1\nunits: mm").replaceAll("8x8", "200x200");
    expect(fixed(metric.replace("14 in", "400"), "pier-above-frost")).toContain("depth: 600 mm");
  });

  test("it leads to the frost depth, with the number and its limit", () => {
    const [found] = findingsOf(shallow);
    expect(found?.finding).toMatchObject({
      value: 26.5,
      limit: 30,
      unit: "in",
      places: ["all@A1", "all@A2"],
    });
    expect(found?.finding.related).toEqual([{ path: "/site/frost-depth", message: "frost depth" }]);
  });
});

findingsFixture(
  "pier-depth-missing: at the entry, and its posts are not blamed for it",
  gate({
    piers: `
      piers:
        all: {under: post@A1, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
        other: {under: post@A2, kind: tube, diameter: 14 in, anchor: {kind: embedded-strap}}
      # ^^^^^ error pier-depth-missing: other has no depth, so there is no pier to check: neither frost, nor side cover, nor what the ground carries. Frost goes down 30 in here: write “depth: 30 in” or more.
    `,
  }),
);

describe("pier-depth-missing", () => {
  const piers = "piers: {all: {under: post, kind: tube, diameter: 14 in, anchor: {kind: embedded-strap}}}\n";

  test("its fix digs down to the frost", () => {
    expect(fixed(gate({ piers }), "pier-depth-missing")).toContain("depth: 30 in");
  });

  test("without a frost depth there is nothing to propose", () => {
    const found = findingsOf(gate({ piers, site: "site: {soil: sand}\n" })).map(({ finding }) => finding);
    const missing = found.find(({ check }) => check === "pier-depth-missing");
    expect(missing?.message).toContain("below the frost of the place");
    expect(missing?.fixes()).toEqual([]);
  });

  test("a depth that cannot be read has its own finding", () => {
    expect(idsOf(gate({ piers: piers.replace("14 in,", "14 in, depth: 4o in,") }))).toEqual([
      "unreadable-quantity",
    ]);
  });
});

findingsFixture(
  "piers-missing: one note, at the level that a post stands on",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      #                                                      ^^^^^^^^ note piers-missing: The file has no piers, so nothing about the ground under post@A1 and 1 more is checked: no frost, no bearing, no uplift.
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
    piers: "",
  }),
  { whole: true, only: ["note"] },
);

findingsFixture(
  "pier-twice: two entries under one post, at the later one",
  gate({
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
        more: {under: post@A1, kind: tube, diameter: 16 in, depth: 48 in, anchor: {kind: embedded-strap}}
      # ^^^^ error pier-twice: more@A1 and all@A1 both stand under post@A1: only one can be dug, and which sizes hold is not clear.
    `,
  }),
);

const onBeam = (places: string): string =>
  gate({
    members: `
      members:
        beam: {kind: beam, section: 8x8, walls: [A], from: 1, to: 2, bottom: 2 ft}
    `,
    joints: "",
    piers: `piers: {row: {under: beam, at: [${places}], kind: tube, diameter: 14 in, depth: 40 in}}\n`,
  });

test("pier-twice: piers along a beam need their diameter between them", () => {
  expect(idsOf(onBeam("A1, A@18 in, A2"))).not.toContain("pier-twice");
  const [found] = findingsOf(onBeam("A1, A@16 in, A2")).map(({ finding }) => finding);
  expect(found).toMatchObject({ check: "pier-twice", limit: 14, unit: "in" });
  expect(found?.message).toContain("they run into one another");
});

test("pier-twice: an entry that names its place goes before one for all posts", () => {
  const piers = `
    piers:
      all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
      deep: {under: post, at: [A1], kind: tube, diameter: 14 in, depth: 60 in, anchor: {kind: embedded-strap}}
  `;
  expect(idsOf(gate({ piers }))).toEqual([]);
});

findingsFixture(
  "wood-near-earth: posts buried in the earth",
  gate({
    site: `
      site: {frost-depth: 30 in, soil: sand, ground: {1: 20 in, 2: 20 in}}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      #                                                      ^^^^^^^^ error wood-near-earth: below the ground: wood in the earth rots within years, just where it carries the frame. Raise what it stands on to 6 in above the ground. The same holds at post@A2.
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
      #                                                                     ^^^^ note headroom-low: There is 5'-8" under plate@A above the ground
    `,
  }),
);

findingsFixture(
  "wood-near-earth: less than 6 in of air (IRC R317.1.4, memory), worst place first",
  gate({
    site: `
      site: {frost-depth: 30 in, soil: sand, ground: {1: 3 in, 2: 4 in}}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      #                                                      ^^^^^^^^ warning wood-near-earth: post@A2 ends 5 1/8 in above the ground, less than 6 in
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
);

describe("wood-near-earth", () => {
  const levels = (top: string, ground: string): string[] =>
    idsOf(
      gate({
        site: `site: {frost-depth: 30 in, soil: sand${ground}}\n`,
        grid: `grid: {walls: {A: 0, B: 10 ft}, bents: {1: 0, 2: 9 ft}, levels: {pier-top: ${top}, eave: 8 ft}}\n`,
      }),
    );

  test("six inches are enough", () => expect(levels("6 in", ", ground: {1: 0, 2: 0}")).toEqual([]));

  test("without the height of the ground only what lies below 0 is noted", () => {
    expect(levels("2 in", "")).toEqual([]);
    expect(levels("-6 in", "")).toEqual(["wood-near-earth"]);
  });

  test("a lying timber counts with its underside", () => {
    const sill = (ground: string): string[] =>
      idsOf(onBeam("A1, A2").replace("soil: sand", `soil: sand, ground: {1: 0, 2: ${ground}}`));
    expect(sill("18 in")).not.toContain("wood-near-earth");
    expect(sill("19 in")).toContain("wood-near-earth");
  });
});

/** @param pier its shape and bars */
const barred = (pier: string): string =>
  gate({ piers: `piers:\n  all: {under: post, ${pier}, depth: 40 in, anchor: {kind: dowel}}\n` });

findingsFixture(
  "bars-crowded: a slim tube, with the cover of ACI 318-19 Table 20.5.1.3.1 (published), 1 1/2 in between bars (memory)",
  gate({
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 6 in, depth: 40 in, anchor: {kind: dowel}, rebar: {count: 4, size: 4}}
      #                                                                                     ^^^^^ warning bars-crowded: all@A1 is 6 in across: with 1 1/2 in of concrete outside them its 4 bars No.4 stand 1.268 in apart, less than 1 1/2 in; stones jam between them and leave voids. Take 8 in, or fewer bars or thinner ones. The same holds at all@A2.
    `,
  }),
);

describe("bars-crowded", () => {
  // by hand: 6 − 2 × 1 1/2 − 1/2 = 2 1/2 in; 2 1/2 × sin(180°/3) − 1/2 = 1.665 in, with four 1.268 in
  test("three bars stand far enough apart where four do not", () =>
    expect(idsOf(barred("kind: tube, diameter: 6 in, rebar: {count: 3, size: 4}"))).toEqual([]));
  test("from No.6 on the cover is 2 in: 7 − 4 − 3/4 = 2 1/4 in; of four, 2 1/4 × sin 45° − 3/4 = 0.841 in", () => {
    const [found] = findingsOf(barred("kind: tube, diameter: 7 in, rebar: {count: 4, size: 6}"));
    expect(found?.finding.value).toBeCloseTo(2.25 * Math.SQRT1_2 - 0.75, 9);
    expect(found?.finding.limit).toBe(1.5);
  });
  test("a single bar only needs its cover, in a pad 3 in against the earth", () => {
    expect(idsOf(barred("kind: pad, width: 6 1/2 in, rebar: {count: 1, size: 4}"))).toEqual([]);
    const tight = barred("kind: pad, width: 6 in, rebar: {count: 1, size: 4}");
    expect(idsOf(tight)).toEqual(["bars-crowded"]);
    expect(findingsOf(tight)[0]?.finding.message).toContain(
      "no room for its bars (1 of No.4) with 3 in of concrete",
    );
    expect(fixed(tight, "bars-crowded")).toContain("width: 8 in");
  });
  test("its fix takes the next tube", () =>
    expect(fixed(barred("kind: tube, diameter: 6 in, rebar: {count: 4, size: 4}"), "bars-crowded")).toContain(
      "diameter: 8 in",
    ));
});
