/** What the joints of two lengths end to end share. */
import { SCARF_KINDS } from "../frame/frame.ts";
import type { Timber } from "../model/model.ts";
import { along, cross, dot, scale, sub, type Vec2, type Vec3 } from "../model/vec.ts";
import { lengthNote, type Note } from "../note.ts";
import { because } from "./cut-rows.ts";
import { rectangle } from "./face.ts";
import type { JointEnd, JointPlace, Peg, Prism, ShapedJoint } from "./joint.ts";
import type { LapSizes, PegSizes, Sized } from "./joint-sizes.ts";
import { BORED_TOGETHER, pegSizes, usual } from "./proportions.ts";

const KINDS: ReadonlySet<string> = new Set(SCARF_KINDS);

/** Whether a kind of joint scarfs two lengths end to end. */
export function isScarf(kind: string): boolean {
  return KINDS.has(kind);
}

/**
 * Halfway between the two ends, along the grain: the same before and after both were lengthened by half the lap. The end
 * of the other length is the one that looks this way, however near its far end lies.
 */
function middleOfLap(own: Vec3, out: Vec3, into: Timber): Vec3 {
  const end = dot(into.axis, out) > 0 ? into.foot : into.head;
  return along(own, out, dot(sub(end.point, own), out) / 2);
}

/** Where a scarf lies: the middle of its lap, and the way out past the joined timber's end. */
export function lapPlace(
  of: Timber,
  end: JointEnd,
  into: Timber,
): { readonly middle: Vec3; readonly out: Vec3 } {
  const out = end === "head" ? of.axis : scale(of.axis, -1);
  return { middle: middleOfLap(end === "head" ? of.head.point : of.foot.point, out, into), out };
}

/** Shorter than this no lap is drawn, in. */
export const SHORTEST = 1 / 8;

/** A size with a limit: `asked` has what was wanted, where that is more. @param use what is cut instead */
export function atMost(size: Sized, most: number, use = most): Sized {
  return size.value <= most + 1e-6 ? size : { value: use, from: size.from, asked: size.value };
}

/** The lap that is cut: what the file or the rule asks for, no longer than both lengths have room for. @param past of its ends, what is cut past them, in */
export function lapLength(wanted: Sized, { room }: JointPlace, past = 0): Sized {
  return room ? atMost(wanted, Math.max(SHORTEST, 2 * (room.near - past))) : wanted;
}

/** @param depth of what is cut away, in */
export function lapSizes(length: Sized, depth: number, { room }: JointPlace): LapSizes {
  return { length, depth, ...(room && length.asked !== undefined ? { room } : {}) };
}

/** The words beside a size of a scarf. @param rule where the file does not give it */
export function scarfNote(size: Sized, rule: Note): Note {
  if (size.asked === undefined) return because(size, rule);
  return lengthNote("as much as can be cut of {length}", size.asked);
}

/** Four pegs or as the file says. @param field which they are spread over, in; @param columns rows along the grain */
export function scarfPegs(
  place: JointPlace,
  field: { readonly length: number; readonly width: number },
  columns?: number,
): PegSizes | undefined {
  const { spec, metric } = place;
  return pegSizes(
    place,
    spec?.pegs,
    { count: 4, diameter: usual(metric, 0.75, 19), draw: BORED_TOGETHER },
    { ...field, housing: 0 },
    columns,
  );
}

/** Where the full sections of both lengths end. @param half from the middle of the lap, in */
export function scarfEnds(
  middle: Vec3,
  out: Vec3,
  half: number,
): Pick<ShapedJoint, "extension" | "shoulder" | "receivingEnd"> {
  return {
    extension: 0,
    shoulder: { point: along(middle, out, half), normal: out },
    receivingEnd: { point: along(middle, out, -half), normal: scale(out, -1) },
  };
}

type Range = readonly [number, number];

/** A block in the axes of a scarf: u out past the joined timber's end, v level across, w up; inches from its middle. */
export function block(of: Timber, middle: Vec3, out: Vec3, u: Range, v: Range, w: Range): Prism {
  return {
    base: middle,
    u: out,
    v: cross(of.depthDir, out),
    w: of.depthDir,
    outline: rectangle(u, v),
    from: w[0],
    to: w[1],
  };
}

/** An outline in (u, z up) drawn through the whole width of the timber, so that its side shows it. */
export function throughWidth(of: Timber, middle: Vec3, out: Vec3, outline: readonly Vec2[]): Prism {
  return {
    base: middle,
    u: out,
    v: of.depthDir,
    w: cross(out, of.depthDir),
    outline,
    from: -of.width / 2,
    to: of.width / 2,
  };
}

/** Pegs straight down through the lap, row by row along the grain. @param half of the lap, in */
export function pegsDown(of: Timber, middle: Vec3, pegs: PegSizes, half: number): Peg[] {
  const at = (a: number, across: number, side: number): Vec3 =>
    along(along(along(middle, of.axis, a), of.depthDir, (side * of.depth) / 2), of.widthDir, across);
  return pegs.setbacks
    .flatMap((s) =>
      pegs.alongWidth.map((across) => ({
        from: at(s - half, across, 1),
        to: at(s - half, across, -1),
        diameter: pegs.diameter.value,
      })),
    )
    .slice(0, pegs.count);
}
