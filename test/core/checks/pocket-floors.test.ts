/** Wood under pockets: NDS 3.4.3.3 taken over to a pocket's floor (memory; derived). */
import { describe, expect, test } from "vitest";
import { pocketLoads, woodUnder } from "../../../server/core/statics/pocket-loads.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { findingsFixture } from "../../fixtures.ts";
import { under } from "../../roofed-shed.ts";
import { expectNear } from "../model/frames.ts";
import { loft } from "../statics/members.ts";
import { findingsOf } from "./gate.ts";

/** The loft's joists in pockets of ties 8 × 10 in. */
const joists = (section: string, live = "30 psf"): string =>
  loft(section, live).replace("joints:\n", "joints:\n  joist-end: {kind: pocket, of: joist, into: tie}\n");

const loadsOf = (text: string) => {
  const { evaluation } = createFrameService().open("file:///p.frame.yaml", 1, text);
  return pocketLoads(evaluation!.results.frame!);
};
const found = (text: string) =>
  findingsOf(text, true).filter(({ finding }) => finding.check === "pocket-floor-thin");

describe("pocket-floor-thin", () => {
  test("capacity by hand: 2/3 F_v′ b d_e, reduced within five depths of the tie's end [memory]", () => {
    const loads = loadsOf(joists("4x6"));
    expect(loads).toHaveLength(8);
    for (const { joint, under, capacity, duration } of loads) {
      expectNear(under, 4, "10 − 6");
      // eastern white pine posts and timbers: F_v 125 psi (memory)
      const whole = (2 / 3) * 125 * duration.value * 8 * 4;
      const near = Math.min(-joint.face.ends[0], joint.face.ends[1]) < 50;
      expectNear(capacity, near ? whole * 0.4 ** 2 : 2 * whole, joint.id, 1e-6);
    }
  });
  test("a shallow joist under an ordinary floor: clean", () => expect(found(joists("4x6"))).toEqual([]));
  test("a joist as deep as its tie has no floor to lie on", () => {
    const [one, ...more] = found(joists("4x10"));
    expect(more).toEqual([]);
    expect(one!.finding).toMatchObject({ level: "error", path: "/joints/joist-end", limit: 0 });
    expect(one!.finding.message).toContain(
      "there is no wood under it in tie@1: the pocket is as deep as its carrier",
    );
  });
  test("an inch of wood under a loaded floor splits off", () => {
    const [one] = found(joists("4x9", "100 psf"));
    expect(one!.finding.value!).toBeGreaterThan(one!.finding.limit!);
    expect(one!.finding.message).toMatch(
      /lays [\d,]+ lb on the floor of its pocket under .*, and the 1 in of wood under it in tie@\d carries [\d,.]+ lb/,
    );
  });
  test("the wood under a pocket is what its depth leaves [derived]", () => {
    const [one] = loadsOf(joists("4x7"));
    expectNear(woodUnder(one!.joint), 3, "10 − 7");
  });
});

findingsFixture(
  "pocket-floor-thin: a joist as deep as its tie",
  under(
    joists("4x10"),
    "  joist-end:",
    "#@2-11 error pocket-floor-thin: there is no wood under it in tie@1: the pocket is as deep as its carrier",
  ),
  { whole: true, only: ["error"] },
);
