/** Which kinds of joint can be cut where: rules of the trade, common practice, no source. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import type { JointKindName } from "../../../server/core/frame/frame.ts";
import type { UnfitWhy } from "../../../server/core/joinery/joint.ts";
import { jointKindOf } from "../../../server/core/joinery/kinds/index.ts";
import { build, modelOf } from "../model/frames.ts";

const FRAMES = ["samples", "test/frames"].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".frame.yaml") && name !== "wrong-on-purpose.frame.yaml")
    .map((name) => join(folder, name)),
);

test.each(FRAMES)("every joint of %s can be cut where it stands", (file) => {
  const { joints } = modelOf(readFileSync(file, "utf8"));
  const unfit = joints.flatMap(({ id, kind, of, end, into, meeting }) => {
    const intoEnd = meeting.a.id === into.id ? meeting.aEnd : meeting.bEnd;
    const why = jointKindOf(kind).unfit({ of, end, into, intoEnd });
    return why ? [[id, kind, why]] : [];
  });
  expect(joints.length).toBeGreaterThan(0);
  expect(unfit).toEqual([]);
});

const MEMBERS = {
  post: "{kind: post, section: 8x8, at: [A1, A2, B1, B2], from: base, to: plate}",
  plate: "{kind: plate, section: 8x9, walls: [A, B], from: 1, to: 2, top: top, overhang: 12 in}",
  tie: "{kind: tie, section: 8x8, bents: [1, 2], top: tie-top}",
};
const withJoint = (entry: string, of: string, into: string, more: Record<string, string> = {}) =>
  build({
    bents: "{1: 0, 2: 10 ft}",
    members: MEMBERS,
    joints: { one: `{kind: ${entry}, of: ${of}, into: ${into}}`, ...more },
  });

test.each<[JointKindName, string, string, UnfitWhy]>([
  ["corner-half-lap", "tie", "post", "into-not-level"],
  ["housed-dovetail", "tie", "post", "into-upright"],
  ["pocket", "tie", "post", "into-upright"],
  ["birds-mouth", "post", "plate", "of-not-sloping"],
  ["step-lap", "tie", "post", "of-not-sloping"],
  ["rafter-heel", "tie", "post", "of-not-sloping"],
  ["wedged-half-dovetail", "post", "plate", "under"],
  ["housed-dovetail", "post", "plate", "of-upright"],
  ["corner-bridle", "tie", "post", "one-end"],
  ["rafter-pair", "tie", "post", "one-end"],
  ["half-lap-scarf", "tie", "post", "one-end"],
  ["brace-tenon", "tie", "post", "square"],
])(
  "a %s of a %s into a %s cannot be cut: a tenon stands there, with none of its sizes",
  (kind, of, into, why) => {
    const model = withJoint(kind, of, into);
    const found = model.problems.filter((p) => p.kind === "kind-unfit");
    expect(found).toHaveLength(4);
    expect(model.problems.filter((p) => p.kind === "joint-apart")).toEqual([]);
    for (const p of found) {
      expect(p).toMatchObject({ joint: kind, unfit: { why }, instead: "mortise-and-tenon", holds: false });
      expect(p.fits).toContain("mortise-and-tenon");
      expect(p.fits).not.toContain(kind);
    }
    const standing = model.joints.filter((j) => j.standsFor?.name === "one");
    expect(standing.map(({ id }) => id).sort()).toEqual(["one@A1", "one@A2", "one@B1", "one@B2"]);
    for (const joint of standing) expect(joint.sizes.tenon?.thickness.from).toBe("default");
  },
);

test("an entry of less right that can be cut holds where the nearer one cannot", () => {
  const model = withJoint("pocket", "tie@1", "post", {
    two: "{kind: mortise-and-tenon, of: tie, into: post}",
  });
  const [joint] = model.joints.filter(({ of, into }) => of.id === "tie@1" && into.id === "post@A1");
  expect(joint?.entry?.name).toBe("two");
  expect(model.problems.filter((p) => p.kind === "kind-unfit")).toHaveLength(2);
});

test("no lap that ties is offered for the head of an upright, which carries what it stands under (common practice)", () => {
  const offered = (of: string, into: string): readonly (readonly string[])[] =>
    withJoint("half-lap-scarf", of, into)
      .problems.filter((p) => p.kind === "kind-unfit")
      .map(({ fits }) => fits);
  const heads = offered("post", "plate");
  expect(heads.length).toBeGreaterThan(0);
  for (const fits of heads) {
    expect(fits).toContain("mortise-and-tenon");
    expect(fits).not.toContain("dovetail-lap");
  }
  // the end of a tie, which a lap ties
  const ends = offered("tie", "post");
  expect(ends.length).toBeGreaterThan(0);
  for (const fits of ends) expect(fits).toContain("dovetail-lap");
});
