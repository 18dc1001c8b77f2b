/** Where the file says what holds a rafter at one of its joints: for the roof's own rafters the roof, for others the joint. */
import type { Fasteners } from "../frame/fasteners.ts";
import type { Pointer } from "../frame/frame.ts";
import type { Joint } from "../joinery/joint.ts";
import { isSeatKind } from "../joinery/seat.ts";
import type { Model } from "../model/model.ts";
import { isDiagonal, isUpright } from "../model/upright.ts";

export interface Fastening {
  readonly written: Fasteners | "unread" | undefined;
  /** the map that takes a `fasten`; undefined = there is none yet */
  readonly holder: Pointer | undefined;
  /** where a finding about it stands */
  readonly path: Pointer;
}

const at = (written: Fastening["written"], holder: Pointer | undefined, path: Pointer): Fastening => ({
  written,
  holder,
  path: written === undefined || written === "unread" ? path : written.path,
});

/** @returns for each seat and each housed head of a rafter what fastens it */
export function fastenings({ roof, frame }: Pick<Model, "roof" | "frame">): (joint: Joint) => Fastening {
  const own = new Set(roof?.slopes.flatMap(({ rafters }) => rafters.map(({ id }) => id)));
  const rafters = frame.roof?.rafters;
  return (joint) => {
    if (!rafters || !own.has(joint.of.id)) return at(joint.entry?.fasten, joint.entry?.path, joint.path);
    if (isSeatKind(joint.kind)) return at(rafters.fasten, rafters.path, rafters.path);
    const { head } = rafters;
    return at(head?.fasten, head?.path, head?.path ?? rafters.path);
  };
}

/** Seats of rafters on what lies: on a post or a strut nothing is cut that could be fastened so. */
export function isRafterSeat({ kind, of, into }: Joint): boolean {
  return isSeatKind(kind) && of.kind === "rafter" && !isUpright(into) && !isDiagonal(into);
}

/** Heads of rafters that stand in a housing. */
export function isHousedHead({ kind, of, end }: Joint): boolean {
  return kind === "housed" && of.kind === "rafter" && end === "head";
}
