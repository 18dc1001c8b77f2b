/** Sticks with their marks, and the way back from a mark to the point in space. */
import { expect } from "vitest";
import type { Model } from "../../../../server/core/model/model.ts";
import { stickExtent } from "../../../../server/core/model/true-ends.ts";
import { along, type Vec3 } from "../../../../server/core/model/vec.ts";
import {
  type JointMarks,
  layoutSticks,
  type StickCut,
  type StickLayout,
} from "../../../../server/core/shop/layout/layout.ts";

export function layoutOf(model: Model, id: string): StickLayout {
  const found = layoutSticks(model).find(({ timber }) => timber.id === id);
  if (!found) throw new Error(`no stick ${id}`);
  return found;
}

export function marksOf(stick: StickLayout, joint: string): JointMarks {
  const found = stick.joints.find((marks) => marks.joint === joint);
  if (!found) throw new Error(`no ${joint} on ${stick.timber.id}: ${stick.joints.map((j) => j.joint)}`);
  return found;
}

export function cutOn(stick: StickLayout, joint: string, part: StickCut["part"]): StickCut {
  const found = marksOf(stick, joint).cuts.find((cut) => cut.part === part);
  if (!found) throw new Error(`no ${part} of ${joint} on ${stick.timber.id}`);
  return found;
}

export function expectRange(range: readonly [number, number], from: number, to: number): void {
  expect(range[0]).toBeCloseTo(from, 6);
  expect(range[1]).toBeCloseTo(to, 6);
}

/** The point in space of a mark: so far along, so far below faces 1 and 2. */
export function pointOf(model: Model, stick: StickLayout, at: number, one: number, two: number): Vec3 {
  const { timber, frame } = stick;
  const own = model.joints.filter((joint) => joint.of.id === timber.id);
  const received = model.joints.filter((joint) => joint.into.id === timber.id);
  const [start] = stickExtent(timber, own, received);
  const axial = along(timber.origin, timber.axis, at + start);
  const first = along(axial, frame.normals[0], frame.sizes[0] / 2 - one);
  return along(first, frame.normals[1], frame.sizes[1] / 2 - two);
}
