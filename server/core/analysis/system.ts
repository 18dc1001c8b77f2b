/** A structure made ready: every stick and link as a stiffness between the six motions of two nodes. */

import { ENDS, endFollowsNode, type LocalAxes, localAxes, toNodes } from "./element-stiffness.ts";
import { at, bump } from "./numbers.ts";
import { once } from "./once.ts";
import { Room } from "./room.ts";
import { type EndMatrices, endMatrices, type StickKind, StickKinds } from "./stick-kinds.ts";
import type { FrameElement, FrameLink, LoadCase, OneWay, Structure } from "./structure.ts";
import { type Ground, readSupports } from "./supports.ts";
import { type SummedLoads, UnitLoads } from "./unit-loads.ts";
import { endsOf } from "./validate.ts";
import { cross, norm, times, ZERO } from "./vec3.ts";

/** Numbers in the motions of an end from those of its node. */
const TURN = 36;

/** Something between two nodes that resists. Matrices are in the nodes' axes: i's six motions, then j's. */
export interface Part {
  readonly id: string;
  readonly i: number;
  readonly j: number;
  readonly k: Float64Array;
  /** Independent deformations: columns B with B Bᵀ = k. */
  readonly modes: () => readonly Float64Array[];
  readonly oneWay: OneWay | undefined;
}

export interface Stick extends Part, StickKind {
  readonly element: FrameElement;
  readonly index: number;
  readonly axes: LocalAxes;
  readonly toI: Float64Array;
  readonly toJ: Float64Array;
}

export interface LinkPart extends Part {
  readonly link: FrameLink;
  readonly index: number;
  /** Elongation = stretch · (motions of i, motions of j). */
  readonly stretch: Float64Array;
}

export interface System {
  readonly structure: Structure;
  readonly sticks: readonly Stick[];
  readonly links: readonly LinkPart[];
  readonly parts: readonly Part[];
  readonly ground: Ground;
  /** Number of motions: six for each node. */
  readonly size: number;
  /** Sum of the stiffnesses that meet in a motion before anything is released: tells nought from rounding. */
  readonly gross: Float64Array;
  /** What its sticks and the loads on them are made into: another system of the same sticks takes it over. */
  readonly made: Made;
}

interface Made {
  readonly kinds: StickKinds;
  readonly sticks: readonly Stick[];
  /** the sticks' part of `gross` */
  readonly gross: Float64Array;
  readonly units: UnitLoads;
  readonly loads: WeakMap<LoadCase, SummedLoads>;
  readonly matrices: () => EndMatrices;
}

/** @param before kinds of the sticks of another structure */
function makeSticks(structure: Structure, ground: Ground, before: StickKinds | undefined): Made {
  const gross = new Float64Array(6 * structure.nodes.length);
  const half = new Float64Array(ENDS * ENDS);
  const kinds = new StickKinds();
  const kindOf = (element: FrameElement, length: number): StickKind => kinds.of(element, length, before);
  const room = new Room(structure.elements.length * (2 * TURN + ENDS * ENDS));
  const sticks = structure.elements.flatMap((element, index) =>
    makeStick(structure, ground, element, index, kindOf, gross, half, room),
  );
  return {
    kinds,
    sticks,
    gross,
    units: new UnitLoads(sticks),
    loads: new WeakMap(),
    matrices: once(() => endMatrices(sticks)),
  };
}

/** Whether two structures differ in no more than their links and in what their supports hold. */
function hasSameSticks(structure: Structure, ground: Ground, other: System): boolean {
  return (
    structure.nodes === other.structure.nodes &&
    structure.elements === other.structure.elements &&
    ground.frames.every((axes, node) => axes === other.ground.frames[node])
  );
}

/**
 * @param structure free of faults ({@link validate})
 * @param like a system whose sticks serve again where the structure has the very same ones, and else the kinds of them
 */
export function makeSystem(structure: Structure, like?: System): System {
  const ground = readSupports(structure);
  const size = 6 * structure.nodes.length;
  const made =
    like && hasSameSticks(structure, ground, like)
      ? like.made
      : makeSticks(structure, ground, like?.made.kinds);
  const { sticks } = made;
  const gross = made.gross.slice();
  const given = structure.links ?? [];
  const room = new Room(given.length * (ENDS + ENDS * ENDS));
  const turn = new Float64Array(TURN);
  const links = given.flatMap((link, index) => makeLink(structure, ground, link, index, gross, turn, room));
  for (let k = 0; k < size; k++) bump(gross, k, at(ground.springs, k));
  return { structure, sticks, links, parts: [...sticks, ...links], ground, size, gross, made };
}

function makeStick(
  structure: Structure,
  ground: Ground,
  element: FrameElement,
  index: number,
  kindOf: (element: FrameElement, length: number) => StickKind,
  gross: Float64Array,
  half: Float64Array,
  room: Room,
): Stick[] {
  const ends = endsOf(structure, element);
  if (typeof ends === "string") return [];
  const axes = localAxes(ends[0], ends[1], element.ydir);
  if (typeof axes === "string") return [];
  const kind = kindOf(element, axes.length);
  const { fast, joint, localModes } = kind;
  const [armI, armJ] = [element.offsetI ?? ZERO, element.offsetJ ?? ZERO];
  const toI = endFollowsNode(axes, armI, ground.frames[element.i], room.take(TURN));
  const toJ = endFollowsNode(axes, armJ, ground.frames[element.j], room.take(TURN));
  for (const [end, node, arm] of [
    [0, element.i, armI],
    [1, element.j, armJ],
  ] as const) {
    const sum = (from: number) => [0, 1, 2].reduce((s, m) => s + at(fast, (from + m) * (ENDS + 1)), 0);
    const push = sum(6 * end);
    const turn = sum(6 * end + 3) + push * norm(arm) ** 2;
    for (let m = 0; m < 3; m++) {
      bump(gross, 6 * node + m, push);
      bump(gross, 6 * node + m + 3, turn);
    }
  }
  return [
    {
      ...kind,
      id: element.id,
      element,
      index,
      i: element.i,
      j: element.j,
      axes,
      toI,
      toJ,
      k: toNodes(joint.k, toI, toJ, half, room.take(ENDS * ENDS)),
      modes: once(() => localModes().map((b) => turnBack(b, toI, toJ))),
      oneWay: element.oneWay,
    },
  ];
}

/** Tᵀ v: twelve local end forces as forces on the nodes. */
function turnBack(v: Float64Array, toI: Float64Array, toJ: Float64Array): Float64Array {
  const out = new Float64Array(ENDS);
  for (let end = 0; end < 2; end++) {
    const t = end === 0 ? toI : toJ;
    for (let r = 0; r < 6; r++)
      for (let c = 0; c < 6; c++) bump(out, 6 * end + c, at(t, 6 * r + c) * at(v, 6 * end + r));
  }
  return out;
}

/** T u: the end motions of a stick on its nodes' side, local axes; written to `out` when that is given. */
export function endMotions(stick: Stick, u: Float64Array, out = new Float64Array(ENDS)): Float64Array {
  for (let end = 0; end < 2; end++) {
    const t = end === 0 ? stick.toI : stick.toJ;
    const node = 6 * (end === 0 ? stick.i : stick.j);
    for (let r = 0; r < 6; r++) {
      let sum = 0;
      for (let c = 0; c < 6; c++) sum += at(t, 6 * r + c) * at(u, node + c);
      out[6 * end + r] = sum;
    }
  }
  return out;
}

function makeLink(
  structure: Structure,
  ground: Ground,
  link: FrameLink,
  index: number,
  gross: Float64Array,
  turn: Float64Array,
  room: Room,
): LinkPart[] {
  if (!structure.nodes[link.i] || !structure.nodes[link.j]) return [];
  const x = times(link.direction, 1 / norm(link.direction));
  const stretch = room.take(ENDS);
  for (const [shift, sign, node, arm] of [
    [0, -1, link.i, link.offsetI ?? ZERO],
    [6, 1, link.j, link.offsetJ ?? ZERO],
  ] as const) {
    // Only the first row of the transformation, motion along x, is of use here.
    const t = endFollowsNode({ x, y: ZERO, z: ZERO }, arm, ground.frames[node], turn);
    for (let m = 0; m < 6; m++) stretch[shift + m] = sign * at(t, m);
    const lever = norm(cross(arm, x));
    for (let m = 0; m < 3; m++) {
      bump(gross, 6 * node + m, link.stiffness);
      bump(gross, 6 * node + m + 3, link.stiffness * lever ** 2);
    }
  }
  const k = room.take(ENDS * ENDS);
  for (let r = 0; r < ENDS; r++) {
    const row = link.stiffness * at(stretch, r);
    if (row !== 0) for (let c = 0; c < ENDS; c++) k[r * ENDS + c] = row * at(stretch, c);
  }
  const root = Math.sqrt(link.stiffness);
  return [
    {
      id: link.id,
      link,
      index,
      i: link.i,
      j: link.j,
      k,
      stretch,
      modes: once(() => [stretch.map((v) => v * root)]),
      oneWay: link.oneWay,
    },
  ];
}

/** Elongation of a part's deformation `b` (12) in the motions `u` of all nodes. */
export function strainOf(b: Float64Array, part: Part, u: Float64Array): number {
  let sum = 0;
  for (let m = 0; m < 6; m++) sum += at(b, m) * at(u, 6 * part.i + m) + at(b, m + 6) * at(u, 6 * part.j + m);
  return sum;
}
