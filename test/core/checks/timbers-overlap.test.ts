import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, gate, idsOf, pavilion, THREE_BENTS } from "./gate.ts";

const ONLY = { only: ["error", "warning"] } as const;

/** The gate with more members. */
const gateWith = (lines: string): string =>
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
${lines}
    `,
  });

/** The pavilion with more members. */
const pavilionWith = (lines: string): string =>
  pavilion({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave, overhang: 12 in}
        tie: {kind: tie, section: 8x8, bents: [1, 2], from: A, to: B, top: 7 ft}
        king: {kind: king-post, section: 6x6, bents: [1, 2], from: tie, to: ridge}
        ridge: {kind: ridge, section: 6x8, from: 1, to: 2, overhang: 12 in}
${lines}
    `,
  });

const overlapsIn = (text: string): number => idsOf(text).filter((id) => id === "timbers-overlap").length;

findingsFixture(
  "timbers-overlap: two posts at one place run alike: an error at the place that the later one names",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        prop: {kind: post, section: 6x6, at: [A1], from: pier-top, to: plate}
      #                                       ^^ error timbers-overlap: prop@A1 takes the same space as post@A1 to a depth of 6 in, around 48 1/2 in up, and no joint lets one into the other. They run alike, so both cannot be there. Move or remove one.
    `,
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
        more: {under: prop, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
      # ^^^^ error pier-twice: more@A1 stands 1 7/16 in from all@A1
    `,
  }),
  ONLY,
);

findingsFixture(
  "timbers-overlap: a strut placed by hand inside a post: no joint is assumed in line with its grain",
  gateWith(`
        prop: {kind: strut, section: 4x4, ends: [{at: A1, level: 2 ft}, {at: A1, level: 4 ft}]}
      # ^^^^ error timbers-overlap: prop takes the same space as post@A1 to a depth of 2 in, around 36 in up, and no joint lets one into the other. They run alike, so both cannot be there. Move or remove one.
  `),
  ONLY,
);

findingsFixture(
  "timbers-overlap: a beam runs through two posts near its middle: one warning that says how many",
  gateWith(`
        rail: {kind: beam, section: 4x6, walls: [A], from: -2 ft, to: 11 ft, top: 4 ft}
      # ^^^^ warning timbers-overlap: rail@A takes the same space as post@A1 to a depth of 4 in, around 45 in up, and no joint lets one into the other. It is so at 2 places of their entries in all. Cut as they are, one will not go in. Move one, or end one at the other’s face and name the joint there.
  `),
);

findingsFixture(
  "timbers-overlap: two braces that cross",
  gateWith(`
        up: {kind: brace, section: 4x4, between: [post@A1, plate], leg: 70 in}
        down: {kind: brace, section: 4x4, between: [post@A2, plate], leg: 70 in}
      # ^^^^ warning timbers-overlap: down@A2-A1 takes the same space as up@A1-A2 to a depth of 4 in, around 5'-7 13/16" up
  `),
  ONLY,
);

findingsFixture(
  "timbers-overlap: joists of a floor inside the girts of the walls: nobody cuts a joint there, and none is assumed",
  pavilionWith(`
        girt: {kind: girt, section: 6x8, walls: [A, B], from: 1, to: 2, top: 7 ft}
        joist: {kind: joist, section: 3x6, between: [tie, tie], spacing: 24 in}
      # ^^^^^ error timbers-overlap: joist.1 takes the same space as girt@A1-A2 to a depth of 3 in, around 6'-9" up, and no joint lets one into the other. It is so at 2 places of their entries in all. They run alike, so both cannot be there. Move or remove one.
      # ^^^^^ warning mortise-wall-thin: joist-post@A1
  `),
  ONLY,
);

const BEAM = (level: string): string => `
        joist: {kind: joist, section: 3x6, between: [tie, tie], from: 1 ft, to: 9 ft, spacing: 24 in, top: 7 ft}
        beam: {kind: beam, section: 6x6, ends: [{at: A1, level: ${level}, offset: [54 in, 0, 0]}, {at: B1, level: ${level}, offset: [54 in, 0, 0]}]}`;

findingsFixture(
  "timbers-overlap: five joists in one beam are one finding",
  pavilionWith(`${BEAM("78 in")}
      # ^^^^ warning timbers-overlap: beam takes the same space as joist.1 to a depth of 3 in, around 6'-7" up, and no joint lets one into the other. It is so at 5 places
  `),
  ONLY,
);

test.each([
  ["75 in", 0],
  ["75.125 in", 0],
  ["75.25 in", 0],
  ["75.5 in", 1],
])("timbers-overlap: joists whose underside is at 78 in on a beam whose middle is at %s", (level, count) => {
  expect(overlapsIn(pavilionWith(BEAM(level)))).toBe(count);
});

test("timbers-overlap: the other timber is named beside it", () => {
  const [found] = findingsOf(
    gateWith("        rail: {kind: beam, section: 4x6, walls: [A], from: -2 ft, to: 11 ft, top: 4 ft}"),
  ).filter(({ finding }) => finding.check === "timbers-overlap");
  expect(found?.finding.related).toEqual([{ path: "/members/post", message: "post@A1 is there already" }]);
  expect(found?.finding.places).toEqual(["rail@A"]);
});

test("timbers-overlap: nothing is said while a line of the file cannot be read", () => {
  const rail = "rail: {kind: beam, section: 4x6, walls: [A], from: -2 ft, to: 11 ft, top: 4 ft}";
  expect(overlapsIn(gateWith(`        ${rail}`))).toBe(1);
  expect(overlapsIn(gateWith(`        ${rail}\n        half: {kind: beam, sec`))).toBe(0);
});

test("timbers-overlap: a joint that names the two and is cut nowhere is one finding, not two", () => {
  const text = gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        rail: {kind: beam, section: 4x6, walls: [A], from: -2 ft, to: 11 ft, top: 4 ft}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        rail-end: {kind: mortise-and-tenon, of: rail, into: post}
    `,
  });
  expect(idsOf(text)).toContain("joint-apart");
  expect(overlapsIn(text)).toBe(0);
});

test("timbers-overlap: a plate in two lengths with its scarf, over a post narrower and wider than it", () => {
  const spliced = (section: string): string =>
    gate({
      grid: THREE_BENTS,
      members: `
        members:
          post: {kind: post, section: ${section}, at: [A1, A2, A3], from: pier-top, to: plate}
          plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave, splice: {at: 2}}
          knee: {kind: brace, section: 4x6, between: [post, plate], leg: 30 in}
      `,
    });
  expect(["6x6", "8x8", "10x10"].map((section) => overlapsIn(spliced(section)))).toEqual([0, 0, 0]);
});

test("timbers-overlap: what passes through the hollow of a curved brace is clear of it, through its wood it is not", () => {
  const rod = (curve: string): string =>
    gateWith(`
        knee: {kind: brace, section: 4x12, between: [post@A1, plate], leg: 60 in${curve}}
        rod: {kind: beam, section: 2x2, ends: [{at: A1, level: 59.5 in, offset: [36.5 in, -20 in, 0]}, {at: A1, level: 59.5 in, offset: [36.5 in, 20 in, 0]}]}`);
  expect([rod(""), rod(", curve: {rise: 2 in}"), rod(", curve: {rise: 5 in}")].map(overlapsIn)).toEqual([
    1, 1, 0,
  ]);
});
