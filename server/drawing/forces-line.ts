/** The center line of a timber on paper, and which way its diagrams are read. */
import type { Timber } from "../core/model/model.ts";
import { dot, type Vec2, type Vec3 } from "../core/model/vec.ts";
import type { Body } from "./body.ts";
import { project, type Sight } from "./views.ts";

/** sine within which a timber counts as lying in the page */
const IN_PLANE = 0.3;
/** share of its length on paper that a line must run to the right to be read from left to right */
const UPRIGHT = 0.01;

export interface PaperLine {
  readonly timber: Timber;
  /** unit vector on paper in the direction of reading: to the right; upward where it stands */
  readonly ahead: Vec2;
  /** unit vector on paper square to it: upward; to the left where it stands */
  readonly up: Vec2;
  /** the same in space */
  readonly upward: Vec3;
  /** read from head to foot */
  readonly reversed: boolean;
  /** where an axial position lies on paper */
  readonly at: (axial: number) => Vec2;
}

/** @returns undefined for a timber that runs out of the page */
function lineOf(sight: Sight, timber: Timber): PaperLine | undefined {
  if (Math.abs(dot(timber.axis, sight.toward)) > IN_PLANE) return undefined;
  const [x, y] = project(sight, timber.origin);
  const [dx, dy] = project(sight, timber.axis);
  const length = Math.hypot(dx, dy);
  if (!(length > 0) || !Number.isFinite(x + y)) return undefined;
  const reversed = Math.abs(dx) < UPRIGHT * length ? dy < 0 : dx < 0;
  const turned = reversed ? -1 / length : 1 / length;
  const ahead: Vec2 = [dx * turned, dy * turned];
  const up: Vec2 = [-ahead[1], ahead[0]];
  return {
    timber,
    ahead,
    up,
    upward: sight.across === 0 ? [up[0], 0, up[1]] : [0, up[0], up[1]],
    reversed,
    at: (axial) => [x + dx * axial, y + dy * axial],
  };
}

/** @returns lines of the timbers that lie in the page, in the order of the bodies */
export function linesOf(sight: Sight, bodies: readonly Body[]): PaperLine[] {
  return bodies.flatMap((body) => (body.cut ? [] : (lineOf(sight, body.timber) ?? [])));
}

/** inches within which two lines lie on one another */
const SAME_LINE = 4;
/** share of a timber that another may lie over */
const SHARED = 0.3;

/** Whether two timbers lie one behind the other, so that their diagrams would run together. */
export function coincide(a: PaperLine, b: PaperLine): boolean {
  if (Math.abs(a.ahead[0] * b.ahead[0] + a.ahead[1] * b.ahead[1]) < 0.99) return false;
  const [o, from, to] = [a.at(0), b.at(0), b.at(b.timber.span)];
  const off = (p: Vec2): number => (p[0] - o[0]) * a.up[0] + (p[1] - o[1]) * a.up[1];
  if (Math.abs(off(from)) > SAME_LINE || Math.abs(off(to)) > SAME_LINE) return false;
  const reach = (line: PaperLine): readonly [number, number] => {
    const ends = [line.at(0), line.at(line.timber.span)].map((p) => p[0] * a.ahead[0] + p[1] * a.ahead[1]);
    return [Math.min(...ends), Math.max(...ends)];
  };
  const [p, q] = [reach(a), reach(b)];
  const shared = Math.min(p[1], q[1]) - Math.max(p[0], q[0]);
  return shared > SHARED * Math.min(p[1] - p[0], q[1] - q[0]);
}
