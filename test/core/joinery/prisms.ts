/** What the tests of joint kinds look at: boxes around what is cut, rows of the cut sheet, a small frame to joint. */

import { expect } from "vitest";
import { sizeWords } from "../../../server/core/checks/amount-words.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import type { Joint, Prism } from "../../../server/core/joinery/joint.ts";
import { jointKindOf } from "../../../server/core/joinery/kinds/index.ts";
import { build, expectNear, type Parts } from "../model/frames.ts";

/** The box around a prism. */
export function prismBox(prism: Prism): { low: number[]; high: number[] } {
  const points = prism.outline.flatMap(([u, v]) =>
    [prism.from, prism.to].map((w) =>
      [0, 1, 2].map((i) => prism.base[i]! + u * prism.u[i]! + v * prism.v[i]! + w * prism.w[i]!),
    ),
  );
  return {
    low: [0, 1, 2].map((i) => Math.min(...points.map((p) => p[i]!))),
    high: [0, 1, 2].map((i) => Math.max(...points.map((p) => p[i]!))),
  };
}

export function expectPrism(prism: Prism | undefined, low: readonly number[], high: readonly number[]): void {
  expect(prism).toBeDefined();
  const box = prismBox(prism!);
  for (const i of [0, 1, 2]) {
    expectNear(box.low[i], low[i]!, `low ${"xyz"[i]}`);
    expectNear(box.high[i], high[i]!, `high ${"xyz"[i]}`);
  }
}

const SAY = makeSay("inch");

export const cut = (j: Joint, label: string): number | undefined =>
  jointKindOf(j.kind)
    .cutSheet(j)
    .find((r) => sizeWords(r, SAY) === label)?.value;

export const framed = (
  joints: Record<string, string>,
  members: Record<string, string>,
  more: Partial<Parts> = {},
) => build({ bents: "{1: 0, 2: 10 ft}", members, joints, ...more });

export const POST = "{kind: post, section: 8x8, at: [A1, A2, B1, B2], from: base, to: plate}";
