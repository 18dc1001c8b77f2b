/**
 * The frame under every load combination, by two models of how its rafters sit (design, section 6): seats that hold the
 * thrust, for all loads; and for vertical loads also seats that slide level but bear, so that the ridge takes its
 * simple-beam share. Each timber later takes the worse.
 *
 * In the sliding model the ridge is held sideways. Under symmetric load that hold carries nothing; what it carries under
 * other loads the rafters would bring down to the plates, so it is put back there, half on each.
 */
import { type CaseResult, type Prepared, prepare, type Solution } from "../analysis/analyse.ts";
import type { Mode } from "../analysis/faults.ts";
import type { FrameSupport, LoadCase, NodeLoad, Structure } from "../analysis/structure.ts";
import type { Model, Timber } from "../model/model.ts";
import { cross, type Vec3 } from "../model/vec.ts";
import { type BasicLoads, basicLoads } from "./basic-loads.ts";
import { type FrameCase, frameCases } from "./combine.ts";
import { loadCase } from "./element-loads.ts";
import { skeletonOf } from "./skeleton.ts";
import {
  type FrameStructure,
  isSeat,
  type SeatModel,
  type StructureOptions,
  structureOf,
} from "./structure.ts";
import { modulusOf } from "./timber-wood.ts";

export interface SolvedCase {
  readonly frameCase: FrameCase;
  readonly seats: SeatModel;
  readonly frame: FrameStructure;
  readonly load: LoadCase;
  readonly result: CaseResult;
  readonly solution: Solution | undefined;
  /** braces were given both ways, since all of them had gone slack without being needed */
  readonly bracesNominal: boolean;
}

export interface FrameSolution {
  readonly hold: FrameStructure;
  readonly cases: readonly SolvedCase[];
  readonly loads: BasicLoads;
  /** how the frame moves even with every brace in action */
  readonly mechanisms: readonly Mode[];
}

/** Which joints can pull, and how stiff they are; decided by the joinery. */
export type JointActions = Pick<StructureOptions, "pulls" | "endSpring">;

/** y-hold of the ridge's own nodes, for the sliding model. */
function ridgeHolds(model: Model, frame: FrameStructure): FrameSupport[] {
  const ridges = new Set(model.timbers.filter((t) => t.kind === "ridge").map((t) => t.id));
  const held = new Set(frame.structure.supports.map((s) => s.node));
  return frame.skeleton.owners.flatMap(({ timber }, node) =>
    ridges.has(timber.id) && !held.has(node) ? [{ node, fixed: { uy: 0 } }] : [],
  );
}

interface Sliding {
  readonly frame: FrameStructure;
  readonly prepared: Prepared;
  /** supports that are only holds of the ridge */
  readonly holds: ReadonlySet<number>;
}

function slidingModel(model: Model, options: StructureOptions): Sliding | undefined {
  const ridge = model.timbers.some((t) => t.kind === "ridge");
  if (!model.roof || model.roof.slopes.length < 2 || !ridge) return undefined;
  const frame = structureOf(model, { ...options, seats: "slide" });
  const holds = ridgeHolds(model, frame);
  const structure: Structure = { ...frame.structure, supports: [...frame.structure.supports, ...holds] };
  return {
    frame: { ...frame, structure },
    prepared: prepare(structure),
    holds: new Set(holds.map((h) => h.node)),
  };
}

/** Forces that put the ridge's sideways hold back at the plates: half of it on each side, spread over the seats. */
function putBack(sliding: Sliding, solution: Solution): NodeLoad[] {
  const held = solution.reactions.reduce((sum, r) => sum + (sliding.holds.has(r.node) ? r.force[1] : 0), 0);
  const seats = sliding.frame.ties.filter(({ tie }) => isSeat(tie));
  if (Math.abs(held) < 1e-6 || seats.length === 0) return [];
  return seats.map(({ tie }) => {
    const onPlate = tie.meeting.a.kind === "rafter" ? tie.j : tie.i;
    const force: Vec3 = [0, -held / seats.length, 0];
    return { node: onPlate.node, force, moment: cross(onPlate.arm, force) };
  });
}

function solveSliding(sliding: Sliding, frameCase: FrameCase): SolvedCase {
  const load = loadCase(
    sliding.frame,
    frameCase.id,
    frameCase.parts.map(({ load: l, factor }) => ({ loads: l.loads, factor })),
  );
  const first = sliding.prepared.solve(load);
  const back = first.solution ? putBack(sliding, first.solution) : [];
  const whole = back.length > 0 ? { ...load, nodeLoads: back } : load;
  const result = back.length > 0 ? sliding.prepared.solve(whole) : first;
  return {
    frameCase,
    seats: "slide",
    frame: sliding.frame,
    load: whole,
    result,
    solution: result.solution,
    bracesNominal: false,
  };
}

/** Whether a combination has no push sideways: then slack braces are no danger, only idle. */
function noSidewaysDemand(frameCase: FrameCase): boolean {
  return frameCase.vertical;
}

/**
 * @param only solve just the combinations with these ids; undefined = all
 * @returns every combination solved; a combination that has no solution carries its faults
 */
export function solveFrame(model: Model, actions: JointActions, only?: ReadonlySet<string>): FrameSolution {
  const loads = basicLoads(model);
  const moduli = new Map<Timber, number>();
  const modulus = (t: Timber): number => {
    const known = moduli.get(t) ?? modulusOf(t);
    moduli.set(t, known);
    return known;
  };
  const options: StructureOptions = { ...actions, modulus, seats: "hold" };
  const skeleton = skeletonOf(model);
  const hold = structureOf(model, options, skeleton);
  const prepared = prepare(hold.structure);
  const sliding = slidingModel(model, options);
  let nominal: { frame: FrameStructure; prepared: Prepared } | undefined;
  const withNominalBraces = (): { frame: FrameStructure; prepared: Prepared } => {
    const frame = structureOf(model, { ...options, bracesTwoWay: true }, skeleton);
    nominal ??= { frame, prepared: prepare(frame.structure) };
    return nominal;
  };
  const cases = frameCases(model.frame.basis.loads, loads.all).filter((c) => !only || only.has(c.id));
  const solved = cases.flatMap((frameCase): SolvedCase[] => {
    const parts = frameCase.parts.map(({ load, factor }) => ({ loads: load.loads, factor }));
    const load = loadCase(hold, frameCase.id, parts);
    const result = prepared.solve(load);
    const slack = result.status !== "sound" && noSidewaysDemand(frameCase);
    const again = slack ? withNominalBraces() : undefined;
    const retry = again && loadCase(again.frame, frameCase.id, parts);
    const used =
      again && retry
        ? { frame: again.frame, load: retry, result: again.prepared.solve(retry) }
        : { frame: hold, load, result };
    const own: SolvedCase = {
      frameCase,
      seats: "hold",
      ...used,
      solution: used.result.solution,
      bracesNominal: slack,
    };
    return sliding && frameCase.vertical ? [own, solveSliding(sliding, frameCase)] : [own];
  });
  return { hold, cases: solved, loads, mechanisms: prepared.found.mechanisms };
}
