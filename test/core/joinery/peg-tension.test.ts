/** What the pegs of a placed joint carry: its sizes reach the rules of pegged joinery whole (derived). */
import { describe, expect, test } from "vitest";
import { pegTension } from "../../../server/core/joinery/peg-tension.ts";
import { build, expectNear, joint } from "../model/frames.ts";

/** A post head whose plate begins at a distance from the first bent, so far from the tenon's middle at 4 in. */
function head(from: string) {
  const model = build({
    bents: "{1: 0, 2: 10 ft}",
    timber: "{frame: {species: southern-pine, grade: no-1}}",
    members: {
      post: "{kind: post, section: 8x8, at: [A1], from: base, to: plate}",
      plate: `{kind: plate, section: 8x10, walls: [A], from: ${from}, to: 2, top: top}`,
    },
    joints: {
      head: "{kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 6 in, width: 5 in}, pegs: {count: 1, diameter: 3/4 in}}",
    },
  });
  const found = pegTension(joint(model, "head@A1"), model.frame);
  return { found, end: found?.distances.find((d) => d.what === "end of the mortised timber") };
}

describe("the free end of the mortised timber", () => {
  test("is as far from the peg as the plate goes", () => {
    expectNear(head("-12 in").end?.have, 16, "12 and 4");
    expect(head("-12 in").found?.holds).toBe(true);
  });
  test("is never forgotten: a tenon that stands past it does not hold", () => {
    const past = head("5 in");
    expectNear(past.end?.have, -1, "4 less 5");
    expect(past.end?.ok).toBe(false);
    expect(past.found?.holds).toBe(false);
  });
});
