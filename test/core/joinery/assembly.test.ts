/** Joints go together the way they say, and tenons fit their mortises: by sampled points of the wood (plane geometry; derived). */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Joint } from "../../../server/core/joinery/joint.ts";
import { dot, sub } from "../../../server/core/model/vec.ts";
import { modelOf, sample } from "../model/frames.ts";
import { collisions, inPrism, receivingWood, tenonWood } from "./clearance.ts";

const SAMPLES = ["cider-press-pavilion", "garden-arch", "kayak-shelter"];
const FRAMES = readdirSync("test/frames").filter((name) => name.endsWith(".frame.yaml"));
const STALL = readFileSync("test/frames/market-stall.frame.yaml", "utf8");
/** Its rafters pair as bridles where the file names no head. */
const LAPPED = STALL.replace(/^( {2}rafters: \{section: \w+,)/m, "$1 head: {kind: lapped},");
const ALL: readonly (readonly [string, readonly Joint[]])[] = [
  ...SAMPLES.map((name) => [name, sample(name).joints] as const),
  ...FRAMES.map((name) => [name, modelOf(readFileSync(`test/frames/${name}`, "utf8"), true).joints] as const),
  ["market-stall with lapped pairs", modelOf(LAPPED, true).joints],
];

/** The head of an upright under a rafter is assumed to be a seat, which nothing cuts on it: it has no shape to test. */
const onUpright = (j: Joint): boolean => j.kind === "birds-mouth" && Math.abs(j.into.axis[2]) > 0.7;

describe("joints of whole frames", () => {
  test("the pairs of the lapped stall are lapped", () => {
    const forms = modelOf(LAPPED, true).joints.flatMap((j) => j.sizes.pair?.form ?? []);
    expect(new Set(forms)).toEqual(new Set(["lapped"]));
  });

  test.each(ALL)("%s: each goes in the way it says", (_, joints) => {
    expect(joints.length).toBeGreaterThan(0);
    for (const joint of joints.filter((j) => !onUpright(j))) {
      const { points, hits } = collisions(joint);
      expect(points, joint.id).toBeGreaterThan(50);
      expect(hits.slice(0, 3), `${joint.id}, ${joint.kind}`).toEqual([]);
    }
  });

  test.each(ALL)(
    "%s: every tenon lies in its mortise, with room at the bottom of a blind one",
    (_, joints) => {
      for (const joint of joints) {
        const { tenon, pair } = joint.sizes;
        const kept = receivingWood(joint);
        // the root of a heel's tenon stands in its step
        const cuts = [...joint.solids.mortises, ...joint.solids.housings];
        const points = tenonWood(joint);
        if (pair) expect(points.length, joint.id).toBeGreaterThan(50);
        for (const p of points) {
          const inside = cuts.some((m) => inPrism(m, p, 0.01));
          const past = dot(sub(p, joint.face.origin), joint.face.inward) > joint.face.thickness - 0.01;
          // the parts of a pair of rafters run past each other beyond both: neither may stand in the other's wood
          const fits = pair ? !kept(p) : inside || past;
          expect(fits, `${joint.id} at ${p}`).toBe(true);
        }
        if (tenon && !tenon.through)
          expect(tenon.mortiseDepth - tenon.length.value, joint.id).toBeGreaterThanOrEqual(1 / 4 - 1e-9);
      }
    },
  );

  test("a joint that does not go in is found: a tenon whose mortise is an inch narrower", () => {
    const joint = sample("garden-arch").joints.find((j) => j.sizes.tenon);
    const [mortise] = joint?.solids.mortises ?? [];
    if (!joint || !mortise) throw new Error("no mortise");
    const narrow = { ...mortise, to: mortise.to - 1 };
    expect(
      collisions({ ...joint, solids: { ...joint.solids, mortises: [narrow] } }).hits.length,
    ).toBeGreaterThan(0);
  });
});
