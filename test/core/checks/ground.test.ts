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
  expect(idsOf(gate({ site: site.replace("40 in", "39 in") }))).toEqual([]);
  expect(only).toBeUndefined();
});

test("pier-above-frost: rock does not heave", () => {
  const shallow =
    "piers: {all: {under: post, kind: tube, diameter: 14 in, depth: 8 in, anchor: {kind: embedded-strap}}}\n";
  const on = (soil: string): string[] =>
    idsOf(gate({ site: `site: {frost-depth: 30 in, soil: ${soil}}\n`, piers: shallow }));
  expect([on("bedrock"), on("gravel")]).toEqual([[], ["pier-above-frost"]]);
});

describe("pier-above-frost", () => {
  const shallow = gate({
    piers:
      "piers: {all: {under: post, kind: tube, diameter: 14 in, depth: 20 in, footing: {diameter: 20 in, thickness: 5 1/2 in}, anchor: {kind: embedded-strap}}}\n",
  });

  test("its fix digs to the next whole inch, footing counted", () => {
    const after = fixed(shallow, "pier-above-frost");
    expect(after).toContain("depth: 25 in");
    expect(idsOf(after)).toEqual([]);
  });

  test("and to the next centimetre in a file of millimetres", () => {
    const metric = shallow.replace("format: 1", "format: 1\nunits: mm").replaceAll("8x8", "200x200");
    expect(fixed(metric.replace("14 in", "400"), "pier-above-frost")).toContain("depth: 630 mm");
  });

  test("it leads to the frost depth, with the number and its limit", () => {
    const [found] = findingsOf(shallow);
    expect(found?.finding).toMatchObject({
      value: 25.5,
      limit: 30,
      unit: "in",
      places: ["all@A1", "all@A2"],
    });
    expect(found?.finding.related).toEqual([{ path: "/site/frost-depth", message: "frost depth" }]);
  });
});
