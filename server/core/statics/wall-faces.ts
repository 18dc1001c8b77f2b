/**
 * The outer sides of a building: how large they are, what closes them, and which timbers carry what pushes at them.
 * Siding lies on girts where those run along the whole side, with plate, sill and tie beside them, each by half the
 * height to its neighbors; else on the posts, each by half the width. The gable, or the slanting part of a shed's end,
 * goes half to the end rafters and half to the tie, or to the posts where there is none (common practice).
 * Inches and pounds.
 */
import type { Pointer, Siding } from "../frame/frame.ts";
import { atEnd, type DeadEnd, sidingDead } from "../loads/dead.ts";
import { tributaryWidths } from "../loads/tributary.ts";
import { isOpenWall } from "../loads/wind-enclosed.ts";
import { gridLines, type Line } from "../model/grid.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import type { Vec3 } from "../model/vec.ts";
import { type LineLoad, ridgeLine } from "./line-loads.ts";

/** Inches of side per inch of a timber, straight between two axial positions: times a pressure it is a line load. */
interface Share {
  readonly timber: Timber;
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
}

export interface WallFace {
  /** the grid line: `A`, `1` */
  readonly line: string;
  /** which way one looks through it from inside, level */
  readonly outward: Vec3;
  /** where the face lies along `outward`'s axis */
  readonly at: number;
  readonly siding: Siding | undefined;
  /** ft², from the feet of its timbers to the roof, and what stays open of it */
  readonly gross: number;
  readonly openings: number;
  /** false: the file says how much stays open, and it cannot be read */
  readonly openingsKnown: boolean;
  /** part of the face that catches wind: 1, or what is closed of a side that counts as open */
  readonly solid: number;
  readonly shares: readonly Share[];
  /** ft² that no timber carries */
  readonly uncarried: number;
}

/** girts count as carrying a side from this part of its length on (common practice) */
const ALL_ALONG = 0.8;
/** timbers of one row lie within so many inches of each other */
const ROW = 3;
const SQUARE_FOOT = 144;

/** The side in its own plane: `k` is the axis along it. */
interface Side {
  readonly k: 0 | 1;
  readonly low: number;
  readonly high: number;
  readonly bottom: number;
  /** top of the upright part */
  readonly eave: number;
}

/** Height of the roof over a level position, else of the highest timber. */
function roofAt(model: Model, y: number): number {
  const slopes = model.roof?.slopes ?? [];
  const over = slopes.map((s) => {
    const [, ny] = s.plane.normal;
    return s.plane.point[2] - Math.sign(ny) * s.slope * (y - s.plane.point[1]);
  });
  if (over.length > 0) return Math.min(...over);
  return Math.max(0, ...model.timbers.map((t) => topOf(t)));
}

export const topOf = (t: Timber): number =>
  Math.max(t.origin[2], t.origin[2] + t.axis[2] * t.span) +
  (Math.abs(t.widthDir[2]) * t.width + Math.abs(t.depthDir[2]) * t.depth) / 2;

const footOf = (t: Timber): number =>
  Math.min(t.origin[2], t.origin[2] + t.axis[2] * t.span) -
  (Math.abs(t.widthDir[2]) * t.width + Math.abs(t.depthDir[2]) * t.depth) / 2;

/** Axial interval of a timber along `k` that lies between two positions. */
function within(t: Timber, k: 0 | 1 | 2, low: number, high: number): readonly [number, number] | undefined {
  const per = t.axis[k];
  if (Math.abs(per) < 0.05) return undefined;
  const [a, b] = [(low - t.origin[k]) / per, (high - t.origin[k]) / per];
  const from = Math.max(0, Math.min(a, b));
  const to = Math.min(t.span, Math.max(a, b));
  return to - from > 1e-6 ? [from, to] : undefined;
}

/** The same share all over a part of a timber that carries so many square inches. */
function even(timber: Timber, from: number, to: number, area: number): Share {
  const w = area / (to - from);
  return { timber, from, to, start: w, end: w };
}

/** Rows of lying timbers that run along the whole side, from below. */
function rowsOf(lying: readonly Timber[], side: Side): readonly (readonly Timber[])[] {
  const rows: Timber[][] = [];
  for (const t of [...lying].sort((a, b) => a.origin[2] - b.origin[2])) {
    const last = rows.at(-1);
    if (last?.[0] && t.origin[2] - last[0].origin[2] <= ROW) last.push(t);
    else rows.push([t]);
  }
  return rows.filter((row) => covered(row, side) >= ALL_ALONG * (side.high - side.low));
}

const partOf = (t: Timber, { k, low, high }: Side) => within(t, k, low, high);

function covered(row: readonly Timber[], side: Side): number {
  return row.reduce((sum, t) => {
    const part = partOf(t, side);
    return sum + (part ? part[1] - part[0] : 0);
  }, 0);
}

function onRows(rows: readonly (readonly Timber[])[], side: Side): Share[] {
  const levels = rows.map(([t]) => Math.min(side.eave, Math.max(side.bottom, t?.origin[2] ?? 0)));
  const heights = tributaryWidths(levels, {
    first: (levels[0] ?? 0) - side.bottom,
    last: side.eave - (levels.at(-1) ?? 0),
  });
  return rows.flatMap((row, i) => {
    const area = (heights[i] ?? 0) * (side.high - side.low);
    const all = covered(row, side);
    return row.flatMap((t) => {
      const part = partOf(t, side);
      return part ? [even(t, part[0], part[1], (area * (part[1] - part[0])) / all)] : [];
    });
  });
}

function onPosts(posts: readonly Timber[], side: Side): Share[] {
  const sorted = [...posts].sort((a, b) => a.origin[side.k] - b.origin[side.k]);
  const at = sorted.map((t) => Math.min(side.high, Math.max(side.low, t.origin[side.k])));
  const widths = tributaryWidths(at, {
    first: (at[0] ?? 0) - side.low,
    last: side.high - (at.at(-1) ?? 0),
  });
  return sorted.flatMap((t, i) => {
    const part = within(t, 2, side.bottom, side.eave);
    return part ? [even(t, part[0], part[1], (widths[i] ?? 0) * (side.eave - side.bottom))] : [];
  });
}

/** Straight between two heights over the part of a timber between two positions; a part cut off goes to the rest. */
function slanting(t: Timber, k: 0 | 1, piece: Piece): Share[] {
  const part = within(t, k, Math.min(piece.a, piece.b), Math.max(piece.a, piece.b));
  if (!part) return [];
  const at = (s: number): number => {
    const p = t.origin[k] + t.axis[k] * s;
    return piece.ha + ((piece.hb - piece.ha) * (p - piece.a)) / (piece.b - piece.a);
  };
  const [start, end] = [Math.max(0, at(part[0])), Math.max(0, at(part[1]))];
  const sum = ((start + end) / 2) * (part[1] - part[0]);
  if (sum <= 0) return [];
  const factor = areaOf(piece) / 2 / sum;
  return [{ timber: t, from: part[0], to: part[1], start: start * factor, end: end * factor }];
}

/** Part of a gable: heights above the eave at two positions. */
interface Piece {
  readonly a: number;
  readonly b: number;
  readonly ha: number;
  readonly hb: number;
}

const areaOf = ({ a, b, ha, hb }: Piece): number => (Math.abs(b - a) * (ha + hb)) / 2;

/** What stands above the upright part of an end, slope by slope. */
function piecesOf(model: Model, side: Side): readonly (Piece & { readonly slope: RoofSlope })[] {
  const middle = ridgeLine(model);
  return (model.roof?.slopes ?? []).flatMap((slope) => {
    const rises = slope.plane.normal[1] < 0;
    const a = rises ? side.low : side.high;
    const b = Math.min(side.high, Math.max(side.low, middle ?? (rises ? side.high : side.low)));
    const piece = { a, b, ha: roofAt(model, a) - side.eave, hb: roofAt(model, b) - side.eave, slope };
    return areaOf(piece) > 1e-6 ? [piece] : [];
  });
}

/** The rafter of a slope that stands nearest to an end. */
function endRafter(model: Model, slope: RoofSlope, at: number): Timber | undefined {
  const all = slope.rafters.length > 0 ? slope.rafters : model.timbers.filter((t) => t.kind === "rafter");
  return [...all]
    .filter((t) => t.walls.includes(slope.wall))
    .sort((p, q) => Math.abs(p.origin[0] - at) - Math.abs(q.origin[0] - at))[0];
}

/** @returns shares of what stands above the upright part of an end, and square inches that nothing carries */
function onGable(
  model: Model,
  side: Side,
  at: number,
  lying: readonly Timber[],
  posts: readonly Timber[],
): { readonly shares: readonly Share[]; readonly bare: number } {
  // the highest timber across the end carries the foot of its gable
  const tie = [...lying]
    .filter((t) => covered([t], side) >= ALL_ALONG * (side.high - side.low))
    .sort((p, q) => q.origin[2] - p.origin[2])[0];
  const found = piecesOf(model, side).map((piece) => {
    const rafter = endRafter(model, piece.slope, at);
    const above = rafter ? slanting(rafter, side.k, piece) : [];
    const below = tie ? slanting(tie, side.k, piece) : spread(posts, side, areaOf(piece) / 2);
    const both = [...above, ...below];
    // where one of the two is missing, the other carries all
    const factor = above.length > 0 && below.length > 0 ? 1 : 2;
    const shares = both.map((s) => ({ ...s, start: s.start * factor, end: s.end * factor }));
    return { shares, bare: both.length > 0 ? 0 : areaOf(piece) };
  });
  return { shares: found.flatMap((f) => f.shares), bare: found.reduce((sum, f) => sum + f.bare, 0) };
}

/** So many square inches, evenly on the posts of a side. */
function spread(posts: readonly Timber[], side: Side, area: number): Share[] {
  return posts.flatMap((t) => {
    const part = within(t, 2, side.bottom, side.eave);
    return part ? [even(t, part[0], part[1], area / posts.length)] : [];
  });
}

const LYING: ReadonlySet<Timber["kind"]> = new Set(["girt", "plate", "sill", "beam", "tie"]);

function faceOf(model: Model, line: Line, k: 0 | 1, outward: -1 | 1): WallFace | undefined {
  const grid = gridLines(model.frame);
  const across = k === 0 ? grid.bents : grid.walls;
  const [low, high] = [across[0]?.at, across.at(-1)?.at];
  const own = model.timbers.filter((t) => (k === 0 ? t.walls : t.bents).includes(line.id));
  const posts = own.filter((t) => t.kind === "post");
  const lying = own.filter((t) => LYING.has(t.kind) && Math.abs(t.axis[k]) > 0.95);
  const carriers = [...posts, ...lying];
  if (low === undefined || high === undefined || high - low < 1e-6 || carriers.length === 0) return undefined;
  const bottom = Math.min(...carriers.map(footOf));
  const eave = k === 0 ? roofAt(model, line.at) : Math.min(roofAt(model, low), roofAt(model, high));
  if (eave - bottom < 1e-6) return undefined;
  const side: Side = { k, low, high, bottom, eave };
  const rows = rowsOf(lying, side);
  const girts = rows.some((row) => row.some((t) => t.kind === "girt"));
  const upright = girts || posts.length === 0 ? onRows(rows, side) : onPosts(posts, side);
  const gable = k === 1 ? onGable(model, side, line.at, lying, posts) : { shares: [], bare: 0 };
  const rectangle = (high - low) * (eave - bottom);
  const slanted = k === 1 ? piecesOf(model, side).reduce((sum, p) => sum + areaOf(p), 0) : 0;
  const gross = (rectangle + slanted) / SQUARE_FOOT;
  const siding = model.frame.siding.find((s) => s.line === line.id);
  const openings = siding ? Math.min(gross, siding.openings ?? (siding.open ?? 0) * gross) : gross;
  return {
    line: line.id,
    outward: k === 0 ? [0, outward, 0] : [outward, 0, 0],
    at: line.at,
    siding,
    gross,
    openings,
    openingsKnown: siding === undefined || openingsKnown(siding, model.frame.unreadLoads),
    solid: isOpenWall({ gross, openings }) ? 1 - openings / gross : 1,
    shares: [...upright, ...gable.shares],
    uncarried: ((upright.length > 0 ? 0 : rectangle) + gable.bare) / SQUARE_FOOT,
  };
}

/** Whether all that rules what stays open of a side can be read. */
function openingsKnown({ path, openings, open }: Siding, unread: readonly Pointer[]): boolean {
  if (openings !== undefined) return true;
  if (unread.includes(`${path}/openings`) || unread.includes(`${path}/open`)) return false;
  return open !== undefined || !unread.includes(path);
}

/** @returns the outer sides that have timbers: up to two along the walls, up to two across them */
export function wallFaces(model: Model): readonly WallFace[] {
  const { walls, bents } = gridLines(model.frame);
  return (
    [
      [walls, 0],
      [bents, 1],
    ] as const
  ).flatMap(([lines, k]) => {
    const [first, last] = [lines[0], lines.at(-1)];
    return [
      ...(first ? [faceOf(model, first, k, -1)] : []),
      ...(last && last !== first ? [faceOf(model, last, k, 1)] : []),
    ].flatMap((face) => face ?? []);
  });
}

/** What pushes at a face, or hangs on it. @param psf of the face; @param toward which way it acts */
export function onFace(face: WallFace, psf: number, toward: Vec3): LineLoad[] {
  if (psf === 0) return [];
  const at = (inch: number): Vec3 => {
    const w = (psf * face.solid * inch) / SQUARE_FOOT;
    return [toward[0] * w, toward[1] * w, toward[2] * w];
  };
  return face.shares.map((s) => ({
    timber: s.timber,
    from: s.from,
    to: s.to,
    startForce: at(s.start),
    endForce: at(s.end),
  }));
}

/** Weight of a siding, psf of what is closed. */
export function weightOf({ weight }: Siding): ReturnType<typeof sidingDead> {
  return sidingDead(weight);
}

/** Weight of the siding that the file names, openings left out. */
export function sidingWeight(faces: readonly WallFace[], end: DeadEnd): LineLoad[] {
  return faces.flatMap((face) => {
    if (!face.siding) return [];
    const closed = face.gross > 0 ? 1 - face.openings / face.gross : 0;
    const psf = atEnd(weightOf(face.siding), end) * (face.solid > 0 ? closed / face.solid : 0);
    return onFace(face, psf, [0, 0, -1]);
  });
}
