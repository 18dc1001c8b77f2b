/**
 * The frame under every load combination, by two models of how its rafters sit (design, section 6): seats that hold the
 * thrust, for all loads; and for vertical loads also seats that slide level but bear, so that the ridge takes its
 * simple-beam share. Each timber later takes the worse.
 *
 * In the sliding model the ridge is held sideways. Under symmetric load that hold carries nothing; what it carries under
 * other loads the rafters would bring down to the plates, so it is put back there, evenly over the seats.
 *
 * Basic loads are solved once and superposed; only the members that let go are found anew for each combination.
 */
import { prepare } from "../analysis/analyse.ts";
import type { CaseFault, Mode } from "../analysis/faults.ts";
import type { FrameSupport, LoadCase, NodeLoad, Structure } from "../analysis/structure.ts";
import type { Combined, Superposition } from "../analysis/superpose.ts";
import type { Model, Timber } from "../model/model.ts";
import { cross, type Vec3 } from "../model/vec.ts";
import { unlessAdrift } from "./adrift.ts";
import { type BasicLoad, type BasicLoads, basicLoads } from "./basic-loads.ts";
import { type FrameCase, frameCases } from "./combine.ts";
import { axialOnly } from "./connection.ts";
import { loadCase } from "./element-loads.ts";
import type { RackingResult } from "./frame-results.ts";
import { PUSHES, type Push, pushLoads, rackingResult } from "./racking.ts";
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
  readonly combined: Combined;
  /** braces were given both ways, since all of them had gone slack without being needed */
  readonly bracesNominal: boolean;
  /** the loads as the analysis took them, for whoever wants to check the answer */
  readonly load: () => LoadCase;
}

export interface FrameSolution {
  readonly hold: FrameStructure;
  readonly cases: readonly SolvedCase[];
  readonly loads: BasicLoads;
  /** how the frame moves even with every brace in action */
  readonly mechanisms: readonly Mode[];
  /** one result for each way along the walls (x) and across them (y) */
  readonly racking: readonly RackingResult[];
  /** combinations without an answer, and why */
  readonly failed: readonly { readonly caseId: string; readonly faults: readonly CaseFault[] }[];
}

/** Which joints can pull, and how stiff they are; decided by the joinery. */
export type JointActions = Pick<StructureOptions, "pulls" | "endSpring">;

/** A structure with its basic loads solved, ready to be combined. */
interface Solver {
  readonly frame: FrameStructure;
  readonly mechanisms: readonly Mode[];
  readonly superposition: Superposition;
}

/**
 * Sideways holds of the ridge's own nodes, for the sliding model.
 * @param lengthwise one node of each ridge is held along it too: where nothing else does, it could drift there, though no
 * vertical load drives it
 */
function ridgeHolds(model: Model, frame: FrameStructure, lengthwise: boolean): FrameSupport[] {
  const ridges = new Set(model.timbers.filter((t) => t.kind === "ridge").map((t) => t.id));
  const held = new Set(frame.structure.supports.map((s) => s.node));
  const drifting = new Set(lengthwise ? ridges : []);
  return frame.skeleton.owners.flatMap(({ timber }, node) => {
    if (!ridges.has(timber.id) || held.has(node)) return [];
    return [{ node, fixed: drifting.delete(timber.id) ? { ux: 0, uy: 0 } : { uy: 0 } }];
  });
}

/** One pound sideways on the plates, spread over the seats: the basic load that puts the ridge's hold back. */
function plateLoads(frame: FrameStructure): NodeLoad[] {
  const seats = frame.ties.filter(({ tie }) => isSeat(tie));
  return seats.map(({ tie }) => {
    const onPlate = tie.meeting.a.kind === "rafter" ? tie.j : tie.i;
    const force: Vec3 = [0, -1 / seats.length, 0];
    return { node: onPlate.node, force, moment: cross(onPlate.arm, force) };
  });
}

/** The same frame with every point held one level way. */
function holdWay(frame: FrameStructure, way: "ux" | "uy"): FrameStructure {
  const { nodes, supports } = frame.structure;
  const fixed = new Map(supports.map((s) => [s.node, s]));
  const held = nodes.map((_, node): FrameSupport => {
    const own = fixed.get(node);
    return { ...own, node, fixed: { ...own?.fixed, [way]: 0 } };
  });
  return { ...frame, structure: { ...frame.structure, supports: held } };
}

interface Sliding extends Solver {
  /** supports that are only holds of the ridge */
  readonly holds: ReadonlySet<number>;
}

class FrameSolver {
  /** the frame's own loads, then the two pushes that try whether it racks */
  readonly #basics: BasicLoads["all"];
  readonly #pushes: ReturnType<typeof pushLoads> | undefined;
  readonly #dead: BasicLoad | undefined;
  readonly hold: Solver;
  readonly sliding: Sliding | undefined;
  #nominal: Solver | undefined;

  constructor(
    readonly model: Model,
    loads: BasicLoads,
    readonly options: StructureOptions,
  ) {
    this.#dead = loads.all.find((l) => l.kind === "D");
    this.#pushes = this.#dead && pushLoads(this.#dead);
    this.#basics = this.#pushes ? [...loads.all, this.#pushes.x, this.#pushes.y] : loads.all;
    this.hold = this.#solver(structureOf(model, options, skeletonOf(model)));
    this.sliding = this.#slidingModel();
  }

  /** Weight with a push each way, braces that only push: those of the frame itself when none of them pulls. */
  racking(): RackingResult[] {
    const pushes = this.#pushes;
    if (!pushes) return [];
    const { skeleton } = this.hold.frame;
    const pull = this.model.timbers.some((t) => axialOnly(t) && this.options.pulls(t));
    const pushOnly = { ...this.options, pulls: () => false, endSpring: () => undefined };
    const solver = pull ? this.#solver(structureOf(this.model, pushOnly, skeleton)) : this.hold;
    const held = new Map<Push["along"], Solver>();
    // what falls over one way must not hide whether it stands the other way
    const withOtherWayHeld = (along: Push["along"]): Solver => {
      const made = held.get(along) ?? this.#solver(holdWay(solver.frame, along === "x" ? "uy" : "ux"));
      held.set(along, made);
      return made;
    };
    return PUSHES.map((push) => {
      const factors = this.#basics.map((b) =>
        b === this.#dead ? 1 : b === pushes[push.along] ? push.sign : 0,
      );
      const pushed = (by: Solver): Combined => by.superposition.combine(`racking ${push.toward}`, factors);
      const all = pushed(solver);
      const result = rackingResult(push, all, solver.frame);
      if (all.status !== "failed" || !result.stands) return result;
      return rackingResult(push, pushed(withOtherWayHeld(push.along)), solver.frame);
    });
  }

  /** Braces both ways: only for combinations in which all of them went slack without being needed. */
  get nominal(): Solver {
    this.#nominal ??= this.#solver(
      structureOf(this.model, { ...this.options, bracesTwoWay: true }, this.hold.frame.skeleton),
    );
    return this.#nominal;
  }

  #solver(frame: FrameStructure, loads = this.#basics, more: readonly LoadCase[] = []): Solver {
    const prepared = prepare(frame.structure);
    const basics = loads.map(({ id, loads }) => loadCase(frame, id, [{ loads, factor: 1 }]));
    return {
      frame,
      mechanisms: prepared.found.mechanisms,
      superposition: prepared.superpose([...basics, ...more]),
    };
  }

  #slidingModel(): Sliding | undefined {
    const { model } = this;
    const ridge = model.timbers.some((t) => t.kind === "ridge");
    if (!model.roof || model.roof.slopes.length < 2 || !ridge) return undefined;
    const frame = structureOf(model, { ...this.options, seats: "slide" }, this.hold.frame.skeleton);
    const back: LoadCase = { id: "put back", nodeLoads: plateLoads(frame) };
    const withHolds = (lengthwise: boolean): Sliding => {
      const holds = ridgeHolds(model, frame, lengthwise);
      const structure: Structure = { ...frame.structure, supports: [...frame.structure.supports, ...holds] };
      return {
        ...this.#solver({ ...frame, structure }, this.#vertical, [back]),
        holds: new Set(holds.map((h) => h.node)),
      };
    };
    const sliding = withHolds(false);
    return sliding.mechanisms.length > 0 ? withHolds(true) : sliding;
  }

  /** Basic loads that the sliding model is for. */
  get #vertical(): BasicLoads["all"] {
    return this.#basics.filter((b) => b.vertical);
  }

  factors(frameCase: FrameCase, seats: SeatModel): number[] {
    const basics = seats === "hold" ? this.#basics : this.#vertical;
    return basics.map((b) => frameCase.parts.find((p) => p.load === b)?.factor ?? 0);
  }
}

function loadOf(
  frame: FrameStructure,
  frameCase: FrameCase,
  more?: { readonly nodeLoads: readonly NodeLoad[] },
): LoadCase {
  const parts = frameCase.parts.map(({ load, factor }) => ({ loads: load.loads, factor }));
  return { ...loadCase(frame, frameCase.id, parts), ...more };
}

function solveHeld(solver: FrameSolver, frameCase: FrameCase, factors: readonly number[]): SolvedCase {
  const { skeleton } = solver.hold.frame;
  const first = solver.hold.superposition.combine(frameCase.id, factors);
  // without sideways demand slack braces are no danger, only idle
  const idle = first.status !== "sound" && frameCase.vertical && solver.hold.mechanisms.length === 0;
  const { frame, superposition } = idle ? solver.nominal : solver.hold;
  return {
    frameCase,
    seats: "hold",
    frame,
    combined: unlessAdrift(idle ? superposition.combine(frameCase.id, factors) : first, skeleton),
    bracesNominal: idle,
    load: () => loadOf(frame, frameCase),
  };
}

function solveSliding(sliding: Sliding, frameCase: FrameCase, factors: readonly number[]): SolvedCase {
  const { frame, superposition, holds } = sliding;
  const first = superposition.combine(frameCase.id, [...factors, 0]);
  const held = first.reactions().reduce((sum, r) => sum + (holds.has(r.node) ? r.force[1] : 0), 0);
  const back = Math.abs(held) > 1e-6;
  const scaled = (n: NodeLoad): NodeLoad => ({
    node: n.node,
    ...(n.force ? { force: n.force.map((v) => v * held) as unknown as Vec3 } : {}),
    ...(n.moment ? { moment: n.moment.map((v) => v * held) as unknown as Vec3 } : {}),
  });
  return {
    frameCase,
    seats: "slide",
    frame,
    combined: unlessAdrift(
      back ? superposition.combine(frameCase.id, [...factors, held]) : first,
      frame.skeleton,
    ),
    bracesNominal: false,
    load: () => loadOf(frame, frameCase, back ? { nodeLoads: plateLoads(frame).map(scaled) } : undefined),
  };
}

/** @returns every combination solved; a combination that has no solution carries its faults */
export function solveFrame(model: Model, actions: JointActions): FrameSolution {
  const loads = basicLoads(model);
  const moduli = new Map<Timber, number>();
  const modulus = (t: Timber): number => {
    const known = moduli.get(t) ?? modulusOf(t);
    moduli.set(t, known);
    return known;
  };
  const solver = new FrameSolver(model, loads, { ...actions, modulus, seats: "hold" });
  const cases = frameCases(model.frame.basis.loads, loads.all).flatMap((frameCase): SolvedCase[] => {
    const held = solveHeld(solver, frameCase, solver.factors(frameCase, "hold"));
    if (!solver.sliding || !frameCase.vertical) return [held];
    return [held, solveSliding(solver.sliding, frameCase, solver.factors(frameCase, "slide"))];
  });
  return {
    hold: solver.hold.frame,
    cases,
    loads,
    mechanisms: solver.hold.mechanisms,
    racking: solver.racking(),
    failed: cases
      .filter((c) => c.combined.status === "failed")
      .map((c) => ({ caseId: c.frameCase.id, faults: c.combined.faults })),
  };
}
