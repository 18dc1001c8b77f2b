/**
 * What the frame analysis takes in: a structure of straight sticks in space and its load cases, as plain data.
 *
 * Any consistent set of units will do (this program uses inches, pounds and radians). Axes are right-handed. A stick's
 * local x runs from end i to end j, local y is the part of `ydir` square to x, local z = x × y. `Iz` bends in the local
 * x-y plane, `Iy` in the local x-z plane, `J` turns about x.
 */

export type Vec3 = readonly [number, number, number];
/** Three translations (or forces), then three rotations (or moments). */
export type Vec6 = readonly [number, number, number, number, number, number];

/** The six motions of a point, in this order everywhere. */
export const MOTIONS = ["ux", "uy", "uz", "rx", "ry", "rz"] as const;
export type Motion = (typeof MOTIONS)[number];
export type PerMotion = Readonly<Partial<Record<Motion, number>>>;

/** `push`: takes no pull, drops out whole when it would lengthen and comes back when it would shorten; `pull`: the reverse. */
export type OneWay = "push" | "pull";

export interface FrameNode {
  readonly id: string;
  readonly at: Vec3;
}

export interface FrameElement {
  readonly id: string;
  /** Index of the node at each end. */
  readonly i: number;
  readonly j: number;
  /** Rigid arm from the node to the stick's end, global axes. The local axes follow the ends, not the nodes. */
  readonly offsetI?: Vec3;
  readonly offsetJ?: Vec3;
  readonly E: number;
  /** Shear modulus: needed for torsion and shear deformation, so for every stick that is not `axialOnly`. */
  readonly G?: number;
  readonly A: number;
  readonly Iy?: number;
  readonly Iz?: number;
  readonly J?: number;
  /** Shear areas for forces along local y and z; without them sections do not deform in shear. */
  readonly Asy?: number;
  readonly Asz?: number;
  readonly ydir: Vec3;
  /** Local motions of the end set free against the node: no force or moment there. */
  readonly releaseI?: readonly Motion[];
  readonly releaseJ?: readonly Motion[];
  /** Springs between node and end along local motions (force per length, moment per radian); a release wins over one. */
  readonly endSpringI?: PerMotion;
  readonly endSpringJ?: PerMotion;
  /** Carries force along its length only; loads across it go to its ends by the lever rule. */
  readonly axialOnly?: boolean;
  readonly oneWay?: OneWay;
  /** Length it has too much when unloaded (heat, swelling, lack of fit), in every case. */
  readonly freeElongation?: number;
}

/**
 * A spring between two points along one fixed direction. It pulls when the points move apart along `direction` (i to j).
 * The points coincide, or lie on one line along the direction: rigid arms bring them there.
 */
export interface FrameLink {
  readonly id: string;
  readonly i: number;
  readonly j: number;
  /** Rigid arms from the nodes to the points, global axes. */
  readonly offsetI?: Vec3;
  readonly offsetJ?: Vec3;
  readonly direction: Vec3;
  readonly stiffness: number;
  readonly oneWay?: OneWay;
}

export interface FrameSupport {
  readonly node: number;
  /** Motions held, at 0 or at a settlement that applies in every case. */
  readonly fixed?: PerMotion;
  /** Stiffness to the ground of motions that are not held. */
  readonly springs?: PerMotion;
  /** Three orthogonal rows: the motions named above are then along these (rotations about them). */
  readonly axes?: readonly [Vec3, Vec3, Vec3];
}

export interface Structure {
  readonly nodes: readonly FrameNode[];
  readonly elements: readonly FrameElement[];
  readonly links?: readonly FrameLink[];
  /** At most one for each node. */
  readonly supports: readonly FrameSupport[];
}

export interface NodeLoad {
  readonly node: number;
  readonly force?: Vec3;
  readonly moment?: Vec3;
}

export interface PointLoad {
  readonly kind: "point";
  readonly element: number;
  /** Distance from end i. */
  readonly at: number;
  readonly force?: Vec3;
  readonly moment?: Vec3;
  /** Default global. */
  readonly axes?: "global" | "local";
}

export interface SpreadLoad {
  readonly kind: "spread";
  readonly element: number;
  /** Distances from end i; the whole stick if left out. */
  readonly from?: number;
  readonly to?: number;
  /** Force per length at `from` and at `to`, straight in between; the same at both if `end` is left out. */
  readonly start: Vec3;
  readonly end?: Vec3;
  /** Default global. */
  readonly axes?: "global" | "local";
  /** `projection`: per length measured square to the load, as snow on a slope. Default: per length of the stick. */
  readonly per?: "length" | "projection";
}

export interface LoadCase {
  readonly id: string;
  readonly nodeLoads?: readonly NodeLoad[];
  readonly elementLoads?: readonly (PointLoad | SpreadLoad)[];
  /** Added to the value at which a support holds the motion. */
  readonly settlements?: readonly {
    readonly node: number;
    readonly motion: Motion;
    readonly value: number;
  }[];
  /** Added to the stick's own `freeElongation`. */
  readonly elongations?: readonly { readonly element: number; readonly value: number }[];
}
