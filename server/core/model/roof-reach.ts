/** How far a roof reaches: up each slope to where heads, purlins and deck end, and along the walls from rake to rake. */
import type { Ref } from "../frame/frame.ts";
import { meetAtPeak } from "../frame/roof.ts";
import { inches, NO_LENGTH } from "../quantity/length.ts";
import type { Interval } from "./box.ts";
import type { Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import type { RoofPlanes, SlopePlane } from "./roof-planes.ts";
import { solidOf } from "./solid.ts";
import { along } from "./vec.ts";

/** Depth of the ridge's housing for a rafter's head when the file names none (inches). */
export const DEFAULT_HEAD_HOUSING = 1 / 2;

/** The ridge that takes the rafters' heads when the file does not name it. */
export function onlyRidge(p: Placer): Ref | undefined {
  const ridges = p.frame.members.filter((m) => m.kind === "ridge");
  const [ridge] = ridges;
  return ridge && ridges.length === 1 ? { text: ridge.name, path: ridge.path } : undefined;
}

/** Level run from the plate's outside face to the near face of a timber up the slope. */
export function runTo(plane: SlopePlane, timber: Timber): number {
  const solid = solidOf(timber);
  return plane.inward === 1 ? solid.low[1] - plane.outside : plane.outside - solid.high[1];
}

/** Where the rafters' heads end, as a level run from the plate's outside face. */
export function headRun(p: Placer, planes: RoofPlanes, plane: SlopePlane): number | undefined {
  const rafters = p.frame.roof?.rafters;
  if (planes.highRun !== undefined)
    return planes.highRun + highPlateWidth(p, planes) + inches(rafters?.overhang.high ?? NO_LENGTH);
  if (planes.ridgeY === undefined) return undefined;
  const middle = Math.abs(planes.ridgeY - plane.outside);
  if (meetAtPeak(rafters?.head)) return middle;
  const into = rafters?.head?.into ?? onlyRidge(p);
  if (!into) return middle;
  const ridge = p.sticksNamed(into)[0];
  if (!ridge) return undefined;
  const housing = rafters?.head?.housing;
  return runTo(plane, ridge) + (housing === undefined ? DEFAULT_HEAD_HOUSING : inches(housing));
}

export function highPlateWidth(p: Placer, planes: RoofPlanes): number {
  const high = p.frame.roof?.high?.text;
  const eave = planes.slopes[0];
  const plates = p.frame.members
    .filter(
      (m) =>
        (m.kind === "plate" || m.kind === "beam" || m.kind === "sill") &&
        m.walls?.some((w) => w.text === high),
    )
    .flatMap((m) => p.sticks(m.name).filter((s) => high !== undefined && s.walls.includes(high)));
  return plates[0]?.width ?? eave?.plateWidth ?? 0;
}

/** Level run from the plate's outside face to the roof's upper edge: a gable's middle, a shed's highest rafter head. */
export function peakRun(p: Placer, planes: RoofPlanes, plane: SlopePlane): number {
  if (planes.ridgeY !== undefined) return Math.abs(planes.ridgeY - plane.outside);
  const heads = principals(p)
    .filter((t) => t.walls.includes(plane.wall))
    .map((t) => plane.inward * (along(t.origin, t.axis, t.span)[1] - plane.outside));
  // the roof's own rafters carry the deck alone: where principals end does not matter then
  return Math.max(headRun(p, planes, plane) ?? 0, ...(p.frame.roof?.rafters ? [] : heads));
}

function principals(p: Placer): Timber[] {
  const rafters = p.frame.members.filter((m) => m.kind === "rafter");
  return rafters.flatMap((m) => p.sticks(m.name)).filter((t) => t.rule === "roof-rafter");
}

/** From rake to rake: as the roof's rafters say; else the plates' ends, or the ends of purlins that reach past them. */
export function deckAlong(p: Placer, planes: RoofPlanes): Interval {
  if (p.frame.roof?.rafters?.overhang.rake !== undefined) return rakes(p, planes);
  const purlins = p.frame.members.filter((m) => m.kind === "purlin").flatMap((m) => p.sticks(m.name));
  const ends = purlins
    .filter((t) => t.rule === "purlins-up-slope")
    .flatMap((t) => [t.origin[0], t.origin[0] + t.span]);
  return [Math.min(planes.x[0], ...ends), Math.max(planes.x[1], ...ends)];
}

/** Where the roof ends along the walls as far as its rafters say; the plates' ends where they say nothing. */
export function rakes(p: Placer, planes: RoofPlanes): Interval {
  const rake = p.frame.roof?.rafters?.overhang.rake;
  if (rake === undefined) return planes.x;
  const over = inches(rake);
  return [(p.grid.bents[0]?.at ?? planes.x[0]) - over, (p.grid.bents.at(-1)?.at ?? planes.x[1]) + over];
}
