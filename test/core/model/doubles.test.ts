/** Timbers in the very place of another: they meet that one only, and the structure does without them. */
import { expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { skeletonOf } from "../../../server/core/statics/skeleton.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";

/** A post in the middle of wall A, once or several times. */
const POST = "{kind: post, section: 8x8, at: [A@54 in], from: pier-top, to: plate}";
const withPosts = (count: number): ReturnType<typeof buildModel> =>
  buildModel(
    readFrame(
      SHED.replace(
        "joints:\n",
        `${Array.from({ length: count }, (_, i) => `  more${i}: ${POST}\n`).join("")}joints:\n`,
      ),
    ).frame,
  );

test("a post written again is a double of the first, and meets nothing else", () => {
  const model = withPosts(3);
  expect([...model.doubles]).toEqual(["more1@A@54-in", "more2@A@54-in"]);
  const met = model.meetings.filter(({ a, b }) => model.doubles.has(a.id) || model.doubles.has(b.id));
  expect(met.map(({ a, b }) => [a.id, b.id])).toEqual([
    ["more0@A@54-in", "more1@A@54-in"],
    ["more0@A@54-in", "more2@A@54-in"],
  ]);
});

test("the center lines and joints are those of the frame without it", () => {
  const [plain, doubled] = [withPosts(1), withPosts(2)];
  expect(skeletonOf(doubled).nodes).toEqual(skeletonOf(plain).nodes);
  expect(doubled.joints.map((j) => j.id)).toEqual(plain.joints.map((j) => j.id));
});

test("meetings grow with the number of doubles, not with its square", () => {
  const of = (count: number): number => withPosts(count).meetings.length;
  expect(of(301) - of(1)).toBe(300);
});
