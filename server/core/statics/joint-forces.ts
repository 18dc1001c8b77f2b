/** Forces in joints and on piers, the most of each over all combinations. */
import type { Joint } from "../joinery/joint.ts";
import type { Model, Timber } from "../model/model.ts";
import { add, dot, scale, type Vec3 } from "../model/vec.ts";
import type { JointForce, PierReaction } from "./frame-results.ts";
import { localZ } from "./skeleton.ts";
import type { SolvedCase } from "./solve-frame.ts";

interface Most {
  most: number;
  caseId: string;
}

const nothing = (): Most => ({ most: 0, caseId: "" });

function raise(m: Most, value: number, caseId: string): void {
  if (value > m.most) {
    m.most = value;
    m.caseId = caseId;
  }
}

interface Tally {
  readonly joint: string;
  readonly tension: Most;
  readonly compression: Most;
  readonly alongGrain: Most;
  readonly across: Most;
}

/** Force on the joined timber at its end, global axes, lb. @param end forces that act on the stick there, local axes */
function globalForce(timber: Timber, end: readonly number[]): Vec3 {
  const [x = 0, y = 0, z = 0] = end;
  return add(add(scale(timber.axis, x), scale(timber.depthDir, y)), scale(localZ(timber), z));
}

function tally(into: Map<string, Tally>, joint: Joint, force: Vec3, caseId: string): void {
  let own = into.get(joint.id);
  if (!own) {
    own = {
      joint: joint.id,
      tension: nothing(),
      compression: nothing(),
      alongGrain: nothing(),
      across: nothing(),
    };
    into.set(joint.id, own);
  }
  // the receiving timber pulls the joined one along `inward` when the joint is in tension
  const pull = dot(force, joint.face.inward);
  raise(own.tension, pull, caseId);
  raise(own.compression, -pull, caseId);
  raise(own.alongGrain, Math.abs(dot(force, joint.face.grain)), caseId);
  raise(own.across, Math.abs(dot(force, joint.face.across)), caseId);
}

function endJoints(solved: SolvedCase, into: Map<string, Tally>): void {
  const { solution, frame, frameCase } = solved;
  frame.pieces.forEach((piece, index) => {
    const forces = solution?.elements[index];
    if (!forces) return;
    if (piece.jointI) tally(into, piece.jointI, globalForce(piece.timber, forces.endI), frameCase.id);
    if (piece.jointJ) tally(into, piece.jointJ, globalForce(piece.timber, forces.endJ), frameCase.id);
  });
}

const AXIS = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } as const satisfies Record<string, Vec3>;

/** Seats and other contacts that links hold: their springs, summed. */
function sideJoints(solved: SolvedCase, into: Map<string, Tally>): void {
  const { solution, frame, frameCase } = solved;
  for (const { tie, links } of frame.ties) {
    if (!tie.joint || !solution) continue;
    let onFirst: Vec3 = [0, 0, 0];
    for (const link of links) {
      const { id } = frame.structure.links?.[link] ?? { id: "" };
      const axis = id.slice(-1);
      if (axis !== "x" && axis !== "y" && axis !== "z") continue;
      onFirst = add(onFirst, scale(AXIS[axis], solution.links[link] ?? 0));
    }
    const onOf = tie.joint.of.id === tie.meeting.a.id ? onFirst : scale(onFirst, -1);
    tally(into, tie.joint, onOf, frameCase.id);
  }
}

/** @returns by joint id; joints of cases without solution have nothing to say */
export function jointForces(cases: readonly SolvedCase[]): Map<string, JointForce> {
  const found = new Map<string, Tally>();
  for (const solved of cases) {
    if (!solved.solution) continue;
    endJoints(solved, found);
    sideJoints(solved, found);
  }
  return found;
}

/** @returns one entry for each pier that carries a timber */
export function pierReactions(model: Model, cases: readonly SolvedCase[]): PierReaction[] {
  return model.piers.flatMap((pier): PierReaction[] => {
    const down = nothing();
    const up = nothing();
    const sideways = nothing();
    for (const { solution, frame, frameCase } of cases) {
      const bearing = frame.skeleton.bearings.find((b) => b.pier?.id === pier.id);
      const reaction = bearing && solution?.reactions.find((r) => r.node === bearing.node);
      if (!reaction) continue;
      const [x, y, z] = reaction.force;
      raise(down, z, frameCase.id);
      raise(up, -z, frameCase.id);
      raise(sideways, Math.hypot(x, y), frameCase.id);
    }
    return pier.timber ? [{ pier, down, up, sideways }] : [];
  });
}
