/**
 * Floor live load of lofts and floors, and its reduction by area: ASCE 7-16 and 7-22 sections 4.3 and 4.7. Memory.
 */
import type { Factor, Sourced } from "../sourced.ts";

export type FloorUse =
  | "attic-no-storage"
  | "attic-limited-storage"
  | "sleeping"
  | "rooms"
  | "stairs"
  | "catwalk"
  | "assembly"
  | "light-storage"
  | "heavy-storage";

const TABLE = "ASCE 7 Table 4.3-1";
const at = (value: number): Sourced => ({ value, status: "memory", source: TABLE });

/** L_o, psf, even, by use. A workshop or a hay loft is storage, or whatever heavier the file states. */
export const FLOOR_LIVE: Readonly<Record<FloorUse, Sourced>> = {
  "attic-no-storage": at(10),
  "attic-limited-storage": at(20),
  sleeping: at(30),
  rooms: at(40),
  stairs: at(40),
  catwalk: at(40),
  assembly: at(100),
  "light-storage": at(125),
  "heavy-storage": at(250),
};

/** What a timber of the floor is, for the area that influences it (K_LL, Table 4.7-1). */
type FloorMember = "post" | "edge-post-under-overhang" | "corner-post-under-overhang" | "beam" | "other";

const INFLUENCE: Readonly<Record<FloorMember, number>> = {
  post: 4,
  "edge-post-under-overhang": 3,
  "corner-post-under-overhang": 2,
  beam: 2,
  other: 1,
};
/** ft²: K_LL A_T from which a reduction is allowed */
const LEAST_AREA = 400;
/** psf: heavier loads are storage, which is not reduced here */
const LARGEST_REDUCED = 100;

export interface FloorLiveInput {
  /** L_o, psf */
  readonly basic: number;
  readonly member: FloorMember;
  /** A_T, ft² of floor that the timber carries */
  readonly area: number;
  /** floors that it carries */
  readonly floors: number;
  /** gatherings and garages of passenger vehicles are not reduced */
  readonly assembly: boolean;
}

/**
 * L = L_o (0.25 + 15/√(K_LL A_T)) (Eq. 4.7-1), where K_LL A_T is at least 400 ft², not below half of L_o for one floor
 * and 0.4 of it for more; loads over 100 psf and those of assembly keep all.
 * @returns psf, with the reduction as a factor
 */
export function floorLive(input: FloorLiveInput): Sourced & { readonly reduction: Factor } {
  const { basic, member, area, floors, assembly } = input;
  const influence = INFLUENCE[member] * area;
  const floor = floors > 1 ? 0.4 : 0.5;
  const reducible = !assembly && basic <= LARGEST_REDUCED && influence >= LEAST_AREA;
  const value = reducible ? Math.min(1, Math.max(floor, 0.25 + 15 / Math.sqrt(influence))) : 1;
  const source = "ASCE 7 Eq. 4.7-1";
  return {
    value: basic * value,
    status: "memory",
    source,
    reduction: { symbol: "R", value, status: "memory", source, note: "area of influence" },
  };
}
