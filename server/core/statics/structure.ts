/** From the center lines of a frame to what the frame analysis takes in, with every element's way back to its timber. */
import type { FrameElement, FrameLink, FrameNode, FrameSupport, Structure } from "../analysis/structure.ts";
import type { Joint } from "../joinery/joint.ts";
import { isSeatKind } from "../joinery/seat.ts";
import type { Model, Timber } from "../model/model.ts";
import { isDiagonal } from "../model/upright.ts";
import { add, dot, length, scale, sub, type Vec3 } from "../model/vec.ts";
import { releases, slidesIn } from "./connection.ts";
import { rectangleSection } from "./rectangle.ts";
import { rollHolders } from "./ridge-holds.ts";
import { deckLinks } from "./roof-plane.ts";
import { type Piece, type Skeleton, skeletonOf, type Tie } from "./skeleton.ts";

/** How rafters sit on plates (design, section 6): (a) seats hold the thrust, (b) seats slide level but bear. */
export type SeatModel = "hold" | "slide";

export interface StructureOptions {
  readonly seats: SeatModel;
  /** psi; along the grain, with the factors that apply to stiffness */
  readonly modulus: (timber: Timber) => number;
  /** whether a brace or strut also pulls: its pegs can take tension */
  readonly pulls: (timber: Timber) => boolean;
  /** nominal stiffness instead of one-way braces, where all of them have gone slack without lateral demand */
  readonly bracesTwoWay?: boolean;
  /** axial spring of an end in tension and compression, lb/in; undefined = stiff */
  readonly endSpring: (joint: Joint) => number | undefined;
}

/** A tie and its springs along x, y and z, as indices of links; −1 = none, as along a seat that slides. */
export interface HeldTie {
  readonly tie: Tie;
  readonly springs: readonly number[];
}

export interface FrameStructure {
  readonly structure: Structure;
  readonly skeleton: Skeleton;
  /** the piece of each element, by index */
  readonly pieces: readonly Piece[];
  /** element indices of each timber, foot to head */
  readonly elementsOf: ReadonlyMap<string, readonly number[]>;
  /** the timber of each element, by the element's id */
  readonly timberOf: ReadonlyMap<string, Timber>;
  readonly ties: readonly HeldTie[];
}

/** Shear modulus of wood: E/16 (NDS commentary; Wood Handbook ranges 1/11 to 1/20; from memory). */
const SHEAR_RATIO = 16;

/** Stiffness of what is taken as rigid, lb/in: far above any timber, far below what would drown the arithmetic. */
const RIGID = 2e7;

const NO_ARM = 1e-9;
const arm = (v: Vec3): Vec3 | undefined => (length(v) > NO_ARM ? v : undefined);

function elementOf(
  piece: Piece,
  index: number,
  options: StructureOptions,
  freed: (joint: Joint) => ReturnType<typeof releases>,
): FrameElement {
  const { timber } = piece;
  const section = rectangleSection(timber.width, timber.depth);
  const E = options.modulus(timber);
  const bar = isDiagonal(timber);
  const armI = arm(piece.i.arm);
  const armJ = arm(piece.j.arm);
  const springI = piece.jointI && options.endSpring(piece.jointI);
  const springJ = piece.jointJ && options.endSpring(piece.jointJ);
  const oneWay = bar && !options.bracesTwoWay && !options.pulls(timber);
  return {
    id: `${timber.id}#${index + 1}`,
    i: piece.i.node,
    j: piece.j.node,
    ...(armI ? { offsetI: armI } : {}),
    ...(armJ ? { offsetJ: armJ } : {}),
    E,
    G: E / SHEAR_RATIO,
    ...section,
    ydir: timber.depthDir,
    ...(piece.jointI && !bar ? { releaseI: freed(piece.jointI) } : {}),
    ...(piece.jointJ && !bar ? { releaseJ: freed(piece.jointJ) } : {}),
    ...(springI === undefined ? {} : { endSpringI: { ux: springI } }),
    ...(springJ === undefined ? {} : { endSpringJ: { ux: springJ } }),
    ...(bar ? { axialOnly: true } : {}),
    ...(oneWay ? { oneWay: "push" as const } : {}),
  };
}

const DIRECTIONS: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** Whether a tie is the seat of a rafter of the roof on its plate. */
export function isSeat(tie: Tie): boolean {
  return tie.joint !== undefined && isSeatKind(tie.joint.kind);
}

const tieName = ({ joint, meeting }: Tie): string => joint?.id ?? `${meeting.a.id}+${meeting.b.id}`;

/** Three springs at the contact; a seat that slides has none along its rafter's level run. */
function linksOf(tie: Tie, seats: SeatModel): FrameLink[] {
  const across = tie.joint && Math.abs(tie.joint.of.axis[0]) > Math.abs(tie.joint.of.axis[1]) ? 0 : 1;
  return DIRECTIONS.flatMap((direction, k) => {
    if (seats === "slide" && isSeat(tie) && k === across) return [];
    const offsetI = arm(tie.i.arm);
    const offsetJ = arm(tie.j.arm);
    return [
      {
        id: `${tieName(tie)}.${"xyz"[k]}`,
        i: tie.i.node,
        j: tie.j.node,
        ...(offsetI ? { offsetI } : {}),
        ...(offsetJ ? { offsetJ } : {}),
        direction,
        stiffness: RIGID,
      },
    ];
  });
}

/** Hold against rolling of a timber on what it sits on, lb/in: the notch, its nails and the deck keep it upright. */
const UPRIGHT_HOLD = 1e5;

/** How far a contact may lie from the underside of what sits on it, inches: rounding. */
const LYING_ON = 1 / 8;

/** Whether a joist lies on top of what it crosses, level, nailed or screwed down there (common practice, no source). */
function liesOn(joist: Timber, point: Vec3): boolean {
  const under = dot(sub(point, joist.origin), joist.depthDir) + joist.depth / 2;
  return joist.depthDir[2] > 0.99 && Math.abs(under) < LYING_ON;
}

/** The timber of a tie that would roll over where it sits: a rafter on its plate, a purlin on its rafters, a joist on its ties. */
function sitting({ joint, meeting }: Tie): Timber | undefined {
  if (joint) return isSeatKind(joint.kind) ? joint.of : undefined;
  return [meeting.a, meeting.b].find(
    (t) => t.kind === "purlin" || (t.kind === "joist" && liesOn(t, meeting.point)),
  );
}

/** What sits does not roll over: a spring square to its grain at its upper edge. */
function uprightLink(tie: Tie): FrameLink[] {
  const sits = sitting(tie);
  if (!sits) return [];
  const up = scale(sits.depthDir, sits.depth);
  const [i, j] = [add(tie.i.arm, up), add(tie.j.arm, up)];
  return [
    {
      id: `${tieName(tie)}.upright`,
      i: tie.i.node,
      j: tie.j.node,
      offsetI: i,
      offsetJ: j,
      direction: sits.widthDir,
      stiffness: UPRIGHT_HOLD,
    },
  ];
}

/** Piers hold in place; an upright does not spin on its anchor, a lying timber does not roll on it. */
function supportsOf(skeleton: Skeleton): FrameSupport[] {
  const seen = new Set<number>();
  return skeleton.bearings.flatMap(({ node, timber }) => {
    if (seen.has(node)) return [];
    seen.add(node);
    const spin =
      Math.abs(timber.axis[2]) > 0.7 ? { rz: 0 } : Math.abs(timber.axis[0]) > 0.7 ? { rx: 0 } : { ry: 0 };
    return [{ node, fixed: { ux: 0, uy: 0, uz: 0, ...spin } }];
  });
}

/** A stick too short to be an element would only make the matrix sick; its two ends are one node anyway. */
const SHORTEST = 1 / 16;

/** Joints of joists' ends that hold nothing along the joist. */
function slidingJoints({ piecesOf }: Skeleton): ReadonlySet<Joint> {
  return new Set(
    [...piecesOf.values()].flatMap((pieces) => {
      const [first, last] = [pieces[0], pieces.at(-1)];
      return (first && last && slidesIn(first.timber, first.jointI, last.jointJ)) ?? [];
    }),
  );
}

type Sticks = Pick<FrameStructure, "pieces" | "elementsOf" | "timberOf"> &
  Pick<Structure, "nodes" | "elements">;

function sticksOf(model: Model, skeleton: Skeleton, options: StructureOptions): Sticks {
  const nodes: FrameNode[] = skeleton.nodes.map((at, i) => {
    const owner = skeleton.owners[i];
    return { id: owner ? `${owner.timber.id}:${owner.at.toFixed(2)}` : String(i), at };
  });
  const pieces = skeleton.pieces.filter((p) => Math.abs(p.to - p.from) > SHORTEST && p.i.node !== p.j.node);
  const sliding = slidingJoints(skeleton);
  const holding = rollHolders(model);
  // what is lapped over another keeps it flat
  const keepsFlat = (joint: Joint): boolean => joint.kind === "corner-half-lap" || holding.has(joint);
  const freed = (joint: Joint) => releases(joint, sliding.has(joint), keepsFlat(joint));
  const elementsOf = new Map<string, number[]>();
  const elements = pieces.map((piece, index) => {
    const own = elementsOf.get(piece.timber.id) ?? [];
    own.push(index);
    elementsOf.set(piece.timber.id, own);
    return elementOf(piece, own.length - 1, options, freed);
  });
  const timberOf = new Map(
    elements.flatMap(({ id }, k) => {
      const piece = pieces[k];
      return piece ? [[id, piece.timber] as const] : [];
    }),
  );
  return { nodes, elements, pieces, elementsOf, timberOf };
}

/**
 * @param like a structure of the same skeleton whose sticks serve again: it may differ in its seats only
 * @returns the structure, and the way back from its elements and links to timbers and joints
 */
export function structureOf(
  model: Model,
  options: StructureOptions,
  skeleton = skeletonOf(model),
  like?: FrameStructure,
): FrameStructure {
  const { nodes, elements, pieces, elementsOf, timberOf } = like
    ? { ...like, ...like.structure }
    : sticksOf(model, skeleton, options);
  const links: FrameLink[] = [];
  const ties = skeleton.ties.map((tie) => {
    const start = links.length;
    const own = linksOf(tie, options.seats);
    links.push(...own, ...uprightLink(tie));
    const springs = DIRECTIONS.map((way) => {
      const found = own.findIndex(({ direction }) => direction === way);
      return found < 0 ? -1 : start + found;
    });
    return { tie, springs };
  });
  links.push(...deckLinks(model, skeleton));
  return {
    structure: { nodes, elements, links, supports: supportsOf(skeleton) },
    skeleton,
    pieces,
    elementsOf,
    timberOf,
    ties,
  };
}

/** @returns ids of the timbers that elements are pieces of, each once; what names a timber itself stays */
export function timbersOf(elements: readonly string[], { timberOf }: FrameStructure): string[] {
  return [...new Set(elements.map((id) => timberOf.get(id)?.id ?? id))];
}
