/**
 * Buckling of a ridge that only lies between pairs of rafters, and of one that is carried. A timber braces another only
 * where it is itself held (design, section 6); two struts from a held foot to one point fix it in their plane (statics).
 */
import { describe, expect, test } from "vitest";
import { timberSlender } from "../../../server/core/checks/members/timber-slender.ts";
import { bucklingLengths } from "../../../server/core/statics/effective-length.ts";
import { heldByPairs } from "../../../server/core/statics/held-by-pairs.ts";
import { heldPlaces } from "../../../server/core/statics/held-places.ts";
import { type Contact, contactsOf, groundsOf } from "../../../server/core/statics/member-supports.ts";
import { timberCuts } from "../../../server/core/statics/net-section.ts";
import { skeletonOf } from "../../../server/core/statics/skeleton.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { ROOFED } from "../../roofed-shed.ts";
import { modelOf } from "../model/frames.ts";

const KINGS = "  king: {kind: king-post, section: 6x6, bents: [1, 2], from: tie, to: ridge}\n";
/** 11 ft long: 2.1 × its length would be 69 times its depth, 88 times its width */
const RIDGE = "  ridge: {kind: ridge, section: 1 1/2x4, from: 1, to: 2, overhang: 12 in}\n";
const between = ROOFED.replace("joints:\n", `${RIDGE}joints:\n`);
const carried = ROOFED.replace("joints:\n", `${KINGS}${RIDGE}joints:\n`);

function ridgeOf(text: string) {
  const model = modelOf(text);
  const ridge = model.timbers.find((t) => t.kind === "ridge")!;
  const grounds = groundsOf(model, skeletonOf(model));
  const lengths = bucklingLengths(model, grounds, timberCuts(model), () => 1).get(ridge.id)!;
  const contacts = contactsOf(model);
  const feet = grounds.map(({ timber, at }) => ({ timber, at, whole: false }));
  const posts = model.timbers.filter((t) => t.kind === "post");
  const begin = [...feet, ...posts.map((timber) => ({ timber, at: 0, whole: true }))];
  const holds = heldPlaces(model.timbers, contacts, begin, [0, 1, 0]);
  const rafters = model.roof!.slopes[0]!.rafters.map((t) => t.origin[0]).sort((a, b) => a - b);
  return { ridge, lengths, contacts, holds, rafters };
}

describe("between rafters alone", () => {
  const { ridge, lengths, contacts, holds, rafters } = ridgeOf(between);
  const pairs = (change: (all: readonly Contact[]) => readonly Contact[], held = holds) =>
    heldByPairs(
      ridge,
      (t) => {
        const own = contacts.get(t.id) ?? [];
        return t === ridge ? change(own) : own;
      },
      held,
    );
  const all = (c: readonly Contact[]): readonly Contact[] => c;

  test("each pair holds it, up and down and sideways: one spacing counts, 1.0 times", () => {
    const spacing = Math.max(...rafters.slice(1).map((x, i) => x - rafters[i]!));
    expect(rafters.length).toBeGreaterThan(3);
    for (const one of [lengths.depth, lengths.width]) {
      expect(one).toMatchObject({ factor: 1, why: "held" });
      expect(one.length).toBeCloseTo(spacing, 6);
    }
    expect(pairs(all)).toHaveLength(rafters.length);
  });

  test("rafters of one side alone do not: each would swing about its foot", () => {
    expect(pairs((c) => c.filter(({ other }) => other.walls.includes("A")))).toEqual([]);
  });

  test("nor do rafters that nothing else holds", () => {
    expect(pairs(all, new Map())).toEqual([]);
  });

  test("nor two that stand further apart along it than it is deep", () => {
    const shifted = (by: number) => (c: readonly Contact[]) =>
      c.slice(0, 2).map((one) => (one.other.walls.includes("B") ? { ...one, at: one.at + by } : one));
    expect(pairs(shifted(3))).toHaveLength(1);
    expect(pairs(shifted(5))).toEqual([]);
  });

  test("timber-slender has nothing to say of it", () => {
    const { evaluation } = createFrameService().open("file:///t.frame.yaml", 1, between);
    const found = [...timberSlender.find(evaluation!.results)];
    expect(found.map(({ place }) => place)).not.toContain(ridge.id);
    const used = evaluation!.results.frame!.members.get(ridge.id)!.uses.find((u) => u.what === "slenderness");
    expect(used!.value).toBeLessThan(25);
  });
});

test("carried by king-posts: between these, for there the seats slide and rafters hold it sideways only", () => {
  const { lengths, rafters } = ridgeOf(carried);
  expect(lengths.depth).toMatchObject({ factor: 1, why: "held" });
  // from the middle of one king-post to that of the other
  expect(lengths.depth.length).toBeCloseTo(9 * 12 - 6, 0);
  expect(lengths.width.length).toBeLessThan(2 * (rafters[1]! - rafters[0]!));
});
