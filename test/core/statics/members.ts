/** From the text of a frame to its checked timbers. */
import { expect } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import type { Model } from "../../../server/core/model/model.ts";
import type { LeaningShare } from "../../../server/core/statics/effective-length.ts";
import type { FrameResults, MemberCheck, MemberUse } from "../../../server/core/statics/frame-results.ts";
import { jointActions } from "../../../server/core/statics/joint-actions.ts";
import { leaningShare } from "../../../server/core/statics/leaning-share.ts";
import { memberBasis } from "../../../server/core/statics/member-basis.ts";
import { memberResults } from "../../../server/core/statics/member-results.ts";
import { type FrameSolution, solveFrame } from "../../../server/core/statics/solve-frame.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";

export interface Checked extends Pick<FrameResults, "members" | "unchecked"> {
  readonly model: Model;
  readonly solution: FrameSolution;
}

export function checked(text: string): Checked {
  const { frame, source } = readFrame(text);
  expect(source.facts, text).toEqual([]);
  const model = buildModel(frame);
  const solution = solveFrame(model, jointActions(model));
  const basis = memberBasis(model, solution.hold, solution.cases);
  return { model, solution, members: memberResults(basis, solution.cases), unchecked: basis.unchecked };
}

/** The share of leaning uprights in the load of their story, as the product asks for it. */
export const sharesOf =
  ({ solution }: Pick<Checked, "solution">): LeaningShare =>
  (story) =>
    leaningShare(story, solution.cases);

export function use({ members }: Checked, stick: string, what: MemberCheck): MemberUse {
  const result = members.get(stick);
  expect(result, `${stick} among ${[...members.keys()].join(", ")}`).toBeDefined();
  const found = result!.uses.find((u) => u.what === what);
  expect(found, `${what} among ${result!.uses.map((u) => u.what).join(", ")}`).toBeDefined();
  return found!;
}

export const factor = (u: MemberUse, symbol: string): number | undefined =>
  u.factors.find((f) => f.symbol === symbol)?.value;

/** The shed with a loft between its two ties: four joists at 24 in. */
export function loft(joist: string, live = "30 psf"): string {
  return SHED.replace(
    "joints:\n",
    `  joist: {kind: joist, section: ${joist}, between: [tie@1, tie@2], from: 2 ft, to: 8 ft, count: 4}\njoints:\n`,
  ).concat(`floors:\n  loft: {on: joist, live: ${live}}\n`);
}
