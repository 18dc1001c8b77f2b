/** Forces in joints and on piers, the most of each over all combinations. */
import { at } from "../analysis/numbers.ts";
import type { Joint } from "../joinery/joint.ts";
import { isScarf } from "../joinery/scarf.ts";
import type { Model, Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { FrameCase } from "./combine.ts";
import { isSolved, tipOf } from "./force-table.ts";
import type { JointForce, PierCase, PierReaction, Pull } from "./frame-results.ts";
import { pairPull } from "./pair-pull.ts";
import { localZ } from "./skeleton.ts";
import type { SolvedCase } from "./solve-frame.ts";
import type { FrameStructure } from "./structure.ts";

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

/** Where a combination says what force acts on a joined timber, and what is kept of it. */
interface Place {
  readonly own: Tally;
  readonly joint: Joint;
  /** forces at the ends of elements, or of links */
  readonly among: "tips" | "links";
  /** three of them, which all count with this sign, and the way of each in global axes */
  readonly index: readonly [number, number, number];
  readonly sign: 1 | -1;
  readonly axes: readonly [Vec3, Vec3, Vec3];
}

const GLOBAL: Place["axes"] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** Ends of timbers, then seats and other contacts on the side of a timber. @param ownOf tally of a joint */
function placesOf(frame: FrameStructure, ownOf: (joint: Joint) => Tally): Place[] {
  const places: Place[] = [];
  const add = (timber: Timber, joint: Joint | undefined, element: number, end: "i" | "j"): void => {
    if (!joint) return;
    const from = tipOf(element, end);
    places.push({
      own: ownOf(joint),
      joint,
      among: "tips",
      index: [from, from + 1, from + 2],
      sign: end === "i" ? -1 : 1,
      axes: [timber.axis, timber.depthDir, localZ(timber)],
    });
  };
  frame.pieces.forEach(({ timber, jointI, jointJ }, element) => {
    add(timber, jointI, element, "i");
    add(timber, jointJ, element, "j");
  });
  for (const { tie, springs } of frame.ties) {
    const { joint, meeting } = tie;
    if (!joint) continue;
    places.push({
      own: ownOf(joint),
      joint,
      among: "links",
      index: [springs[0] ?? -1, springs[1] ?? -1, springs[2] ?? -1],
      sign: joint.of.id === meeting.a.id ? 1 : -1,
      axes: GLOBAL,
    });
  }
  return places;
}

/** @param force on the joined timber, global axes, lb */
function tally({ own, joint }: Place, force: Vec3, frameCase: FrameCase): void {
  const caseId = frameCase.id;
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

/** @returns by joint id; joints of cases without solution have nothing to say */
export function jointForces(cases: readonly SolvedCase[]): Map<string, JointForce> {
  const found = new Map<string, Tally>();
  const ownOf = ({ id }: Joint): Tally => {
    const known = found.get(id);
    if (known) return known;
    const own = {
      joint: id,
      tension: nothing(),
      pulls: [],
      compression: nothing(),
      alongGrain: nothing(),
      across: nothing(),
    };
    found.set(id, own);
    return own;
  };
  const places = new Map<FrameStructure, readonly Place[]>();
  const force: [number, number, number] = [0, 0, 0];
  for (const solved of cases) {
    if (!isSolved(solved)) continue;
    const { frame, combined, frameCase } = solved;
    const own = places.get(frame) ?? placesOf(frame, ownOf);
    places.set(frame, own);
    for (const place of own) {
      const { index, sign, axes } = place;
      const figures = combined[place.among];
      const [a, d, w] = axes;
      const x = sign * (figures[index[0]] ?? 0);
      const y = sign * (figures[index[1]] ?? 0);
      const z = sign * (figures[index[2]] ?? 0);
      for (let k = 0; k < 3; k++)
        force[k] = x * (a[k] as number) + y * (d[k] as number) + z * (w[k] as number);
      tally(place, force, frameCase);
    }
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
