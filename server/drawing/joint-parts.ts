/** The two timbers of a joint near it, as they are cut, broken off where they go on. */
import { arcOrdinate } from "../core/joinery/arc.ts";
import { endBreadth } from "../core/joinery/end-breadth.ts";
import type { Joint, JointSolids, Prism } from "../core/joinery/joint.ts";
import { halfExtent } from "../core/model/box.ts";
import type { EndPlane, Timber } from "../core/model/model.ts";
import { type Solid, solidOf } from "../core/model/solid.ts";
import { add, along, dot, scale, sub, type Vec2, type Vec3 } from "../core/model/vec.ts";
import { type CutSolid, convexBlock, prismBlock, prismPoint } from "./cut-solid.ts";

export interface TimberPart {
  readonly timber: Timber;
  /** the full section between its end or break and the next */
  readonly body: Solid;
  readonly solid: CutSolid;
  /** what is taken away from it, where its outline shows it */
  readonly gone: readonly Prism[];
  /** planes at which it is broken off on paper */
  readonly breaks: readonly EndPlane[];
}

export interface JointParts {
  readonly joined: TimberPart;
  readonly receiving: TimberPart;
  readonly wedges: readonly CutSolid[];
}

/** Timber shown beyond the joint: this share of the larger section, inches at least and at most. */
const BEYOND = { share: 0.55, least: 3, most: 8 };
/** Timbers nearer to one line than this (cosine) lie end to end. */
const IN_LINE = 0.95;
/** Facets of a hollow turn by less than what counts as an edge, radians. */
const FACET = 0.015;

/** A solid farther than this from both timbers, inches, is no part of the joint that one could cut. */
const ASTRAY = 1;

/** The solids of a joint that lie in or at its timbers. */
export function solidsInPlace({ of, into, solids }: Joint): JointSolids {
  const bodies = [solidOf(of), solidOf(into)];
  const isNear = (prism: Prism): boolean => {
    const corners = prismCorners(prism);
    const middle = scale(corners.reduce(add, [0, 0, 0] as Vec3), 1 / Math.max(1, corners.length));
    return bodies.some(({ faces }) =>
      [middle, ...corners].some((p) => faces.every((face) => dot(face.normal, p) < face.level + ASTRAY)),
    );
  };
  return {
    ...solids,
    tenons: solids.tenons.filter(isNear),
    mortises: solids.mortises.filter(isNear),
    housings: solids.housings.filter(isNear),
    wedges: solids.wedges.filter(isNear),
    notches: solids.notches.filter(isNear),
  };
}

const prismsOf = (solids: JointSolids): Prism[] => [
  ...solids.tenons,
  ...solids.mortises,
  ...solids.housings,
  ...solids.wedges,
  ...solids.notches,
];

/** @returns the points of a prism's corners */
export const prismCorners = (prism: Prism): Vec3[] =>
  [prism.from, prism.to].flatMap((c) => prism.outline.map((o) => prismPoint(prism, o, c)));

/** Points of a timber that the joint takes part of, and where the other timber stands. */
function reach(joint: Joint, timber: Timber): Vec3[] {
  const { of, into, face, solids } = joint;
  const own = prismsOf(solids).flatMap(prismCorners);
  const pegs = solids.pegs.flatMap(({ from, to }) => [from, to]);
  const inLine = Math.abs(dot(of.axis, into.axis)) > IN_LINE;
  if (timber === of) {
    const far = along(face.origin, face.inward, face.thickness);
    return [...own, face.origin, ...(inLine ? pegs : [far])];
  }
  const half = inLine
    ? 0
    : joint.end === "side"
      ? halfExtent(of, face.grain)
      : endBreadth(joint, face.grain) / 2;
  return [...own, ...[-half, half].map((k) => along(face.origin, face.grain, k)), ...(inLine ? pegs : [])];
}

/**
 * The hollow of a curved timber, as a solid that is gone.
 * @param shown which stretch of the timber is drawn, along it
 */
function hollowOf(timber: Timber, whole: Solid, shown: readonly [number, number]): Prism[] {
  const { curve } = timber;
  const corner = whole.corners[curve?.side === 1 ? 3 : 0];
  if (!curve || !corner) return [];
  const { side, radius, rise, chord } = curve;
  const start = dot(sub(corner, timber.origin), timber.axis);
  const [low, high] = [Math.max(0, shown[0] - 1 - start), Math.min(chord, shown[1] + 1 - start)];
  if (!(high > low)) return [];
  const count = Math.max(4, Math.ceil((high - low) / (FACET * radius)));
  const outline = Array.from({ length: count + 1 }, (_, i): Vec2 => {
    const x = low + ((high - low) * i) / count;
    return [x, -side * arcOrdinate(radius, rise, x - chord / 2)];
  });
  const outside: Vec2[] = [
    [high, side],
    [low, side],
  ];
  return [
    {
      base: corner,
      u: timber.axis,
      v: timber.depthDir,
      w: timber.widthDir,
      outline: [...outline, ...outside],
      from: -1,
      to: timber.width + 1,
    },
  ];
}

function partOf(joint: Joint, timber: Timber, wood: readonly Prism[], gone: readonly Prism[]): TimberPart {
  const whole = solidOf(timber);
  const at = (p: Vec3): number => dot(sub(p, timber.origin), timber.axis);
  const places = reach(joint, timber).map(at);
  const largest = Math.max(joint.of.width, joint.of.depth, joint.into.width, joint.into.depth);
  const more = Math.min(BEYOND.most, Math.max(BEYOND.least, BEYOND.share * largest));
  const [low, high] = [Math.min(...places) - more, Math.max(...places) + more];
  const feet = whole.corners.slice(0, 4).map(at);
  const heads = whole.corners.slice(4).map(at);
  const plane = (k: number, sign: 1 | -1): EndPlane => ({
    point: along(timber.origin, timber.axis, k),
    normal: scale(timber.axis, sign),
  });
  const footBreak = low > Math.max(...feet) ? plane(low, -1) : undefined;
  const headBreak = high < Math.min(...heads) ? plane(high, 1) : undefined;
  const body = solidOf({ ...timber, foot: footBreak ?? timber.foot, head: headBreak ?? timber.head });
  const cuts = [...gone, ...hollowOf(timber, whole, [low, high])];
  return {
    timber,
    body,
    solid: { wood: [convexBlock(body), ...wood.map(prismBlock)], cut: cuts.map(prismBlock) },
    gone: cuts,
    breaks: [footBreak, headBreak].flatMap((each) => each ?? []),
  };
}

/** @returns the joint's wood; a tenon belongs to the joined timber, mortise and housing are gone from the receiving one */
export function jointParts(joint: Joint): JointParts {
  const { of, into, solids } = joint;
  return {
    joined: partOf(joint, of, solids.tenons, solids.notches),
    receiving: partOf(joint, into, [], [...solids.mortises, ...solids.housings]),
    wedges: solids.wedges.map((wedge) => ({ wood: [prismBlock(wedge)], cut: [] })),
  };
}
