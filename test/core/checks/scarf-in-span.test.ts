/** Where a scarf may lie in its timber (common practice, no source). */
import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { idsOf, spliced } from "./gate.ts";

findingsFixture(
  "scarf-in-span: in the middle of a span of 8 ft 8 in between the posts' middles",
  spliced(
    "4 ft 6 in",
    "half-lap-scarf",
    "#                                                                                      ^^^^^^^^^ warning scarf-in-span: plate-scarf@A.1 lies 50 in from post@A1 in a span of 8'-8\": it bends like a hinge there, and the timber sags at it. Put it over a post, or within 26 in of one.",
  ),
);

test("scarf-in-span: a quarter of the span from a post is near enough, for every kind of scarf", () => {
  for (const kind of ["half-lap-scarf", "bladed-scarf", "stop-splayed-scarf"]) {
    // the post's middle stands at 4 in, the quarter of 104 in ends at 30 in
    expect(idsOf(spliced("29 in", kind)), kind).not.toContain("scarf-in-span");
    expect(idsOf(spliced("33 in", kind)), kind).toContain("scarf-in-span");
  }
});
