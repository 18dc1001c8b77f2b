import { findingsFixture } from "../../fixtures.ts";
import { gate } from "./gate.ts";

const JOINTS = `
  joints:
    head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
    knees: {kind: brace-tenon, of: knee, into: [post, plate]}
`;

findingsFixture(
  "brace-hollow-deep: a rise of more than half the depth",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        knee: {kind: brace, section: 4x8, between: [post, plate], leg: 30 in, curve: {rise: 4 1/16 in}}
      #                                                                                     ^^^^^^^^^ warning brace-hollow-deep: The hollow of knee@A1-A2 leaves 3 15/16 in of its 8 in at the middle, less than half
    `,
    joints: JOINTS,
  }),
);

findingsFixture(
  "brace-hollow-deep: half the depth is enough",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        knee: {kind: brace, section: 4x8, between: [post, plate], leg: 30 in, curve: {rise: 4 in}}
    `,
    joints: JOINTS,
  }),
);

findingsFixture(
  "brace-hollow-deep: a radius that leaves nothing is an error",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        knee: {kind: brace, section: 4x4, between: [post, plate], leg: 30 in, curve: {radius: 30 in}}
      #                                                                                       ^^^^^ error brace-hollow-deep: leaves 0 in of its 4 in
    `,
    joints: JOINTS,
  }),
);
