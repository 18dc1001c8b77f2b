/**
 * How far pegs stand from ends and edges and from each other so that the peg fails before the wood splits, in peg
 * diameters. From tests of full-size joints; the rows are remembered but for Douglas fir.
 */
import { leastCertain, type ValueStatus } from "../../sourced.ts";
import { GROUP_MEMBERS } from "../../wood/data/groups.ts";

export interface PegDistances {
  /** peg to the tip of the tenon along its grain, to the loaded edge of the mortised timber, peg to peg; diameters */
  readonly end: number;
  readonly edge: number;
  readonly spacing: number;
  readonly status: ValueStatus;
  readonly source: string;
  /** the wood whose row it is: `Douglas fir` */
  readonly row: string;
}

interface Row extends PegDistances {
  readonly woods: readonly string[];
}

const REMEMBERED = "commentary of TFEC 1, as remembered";

export const PEG_DISTANCES: readonly Row[] = [
  {
    row: "Douglas fir",
    woods: [
      "douglas-fir-larch",
      "douglas-fir-larch-north",
      "douglas-fir-coast",
      "douglas-fir-interior-north",
    ],
    end: 2,
    edge: 2.5,
    spacing: 2.5,
    status: "published",
    source: "Load Duration and Seasoning Effects on Mortise and Tenon Joinery, research report, p. 44",
  },
  {
    row: "eastern white pine",
    woods: ["eastern-white-pine"],
    end: 4,
    edge: 4,
    spacing: 3,
    status: "memory",
    source: REMEMBERED,
  },
  {
    row: "red and white oak",
    woods: ["red-oak", "northern-red-oak", "white-oak", "mixed-oak"],
    end: 3,
    edge: 2,
    spacing: 2.5,
    status: "memory",
    source: REMEMBERED,
  },
  {
    row: "southern yellow pine",
    woods: ["southern-pine", ...(GROUP_MEMBERS["southern-pine"] ?? [])],
    end: 2,
    edge: 2,
    spacing: 3,
    status: "memory",
    source: REMEMBERED,
  },
  {
    row: "yellow-poplar",
    woods: ["yellow-poplar"],
    end: 2.5,
    edge: 2.5,
    spacing: 3,
    status: "memory",
    source: REMEMBERED,
  },
];

/** Softwood pegs of 18 mm in softwood joints failed first at these distances already; told, never relied on. */
export const SOFTWOOD_PEG_TESTS = {
  end: 1,
  edge: 2,
  status: "published",
  source: "tests of all-softwood pegged mortise and tenon joints, University of Bath, 2008",
} as const;

/** For a wood without a row: the largest of the rows. */
export const SAFE_DISTANCES: PegDistances = {
  row: "any wood",
  end: Math.max(...PEG_DISTANCES.map((row) => row.end)),
  edge: Math.max(...PEG_DISTANCES.map((row) => row.edge)),
  spacing: Math.max(...PEG_DISTANCES.map((row) => row.spacing)),
  status: leastCertain(["derived", ...PEG_DISTANCES.map((row) => row.status)]),
  source: "the largest of the tested woods",
};

/** @param species id of a species or group; @returns its row, or the safe default */
export function pegDistances(species: string): PegDistances {
  return PEG_DISTANCES.find((row) => row.woods.includes(species)) ?? SAFE_DISTANCES;
}

/**
 * Room that pegs side by side need: two edges and the spacings between.
 * @param diameter in; @param edge and @param spacing in diameters; @returns in
 */
export function pegRoom(diameter: number, edge: number, spacing: number, count: number): number {
  return count <= 0 ? 0 : diameter * (2 * edge + (count - 1) * spacing);
}
