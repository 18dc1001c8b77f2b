/** Values that cannot be read, are none of the words, or lie outside sense. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, fixed, gate, idsOf } from "./gate.ts";

findingsFixture(
  "wrong-value: not one of the words, and what is allowed",
  gate({
    site: `
      site:
        frost-depth: 30 in
        soil: sant
      #       ^^^^ error wrong-value: Did you mean “sand”? Allowed: sand, gravel, clay
        wind: {speed: 90 mph, exposure: Z, flow: clear}
      #                                 ^ error wrong-value: Use B, C, D.
    `,
    head: `
      frame: Gate
      format: 1
      basis: {loads: asce-7-16, risk-category: i}
    `,
  }),
  { only: ["error"] },
);

test("wrong-value: its fix writes the nearest word", () => {
  const site = "site: {frost-depth: 30 in, soil: gravle}\n";
  expect(fixed(gate({ site }), "wrong-value")).toContain("soil: gravel}");
});

findingsFixture(
  "unreadable-quantity: what it should be and how it is written",
  gate({
    site: `
      site:
        frost-depth: 30 inn
      #              ^^^^^^ error unreadable-quantity: “30 inn” cannot be read as a length, so what depends on it is not checked. Write it like 8 ft 6 1/2 in, 5-1/2 or
        soil: sand
    `,
    members: `
      members:
        post: {kind: post, section: 8x, at: [A1, A2], from: pier-top, to: plate}
      #                             ^^ error unreadable-quantity: “8x” cannot be read as a section
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
  { only: ["error"] },
);

findingsFixture(
  "value-out-of-range: the bounds are said in the units of the file",
  gate({
    head: `
      frame: Gate
      format: 1
      basis: {loads: asce-7-16, risk-category: i}
    `,
    site: `
      site:
        frost-depth: 400 ft
      #              ^^^^^^ error value-out-of-range: “400 ft” makes no sense here, so it is left out: it can be at most 20'-0". Correct the number or its unit.
        soil: sand
        snow: {ground: -1 psf, exposure: sheltered, thermal: open}
      #                ^^^^^^ error value-out-of-range: it cannot be negative
        ground: {1: -301 ft}
      #             ^^^^^^^ error value-out-of-range: it must lie between -300'-0" and 300'-0"
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x70, walls: [A], from: 1, to: 2, top: eave}
      #                               ^^^^ error value-out-of-range: it must lie between 1/2 in and 5'-0"
    `,
  }),
  { only: ["error"] },
);

test("value-out-of-range: frost deeper than 20 ft, nails and screws of no use [common practice, no source]", () => {
  const sample = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
  const said = (from: string, to: string): string[] =>
    findingsOf(sample.replace(from, to)).flatMap(({ finding: { check, path, message } }) =>
      check === "value-out-of-range" ? [`${path} ${message}`] : [],
    );
  expect(said("frost-depth: 32 in", "frost-depth: 300 ft")).toEqual([
    "/site/frost-depth “300 ft” makes no sense here, so it is left out: it can be at most 20'-0\". Correct the number or its unit.",
  ]);
  const screws = "fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 10 in}";
  const nails = (diameter: string, length: string): string =>
    `fasten: {kind: nails, count: 2, diameter: ${diameter}, length: ${length}}`;
  expect(said(screws, nails("1/8 in", "1/8 in"))).toEqual([
    "/roof/rafters/fasten/length “1/8 in” makes no sense here, so it is left out: it must lie between 1/2 in and 48 in. Correct the number or its unit.",
  ]);
  expect(said(screws, nails("3 in", "3 1/2 in"))).toEqual([
    "/roof/rafters/fasten/diameter “3 in” makes no sense here, so it is left out: it must lie between 1/16 in and 1 in. Correct the number or its unit.",
  ]);
  expect(said(screws, nails("1/8 in", "3 in"))).toEqual([]);
});

test("unknown-id: a wood that no table has, with values of its own", () => {
  const text = gate({
    timber:
      'timber: {frame: {species: ironbark, values: {Fb: 2000 psi, E: 2000000 psi}, because: "tested"}}\n',
  });
  const [found] = findingsOf(text).filter(({ finding }) => finding.check === "unknown-id");
  expect(found!.finding.message).toMatch(
    /^“ironbark” is not a species that Bentwright knows, .*: the values stated here need a species beside them, for its weight and for how it holds fasteners\. Name the one of about the same weight; the stated values take the place of its own\. Known: american-beech, /,
  );
});

test("value-out-of-range: the bounds of slopes, speeds and woods", () => {
  const text = gate({
    site: `
      site:
        wind: {speed: 10 mph, exposure: B, flow: clear}
    `,
    roof: "roof: {kind: gable, pitch: 85 deg}\n",
  });
  const said = findingsOf(text)
    .filter(({ finding }) => finding.check === "value-out-of-range")
    .map(({ finding }) => finding.message);
  expect(said).toEqual([
    "“10 mph” makes no sense here, so it is left out: it must lie between 50 mph and 400 mph. Correct the number or its unit.",
    "“85 deg” makes no sense here, so it is left out: it can be at most 60:12. Correct the number or its unit.",
  ]);
});

findingsFixture(
  "value-out-of-range: 300 ft itself is not too far",
  gate({
    site: "site: {frost-depth: 30 in, soil: sand, ground: {1: 0, 2: 0, A: 0}}\n",
    grid: `
    grid:
      walls: {A: 0, B: 300 ft}
      bents: {1: 0, 2: 9 ft}
      levels: {pier-top: 8 in, eave: 8 ft}
  `,
  }).replace(", A: 0}}", "}}"),
);

describe("an inch section in a file of millimetres", () => {
  const metric = gate({
    head: "frame: Gate\nformat: 1\nunits: mm\n",
    grid: "grid: {walls: {A: 0, B: 3000}, bents: {1: 0, 2: 2700}, levels: {pier-top: 200, eave: 2400}}\n",
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      #                             ^^^ error value-out-of-range: “8x8” counts as millimetres in this file, thinner than any timber, so it is left out. Write “8x8 in” if inches are meant.
        plate: {kind: plate, section: 200x200, walls: [A], from: 1, to: 2, top: eave}
    `,
  });

  findingsFixture("value-out-of-range", metric, { only: ["error", "warning"] });

  test("its fix writes the unit, and the rest of the file then makes sense", () => {
    const after = fixed(metric, "value-out-of-range");
    expect(after).toContain("section: 8x8 in");
    expect(idsOf(after)).toEqual([]);
  });
});

findingsFixture(
  "wrong-value: a place that its list names twice is called that",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A1, A2], from: pier-top, to: plate}
      #                                           ^^ error wrong-value: “A1” stands in this list twice; each place is named once. Remove it, or name the place that was meant.
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
);

findingsFixture(
  "value-out-of-range: an E of 1,600 ksi typed as psi, and a timber as thin as paper",
  gate({
    timber: `
      timber:
        frame: {species: eastern-white-pine, grade: no-1, values: {E: 1600 psi}, because: "typed in ksi"}
        #                                                             ^^^^^^^^ error value-out-of-range: it must lie between 150,000 psi and 5,000,000 psi
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 1/16 x 8, walls: [A], from: 1, to: 2, top: eave, overhang: 12 in}
        #                             ^^^^^^^^ error value-out-of-range: it must lie between 1/2 in and 5'-0"
    `,
  }),
  { only: ["error"] },
);
