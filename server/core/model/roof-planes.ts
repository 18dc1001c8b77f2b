/**
 * The planes of a roof. The plane rises from the plate: the plumb cut of the seat lies on the eave plate's outside face
 * (on a shed's high plate: on its inside face), the level seat reaches inward from there.
 */
import { type Frame, isWhole, type Member, type Pointer } from "../frame/frame.ts";
import { defaultStepLap, stepOf } from "../joinery/step.ts";
import { inches } from "../quantity/length.ts";
import { spanAcross } from "./grid.ts";
import type { Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import { solidOf } from "./solid.ts";

export interface SlopePlane {
  /** the wall its eave stands on */
  readonly wall: string;
  /** y of the eave plate's outside face */
  readonly outside: number;
  /** direction of y from the eave to the ridge */
  readonly inward: 1 | -1;
  readonly plateTop: number;
  readonly plateWidth: number;
  /** rise over run */
  readonly slope: number;
  readonly angle: number;
  /** level length of the seat */
  readonly seat: number;
  readonly seatFrom: "file" | "default";
  /** level run from the plate's outside face to the middle of what bears */
  readonly bearing: number;
  /** depth of the rafters, square to the slope */
  readonly depth: number;
}

export interface RoofPlanes {
  readonly kind: "gable" | "shed";
  readonly slopes: readonly SlopePlane[];
  /** gable: midway between the plates' outside faces */
  readonly ridgeY: number | undefined;
  /** shed: run from the low plate's outside face to the high plate's inside face */
  readonly highRun: number | undefined;
  /** the plates' ends: outer faces of the rake rafters */
  readonly x: readonly [number, number];
}

/** Height of the rafters' underside at a run (inches, level) inward from the plate's outside face. */
export function undersideAt(plane: SlopePlane, run: number): number {
  return plane.plateTop + (run - plane.seat) * plane.slope;
}

/** Height of the rafters' upper edge there: the underside plus the plumb depth d / cos θ. */
export function topsideAt(plane: SlopePlane, run: number): number {
  return undersideAt(plane, run) + plane.depth / Math.cos(plane.angle);
}

/**
 * The largest step (1/4 in, or 5 mm) whose notch, seat × sin θ, stays within a quarter of the rafter's depth
 * (NDS 2018 4.4.3 and IRC R802.7.1 limit end notches to a quarter; from memory), and which the plate can carry.
 */
export function defaultSeat(depth: number, angle: number, plateWidth: number, metric: boolean): number {
  const step = metric ? 5 / 25.4 : 0.25;
  const most = Math.sin(angle) > 1e-9 ? depth / 4 / Math.sin(angle) : Number.POSITIVE_INFINITY;
  return Math.max(step, Math.floor(Math.min(most, plateWidth) / step + 1e-9) * step);
}

const CARRIES_RAFTERS: readonly Member["kind"][] = ["plate", "beam", "sill"];

/** Entries that may carry rafters along a wall, plates first. */
function bearers(p: Placer, wall: string): Member[] {
  return p.frame.members
    .filter((m) => CARRIES_RAFTERS.includes(m.kind) && m.walls?.some((w) => w.text === wall))
    .sort((a, b) => CARRIES_RAFTERS.indexOf(a.kind) - CARRIES_RAFTERS.indexOf(b.kind));
}

interface Bearing {
  readonly low: number;
  readonly high: number;
  readonly top: number;
  readonly x: readonly [number, number];
}

/** The plate of a wall: outline in y, top, and how far it runs along x (a spliced plate counts whole). */
function bearing(p: Placer, wall: string): Bearing | undefined {
  for (const member of bearers(p, wall)) {
    const solids = p
      .sticks(member.name)
      .filter((s: Timber) => s.walls.includes(wall))
      .map(solidOf);
    if (solids.length === 0) continue;
    const top = Math.max(...solids.map((s) => s.high[2]));
    return {
      low: Math.min(...solids.map((s) => s.low[1])),
      high: Math.max(...solids.map((s) => s.high[1])),
      top,
      x: [Math.min(...solids.map((s) => s.low[0])), Math.max(...solids.map((s) => s.high[0]))],
    };
  }
  return undefined;
}

/** Depth of the rafters: the roof's own, else those of the first principal rafters. */
function rafterDepth(p: Placer): number | undefined {
  const rafters = p.frame.roof?.rafters;
  if (rafters) return p.section(rafters.section, false, p.classOf(rafters.timber, "rafters"))?.depth;
  const principal = p.frame.members.find((m) => m.kind === "rafter");
  return (
    principal && p.section(principal.section, principal.turned, p.classOf(principal.timber, "rafters"))?.depth
  );
}

/** Outer walls that carry the roof: the low and the high one of a shed, both eaves of a gable. */
function roofWalls(p: Placer): { readonly eave: string; readonly far: string } | undefined {
  const first = p.grid.walls[0]?.id;
  const last = p.grid.walls.at(-1)?.id;
  if (first === undefined || last === undefined || first === last) return undefined;
  const roof = p.frame.roof;
  if (roof?.kind !== "shed") return { eave: first, far: last };
  if (!roof.high || !p.line(roof.high, "wall")) return undefined;
  return roof.high.text === first ? { eave: last, far: first } : { eave: first, far: last };
}

function plane(
  p: Placer,
  wall: string,
  b: Bearing,
  inward: 1 | -1,
  slope: number,
  depth: number,
): SlopePlane {
  const angle = Math.atan(slope);
  const width = b.high - b.low;
  const written = p.frame.roof?.rafters?.seat;
  const given = written?.seat;
  const metric = p.frame.units === "mm";
  const usualSeat = written?.kind === "step-lap" ? defaultStepLap : defaultSeat;
  const seat = given === undefined ? usualSeat(depth, angle, width, metric) : inches(given);
  return {
    wall,
    outside: inward === 1 ? b.low : b.high,
    inward,
    plateTop: b.top,
    plateWidth: width,
    slope,
    angle,
    seat,
    seatFrom: given === undefined ? "default" : "file",
    bearing:
      written?.kind === "step-lap" ? seat - housedRun(written, seat, angle, width, metric) / 2 : seat / 2,
    depth,
  };
}

/** Level run of the housing of a step-lap seat, in. */
function housedRun(
  { form, housing }: Pick<NonNullable<NonNullable<Frame["roof"]>["rafters"]>["seat"], "form" | "housing">,
  seat: number,
  angle: number,
  plateWidth: number,
  metric: boolean,
): number {
  const depth = housing && inches(housing);
  return stepOf({ seat, angle, form: form ?? "plumb", depth, plateWidth, metric }).housed;
}

function typedSlope(p: Placer): number | undefined {
  const pitch = p.frame.roof?.pitch;
  return pitch && pitch.run > 0 ? pitch.rise / pitch.run : undefined;
}

/** Places the planes from the plates, the pitch and the rafters' depth; undefined when one of them is not to be had. */
export function roofPlanes(p: Placer): RoofPlanes | undefined {
  const roof = p.frame.roof;
  const depth = rafterDepth(p);
  const walls = roof && roofWalls(p);
  if (!roof || depth === undefined || !walls) return undefined;
  const eave = bearing(p, walls.eave);
  const far = bearing(p, walls.far);
  if (!eave || !far) return undefined;
  const inward = walls.eave === p.grid.walls[0]?.id ? 1 : -1;
  const x: [number, number] = [Math.min(eave.x[0], far.x[0]), Math.max(eave.x[1], far.x[1])];
  if (roof.kind === "gable") {
    const slope = typedSlope(p);
    if (slope === undefined) return undefined;
    return {
      kind: "gable",
      slopes: [
        plane(p, walls.eave, eave, inward, slope, depth),
        plane(p, walls.far, far, inward === 1 ? -1 : 1, slope, depth),
      ],
      ridgeY: inward === 1 ? (eave.low + far.high) / 2 : (eave.high + far.low) / 2,
      highRun: undefined,
      x,
    };
  }
  const highRun = inward === 1 ? far.low - eave.low : eave.high - far.high;
  if (highRun < 1) return undefined;
  const derived = (far.top - eave.top) / highRun;
  const typed = typedSlope(p);
  // A sixteenth over the run is within what anyone marks out; more means that two of the three were typed apart.
  if (typed !== undefined && Math.abs(typed - derived) * highRun > 1 / 16)
    p.report({
      kind: "derived-differs",
      path: `${roof.path}/pitch`,
      what: "pitch",
      typed,
      derived,
      from: { high: far.top, low: eave.top, run: highRun },
    });
  return {
    kind: "shed",
    slopes: [plane(p, walls.eave, eave, inward, derived, depth)],
    ridgeY: undefined,
    highRun,
    x,
  };
}

/**
 * What the file must still give for the planes to be placed, in words for the message. Empty where another finding
 * says it already: a required key that is missing, or an entry that cannot be read.
 */
function roofLacks(p: Placer): readonly string[] {
  const roof = p.frame.roof;
  if (!roof) return ["roof"];
  const walls = roofWalls(p);
  if (!walls || !isWhole(p.frame)) return [];
  if (!roof.rafters && !p.frame.members.some((m) => m.kind === "rafter")) return ["roof: rafters"];
  return [walls.eave, walls.far].flatMap((wall) =>
    bearers(p, wall).length > 0 ? [] : [`a plate on wall ${wall}`],
  );
}

/** Says what the roof's planes lack, unless something else says it; nothing is placed. */
export function withoutPlanes(p: Placer, path: Pointer, name: string): [] {
  const needs = roofLacks(p);
  if (needs.length > 0) p.missing(path, name, needs);
  return [];
}

/**
 * Top of a shed's plate that the file leaves to the pitch: the other plate's top plus or minus pitch × run.
 * @param width of the plate asked for, inches across the wall
 */
export function plateTopFromPitch(p: Placer, wall: string, width: number): number | undefined {
  const slope = typedSlope(p);
  const walls = p.frame.roof?.kind === "shed" ? roofWalls(p) : undefined;
  const line = p.grid.wall.get(wall);
  if (slope === undefined || !walls || !line || (wall !== walls.eave && wall !== walls.far)) return undefined;
  const other = bearing(p, wall === walls.eave ? walls.far : walls.eave);
  if (!other) return undefined;
  const [low, high] = spanAcross(line, width);
  const own = { low, high };
  const [eave, far] = wall === walls.eave ? [own, other] : [other, own];
  const run = walls.eave === p.grid.walls[0]?.id ? far.low - eave.low : eave.high - far.high;
  if (run < 1) return undefined;
  return wall === walls.eave ? other.top - slope * run : other.top + slope * run;
}
