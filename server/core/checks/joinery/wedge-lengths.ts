/** Wedges of half-dovetails whose length the file gives, beside the one that the rule takes. */
import type { Joint } from "../../joinery/joint.ts";
import { wedgeLength } from "../../joinery/proportions.ts";
import type { Model } from "../../model/model.ts";
import type { Fix } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import type { Say } from "../say.ts";
import { judgedJoints } from "./judged.ts";

export interface WrittenWedge {
  readonly joint: Joint;
  /** of the length that the file gives */
  readonly path: string;
  /** in */
  readonly length: number;
  /** in: depth of the mortise, and what the wedge is driven on as the timber dries */
  readonly mortise: number;
  readonly reserve: number;
  /** what the rule takes where the file gives no length, in */
  readonly usual: number;
}

export function* writtenWedges(model: Model): Generator<WrittenWedge> {
  const metric = model.frame.units === "mm";
  for (const joint of judgedJoints(model)) {
    const { wedge } = joint.sizes;
    const written = joint.entry?.wedge?.path;
    if (wedge?.whole.from !== "file" || written === undefined) continue;
    const { length: mortise, reserve, whole } = wedge;
    const usual = wedgeLength(mortise, reserve, metric);
    yield { joint, path: `${written}/length`, length: whole.value, mortise, reserve, usual };
  }
}

export const wedgeFix = ({ path, usual }: Pick<WrittenWedge, "path" | "usual">, say: Say): Fix[] =>
  replaceFix(path, say.length(usual), (length) => say.text("Make the wedge {length} long", { length }));
