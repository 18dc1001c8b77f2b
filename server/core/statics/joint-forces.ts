/** Forces in joints and on piers, the most of each over all combinations. */
import { at } from "../analysis/numbers.ts";
import type { Joint } from "../joinery/joint.ts";
import { isScarf } from "../joinery/scarf.ts";
import type { Model, Timber } from "../model/model.ts";
import { dot, scale, type Vec3 } from "../model/vec.ts";
import type { FrameCase } from "./combine.ts";
import { isSolved, tipOf } from "./force-table.ts";
import type { JointForce, PierCase, PierReaction, Pull } from "./frame-results.ts";
import { pairPull } from "./pair-pull.ts";
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
  readonly pulls: Pull[];
  readonly compression: Most;
  readonly alongGrain: Most;
  readonly across: Most;
}

/** Force on a timber at an end of one of its elements: the section there, seen from outside; global axes, lb. */
export function endForce(timber: Timber, tips: Float64Array, element: number, end: "i" | "j"): Vec3 {
  const from = tipOf(element, end);
  const sign = end === "i" ? -1 : 1;
  const [x, y, z] = [sign * at(tips, from), sign * at(tips, from + 1), sign * at(tips, from + 2)];
  const { axis: a, depthDir: d } = timber;
  const w = localZ(timber);
  return [x * a[0] + y * d[0] + z * w[0], x * a[1] + y * d[1] + z * w[1], x * a[2] + y * d[2] + z * w[2]];
}

/** Keeps the most tension of each load duration. */
export function raisePull(
  pulls: Pull[],
  most: number,
  { id: caseId, combination: { duration } }: FrameCase,
): void {
  if (most <= 0) return;
  const known = pulls.findIndex((p) => p.duration.value === duration.value);
  if (known < 0) pulls.push({ most, caseId, duration });
  else if (most > (pulls[known]?.most ?? 0)) pulls[known] = { most, caseId, duration };
}

function tally(into: Map<string, Tally>, joint: Joint, force: Vec3, frameCase: FrameCase): void {
  const caseId = frameCase.id;
  let own = into.get(joint.id);
  if (!own) {
    own = {
      joint: joint.id,
      tension: nothing(),
      pulls: [],
      compression: nothing(),
      alongGrain: nothing(),
      across: nothing(),
    };
    into.set(joint.id, own);
  }
  // the receiving timber pulls the joined one along `inward` when the joint is in tension; a scarf out along its own grain
  const outward = isScarf(joint.kind)
    ? (joint.end === "head" ? 1 : -1) * dot(force, joint.of.axis)
    : dot(force, joint.face.inward);
  const pull = joint.kind === "rafter-pair" ? pairPull(joint, force) : outward;
  raise(own.tension, pull, caseId);
  raisePull(own.pulls, pull, frameCase);
  raise(own.compression, -outward, caseId);
  raise(own.alongGrain, Math.abs(dot(force, joint.face.grain)), caseId);
  raise(own.across, Math.abs(dot(force, joint.face.across)), caseId);
}

function endJoints({ frame, frameCase, combined }: SolvedCase, into: Map<string, Tally>): void {
  const { tips } = combined;
  frame.pieces.forEach(({ timber, jointI, jointJ }, index) => {
    if (jointI) tally(into, jointI, endForce(timber, tips, index, "i"), frameCase);
    if (jointJ) tally(into, jointJ, endForce(timber, tips, index, "j"), frameCase);
  });
}

/**
 * Goes through the ends of timbers that hang on some of the joints, in every combination that has an answer.
 * @param wanted what is to be known of each such joint, by its id: sizes are those of the model of now, the forces may be older
 * @param visit gets the force that the receiving timber puts on the end, lb in global axes
 */
export function eachEndForce<T>(
  cases: readonly SolvedCase[],
  wanted: ReadonlyMap<string, T>,
  visit: (place: T, force: Vec3, frameCase: FrameCase) => void,
): void {
  if (wanted.size === 0) return;
  for (const solved of cases) {
    if (!isSolved(solved)) continue;
    const { tips } = solved.combined;
    const at = (timber: Timber, joint: Joint | undefined, element: number, end: "i" | "j"): void => {
      const place = joint && wanted.get(joint.id);
      if (place !== undefined) visit(place, endForce(timber, tips, element, end), solved.frameCase);
    };
    solved.frame.pieces.forEach(({ timber, jointI, jointJ }, element) => {
      at(timber, jointI, element, "i");
      at(timber, jointJ, element, "j");
    });
  }
}

/** Force on the first timber of a contact, global axes, lb. @param springs of its tie */
export function forceOnFirst({ combined }: SolvedCase, springs: readonly number[]): Vec3 {
  const along = (axis: number): number => combined.links[springs[axis] ?? -1] ?? 0;
  return [along(0), along(1), along(2)];
}

/** Seats and other contacts on the side of a timber. */
function sideJoints(solved: SolvedCase, into: Map<string, Tally>): void {
  for (const { tie, springs } of solved.frame.ties) {
    if (!tie.joint) continue;
    const onFirst = forceOnFirst(solved, springs);
    const onOf = tie.joint.of.id === tie.meeting.a.id ? onFirst : scale(onFirst, -1);
    tally(into, tie.joint, onOf, solved.frameCase);
  }
}

/** @returns by joint id; joints of cases without solution have nothing to say */
export function jointForces(cases: readonly SolvedCase[]): Map<string, JointForce> {
  const found = new Map<string, Tally>();
  for (const solved of cases) {
    if (!isSolved(solved)) continue;
    endJoints(solved, found);
    sideJoints(solved, found);
  }
  return found;
}

function pierCase({ id, parts }: FrameCase, force: Vec3): PierCase {
  return {
    caseId: id,
    force,
    dead: parts.find(({ load }) => load.kind === "D")?.factor ?? 1,
    onlyDead: parts.every(({ load }) => load.kind === "D"),
    wind: parts.some(({ load }) => load.kind === "W"),
  };
}

/** @returns one entry for each pier that carries a timber */
export function pierReactions(model: Model, cases: readonly SolvedCase[]): PierReaction[] {
  const tallies = new Map(
    model.piers.map((pier) => [
      pier.id,
      { pier, down: nothing(), up: nothing(), sideways: nothing(), cases: [] as PierCase[] },
    ]),
  );
  for (const { combined, frame, frameCase } of cases) {
    const byNode = new Map(combined.reactions().map((r) => [r.node, r.force]));
    for (const { pier, node } of frame.skeleton.bearings) {
      const own = pier && tallies.get(pier.id);
      const force = byNode.get(node);
      if (!own || !force) continue;
      const [x, y, z] = force;
      raise(own.down, z, frameCase.id);
      raise(own.up, -z, frameCase.id);
      raise(own.sideways, Math.hypot(x, y), frameCase.id);
      own.cases.push(pierCase(frameCase, [x, y, z]));
    }
  }
  return [...tallies.values()].filter((t) => t.pier.timber !== undefined);
}
