/**
 * What each kind of joint lets go. A joint is drawn at the end of the joined timber: which turns about its own axes are
 * free there, and whether the timber carries force along its length only.
 *
 * Pegged joints turn freely about their pegs and are taken as pinned both ways; a post's or king-post's head keeps the
 * timber above it from rolling about its own length. A scarf is taken as a hinge: it bends with a small share of what the
 * whole timber does, which nothing here counts on (common practice, no source). Tenons and housings keep a timber from
 * spinning about itself; a rafter pair is not counted on for that, or a roof whose pairs stand free would be held along the
 * walls by the slack of its tongues.
 */
import type { Motion } from "../analysis/structure.ts";
import type { JointKindName } from "../frame/frame.ts";
import type { Joint } from "../joinery/joint.ts";
import type { Timber } from "../model/model.ts";
import { isUpright } from "../model/upright.ts";
import { dot, type Vec3 } from "../model/vec.ts";

/** Local turning axis nearest a direction square to the grain: y along the depth, z along the width. */
function turnAbout(timber: Timber, direction: Vec3): Motion {
  return Math.abs(dot(timber.depthDir, direction)) >= Math.abs(dot(timber.widthDir, direction)) ? "ry" : "rz";
}

const FREE: readonly Motion[] = ["rx", "ry", "rz"];

/** Heads that stand square under a timber on their shoulders. */
const STANDS: ReadonlySet<JointKindName> = new Set(["mortise-and-tenon", "stub-tenon"]);

const PINNED: readonly Motion[] = ["ry", "rz"];

/**
 * The pocket that a joist may slide out of: it only rests there, so that it ties nothing together. What pushes on it is
 * left to the rest of the frame too, which is on the safe side. One end stays held, or the joist would drift.
 */
export function slidesIn(
  timber: Timber,
  foot: Joint | undefined,
  head: Joint | undefined,
): Joint | undefined {
  if (timber.kind !== "joist" || !foot || !head) return undefined;
  return [head, foot].find((j) => j.kind === "pocket");
}

/**
 * Motions set free at the end of the joined timber.
 * @param slides it holds nothing along the timber
 * @param holdsRoll the receiving timber does not turn about its own length on it
 */
export function releases(joint: Joint, slides: boolean, holdsRoll: boolean): readonly Motion[] {
  const { of, into, end } = joint;
  if (joint.kind === "rafter-pair") return FREE;
  const holdsAbove =
    isUpright(of) && end === "head" && Math.abs(into.axis[2]) < 0.5 && STANDS.has(joint.kind);
  const held = holdsRoll ? turnAbout(of, into.axis) : undefined;
  const turns = holdsAbove ? [turnAbout(of, joint.face.across)] : PINNED.filter((turn) => turn !== held);
  return slides ? ["ux", ...turns] : turns;
}
