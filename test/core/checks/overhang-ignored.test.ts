/** An overhang of timbers that end where the file puts their ends. */
import { findingsFixture } from "../../fixtures.ts";
import { gate } from "./gate.ts";

findingsFixture(
  "overhang-ignored: of joists between timbers and of a stick with named ends; a plate has its own",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave, overhang: 6 in}
        rail: {kind: joist, section: 2x6, between: [post@A1, post@A2], top: 4 ft, count: 1, overhang: 9 in}
      #                                                                                     ^^^^^^^^ warning overhang-ignored: rail lies between two timbers and ends where it meets them. Place it on walls or bents
      # ^^^^ note joint-assumed: at 2 places
        stay: {kind: girt, section: 4x6, ends: [{at: A1, level: 2 ft}, {at: A2, level: 2 ft}], overhang: 3 in}
      #                                                                                        ^^^^^^^^ warning overhang-ignored: stay goes from one of its “ends” to the other
      # ^^^^ note joint-assumed: at 2 places
      # ^^^^ error mortise-wall-thin: breaks out of post@A1’s side
    `,
  }),
);
