/**
 * The structures that stand for one frame: seats that hold the thrust or slide, braces that only push or act both ways.
 * Each is factorised when it is first needed, and takes each basic load once, for as long as the frame stays as it is:
 * loads may change at every keystroke without any of it being made anew.
 */
import { type Prepared, prepare } from "../analysis/analyse.ts";
import type { Mode } from "../analysis/faults.ts";
import { bump } from "../analysis/numbers.ts";
import { once } from "../analysis/once.ts";
import type { FrameSupport, LoadCase, NodeLoad, Structure } from "../analysis/structure.ts";
import type { Superposition } from "../analysis/superpose.ts";
import type { Model, Timber } from "../model/model.ts";
import { isDiagonal } from "../model/upright.ts";
import { cross, type Vec3 } from "../model/vec.ts";
import type { BasicLoad } from "./basic-loads.ts";
import { loadCase } from "./element-loads.ts";
import { type LoadsInSum, loadsInSum } from "./loads-in-sum.ts";
import type { Push } from "./racking.ts";
import { ridgeIsCarried } from "./ridge-holds.ts";
import { skeletonOf } from "./skeleton.ts";
import { type FrameStructure, isSeat, type StructureOptions, structureOf } from "./structure.ts";
import { modulusOf } from "./timber-wood.ts";

/** Which joints can pull, and how stiff they are; decided by the joinery. */
export type JointActions = Pick<StructureOptions, "pulls" | "endSpring">;

/** Basic loads as load cases; structures of the same sticks share them. */
type Cases = WeakMap<BasicLoad, LoadCase>;

/** One structure, factorised. */
export class PreparedStructure {
  readonly #prepared: Prepared;
  readonly #cases: Cases;

  /** @param like a structure whose sticks, their kinds, and the loads on them serve again where they are the very same */
  constructor(
    readonly frame: FrameStructure,
    like?: PreparedStructure,
  ) {
    this.#prepared = prepare(frame.structure, {}, like ? like.#prepared : undefined);
    const shared = like?.frame.structure.elements === frame.structure.elements;
    this.#cases = like && shared ? like.#cases : new WeakMap();
  }

  /** how it moves even with every brace in action */
  get mechanisms(): readonly Mode[] {
    return this.#prepared.found.mechanisms;
  }

  /**
   * Solves only the loads that others do not add up to.
   * @param more load cases besides, which come after the basic loads
   */
  superpose(
    loads: readonly BasicLoad[],
    more: readonly LoadCase[] = [],
    sums: LoadsInSum = loadsInSum(loads),
  ): Superposition {
    const named = loads.map((load) => sums.shares.get(load) ?? []);
    const needed = new Set(named.flatMap((own) => own.map(({ of }) => of)));
    const first = sums.solved.filter((l) => needed.has(l));
    const shares = named.map((own) => own.map(({ of, factor }) => ({ of: first.indexOf(of), factor })));
    const { faults, combine } = this.#prepared.superpose([...first.map((l) => this.#caseOf(l)), ...more]);
    return {
      faults,
      combine: (id, factors) => {
        const summed = new Float64Array(first.length + more.length);
        shares.forEach((own, n) => {
          const by = factors[n] ?? 0;
          if (by !== 0) for (const { of, factor } of own) bump(summed, of, by * factor);
        });
        more.forEach((_, n) => {
          summed[first.length + n] = factors[loads.length + n] ?? 0;
        });
        return combine(id, summed);
      },
    };
  }

  #caseOf(load: BasicLoad): LoadCase {
    const known = this.#cases.get(load) ?? loadCase(this.frame, load.id, [{ loads: load.loads, factor: 1 }]);
    this.#cases.set(load, known);
    return known;
  }
}

/** The model of sliding seats, in which the ridge is held sideways. */
export interface SlidingFrame {
  readonly made: PreparedStructure;
  /** one pound sideways on the plates: puts back there what the ridge's holds carry */
  readonly back: LoadCase & { readonly nodeLoads: readonly NodeLoad[] };
  /** nodes whose supports are only holds of the ridge */
  readonly holds: ReadonlySet<number>;
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

export class PreparedFrame {
  readonly model: Model;
  readonly #options: StructureOptions;
  readonly hold: PreparedStructure;
  readonly sliding: SlidingFrame | undefined;
  /** braces that act both ways: only for combinations in which all of them went slack without being needed */
  readonly nominal: () => PreparedStructure;
  /** braces that only push: the frame itself when none of them pulls */
  readonly pushOnly: () => PreparedStructure;
  readonly #wayHeld: Readonly<Record<Push["along"], () => PreparedStructure>>;

  /** @param before another frame, or this one as it was: sticks that are alike in both are made ready once */
  constructor(model: Model, actions: JointActions, before?: PreparedFrame) {
    const moduli = new Map<Timber, number>();
    const modulus = (t: Timber): number => {
      const known = moduli.get(t) ?? modulusOf(t);
      moduli.set(t, known);
      return known;
    };
    this.model = model;
    this.#options = { ...actions, modulus, seats: "hold" };
    this.hold = new PreparedStructure(structureOf(model, this.#options, skeletonOf(model)), before?.hold);
    this.sliding = this.#slidingFrame();
    this.nominal = once(() => this.#other({ bracesTwoWay: true }));
    this.pushOnly = once(() => {
      const pull = model.timbers.some((t) => isDiagonal(t) && actions.pulls(t));
      return pull ? this.#other({ pulls: () => false, endSpring: () => undefined }) : this.hold;
    });
    const held = (way: "ux" | "uy") => () => {
      const made = this.pushOnly();
      return new PreparedStructure(holdWay(made.frame, way), made);
    };
    this.#wayHeld = { x: once(held("uy")), y: once(held("ux")) };
  }

  /** Braces that only push, and every point held the other level way: what falls over one way must not hide the other. */
  otherWayHeld(along: Push["along"]): PreparedStructure {
    return this.#wayHeld[along]();
  }

  /** Whether it stands for this model too: the very same timbers, joined in the very same way. */
  fits(model: Model): boolean {
    const { timbers, joints, meetings, piers, roof } = this.model;
    return (
      model.timbers === timbers &&
      model.joints === joints &&
      model.meetings === meetings &&
      model.piers === piers &&
      model.roof === roof
    );
  }

  #other(options: Partial<StructureOptions>): PreparedStructure {
    return new PreparedStructure(
      structureOf(this.model, { ...this.#options, ...options }, this.hold.frame.skeleton),
      this.hold,
    );
  }

  #slidingFrame(): SlidingFrame | undefined {
    const { model } = this;
    if (!model.roof || model.roof.slopes.length < 2 || !ridgeIsCarried(model)) return undefined;
    const { skeleton, ties } = this.hold.frame;
    // principals that are tenoned in have no seat to slide on: they thrust, and holds of the ridge would only fight them
    if (!ties.some(({ tie }) => isSeat(tie))) return undefined;
    const frame = structureOf(model, { ...this.#options, seats: "slide" }, skeleton, this.hold.frame);
    const back = { id: "put back", nodeLoads: plateLoads(frame) };
    const withHolds = (lengthwise: boolean): SlidingFrame => {
      const holds = ridgeHolds(model, frame, lengthwise);
      const structure: Structure = { ...frame.structure, supports: [...frame.structure.supports, ...holds] };
      return {
        made: new PreparedStructure({ ...frame, structure }, this.hold),
        back,
        holds: new Set(holds.map((h) => h.node)),
      };
    };
    const sliding = withHolds(false);
    return sliding.made.mechanisms.length > 0 ? withHolds(true) : sliding;
  }
}
