/**
 * The foot of an upright on the metal anchor of its pier: a joint whose other side is concrete. Where the steel lies, where
 * its bolts or screws go, and what is cut out of the wood for it.
 */
import { boltHole } from "../../fasteners/bolt.ts";
import type { AnchorSpec, StrapPlace } from "../../frame/anchor.ts";
import type { Pointer } from "../../frame/frame.ts";
import type { Pier, Timber } from "../../model/model.ts";
import { standOffOf } from "../../model/place-upright.ts";
import { isUpright } from "../../model/upright.ts";
import { along, cross, dot, scale, sub, type Vec3 } from "../../model/vec.ts";
import { inches } from "../../quantity/length.ts";
import type { Assembly, Peg, Prism } from "../joint.ts";
import type { Sized } from "../joint-sizes.ts";

/**
 * In diameters (NDS Tables 12.5.1A, B and D; memory): end distance for tension along the grain of softwood; from bolt to
 * bolt 4 along the load, 5 where a push across the grain makes a row of each.
 */
const END_DIAMETERS = 7;
const ROW_DIAMETERS = 5;

/** How far steel runs up a post from its end where the file does not say, in (common practice, no source). */
const USUAL_REACH = 8;
/** How far a dowel stands up inside a post, in (common practice, no source). */
const DOWEL_REACH = 6;
/** The plain traditional dowel, in: thick, and at least so far into the post (NAVFAC; published in the shared reference). */
const DOWEL = { diameter: 1 / 2, into: 3 };
/** A kerf is this much wider than its plate, in (common practice, no source). */
const KERF_PLAY = 1 / 16;

export interface FootStrap {
  readonly place: StrapPlace;
  /** straps in all: two on both faces */
  readonly sides: 1 | 2;
  /** in */
  readonly thickness: number;
  readonly width: number;
  /** from the post's end to the top of the steel */
  readonly height: Sized;
  readonly letIn: number;
  /** width of the kerf; 0 = none */
  readonly kerf: number;
}

/** Bolts, or the screws of each strap, one above the other. */
export interface FootRow {
  readonly kind: "bolts" | "screws";
  readonly path: Pointer;
  readonly count: number;
  /** in */
  readonly diameter: number;
  /** in, of screws */
  readonly length: number | undefined;
  /** from the post's end to the lowest, and from one to the next */
  readonly up: Sized;
  readonly spacing: Sized;
}

export interface PostFoot {
  /** `post-foot@A1` */
  readonly id: string;
  readonly pier: Pier;
  readonly post: Timber;
  readonly anchor: AnchorSpec;
  readonly path: Pointer;
  /** from the concrete to the end grain */
  readonly standOff: Sized;
  /** middle of the post's end */
  readonly end: Vec3;
  /** unit: up the post, the way its bolts run, and across the straps = up × run */
  readonly up: Vec3;
  readonly run: Vec3;
  readonly across: Vec3;
  /** in, of the post along the bolts and across the straps */
  readonly through: number;
  readonly breadth: number;
  /** side of the plate under the end grain; undefined = as large as the post */
  readonly plate: number | undefined;
  readonly strap: FootStrap | undefined;
  readonly row: FootRow | undefined;
  /** hole in the end grain for the dowel, in */
  readonly dowel: { readonly diameter: number; readonly into: number } | undefined;
  /** cut out of the post, and bored through it or into it */
  readonly notches: readonly Prism[];
  readonly holes: readonly Peg[];
  /** how far the steel runs up the post, in */
  readonly reach: number;
}

/** @returns the place of the height of each bolt or screw above the post's end, in */
export const heightsOf = ({ count, up, spacing }: FootRow): readonly number[] =>
  Array.from({ length: count }, (_, i) => up.value + i * spacing.value);

/** The highest place that a fastener takes, from the post's end, in. */
export const topOf = (row: FootRow): number => Math.max(...heightsOf(row));

/** The post is set down on the anchor, whatever its straps. */
export const footAssembly = ({ up }: PostFoot): Assembly => ({ direction: scale(up, -1) });

/** Whether its steel is a plate in a kerf, which screws do not hold. */
export const isInKerf = ({ strap }: AnchorSpec): boolean =>
  strap !== undefined && strap !== "unread" && strap.place === "in-kerf";

/** What straps that are let in, or the kerf, leave of the post along its bolts, in; never less than nothing. */
export const woodLeft = ({ through, strap }: Pick<PostFoot, "through" | "strap">): number =>
  Math.max(0, through - (strap ? strap.sides * strap.letIn + strap.kerf : 0));

/** How deep a screw may go, in: to the far face, or to the middle where screws come from both faces. */
export const screwRoom = (foot: Pick<PostFoot, "through" | "strap">): number =>
  woodLeft(foot) / (foot.strap?.sides ?? 1);

function rowOf(anchor: AnchorSpec): FootRow | undefined {
  const { bolts, screws } = anchor;
  if (bolts === "unread" || screws === "unread") return undefined;
  const spec = bolts ?? screws;
  if (anchor.kind === "dowel" || spec?.diameter === undefined) return undefined;
  if (!bolts && isInKerf(anchor)) return undefined;
  const diameter = inches(spec.diameter);
  const sized = (given: typeof spec.up, diameters: number): Sized =>
    given === undefined
      ? { value: diameters * diameter, from: "default" }
      : { value: inches(given), from: "file" };
  const length = bolts ? undefined : screws?.length;
  return {
    kind: bolts ? "bolts" : "screws",
    path: spec.path,
    count: spec.count,
    diameter,
    length: length === undefined ? undefined : inches(length),
    up: sized(spec.up, END_DIAMETERS),
    spacing: sized(spec.spacing, ROW_DIAMETERS),
  };
}

/** Highest fastener and its room above, or the usual reach where that is more. */
function usualHeight(row: FootRow | undefined): number {
  const top = row ? topOf(row) + 2 * row.diameter : 0;
  return Math.max(USUAL_REACH, top);
}

function strapOf(anchor: AnchorSpec, row: FootRow | undefined): FootStrap | undefined {
  const { strap, kind } = anchor;
  if (kind === "dowel" || strap === undefined || strap === "unread") return undefined;
  if (strap.thickness === undefined || strap.width === undefined) return undefined;
  const thickness = inches(strap.thickness);
  const inKerf = strap.place === "in-kerf";
  return {
    place: strap.place,
    sides: strap.place === "both-faces" ? 2 : 1,
    thickness,
    width: inches(strap.width),
    height:
      strap.height === undefined
        ? { value: usualHeight(row), from: "default" }
        : { value: inches(strap.height), from: "file" },
    letIn: inKerf || strap.letIn === undefined ? 0 : inches(strap.letIn),
    kerf: inKerf ? thickness + KERF_PLAY : 0,
  };
}

type Placed = Pick<PostFoot, "end" | "up" | "run" | "across" | "through" | "breadth">;

/** Which of the post's two ways across its section lies along the wall or the bent, and where its end is. */
function placed(post: Timber, runs: AnchorSpec["runs"]): Placed {
  const standing = post.axis[2] > 0;
  const plane = standing ? post.foot : post.head;
  const slant = dot(post.axis, plane.normal);
  const at = Math.abs(slant) < 1e-9 ? 0 : dot(sub(plane.point, post.origin), plane.normal) / slant;
  const up = standing ? post.axis : scale(post.axis, -1);
  const way: Vec3 = runs === "along-wall" ? [1, 0, 0] : [0, 1, 0];
  const [w, d] = [dot(post.widthDir, way), dot(post.depthDir, way)];
  const byWidth = Math.abs(w) >= Math.abs(d);
  const run = byWidth ? scale(post.widthDir, w < 0 ? -1 : 1) : scale(post.depthDir, d < 0 ? -1 : 1);
  return {
    end: along(post.origin, post.axis, at),
    up,
    run,
    across: cross(up, run),
    through: byWidth ? post.width : post.depth,
    breadth: byWidth ? post.depth : post.width,
  };
}

/** A flat cut that is open at the post's end: so wide across the straps, so high, between two places along the bolts. */
function slot(at: Placed, wide: number, high: number, from: number, to: number): Prism {
  const half = wide / 2;
  return {
    base: at.end,
    u: at.across,
    v: at.up,
    w: at.run,
    outline: [
      [-half, 0],
      [half, 0],
      [half, high],
      [-half, high],
    ],
    from,
    to,
  };
}

function notchesOf(at: Placed, strap: FootStrap | undefined): Prism[] {
  if (!strap) return [];
  const high = strap.height.value;
  // a saw runs through from face to face
  if (strap.kerf > 0) return [slot(at, at.breadth, high, -strap.kerf / 2, strap.kerf / 2)];
  if (!(strap.letIn > 0)) return [];
  const half = at.through / 2;
  const wide = Math.min(strap.width, at.breadth);
  const near = slot(at, wide, high, half - strap.letIn, half);
  return strap.sides === 1 ? [near] : [near, slot(at, wide, high, -half, strap.letIn - half)];
}

function holesOf(at: Placed, foot: Pick<PostFoot, "row" | "strap" | "dowel">): Peg[] {
  const { row, strap, dowel } = foot;
  if (dowel) return [{ from: at.end, to: along(at.end, at.up, dowel.into), diameter: dowel.diameter }];
  if (!row) return [];
  const half = at.through / 2;
  const face = Math.max(0, half - (strap?.letIn ?? 0));
  return heightsOf(row).flatMap((high): Peg[] => {
    const middle = along(at.end, at.up, high);
    if (row.kind === "bolts") {
      const diameter = holeOf(row.diameter);
      return [{ from: along(middle, at.run, -face), to: along(middle, at.run, half), diameter }];
    }
    const deep = Math.min((row.length ?? 0) - (strap?.thickness ?? 0), face + half);
    const sides = strap?.place === "one-face" ? [1] : [1, -1];
    return (deep > 0 ? sides : []).map((side) => ({
      from: along(middle, at.run, side * face),
      to: along(middle, at.run, side * (face - deep)),
      diameter: row.diameter,
    }));
  });
}

/** Hole of a bolt in wood, in: 1/16 in over it, the most of NDS 12.1.3.2 (published as bolt holes in the shared reference). */
export const holeOf = (diameter: number): number => boltHole(diameter).most;

/** How far the steel of an anchor runs up a post or beside a lying timber, in. */
export function anchorReach(anchor: AnchorSpec): number {
  if (anchor.kind === "dowel") return DOWEL_REACH;
  const row = rowOf(anchor);
  return strapOf(anchor, row)?.height.value ?? usualHeight(row);
}

function footOf(pier: Pier, post: Timber, anchor: AnchorSpec, id: string): PostFoot {
  const at = placed(post, anchor.runs);
  const row = rowOf(anchor);
  const strap = strapOf(anchor, row);
  const dowel = anchor.kind === "dowel" ? DOWEL : undefined;
  return {
    id,
    pier,
    post,
    anchor,
    path: anchor.path,
    standOff: { value: standOffOf(pier.entry), from: anchor.standOff === undefined ? "default" : "file" },
    ...at,
    plate: anchor.plate === undefined ? undefined : inches(anchor.plate),
    strap,
    row,
    dowel,
    notches: notchesOf(at, strap),
    holes: holesOf(at, { row, strap, dowel }),
    reach: anchorReach(anchor),
  };
}

/**
 * The feet of all uprights that an anchor holds on a pier.
 * @param taken ids of joints, which keep their names
 */
export function postFeet(piers: readonly Pier[], taken: ReadonlySet<string>): PostFoot[] {
  return piers.flatMap((pier) => {
    const { timber, entry } = pier;
    if (!timber || !entry.anchor || !isUpright(timber)) return [];
    const plain = `${timber.member}-foot@${pier.id.slice(pier.id.indexOf("@") + 1)}`;
    return [footOf(pier, timber, entry.anchor, taken.has(plain) ? `${plain}.pier` : plain)];
  });
}
