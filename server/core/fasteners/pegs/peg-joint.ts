/**
 * A pegged mortise and tenon pulled apart: what its pegs carry, how much it gives, whether they stand far enough from
 * ends and edges. A joint that fails a distance must not be counted on in tension (`holds`).
 */
import { type Adjusted, withFactor } from "../../members/adjust.ts";
import { type Factor, leastCertain, type Sourced } from "../../sourced.ts";
import { adjust } from "../connection-factors.ts";
import { type Requirement, requirement } from "../placement.ts";
import { groupTearOut, rowTearOut, tenonNetTension } from "../tear-out.ts";
import type { YieldModeName } from "../yield.ts";
import { type PegDistances, pegDistances } from "./distances.ts";
import { type PegValue, pegValue } from "./double-shear.ts";
import { type PegStiffness, pegStiffness } from "./stiffness.ts";

interface PegJointTimber {
  /** id of the species or group: decides the distances */
  readonly species: string;
  /** assigned specific gravity */
  readonly G: number;
}

export interface PegJointInput {
  readonly peg: {
    /** in */
    readonly diameter: number;
    readonly G: number;
    readonly count: number;
  };
  readonly tenon: PegJointTimber & {
    /** in */
    readonly thickness: number;
    /** in, along the grain of the mortised timber */
    readonly width: number;
    /** in, shoulder to tip, square to the face */
    readonly length: number;
    /** in, shoulder (floor of the housing) to each line of holes, square to the face */
    readonly setbacks: readonly number[];
    /** in, of the holes in a line, from the tenon’s middle */
    readonly alongWidth: readonly number[];
    /** F_v′ and F_t′ of the tenon, psi, with their factors; undefined = relish and net section are not judged */
    readonly strength?: TenonStrength;
  };
  readonly mortised: PegJointTimber & {
    /** in, wood on either side of the tenon */
    readonly walls: readonly [number, number];
    /** in, from the tenon’s middle to the timber’s nearer free end; undefined = far away */
    readonly toEnd?: number;
    /** shrinkage across the grain still to come, a fraction: distances count on the dried section */
    readonly shrinkage?: number;
  };
  /** degrees between the two timbers’ grain, 0 < angle ≤ 90; undefined = square. The pull goes along the tenon’s grain */
  readonly angle?: number;
  /** degrees between the pull and the mortised timber's grain; undefined = `angle`. In a scarf it is 0 */
  readonly angleOfMortised?: number;
  /** degrees between the pull and the tenon's own grain; undefined = along it */
  readonly angleOfTenon?: number;
  /** faces at which each peg is sheared: 1 in a lap; undefined = 2 */
  readonly planes?: 1 | 2;
  readonly seasoning: "green" | "dry";
  /** the timber stays above 19 percent moisture */
  readonly wetService?: boolean;
  /** C_D of the load combination */
  readonly duration: Factor;
}

/** What gives first when the joint is pulled. */
type PegJointLimit = YieldModeName | "relish" | "group-tear-out" | "net-section";

type TenonLimit = Sourced & {
  readonly what: Exclude<PegJointLimit, YieldModeName>;
  readonly terms: TenonTerms;
};

/** psi, and what they are made of where that is known. */
interface TenonStrength {
  readonly Fv: number;
  readonly Ft: number;
  readonly made?: { readonly Fv: Adjusted; readonly Ft: Adjusted };
}

/** What a limit of the tenon is reckoned from: F_v′ and F_t′ in psi, sizes in in. */
export interface TenonTerms extends TenonStrength {
  readonly thickness: number;
  readonly width: number;
  readonly diameter: number;
  /** pegs of each row along the grain, the length that counts behind each of them, and what the row carries, lb */
  readonly rows: readonly { readonly pegs: number; readonly critical: number; readonly value: number }[];
  /** in, between the outer rows */
  readonly between: number;
}

export interface PegJoint {
  /** one peg */
  readonly one: PegValue;
  /** all pegs, lb, with C_D and C_M */
  readonly pegs: Adjusted;
  /** tenon behind and beside the pegs, lb, for the whole joint; empty where no strength was given */
  readonly tenon: readonly TenonLimit[];
  /** lb: the least of all that; what the joint carries in tension if it `holds` */
  readonly tension: Sourced;
  readonly governs: PegJointLimit;
  readonly stiffness: PegStiffness;
  /** ends, edges, spacings, and what the rule asks of the peg itself */
  readonly distances: readonly Requirement[];
  readonly conditions: readonly Requirement[];
  /** all distances are kept and there is something to carry: the joint may be counted on in tension */
  readonly holds: boolean;
}

/** TFEC 1 speaks of pegs of this size and weight (memory). */
const RULE = { status: "memory", source: "TFEC 1 3.4, as remembered" } as const;
const EDGE_OF_TENON = { status: "memory", source: "1.5 D, NDS Table 12.5.1C, load along the grain" } as const;

/**
 * @returns never throws; sizes without sense give no capacity and `holds: false`
 */
export function pegJoint(input: PegJointInput): PegJoint {
  const { peg, tenon, mortised } = input;
  const angle = input.angle ?? 90;
  const count = Math.max(0, Math.floor(peg.count));
  const one = pegValue(
    peg.G,
    peg.diameter,
    tenon.thickness,
    mortised.walls,
    { G: tenon.G, angle: input.angleOfTenon ?? 0 },
    { G: mortised.G, angle: input.angleOfMortised ?? angle },
    input.planes,
  );
  const reference: Sourced = {
    ...one.reference,
    value: count * one.reference.value,
    source: `${count} × ${one.reference.source}`,
  };
  const pegs = withFactor(adjust(reference, [input.duration]), moisture(input));
  const positions = pegPositions(tenon.setbacks, tenon.alongWidth, count);
  const distances = distanceChecks(input, positions, angle);
  const limits = tenonLimits(input, positions, angle);
  const weakest = limits.reduce<TenonLimit | undefined>(
    (low, limit) => (low === undefined || limit.value < low.value ? limit : low),
    undefined,
  );
  const byTenon = weakest !== undefined && weakest.value < pegs.value ? weakest : undefined;
  // which of the two is less hangs on both, so the answer is known no better than the worse of them
  const tension: Sourced = {
    value: byTenon?.value ?? pegs.value,
    status: leastCertain([pegs.status, ...limits.map(({ status }) => status)]),
    source: byTenon?.source ?? reference.source,
  };
  return {
    one,
    pegs,
    tenon: limits,
    tension,
    governs: byTenon?.what ?? one.yields.governs.mode,
    stiffness: pegStiffness(Math.min(tenon.G, mortised.G), peg.diameter, count),
    distances,
    conditions: [
      requirement("peg diameter at least", peg.diameter, 0.75, RULE),
      requirement("peg diameter at most", peg.diameter, 1.25, RULE, "most"),
      requirement("peg density", peg.G, 0.57, RULE),
      requirement("peg as dense as the timbers", peg.G, Math.max(tenon.G, mortised.G), RULE),
    ],
    holds: count > 0 && positions.length === count && tension.value > 0 && distances.every(({ ok }) => ok),
  };
}

/**
 * C_M of wood pegs. The NDS has none: 0.7 of dowels that stay wet is taken over; a joint cut green keeps its value as
 * it dries, because the peg gives where steel would split the wood.
 */
function moisture(input: PegJointInput): Factor {
  const wet = input.wetService === true;
  return {
    symbol: "C_M",
    value: wet ? 0.7 : 1,
    status: "uncertain",
    source: "NDS Table 11.3.3 taken over for pegs",
    note: wet
      ? "above 19 percent moisture in service"
      : input.seasoning === "green"
        ? "cut green, dries in place"
        : "dry when cut",
  };
}

interface Position {
  readonly setback: number;
  readonly along: number;
}

/** Where each peg stands: line after line, as the holes are laid out; no more than there are pegs. */
function pegPositions(
  setbacks: readonly number[],
  alongWidth: readonly number[],
  count: number,
): readonly Position[] {
  return setbacks.flatMap((setback) => alongWidth.map((along) => ({ setback, along }))).slice(0, count);
}

function distanceChecks(
  { peg, tenon, mortised }: PegJointInput,
  pegs: readonly Position[],
  angle: number,
): readonly Requirement[] {
  if (pegs.length === 0) return [];
  const D = peg.diameter;
  const [own, other] = [pegDistances(tenon.species), pegDistances(mortised.species)];
  const spacing = own.spacing >= other.spacing ? own : other;
  const dried = 1 - Math.max(0, mortised.shrinkage ?? 0);
  const known = (row: PegDistances) => ({ status: row.status, source: `${row.row}: ${row.source}` });
  const checks = [
    requirement("end", endDistance(tenon.length, pegs, angle), own.end * D, known(own)),
    requirement(
      "edge",
      dried * Math.min(...pegs.map(({ setback }) => setback)),
      other.edge * D,
      known(other),
    ),
    requirement(
      "tenon edge",
      Math.min(...pegs.map(({ along }) => tenon.width / 2 - Math.abs(along))),
      1.5 * D,
      EDGE_OF_TENON,
    ),
  ];
  if (pegs.length > 1) {
    checks.push(requirement("spacing", nearest(pegs), spacing.spacing * D, known(spacing)));
  }
  if (mortised.toEnd !== undefined) {
    const free = mortised.toEnd - Math.max(...pegs.map(({ along }) => Math.abs(along)));
    checks.push(
      requirement("end of the mortised timber", free, 4 * D, {
        status: "memory",
        source: "4 D, NDS Table 12.5.1A, load across the grain",
      }),
    );
  }
  return checks;
}

/** From the farthest line of pegs to the tip, along the tenon’s own grain. */
function endDistance(length: number, pegs: readonly Position[], angle: number): number {
  const square = length - Math.max(...pegs.map(({ setback }) => setback));
  const lean = Math.sin((Math.max(1, Math.min(90, angle)) * Math.PI) / 180);
  return square / lean;
}

function nearest(pegs: readonly Position[]): number {
  const gaps = pegs.flatMap((a, i) =>
    pegs.slice(i + 1).map((b) => Math.hypot(a.setback - b.setback, a.along - b.along)),
  );
  return Math.min(...gaps);
}

function tenonLimits({ peg, tenon }: PegJointInput, pegs: readonly Position[], angle: number): TenonLimit[] {
  const { strength, thickness } = tenon;
  if (strength === undefined || pegs.length === 0) return [];
  const end = endDistance(tenon.length, pegs, angle);
  const rows = [...new Set(pegs.map(({ along }) => along))]
    .sort((a, b) => a - b)
    .map((along) => {
      const row = pegs.filter((one) => one.along === along);
      const spacing = row.length > 1 ? nearest(row) : end;
      return {
        along,
        pegs: row.length,
        critical: Math.max(0, Math.min(end, spacing)),
        value: rowTearOut(end, spacing, row.length, thickness, strength.Fv).value,
      };
    });
  const [first, last] = [rows[0], rows.at(-1)];
  if (first === undefined || last === undefined) return [];
  const net = tenonNetTension(tenon.width, thickness, peg.diameter, rows.length, strength.Ft);
  const group = groupTearOut(
    [first.value, last.value],
    last.along - first.along,
    rows.length,
    peg.diameter,
    thickness,
    strength.Ft,
  );
  const terms: TenonTerms = {
    ...strength,
    thickness,
    width: tenon.width,
    diameter: peg.diameter,
    rows,
    between: last.along - first.along,
  };
  return [
    {
      what: "relish" as const,
      value: rows.reduce((sum, { value }) => sum + value, 0),
      status: "memory" as const,
      source: "row tear-out n F_v′ t s of every row, NDS E.3",
    },
    ...(rows.length > 1 ? [{ ...group, what: "group-tear-out" } as const] : []),
    { ...net, what: "net-section" } as const,
    // a strength that is not a number holds nothing
  ].map((limit) => ({ ...limit, terms, value: Number.isNaN(limit.value) ? 0 : Math.max(0, limit.value) }));
}
