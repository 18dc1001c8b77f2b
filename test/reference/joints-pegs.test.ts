/** Outside figures about pegs in joints.yaml; its sources are named at the head of that file. */
import { describe, expect, test } from "vitest";
import { PEG_DISTANCES, pegRoom, SOFTWOOD_PEG_TESTS } from "../../server/core/fasteners/pegs/distances.ts";
import { PEG_SHEAR_REDUCTION, pegModes, pegValue } from "../../server/core/fasteners/pegs/double-shear.ts";
import { drawboreLens, drawboreRange } from "../../server/core/fasteners/pegs/drawbore.ts";
import { pegBearing, pegBendingYield, pegShear } from "../../server/core/fasteners/pegs/strength.ts";
import { type Case, casesOf, compareCases, tableOf } from "./cases.ts";
import { modesOf } from "./joints-modes.ts";
import { TOPICS } from "./joints-topics.ts";

type Given = Case["given"];
type Figures = Case["expect"];

function pegStrengths(g: Given): Figures {
  const at = (angle: number) => pegBearing(g.G_peg, g.G_timber, angle).value;
  return {
    Fyb: pegBendingYield(g.G_peg).value,
    Fe_par: at(0),
    Fe_perp: at(90),
    Fvy: pegShear(g.G_peg, g.G_timber).value,
  };
}

function pegCase(g: Given): Figures {
  expect(PEG_SHEAR_REDUCTION.value).toBe(g.Rd_V);
  return modesOf(
    pegModes({
      diameter: g.D,
      tenon: g.tenon,
      cheek: g.cheek_each,
      tenonBearing: g.Fe_tenon,
      cheekBearing: g.Fe_cheek,
      bendingYield: g.Fyb,
      shear: g.Fvy,
      angle: g.angle_max_deg,
    }),
  );
}

function pegJointCase(g: Given): Figures {
  const got = pegValue(
    g.G_peg,
    g.D,
    g.tenon,
    [g.cheek_each, g.cheek_each],
    { G: g.G_timber, angle: 0 },
    { G: g.G_timber, angle: g.angle_max_deg },
  );
  const { Z, ...modes } = modesOf(got.yields);
  return { ...modes, Z_one: Z, Z_joint: g.pegs * g.C_D * got.reference.value };
}

function softwoodPegs({ D }: Given): Figures {
  const { end, edge } = SOFTWOOD_PEG_TESTS;
  return { end_D: end, end: end * D, edge_D: edge, edge: edge * D };
}

/** By what a case's id begins with; the longest that fits. */
const FIGURES: Record<string, (given: Given) => Figures> = {
  "peg-values-": pegStrengths,
  "peg-modes-": pegCase,
  "peg-joint-": pegJointCase,
  "peg-dist-bath-": softwoodPegs,
  "peg-dist-room": (g) => ({ width_needed: pegRoom(g.D, g.edge_D, g.spacing_D, g.pegs) }),
  "drawbore-hard": ({ timber }) => {
    const { least, most } = drawboreRange(1, timber);
    return { low: least, high: most };
  },
  "drawbore-clear-": (g) => {
    const got = drawboreLens(g.D, g.offset, g.cheek);
    return { clear_width: got.clear, slope_over_cheek: got.slope };
  },
};

describe("pegs, case by case", () => compareCases(casesOf("joints", ...TOPICS.pegs), FIGURES));

const distances = tableOf("joints", "peg-distance");
describe(`peg distances (${distances.status}); Douglas fir is printed as well`, () => {
  test.each(distances.records)("$timber", (r) => {
    const row = PEG_DISTANCES.find((one) => one.row === r.timber)!;
    expect([row.end, row.edge, row.spacing]).toEqual([r.end_D, r.edge_D, r.spacing_D]);
    // printed in inches for pegs of 1 in
    expect([row.end, row.edge, row.spacing]).toEqual([r.end_1in, r.edge_1in, r.spacing_1in]);
  });
});
