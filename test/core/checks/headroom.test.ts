/** How high one walks: IRC 2021 R305.1.1, beams: 6 ft 4 in (memory). */
import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, gate } from "./gate.ts";

/** The gate with the plate's top at a height; @param marker the line under the members, @param parts that differ */
const low = (eave: string, marker: string, parts: Parameters<typeof gate>[0] = {}): string =>
  gate({
    grid: `
      grid:
        walls: {A: 0, B: 10 ft}
        bents: {1: 0, 2: 9 ft}
        levels: {pier-top: 8 in, eave: ${eave}}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
      ${marker}
    `,
    ...parts,
  });
const PEOPLED = { head: "frame: Gate\nformat: 1\nbasis: {loads: asce-7-16, risk-category: ii}\n" };

// IRC 2021 R305.1.1, beams: 6 ft 4 in (memory); the plate is 8 in deep
findingsFixture("headroom-low: 6 ft 4 in are enough", low("7 ft", "", PEOPLED));
findingsFixture(
  "headroom-low: a sixteenth less is a note",
  low(
    "83 15/16 in",
    `#                                                                     ^^^^ note headroom-low: There is 6'-3 15/16" under plate@A above the ground, less than 6'-4": where people walk, set it 1/16 in higher`,
  ),
);
test.each([
  // 76 in are 1930.4 mm
  [
    "units: mm\n",
    "2133.2 mm",
    "There is 1,930 mm under plate@A above the ground, less than 1,930.4 mm: ",
    "1 mm",
  ],
  [
    "units: mm\n",
    "2133.57 mm",
    "There is 1,930.3 mm under plate@A above the ground, less than 1,930.4 mm: ",
    "1 mm",
  ],
  ["", "83.99 in", "There is 75.99 in under plate@A above the ground, less than 76 in: ", "1/16 in"],
  ["", "83.998 in", "There is 75.99 in under plate@A above the ground, less than 76 in: ", "1/16 in"],
])("headroom-low: a little less reads as less: %s%s", (units, eave, said, more) => {
  const head = `frame: Gate\nformat: 1\n${units}`;
  const file = low(eave, "", { head }).replaceAll("8x8", "8 in x 8 in").replace("B: 10 ft", "B: 3000 mm");
  expect(heard(file)).toEqual([
    `${said}where people walk, set it ${more} higher, or they strike their heads.`,
  ]);
});
findingsFixture(
  "headroom-low: where people live or gather it is a warning",
  low(
    "6 ft 6 in",
    `#                                                                     ^^^^ warning headroom-low: There is 5'-10" under plate@A above the ground`,
    PEOPLED,
  ),
);
// ASCE 7 Table 1.5-1: only category i is of low hazard to people, barns and sheds
test.each([
  ["i", "note"],
  ["iii", "warning"],
  ["iv", "warning"],
] as const)("headroom-low: with risk category %s it is a %s", (category, level) => {
  const head = PEOPLED.head.replace("risk-category: ii", `risk-category: ${category}`);
  const found = findingsOf(low("6 ft 6 in", "", { head })).filter(
    ({ finding }) => finding.check === "headroom-low",
  );
  expect(found.map(({ finding }) => finding.level)).toEqual([level]);
});
findingsFixture(
  "headroom-low: the ground may rise under it",
  low(
    "7 ft",
    `#                                                                     ^^^^ note headroom-low: There is 6'-1" under plate@A above the ground`,
    {
      site: "site: {frost-depth: 30 in, soil: sand, ground: {1: 0, 2: 3 in}}\n",
    },
  ),
);
findingsFixture("headroom-low: nobody walks where there are less than 4 ft", low("55 in", ""));
findingsFixture(
  "headroom-low: nor through a closed side",
  low("6 ft 6 in", "", {
    site: "site: {frost-depth: 30 in, soil: sand}\n#@0-4 warning site-value-missing: when it has siding\n",
    roof: "siding: {A: {}}\n",
  }),
);

const heard = (file: string): readonly string[] =>
  findingsOf(file)
    .filter(({ finding }) => finding.check === "headroom-low")
    .map(({ finding }) => finding.message);

test("headroom-low: one stands on the boards of a floor where there is one below", () => {
  const text = `frame: Deck
format: 1
grid: {walls: {A: 0, B: 10 ft}, bents: {1: 0, 2: 54 in, 3: 9 ft}, levels: {deck: 10 in, top: 7 ft}}
members:
  sill: {kind: sill, section: 8x8, bents: [1, 3], from: A, to: B, top: deck}
  joist: {kind: joist, section: 4x6, between: [sill@1, sill@3], from: A, to: B, spacing: 24 in, top: deck}
  beam: {kind: beam, section: 6x8, bents: [2], from: A, to: B, top: top}
`;
  // underside at 76 in: enough over the ground at 0, 65 in over boards at 11 in
  // a floor that names a weight alone may lie on anything: one stands on its joists, 66 in under the beam
  const floor = (more: string): readonly string[] =>
    heard(`${text}floors: {stage: {on: joist, live: 40 psf${more}}}\n`);
  expect(heard(text)).toEqual([]);
  expect(floor(", dead: 5 psf")).toEqual([expect.stringContaining("There is 5'-6\" under beam@2")]);
  // where it names neither deck nor weight, usual boards of 1 in count, as they do where they are judged for their load
  expect(floor("")).toEqual([expect.stringContaining("There is 5'-5\" under beam@2")]);
  expect(floor(", deck: {kind: boards, thickness: 1 in}")).toEqual([
    "There is 5'-5\" under beam@2 above the floor stage, less than 6'-4\": where people walk, set it 11 in higher, or they strike their heads.",
  ]);
});

test("headroom-low: a beam is looked at over the whole of a floor, however narrow, and over bare ground beside it", () => {
  // boards 21 in over the ground from 42 to 90 in along a beam of 16 ft, whose underside is at 82 in
  const strip = (from: string, to: string): string => `frame: Deck
format: 1
grid: {walls: {A: 0, B: {at: ${from}, reference: center}, C: {at: ${to}, reference: center}, D: 16 ft}, bents: {1: 0, 2: 54 in, 3: 9 ft}, levels: {deck: 20 in, top: 90 in}}
members:
  sill: {kind: sill, section: 8x8, bents: [1, 3], from: B, to: C, top: deck}
  joist: {kind: joist, section: 4x6, between: [sill@1, sill@3], from: B, to: C, count: 3, top: deck}
  beam: {kind: beam, section: 6x8, bents: [2], from: A, to: D, top: top}
floors: {stage: {on: joist, live: 40 psf}}
`;
  const said = [expect.stringContaining("There is 5'-1\" under beam@2 above the floor stage")];
  expect(heard(strip("42 in", "90 in"))).toEqual(said);
  // 30 in between two quarters of its length
  expect(heard(strip("56 in", "86 in"))).toEqual(said);
  // past its end
  expect(heard(strip("17 ft", "19 ft"))).toEqual([]);
});

test("headroom-low: the boards over a beam are none that one walks on below it", () => {
  const text = `frame: Deck
format: 1
grid: {walls: {A: 0, B: 2 ft, C: 8 ft, D: 10 ft}, bents: {1: 0, 2: 54 in, 3: 9 ft}, levels: {deck: 6 ft 2 in, under: 68 in}}
members:
  sill: {kind: sill, section: 8x8, bents: [1, 3], from: A, to: D, top: deck}
  joist: {kind: joist, section: 4x6, between: [sill@1, sill@3], from: A, to: D, spacing: 24 in, top: deck}
  beam: {kind: beam, section: 6x4, bents: [2], from: B, to: C, top: under}
floors: {loft: {on: joist, live: 40 psf, deck: {kind: boards, thickness: 1 in}}}
`;
  const found = findingsOf(text).filter(({ finding }) => finding.check === "headroom-low");
  // underside at 68 − 4 = 64 in, the boards' top 11 in higher
  expect(found.map(({ finding }) => finding.path)).toContain("/members/beam/top");
  const beam = found.find(({ finding }) => finding.path === "/members/beam/top")!.finding;
  expect(beam.message).toContain("There is 5'-4\" under beam@2 above the ground");
});
