/** Where a scarf may lie in its timber (common practice, no source). */
import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { gate, idsOf } from "./gate.ts";

const spliced = (at: string, marker = "", kind = "half-lap-scarf") =>
  gate({
    grid: `
      grid:
        walls: {A: 0, B: 10 ft}
        bents: {1: 0, 2: 9 ft, 3: 18 ft}
        levels: {pier-top: 8 in, eave: 8 ft}
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, A3], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave, splice: {at: ${at}, kind: ${kind}}}
        ${marker}
    `,
  });

findingsFixture(
  "scarf-in-span: in the middle of a span of 8 ft 8 in between the posts' middles",
  spliced(
    "4 ft 6 in",
    "#                                                                                      ^^^^^^^^^ warning scarf-in-span: plate-scarf@A.1 lies 50 in from post@A1 in a span of 8'-8\": it bends like a hinge there, and the timber sags at it. Put it over a post, or within 26 in of one.",
  ),
);

test("scarf-in-span: a quarter of the span from a post is near enough, for every kind of scarf", () => {
  for (const kind of ["half-lap-scarf", "bladed-scarf", "stop-splayed-scarf"]) {
    // the post's middle stands at 4 in, the quarter of 104 in ends at 30 in
    expect(idsOf(spliced("29 in", "", kind)), kind).not.toContain("scarf-in-span");
    expect(idsOf(spliced("33 in", "", kind)), kind).toContain("scarf-in-span");
  }
});
