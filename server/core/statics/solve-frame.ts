/**
 * The frame under every load combination, by two models of how its rafters sit (design, section 6): seats that hold the
 * thrust, for all loads; and for vertical loads also seats that slide level but bear, so that the ridge takes its
 * simple-beam share. Each timber later takes the worse.
 *
 * In the sliding model the ridge is held sideways. Under symmetric load that hold carries nothing; what it carries under
 * other loads the rafters would bring down to the plates, so it is put back there, evenly over the seats.
 *
 * Basic loads are solved once and superposed; only the members that let go are found anew for each combination. Where the
 * frame is the very same as before and only loads have changed, so are its factorisation and what other loads do.
 */
import equal from "fast-deep-equal/es6/index.js";
import type { Combined } from "../analysis/combined.ts";
import type { CaseFault, Mode } from "../analysis/faults.ts";
import { once } from "../analysis/once.ts";
import type { LoadCase, NodeLoad } from "../analysis/structure.ts";
import type { Superposition } from "../analysis/superpose.ts";
import type { Model } from "../model/model.ts";
import type { Vec3 } from "../model/vec.ts";
import { unlessAdrift } from "./adrift.ts";
import { type BasicLoad, type BasicLoads, basicLoads } from "./basic-loads.ts";
import { type FrameCase, frameCases } from "./combine.ts";
import { loadCase } from "./element-loads.ts";
import type { RackingResult } from "./frame-results.ts";
import { isSameSum, type LoadsInSum, loadsInSum } from "./loads-in-sum.ts";
import {
  type JointActions,
  PreparedFrame,
  type PreparedStructure,
  type SlidingFrame,
} from "./prepared-frame.ts";
import { PUSHES, pushLoads, rackingResult } from "./racking.ts";
import type { FrameStructure, SeatModel } from "./structure.ts";

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
  /** what of them was solved, and what that adds up to */
  readonly sums: LoadsInSum;
  /** how the frame moves even with every brace in action */
  readonly mechanisms: readonly Mode[];
  /** one result for each way along the walls (x) and across them (y) */
  readonly racking: readonly RackingResult[];
  /** combinations without an answer, and why */
  readonly failed: readonly { readonly caseId: string; readonly faults: readonly CaseFault[] }[];
  /** the structures that gave it, for other loads on the same frame */
  readonly prepared: PreparedFrame;
}

type CaseLoad = (frameCase: FrameCase) => LoadCase;
type Answer = Omit<SolvedCase, "frameCase" | "load"> & { readonly load: CaseLoad };

const factorsOf = (loads: readonly BasicLoad[], { parts }: FrameCase): number[] =>
  loads.map((b) => parts.find((p) => p.load === b)?.factor ?? 0);

const loadOf =
  (frame: FrameStructure, nodeLoads?: () => readonly NodeLoad[]): CaseLoad =>
  ({ id, parts }) => ({
    ...loadCase(
      frame,
      id,
      parts.map(({ load, factor }) => ({ loads: load.loads, factor })),
    ),
    ...(nodeLoads ? { nodeLoads: nodeLoads() } : {}),
  });

/** Answers of one structure: those of its superposition, or of that with braces both ways. */
function holdAnswers(
  prepared: PreparedFrame,
  loads: readonly BasicLoad[],
  sums: LoadsInSum,
): (frameCase: FrameCase) => Answer {
  const { hold } = prepared;
  const own = once(() => hold.superpose(loads, [], sums));
  const nominal = once(() => prepared.nominal().superpose(loads, [], sums));
  const still = unlessAdrift(hold.frame.skeleton);
  return (frameCase) => {
    const factors = factorsOf(loads, frameCase);
    const first = own().combine(frameCase.id, factors);
    // without sideways demand slack braces are no danger, only idle
    const idle = first.status !== "sound" && frameCase.vertical && hold.mechanisms.length === 0;
    const { frame } = idle ? prepared.nominal() : hold;
    const combined = idle ? nominal().combine(frameCase.id, factors) : first;
    return {
      seats: "hold",
      frame,
      combined: still(combined),
      bracesNominal: idle,
      load: loadOf(frame),
    };
  };
}

const scaled = (n: NodeLoad, by: number): NodeLoad => ({
  node: n.node,
  ...(n.force ? { force: n.force.map((v) => v * by) as unknown as Vec3 } : {}),
  ...(n.moment ? { moment: n.moment.map((v) => v * by) as unknown as Vec3 } : {}),
});

function slideAnswers(
  { made, back, holds }: SlidingFrame,
  loads: readonly BasicLoad[],
  sums: LoadsInSum,
): (frameCase: FrameCase) => Answer {
  const { frame } = made;
  const vertical = loads.filter((l) => l.vertical);
  const own = once(() => made.superpose(vertical, [back], sums));
  const still = unlessAdrift(frame.skeleton);
  return (frameCase) => {
    const factors = factorsOf(vertical, frameCase);
    const first = own().combine(frameCase.id, [...factors, 0]);
    const held = first.reactions().reduce((sum, r) => sum + (holds.has(r.node) ? r.force[1] : 0), 0);
    const putBack = Math.abs(held) > 1e-6;
    const combined = putBack ? own().combine(frameCase.id, [...factors, held]) : first;
    return {
      seats: "slide",
      frame,
      combined: still(combined),
      bracesNominal: false,
      load: loadOf(frame, putBack ? () => back.nodeLoads.map((n) => scaled(n, held)) : undefined),
    };
  };
}

/** Weight with a push each way, braces that only push. */
function racking(prepared: PreparedFrame, dead: BasicLoad | undefined): RackingResult[] {
  if (!dead) return [];
  const pushes = pushLoads(dead);
  const loads = [dead, pushes.x, pushes.y];
  const pushedOn = (made: PreparedStructure) => once((): Superposition => made.superpose(loads));
  const own = pushedOn(prepared.pushOnly());
  const otherHeld = {
    x: once(() => prepared.otherWayHeld("x").superpose(loads)),
    y: once(() => prepared.otherWayHeld("y").superpose(loads)),
  };
  const { frame } = prepared.pushOnly();
  return PUSHES.map((push) => {
    const factors = [1, push.along === "x" ? push.sign : 0, push.along === "y" ? push.sign : 0];
    const combine = (by: Superposition): Combined => by.combine(`racking ${push.toward}`, factors);
    const all = combine(own());
    const result = rackingResult(push, all, frame);
    if (all.status !== "failed" || !result.stands) return result;
    // what falls over one way must not hide whether it stands the other way
    return rackingResult(push, combine(otherHeld[push.along]()), frame);
  });
}

/** The loads, those that are as they were before being the very same objects. */
function keepingLoads(made: BasicLoads, before: BasicLoads | undefined): BasicLoads {
  if (!before) return made;
  const known = new Map(before.all.map((l) => [l.id, l]));
  const all = made.all.map((load) => {
    const old = known.get(load.id);
    return old && equal(old, load) ? old : load;
  });
  return { ...made, all };
}

const sameParts = (a: FrameCase, b: FrameCase): boolean =>
  a.parts.length === b.parts.length &&
  a.parts.every(({ load, factor }, n) => load === b.parts[n]?.load && factor === b.parts[n]?.factor);

/**
 * @param previous an answer to the same frame or another: where the timbers and joints are the very same, what its loads
 * have in common with these is not solved again
 * @returns every combination solved; a combination that has no solution carries its faults
 */
export function solveFrame(model: Model, actions: JointActions, previous?: FrameSolution): FrameSolution {
  const kept = previous?.prepared.fits(model) ? previous : undefined;
  const prepared = kept?.prepared ?? new PreparedFrame(model, actions, previous?.prepared);
  const loads = keepingLoads(basicLoads(model), kept?.loads);
  const sums = loadsInSum(loads.all);
  const answers = {
    hold: holdAnswers(prepared, loads.all, sums),
    slide: prepared.sliding && slideAnswers(prepared.sliding, loads.all, sums),
  };
  // figures that serve again are those that would be found anew, to the last digit
  const sameSums = ({ parts }: FrameCase): boolean =>
    kept !== undefined && parts.every(({ load }) => isSameSum(sums, kept.sums, load));
  const before = new Map(kept?.cases.map((c) => [`${c.seats} ${c.frameCase.id}`, c]));
  const solve = (frameCase: FrameCase, seats: SeatModel): SolvedCase[] => {
    const old = before.get(`${seats} ${frameCase.id}`);
    if (old && sameParts(old.frameCase, frameCase) && sameSums(frameCase)) return [{ ...old, frameCase }];
    const answer = answers[seats]?.(frameCase);
    return answer ? [{ ...answer, frameCase, load: () => answer.load(frameCase) }] : [];
  };
  const cases = frameCases(model.frame.basis.loads, loads.all).flatMap((frameCase) => [
    ...solve(frameCase, "hold"),
    ...(frameCase.vertical ? solve(frameCase, "slide") : []),
  ]);
  const dead = loads.all.find((l) => l.kind === "D");
  const sameDead = kept && kept.loads.all.find((l) => l.kind === "D") === dead;
  return {
    hold: prepared.hold.frame,
    cases,
    loads,
    sums,
    mechanisms: prepared.hold.mechanisms,
    racking: sameDead ? kept.racking : racking(prepared, dead),
    failed: cases
      .filter((c) => c.combined.status === "failed")
      .map((c) => ({ caseId: c.frameCase.id, faults: c.combined.faults })),
    prepared,
  };
}
