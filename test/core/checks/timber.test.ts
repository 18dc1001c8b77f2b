import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, gate, idsOf } from "./gate.ts";

const MEMBERS = `
  members:
    post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
    [[plate]]: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
`;

findingsFixture(
  "longer-than-mill: a sixteenth longer than the cut",
  gate({
    mill: `
      mill: {longest-cut: 107 15/16 in}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
      # ^^^^^ error longer-than-mill: plate@A is 9'-0" long with its tenons, and the mill cuts at most 8'-11 15/16"
    `,
  }),
);

findingsFixture(
  "longer-than-mill: as long as the cut is not longer",
  gate({
    mill: `
      mill: {longest-cut: 9 ft}
    `,
  }),
);

findingsFixture(
  "longer-than-mill: what is left to scribe counts",
  gate({
    mill: `
      mill: {longest-cut: 6 ft 11 1/2 in}
    `,
    grid: `
      grid:
        walls: {A: 0, B: 10 ft}
        bents: {1: 0, 2: 6 ft}
        levels: {pier-top: 8 in, eave: 8 ft}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, rule: scribe, tenon: {thickness: 2 in, length: 4 in}}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      # ^^^^ error longer-than-mill: long with its tenons and 1 in left over to scribe, and the mill cuts at most 6'-11 1/2"
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave, timber: bought}
    `,
    timber: `
      timber:
        frame: {species: eastern-white-pine, grade: no-1}
        bought: {species: white-oak, grade: no-1}
    `,
  }),
);

findingsFixture(
  "longer-than-mill: the tenon counts",
  gate({
    mill: `
      mill: {longest-cut: 6 ft 10 in}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      # ^^^^ error longer-than-mill: post@A1 is 6'-10 1/2" long
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave, timber: bought}
    `,
    grid: `
      grid:
        walls: {A: 0, B: 10 ft}
        bents: {1: 0, 2: 6 ft}
        levels: {pier-top: 8 in, eave: 7 ft 11 1/2 in}
    `,
    timber: `
      timber:
        frame: {species: eastern-white-pine, grade: no-1}
        bought: {species: white-oak, grade: no-1}
    `,
  }),
);

findingsFixture(
  "larger-than-logs: too thick, with the logs beside it",
  gate({
    mill: `
      mill: {logs: [{species: eastern-white-pine, small-end: 11 1/4 in, length: 12 ft, count: 4}]}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      # ^^^^ error larger-than-logs: post@A1, 8 in × 8 in, needs a log of 11 5/16 in at the small end, and the largest is 11 1/4 in
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
      # ^^^^^ error larger-than-logs: plate@A, 8 in × 8 in, needs a log
    `,
  }),
);

findingsFixture(
  "larger-than-logs: thick enough and too short, whatever longer and thinner logs there are",
  gate({
    mill: `
      mill:
        logs:
          - {species: eastern-white-pine, small-end: 12 in, length: 8 ft 11 in, count: 4}
          - {species: eastern-white-pine, small-end: 10 in, length: 20 ft, count: 4}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
      # ^^^^^ error larger-than-logs: plate@A, 8 in × 8 in, is 9'-0" long, and the longest log that is thick enough for it is 8'-11"
    `,
  }),
);

test("larger-than-logs: its number and limit are those of what is short", () => {
  const mill = (log: string): string => `mill: {logs: [{species: eastern-white-pine, ${log}, count: 4}]}\n`;
  const of = (log: string) =>
    findingsOf(gate({ mill: mill(log) })).find(({ finding }) => finding.places[0] === "plate@A");
  const long = of("small-end: 12 in, length: 100 in");
  expect([long?.finding.value, long?.finding.limit]).toEqual([expect.closeTo(108, 6), 100]);
  const thin = of("small-end: 10 in, length: 20 ft");
  expect([thin?.finding.value, thin?.finding.limit]).toEqual([expect.closeTo(Math.hypot(8, 8), 6), 10]);
});

findingsFixture(
  "larger-than-logs: a log of the diagonal, as long as the timber, is enough",
  gate({
    mill: `
      mill: {logs: [{species: eastern-white-pine, small-end: 11 3/8 in, length: 9 ft, count: 4}]}
    `,
  }),
);

test("timber of a species that is not among the logs is bought, and neither check judges it", () => {
  const mill =
    "mill: {longest-cut: 4 ft, logs: [{species: white-oak, small-end: 6 in, length: 6 ft, count: 1}]}\n";
  expect(idsOf(gate({ mill, members: MEMBERS.replaceAll(/\[\[|\]\]/g, "") }))).toEqual([]);
});

findingsFixture(
  "grade-assumed: a class without a grade, but neither pegs nor a class that states its values",
  gate({
    timber: `
      timber:
        frame: {species: eastern-white-pine}
      # ^^^^^ note grade-assumed: frame names no grade, so No.2 is taken for its strength. Name the grade once the timbers are graded.
        pegs: {species: white-oak}
        tested: {species: white-oak, values: {Fb: 900 psi}, because: "a test of the school"}
    `,
  }),
);

findingsFixture(
  "class-unused: a wood that no timber is of",
  gate({
    timber: `
      timber:
        frame: {species: eastern-white-pine, grade: no-1}
        oak: {species: white-oak, grade: no-1}
      # ^^^ note class-unused: No timber is of “oak”: all are of frame. Name it in the entries that are of it (timber: oak), or take it out.
        pegs: {species: white-oak}
    `,
  }),
  { whole: true, only: ["note"] },
);
