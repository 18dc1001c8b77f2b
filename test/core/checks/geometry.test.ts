import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { evaluated } from "../roof/roofs.ts";
import { gate, pavilion, UNDER_ROOF } from "./gate.ts";

findingsFixture("the gate itself is clean", gate({}));
findingsFixture("the pavilion itself is clean", pavilion({}));

findingsFixture(
  "grid-order: a line before the one named before it, one at the same place",
  gate({
    grid: `
      grid:
        walls:
          A: 0
          B: 0
      #      ^ error grid-order: Line B stands at 0 in, not beyond line A at 0 in
        bents:
          1: 0
          2: 9 ft
          3: 8 ft
      #      ^^^^ warning grid-order: Line 3 stands at 8'-0", not beyond line 2 at 9'-0"
        levels: {pier-top: 8 in, eave: 8 ft}
    `,
  }),
);

findingsFixture(
  "series-crowded: a spacing in thousandths of an inch; spacing-ignored: a plate on its wall is no series",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave, spacing: 2 ft}
      #                                                                           ^^^^^^^ warning spacing-ignored: no series to divide
        rail: {kind: joist, section: 2x6, between: [post@A1, post@A2], top: 4 ft, spacing: 0.01 in}
      #                                                                                    ^^^^^^^ error series-crowded: more than 500 sticks
      # ^^^^ note joint-assumed: at 1002 places
      # ^^^^ warning mortise-wall-thin: is 3/8 in thick
    `,
  }),
);

findingsFixture(
  "grid-order: a sixteenth beyond is beyond",
  gate({
    grid: `
      grid:
        walls: {A: 0, B: 1/16 in}
        bents: {2: 9 ft, 1: 0, 10: 109 1/16 in}
        levels: {pier-top: 8 in, eave: 8 ft}
    `,
  }),
);

findingsFixture(
  "two-readings: the ground along bents and along walls",
  gate({
    site: `
      site:
      #@0-4 warning site-value-missing: stands more than 8 ft above the ground
        frost-depth: 30 in
        soil: sand
        ground: {1: 0, 2: -2 in, A: 0, A1: -1 in}
      # ^^^^^^ warning two-readings: the bents are used
    `,
  }),
);

findingsFixture(
  "placement-missing: what a timber needs to be placed",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        girt: {kind: girt, section: 6x8, walls: [A]}
      # ^^^^ error placement-missing: it needs “top” or “bottom”
    `,
  }),
);

findingsFixture(
  "placement-missing: timbers that wait for each other",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        stub: {kind: post, section: 6x6, at: [B1], from: pier-top, to: prop}
      # ^^^^ error placement-missing: stub → prop → stub: each waits for the next
        prop: {kind: post, section: 6x6, at: [B1], from: stub, to: eave}
    `,
  }),
);

findingsFixture(
  "timber-no-length: ends past each other",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        stub: {kind: post, section: 6x6, at: [B1], from: 3 ft, to: 34 in}
      # ^^^^ error timber-no-length: stub@B1 would be -2 in long
    `,
  }),
);

findingsFixture(
  "timber-floating: several sticks of one entry are one finding",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        stub: {kind: post, section: 6x6, at: [B1, B2], from: 2 ft, to: 3 ft}
      # ^^^^ error timber-floating: stub@B1 meets no other timber and no pier, so nothing holds it up. Check its level, line and ends. The same holds at stub@B2.
    `,
  }),
);

findingsFixture(
  "timber-floating: a sixteenth of a gap still meets, an eighth does not",
  gate({
    site: `
      site: {frost-depth: 30 in, soil: sand}
      #@0-4 warning site-value-missing: stands more than 8 ft above the ground
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        near: {kind: beam, section: 6x6, walls: [A], from: 1, to: 2, bottom: 96 1/16 in}
        far: {kind: beam, section: 6x6, walls: [A], from: 1, to: 2, bottom: 102 3/16 in}
      # ^^^ error timber-floating: far@A meets no other timber
    `,
  }),
);

findingsFixture(
  "brace-nowhere: legs longer than the timbers, and timbers that do not cross",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        knee: {kind: brace, section: 4x6, between: [post, plate], leg: 9 ft}
      # ^^^^ error brace-nowhere: The longest that fits is
        twin: {kind: brace, section: 4x6, between: [post@A1, post@A2], leg: 2 ft}
      # ^^^^ error brace-nowhere: its two timbers do not cross
    `,
  }),
);

findingsFixture(
  "brace-angle: just too flat, its legs given, and just within",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        knee:
          kind: brace
          section: 4x6
          between: [post, plate]
          legs: {post: 42 in, plate: 24 in}
      #   ^^^^ warning brace-angle: stands at 29.7°
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        knees: {kind: brace-tenon, of: knee, into: [post, plate]}
    `,
  }),
);

findingsFixture(
  "brace-angle: legs alike within the limits are silent",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        knee: {kind: brace, section: 4x6, between: [post, plate], legs: {post: 40 in, plate: 24 in}}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        knees: {kind: brace-tenon, of: knee, into: [post, plate]}
    `,
  }),
);

findingsFixture(
  "series-crowded: sticks wider than they stand apart",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        rail: {kind: joist, section: 3x6, between: [post@A1, post@A2], from: 0, to: 8 in, top: 4 ft, count: 4}
      #                                                                                                     ^ error series-crowded: stand 2 11/16 in from center to center and are 3 in wide that way
      # ^^^^ error mortise-wall-thin: breaks out of post@A1
    `,
  }),
  { only: ["error"] },
);

/** The gate with one pair of knees, 6 in deep: at 45° they need legs of more than 6 √2 = 8.49 in. */
const kneed = (legs: string, ...marks: string[]): string =>
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        knee: {kind: brace, section: 4x6, between: [post, plate], ${legs}}
      ${marks.join("\n      ")}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        knees: {kind: brace-tenon, of: knee, into: [post, plate]}
    `,
  });
const ERRORS = { only: ["error"] } as const;
findingsFixture(
  "brace-short: a leg shorter than the brace is deep in its corner",
  kneed(
    "leg: 8 in",
    "#                                                                ^^^^ error brace-short: knee@A1-A2 is 6 in deep, and a leg of 8 in along post@A1 leaves 5 11/16 in between the corner and its long edge: its two ends run into each other. Give it legs of more than 8 1/2 in, or a shallower section. The same holds at knee@A2-A1.",
  ),
  ERRORS,
);
findingsFixture(
  "brace-short: a hair of a leg",
  kneed(
    "leg: 1/64 in",
    "#                                                                ^^^^^^^ error brace-short: legs of more than 8 1/2 in",
  ),
  ERRORS,
);
findingsFixture("brace-short: legs a little longer are silent", kneed("leg: 8 5/8 in"), ERRORS);
findingsFixture(
  "brace-short: 7 by 10 in are 5.73 in high, two legs of their own",
  kneed(
    "legs: {post: 7 in, plate: 10 in}",
    "#                                                                        ^^^^ error brace-short: a leg of 7 in along post@A1 leaves 5 3/4 in",
  ),
  ERRORS,
);

const SHED_ROOF = {
  head: `
    frame: Lean-to
    format: 1
    basis: {loads: asce-7-16, risk-category: i}
  `,
  site: `
    site:
      snow: {ground: 30 psf, exposure: partially-exposed, thermal: open}
      wind: {speed: 100 mph, exposure: B, flow: clear}
      frost-depth: 30 in
      soil: sand
  `,
};

const shedMembers = `
  members:
    post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
    prop: {kind: post, section: 8x8, at: [B1, B2], from: pier-top, to: high}
    plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave, overhang: 12 in}
    high: {kind: plate, section: 8x8, walls: [B], from: 1, to: 2, top: 11 ft, overhang: 12 in}
`;
const shedJoints = `
  joints:
    head: {kind: mortise-and-tenon, of: [post, prop], into: [plate, high], tenon: {thickness: 2 in, length: 4 in}}
`;
const shedPiers = `
  piers:
    all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
    back: {under: prop, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
`;

findingsFixture(
  "derived-differs: a shed's pitch that its plates do not make",
  gate({
    ...SHED_ROOF,
    members: shedMembers,
    joints: shedJoints,
    piers: shedPiers,
    roof: `
      roof:
        kind: shed
        high: B
        pitch: 5:12
      #        ^^^^ error derived-differs: The pitch is typed as 5:12, but the plates make it
        rafters: {section: 3x8, spacing: 24 in, seat: {kind: birds-mouth}, overhang: {eave: 12 in, rake: 12 in, high: 12 in}}
        deck: {kind: boards, thickness: 1 in}
        covering: {kind: standing-seam}
    `,
  }),
);

findingsFixture(
  "derived-differs: a pier's top that is not under its post",
  gate({
    piers: `
      piers:
        all:
          under: post
          kind: tube
          diameter: 14 in
          depth: 40 in
          top: 6 in
      #        ^^^^ error derived-differs: The pier’s top is typed as 6 in, but what it carries wants it at 8 in
          anchor: {kind: embedded-strap}
    `,
  }),
);

findingsFixture(
  "joint-apart: an entry whose timbers do not meet names the nearest",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        girt: {kind: girt, section: 6x6, walls: [A], from: 1, to: 2, top: 5 ft}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        girt-end: {kind: mortise-and-tenon, of: girt, into: post, tenon: {thickness: 2 in, length: 3 in}}
        lost: {kind: mortise-and-tenon, of: girt, into: plate}
      #                                                 ^^^^^ error joint-apart: The nearest are plate@A and girt@A1-A2, 28 in apart
    `,
  }),
);

findingsFixture(
  "head-under-peak: posts in the middle of a bent go up to two principals",
  gate({
    ...UNDER_ROOF,
    grid: `
      grid:
        walls: {A: 0, B: 5 ft, C: 10 ft}
        bents: {1: 0, 2: 9 ft}
        levels: {pier-top: 8 in, eave: 8 ft}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, C1, C2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, C], from: 1, to: 2, top: eave}
        principal: {kind: rafter, section: 6x8, bents: [1, 2], from: plate}
        middle: {kind: post, section: 6x6, at: [B1, B2], from: pier-top, to: principal}
      #@71-80 warning head-under-peak: middle@B1 ends 10'-11 11/16" up, below principal, and touches it with no face
    `,
    roof: `
      roof: {kind: gable, pitch: 8:12}
      #@0-4 warning roof-weightless: neither
    `,
    piers: `
      piers:
        all: {under: [post, middle], kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
    `,
  }),
  { only: ["warning"] },
);

test.each(["0.1 in", "1/64 in", "2 15/16 in"])(
  "series-crowded: rafters of 3 in that are set %s apart are named, and no forces are sought",
  (spacing) => {
    const text = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
    const evaluation = evaluated(text.replace("spacing: 30 in", `spacing: ${spacing}`));
    expect(evaluation.results.frame).toBeUndefined();
    const [error, ...more] = evaluation.findings.filter(({ level }) => level === "error");
    expect(more).toEqual([]);
    expect(error).toMatchObject({ check: "series-crowded", path: "/roof/rafters/spacing" });
  },
);
