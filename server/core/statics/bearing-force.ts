/** A place where wood is pressed, and where the force that presses it is read in a solved combination. */
import { at } from "../analysis/numbers.ts";
import type { Joint } from "../joinery/joint.ts";
import type { Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { Note } from "../note.ts";
import type { ValueStatus } from "../sourced.ts";
import type { Growth } from "./end-surfaces.ts";
import { tipOf } from "./force-table.ts";
import { localZ } from "./skeleton.ts";
import type { SolvedCase } from "./solve-frame.ts";
import type { FrameStructure } from "./structure.ts";

/** Where the pressing force of a bearing is read. */
export type Source =
  /** the section at a timber's end: share of N, V_y and V_z in what presses */
  | {
      readonly kind: "end";
      readonly from: number;
      readonly N: number;
      readonly Vy: number;
      readonly Vz: number;
      readonly bothWays: boolean;
    }
  /** the springs of a tie, by its index: share of each axis in what presses */
  | { readonly kind: "tie"; readonly tie: number; readonly shares: Vec3; readonly bothWays: boolean }
  | { readonly kind: "ground"; readonly node: number };

export interface Bearing {
  /** the timber whose wood is looked at */
  readonly timber: Timber;
  readonly at: number;
  readonly place: string;
  /** the joint there; undefined where timbers only cross, and on piers */
  readonly joint: Joint | undefined;
  /** in² */
  readonly area: number;
  /** along the grain of the timber, in; and from its edge to the timber's end */
  readonly length: number;
  readonly fromEnd: number;
  /** between the force and the grain, degrees */
  readonly angle: number;
  readonly source: Source;
  /** how the area came about, and how well that is known */
  readonly made: { readonly note: Note; readonly status: ValueStatus };
  /** which size makes it larger; undefined where none of the joint's does */
  readonly growth: Growth | undefined;
}

/** What a timber's end presses in a direction, where the joint there is the one that its piece hangs on. */
function fromSection(
  frame: FrameStructure,
  joint: Joint,
  toward: Vec3,
  bothWays: boolean,
): Source | undefined {
  const { of, end } = joint;
  const elements = frame.elementsOf.get(of.id) ?? [];
  const element = end === "head" ? elements.at(-1) : elements[0];
  const piece = element === undefined ? undefined : frame.pieces[element];
  const held = end === "head" ? piece?.jointJ : piece?.jointI;
  if (element === undefined || held?.id !== joint.id) return undefined;
  // the section seen from outside is what the other timber does to the end: what the end presses is the opposite
  const sign = end === "head" ? -1 : 1;
  return {
    kind: "end",
    from: tipOf(element, end === "head" ? "j" : "i"),
    N: sign * dot(of.axis, toward),
    Vy: sign * dot(of.depthDir, toward),
    Vz: sign * dot(localZ(of), toward),
    bothWays,
  };
}

/** Index of the tie that a joint makes, by its id; the first, should there be several. */
export function tiesByJoint({ ties }: FrameStructure): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  ties.forEach(({ tie }, index) => {
    if (tie.joint && !found.has(tie.joint.id)) found.set(tie.joint.id, index);
  });
  return found;
}

/**
 * @param ties from {@link tiesByJoint}
 * @returns where to read how hard the joined timber presses the other in a direction; undefined when nothing holds them
 */
export function pressAt(
  frame: FrameStructure,
  ties: ReadonlyMap<string, number>,
  joint: Joint,
  toward: Vec3,
  bothWays: boolean,
): Source | undefined {
  const own = fromSection(frame, joint, toward, bothWays);
  if (own) return own;
  const tie = ties.get(joint.id) ?? -1;
  const held = frame.ties[tie]?.tie;
  return held && pressOfTie(tie, held.meeting.a.id === joint.of.id, toward, bothWays);
}

/**
 * @param first it is the tie's first timber that presses. The springs' forces are those on the first timber: what it
 * presses is the opposite.
 */
export function pressOfTie(tie: number, first: boolean, toward: Vec3, bothWays = false): Source {
  const sign = first ? -1 : 1;
  return {
    kind: "tie",
    tie,
    shares: [sign * toward[0], sign * toward[1], sign * toward[2]],
    bothWays,
  };
}

/** What a timber's end presses. @param tips forces at the ends of all elements; @returns lb, 0 when it lifts */
export function endPressing(
  { from, N, Vy, Vz, bothWays }: Extract<Source, { readonly kind: "end" }>,
  tips: Float64Array,
): number {
  const force = N * at(tips, from) + Vy * at(tips, from + 1) + Vz * at(tips, from + 2);
  return force > 0 ? force : bothWays ? -force : 0;
}

/** @returns lb pressing, 0 when it lifts */
export function pressing(
  source: Source,
  { combined, frame }: SolvedCase,
  reaction: (node: number) => number,
): number {
  if (source.kind === "end") return endPressing(source, combined.tips);
  if (source.kind === "ground") return Math.max(0, reaction(source.node));
  const springs = frame.ties[source.tie]?.springs;
  if (!springs) return 0;
  let force = 0;
  for (let axis = 0; axis < 3; axis++)
    force += (source.shares[axis] as number) * (combined.links[springs[axis] as number] ?? 0);
  return force > 0 ? force : source.bothWays ? -force : 0;
}
