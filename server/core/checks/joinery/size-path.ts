import type { Joint } from "../../joinery/joint.ts";
import type { Sized } from "../../joinery/joint-sizes.ts";
import type { Found } from "../check.ts";

type Where = Pick<Found<unknown>, "path" | "onKey">;

/** A finding about a size of a joint, the worse the farther it is from its limit. @param value in; @param limit in */
export function sizeFound<D>(joint: Joint, where: Where, value: number, limit: number, data: D): Found<D> {
  return {
    ...where,
    place: joint.id,
    data,
    value,
    limit,
    unit: "in",
    severity: Math.abs(value - limit),
  };
}

/** Where a finding about a size of a joint points: the value when the file gives it, else the entry's key. */
export function sizePath(joint: Joint, key: string, size: Sized | undefined): Where {
  return size?.from === "file" ? { path: `${joint.path}/${key}` } : { path: joint.path, onKey: true };
}

/** The key that gives a seat's length: a joint's own, or that of the roof's rafters. */
export const seatKey = ({ entry }: Joint): string => (entry ? "seat" : "length");

/** Where a finding about the pegs of a joint points: what the file says of them, else the entry's key. */
export function pegsPath(joint: Joint): Where {
  const written = joint.pegsPath;
  return written === undefined ? { path: joint.path, onKey: true } : { path: written };
}
