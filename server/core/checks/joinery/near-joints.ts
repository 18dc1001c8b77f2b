/** What the checks of joints near each other have in common. */

import type { Joint } from "../../joinery/joint.ts";
import { isLap, LEAST_WALL, type NearJoints, shorterTenon } from "../../joinery/near-joints.ts";
import { closeness } from "../../model/joint-match.ts";
import type { Model, Timber } from "../../model/model.ts";
import { timberOverlap } from "../../model/overlap.ts";
import type { Fix } from "../check.ts";
import type { Say } from "../say.ts";
import { judgedJoints } from "./judged.ts";

/** Joints larger than their timber has room for have a finding of their own, and what follows from that is no second one. */
export function tooLarge({ kind, sizes: { tenon, housing, dovetail }, face }: Joint): boolean {
  const blind = tenon !== undefined && !tenon.through && tenon.length.value > tenon.room + 1e-6;
  const most = face.thickness - housing.value;
  const through = kind === "housed-dovetail" && (dovetail?.length.value ?? 0) >= most - 1e-6;
  return blind || through || housing.value >= face.thickness / 2 - 1e-6;
}

/** What saw and chisel leave is no overlap: inches, as where timbers overlap. */
const OVERLAP = 1 / 4;

/** The two timbers that are joined into the third. */
function bothTimbers({ timber, joints: [a, b] }: NearJoints): readonly [Timber, Timber] {
  const other = (j: Joint): Timber => (j.of.id === timber.id ? j.into : j.of);
  return [other(a), other(b)];
}

/** How far a brace keeps from the corner that its own two timbers make is its leg’s affair. */
function inOwnCorner(model: Model, near: NearJoints): boolean {
  const [a, b] = bothTimbers(near);
  const braces = (brace: Timber, other: Timber): boolean =>
    brace.kind === "brace" &&
    (model.members.get(brace.member)?.between?.some(({ text }) => closeness(text, other) > 0) ?? false);
  return braces(a, b) || braces(b, a);
}

/** Joints that come near each other and whose sizes can be judged, those at laps and scarfs apart from all others. */
export function nearEachOther(model: Model, atLap: boolean): readonly NearJoints[] {
  if (model.nearJoints.length === 0) return [];
  const judged = new Set(judgedJoints(model));
  return model.nearJoints.filter(
    (near) =>
      near.joints.some(({ kind }) => isLap(kind)) === atLap &&
      near.joints.every((j) => judged.has(j) && !tooLarge(j)) &&
      !inOwnCorner(model, near) &&
      // two timbers that take each other's place outside the third one too are a finding of their own
      timberOverlap(...bothTimbers(near)) <= OVERLAP,
  );
}

/** Of two joints the one whose entry comes later in the file: it is blamed. An assumed one has no line to change. */
export function laterFirst(model: Model, [a, b]: NearJoints["joints"]): NearJoints["joints"] {
  const rank = ({ entry }: Joint): number => (entry ? model.frame.joints.indexOf(entry) : -1);
  return rank(b) > rank(a) ? [b, a] : [a, b];
}

/** Steps in which tenons are usually told: half inches, or 5 mm. */
const stepOf = (say: Say): number => (say.metric ? 5 / 25.4 : 1 / 2);

/** A place along a timber from its foot, to the quarter inch: nearer says nothing. */
export function placeWords(at: number, say: Say): string {
  return say.length(Math.max(0, say.metric ? at : Math.round(4 * at) / 4));
}

/** How deep two joints stand in each other, or how little wood is left between them, in numbers. */
export function nearWorked({ crossing, depth }: NearJoints, say: Say): string {
  const values = {
    depth: say.length(Math.max(0, depth)),
    none: say.length(0),
    least: say.length(LEAST_WALL),
  };
  return crossing ? say.text("{depth} > {none}", values) : say.text("{depth} < {least}", values);
}

/** What makes room: a shorter tenon where one does, or another place. */
export function roomWords(near: NearJoints, say: Say): string {
  const values = { timber: near.timber.id, move: say.length(upTo(near.move, say)) };
  const shorter = shorterTenon(near, stepOf(say));
  return shorter
    ? say.text(
        "Shorten the tenon at {joint} to {length}, or set one of the two {move} farther along {timber}.",
        {
          ...values,
          joint: shorter.joint.id,
          length: say.length(shorter.length),
        },
      )
    : say.text("Set one of the two {move} farther along {timber}.", values);
}

/** Rounded up to what is marked out: quarter inches, or 5 mm. */
export function upTo(value: number, say: Say): number {
  const step = say.metric ? 5 / 25.4 : 1 / 4;
  return Math.ceil(value / step - 1e-6) * step;
}

/** Shortens the tenon, where the file gives its length. */
export function shortenFix(near: NearJoints, say: Say): readonly Fix[] {
  const shorter = shorterTenon(near, stepOf(say));
  if (!shorter?.joint.entry || shorter.joint.sizes.tenon?.length.from !== "file") return [];
  const length = say.length(shorter.length);
  return [
    {
      title: say.text("Shorten the tenon at {joint} to {length}", { joint: shorter.joint.id, length }),
      edits: [{ kind: "replace", path: `${shorter.joint.path}/tenon/length`, text: length }],
    },
  ];
}
