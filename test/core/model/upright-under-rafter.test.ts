/** Uprights whose heads meet a sloping rafter: plane geometry (derived). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { jointKindOf } from "../../../server/core/joinery/kinds/index.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import type { Model, Timber } from "../../../server/core/model/model.ts";
import { solidOf } from "../../../server/core/model/solid.ts";
import { dot, sub } from "../../../server/core/model/vec.ts";
import { layoutSticks } from "../../../server/core/shop/layout/layout.ts";
import { readFrame } from "../../../server/document/read.ts";
import { drawJointSheet } from "../../../server/drawing/joint-sheet.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";

const LEAN_TO = readFileSync("test/frames/trussed-lean-to.frame.yaml", "utf8");

/** The lean-to with posts in wall B instead of its struts. Principals of 6×10 rise 54 in over 160 in. */
const withMiddle = (post: string, joints = ""): string =>
  LEAN_TO.replace(
    / {2}strut-1:.*\n {2}strut-2:.*\n {2}strut-3:.*\n/,
    `  middle: {kind: post, section: 6x6, at: [B1, B2, B3], ${post}}\n`,
  ).replace("\nroof:", `\n${joints}roof:`);
const modelOf = (text: string): Model => buildModel(readFrame(text).frame);

function stick(model: Model, id: string): Timber {
  const found = model.byId.get(id);
  if (!found) throw new Error(`no ${id}`);
  return found;
}

describe("a post from the tie to the principal rafter", () => {
  const model = modelOf(withMiddle("from: tie, to: principal"));
  const joint = model.joints.find(({ of, end }) => of.id === "middle@B2" && end === "head");
  test("is tenoned into its underside", () => {
    expect(joint).toMatchObject({ id: "middle-principal@B2", kind: "mortise-and-tenon", assumed: true });
    expect(joint?.into.id).toBe("principal@A2");
    expect(model.joints.filter(({ of }) => of.id === "middle@B2")).toHaveLength(2);
  });
  test("ends in the plane of the rafter’s underside, at its slope", () => {
    const post = stick(model, "middle@B2");
    const rafter = stick(model, "principal@A2");
    expect(Math.abs(post.head.normal[1] / post.head.normal[2])).toBeCloseTo(54 / 160, 6);
    for (const corner of solidOf(post).corners.slice(4))
      expect(dot(sub(corner, rafter.origin), rafter.depthDir)).toBeCloseTo(-rafter.depth / 2, 6);
  });
  test("touches it with its whole section ÷ cosine of the slope", () => {
    const slope = Math.atan(54 / 160);
    expect(joint?.meeting.area).toBeGreaterThan(0.97 * (36 / Math.cos(slope)));
    expect(joint?.sizes.tenon?.width.value).toBeCloseTo(6 / Math.cos(slope), 6);
  });
  test("is laid out with a slanting shoulder, and the rafter with its mortise", () => {
    const sticks = layoutSticks(model);
    const head = sticks.find(({ timber }) => timber.id === "middle@B2")?.head;
    const crosses = head?.crosses ?? [0, 0, 0, 0];
    expect(Math.max(...crosses) - Math.min(...crosses)).toBeCloseTo((6 * 54) / 160, 6);
    expect(head?.tenons).toHaveLength(1);
    const marks = sticks
      .find(({ timber }) => timber.id === "principal@A2")
      ?.joints.find((one) => one.joint === "middle-principal@B2");
    expect(marks?.cuts.map(({ part }) => part)).toContain("mortise");
  });
  test("is cut and drawn", () => {
    if (!joint) throw new Error("no joint");
    const rows = jointKindOf(joint.kind).cutSheet(joint);
    const angle = rows.find(({ label }) => label === "angle to the timber");
    expect(angle?.value).toBeCloseTo(90 - (Math.atan(54 / 160) * 180) / Math.PI, 6);
    const { say } = createFrameService().open("file:///u.frame.yaml", 1, LEAN_TO);
    expect(drawJointSheet(joint, say).elements.length).toBeGreaterThan(5);
  });
});

test("the file may size the joint", () => {
  const model = modelOf(
    withMiddle(
      "from: tie, to: principal",
      "joints:\n  head: {kind: mortise-and-tenon, of: middle, into: principal, tenon: {thickness: 1 1/2 in, length: 3 in}}\n",
    ),
  );
  const joint = model.joints.find(({ id }) => id === "head@B2");
  expect(joint).toMatchObject({ kind: "mortise-and-tenon", end: "head", assumed: false });
  expect(joint?.sizes.tenon?.length.value).toBe(3);
});

test("the frame stands with such posts where it folded up", () => {
  const racks = (text: string): boolean =>
    createFrameService()
      .open("file:///u.frame.yaml", 1, text)
      .findings.some(({ finding }) => finding.check === "frame-racks");
  expect(racks(withMiddle("from: tie, to: principal"))).toBe(false);
});

test("a post that stands on a sloping rafter has its foot cut to it", () => {
  const model = modelOf(
    withMiddle("from: tie, to: principal").replace(
      "  purlin:",
      "  stub: {kind: post, section: 6x6, at: [B2], from: principal, to: 14 ft}\n  purlin:",
    ),
  );
  const foot = model.joints.find(({ of, end }) => of.id === "stub@B2" && end === "foot");
  expect(foot).toMatchObject({ kind: "mortise-and-tenon" });
  expect(foot?.into.id).toBe("principal@A2");
});

test("under a level plate the head stays square", () => {
  const post = stick(modelOf(LEAN_TO), "post-high@C2");
  expect(post.head.normal.map(Math.round)).toEqual([0, 0, 1]);
  expect(post.head.normal[2]).toBe(1);
});

describe("a king-post under the peak of two principals", () => {
  const PRINCIPALS = readFileSync("test/frames/purlins-on-principals.frame.yaml", "utf8").replace(
    / {2}ridge: .*\n {2}ridge-knee: .*\n/,
    "",
  );
  const peak = (rafters: string, king: string): string =>
    PRINCIPALS.replace(
      "bents: [1, 2, 3], from: plate, to: ridge}",
      `bents: [1, 2, 3], from: plate${rafters}}`,
    ).replace("from: tie, to: ridge}", `from: tie, to: ${king}}`);
  const found = (text: string): string[] =>
    createFrameService()
      .open("file:///k.frame.yaml", 1, text)
      .findings.map(({ finding }) => finding)
      .filter(({ check }) => check === "head-under-peak")
      .map(({ path, places }) => `${path} ${places.join(" ")}`);
  test("cannot be cut to both slopes: it says so", () =>
    expect(found(peak("", "principal"))).toEqual([
      "/members/king-post/to king-post@1 king-post@2 king-post@3",
    ]));
  test("takes the tenons of both instead", () => {
    const text = peak(", to: king-post", "19 ft");
    expect(found(text)).toEqual([]);
    const into = modelOf(text).joints.filter(({ into: one }) => one.id === "king-post@2");
    expect(into.map(({ kind, of, end }) => `${kind} ${of.member} ${end}`)).toEqual([
      "mortise-and-tenon principal head",
      "mortise-and-tenon principal head",
    ]);
  });
  test("posts under one slope have none", () =>
    expect(found(withMiddle("from: tie, to: principal"))).toEqual([]));
});
