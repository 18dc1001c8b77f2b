/** Timbers in the very place of another: they meet that one only, and the structure does without them. */
import { expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { skeletonOf } from "../../../server/core/statics/skeleton.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";

const POST = "{kind: post, section: 8x8, at: [A1], from: pier-top, to: plate}";
const withPosts = (count: number): ReturnType<typeof buildModel> =>
  buildModel(
    readFrame(
      SHED.replace(
        "joints:\n",
        `${Array.from({ length: count }, (_, i) => `  more${i}: ${POST}\n`).join("")}joints:\n`,
      ),
    ).frame,
  );

test("a post written twice is a double of the first, and meets nothing else", () => {
  const model = withPosts(2);
  expect([...model.doubles]).toEqual(["more0@A1", "more1@A1"]);
  const met = model.meetings.filter(({ a, b }) => model.doubles.has(a.id) || model.doubles.has(b.id));
  expect(met.map(({ a, b }) => [a.id, b.id])).toEqual([
    ["post@A1", "more0@A1"],
    ["post@A1", "more1@A1"],
  ]);
});

test("the center lines and joints are those of the frame without it", () => {
  const [plain, doubled] = [withPosts(0), withPosts(1)];
  expect(skeletonOf(doubled).nodes).toEqual(skeletonOf(plain).nodes);
  expect(doubled.joints.map((j) => j.id)).toEqual(plain.joints.map((j) => j.id));
});

test("meetings grow with the number of doubles, not with its square", () => {
  const of = (count: number): number => withPosts(count).meetings.length;
  expect(of(300) - of(0)).toBe(300);
});
