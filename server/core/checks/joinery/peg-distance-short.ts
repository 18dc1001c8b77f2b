import { PEG_DISTANCES } from "../../fasteners/pegs/distances.ts";
import type { Joint } from "../../joinery/joint.ts";
import { dot } from "../../model/vec.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { FRICTION, type JointPull } from "../../statics/joint-pulls.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";
import { judgedPulls, pullFound } from "./judged-pulls.ts";
import { pegsPath } from "./size-path.ts";

type Kind = "end" | "edge";

interface Data {
  readonly joint: Joint;
  readonly what: Kind;
  readonly distance: number;
  readonly limit: number;
  readonly diameters: number;
  /** it keeps the least of all tested woods, but not that of its own: which tests, and how well they are known */
  readonly tests: string | undefined;
  /** the pull that asks for it; undefined = its pegs only keep it together */
  readonly pulled: { readonly pull: JointPull; readonly solution: FrameResults["solution"] } | undefined;
}

const leastOf = (kind: Kind): number => Math.min(...PEG_DISTANCES.map((row) => row[kind]));

/** Peg diameters below which no tested wood held: what every pulled joint needs. */
const LEAST: Readonly<Record<Kind, number>> = {
  end: leastOf("end"),
  edge: leastOf("edge"),
};
/** Wood beyond a peg that only keeps a joint together, diameters. */
const KEPT = 1.5;

/** Share of what its pegs hold from which a joint's own wood is asked too: pegs far from yielding split nothing. */
const HARD_PULLED = 0.8;

const isKind = (what: string): what is Kind => what === "end" || what === "edge";

/** From the farthest peg to the tip of the tenon, along the tenon's grain, in. */
function endDistance({ of, face, sizes: { tenon, pegs, housing } }: Joint): number | undefined {
  if (!tenon || !pegs || pegs.setbacks.length === 0) return undefined;
  const square = tenon.length.value + housing.value - Math.max(...pegs.setbacks);
  return square / Math.max(0.1, Math.abs(dot(of.axis, face.inward)));
}

export const pegDistanceShort = defineCheck<"shared", Data>({
  meta: {
    id: "peg-distance-short",
    title: "A peg too near the end of its tenon or the edge",
    level: "warning",
    area: "joinery",
    source: {
      text: "distances of tested woods in the commentary of TFEC 1 (as remembered; Douglas fir published): a warning below the least of them, 2 D, a note below that of the joint’s own wood. From four fifths of the pegs’ capacity on, and 1.5 D where nothing pulls, are rules of this program",
      status: "memory",
    },
    explanation: {
      what: "A joint is pulled apart, and its pegs stand nearer than 2 diameters to the tip of the tenon or to the edge of the mortised timber: no tested wood held there. It is a note where they only fall short of the tests of their own wood while more than four fifths of what they hold pulls at them, and where nothing pulls and a peg stands within 1 1/2 diameters of the tip. A brace that only pushes is left out: its peg just keeps it in place.",
      why: "A joint is to fail by its pegs, which bend slowly and can be seen. So near an end the wood behind them splits out instead, at once.",
      formula:
        "pulled with more than 50 lb: end ≥ 2 D, edge ≥ 2 D (warning), and, pulled with more than four fifths of what the pegs hold, as many D as the tests of its own wood had, 2 to 4 (note); else end ≥ 1.5 D (note); D = the peg's diameter. What the tenon carries there is judged by `peg-overloaded`, the holes’ spacing by `pegs-crowded`",
      remedy: "Take a longer tenon, thinner pegs, or fewer of them.",
    },
  },
  input: "shared",
  ofTheWhole: true,
  *find(shared) {
    const { model, frame } = shared;
    const pulled = new Set<Joint>();
    for (const pull of judgedPulls(shared, ({ sizes }) => sizes.tenon !== undefined)) {
      if (!frame || pull.hold.kind !== "pegs" || pull.most <= FRICTION) continue;
      pulled.add(pull.joint);
      const D = pull.joint.sizes.pegs?.diameter.value ?? 0;
      for (const { what, have, need, source } of pull.hold.pegs.distances) {
        if (!isKind(what) || have >= need - 1 / 32) continue;
        const least = LEAST[what] * D;
        const short = have < least - 1 / 32;
        if (!short && (pull.ratio ?? 0) < HARD_PULLED) continue;
        const limit = short ? least : need;
        const pulling = { pull, solution: frame.solution };
        yield {
          ...pullFound(pull),
          apart: what,
          ...(short ? {} : { level: "note" as const }),
          data: {
            joint: pull.joint,
            what,
            distance: have,
            limit,
            diameters: limit / D,
            pulled: pulling,
            tests: short ? undefined : source,
          },
          value: have,
          limit,
          unit: "in",
          severity: limit - have,
        };
      }
    }
    for (const joint of judgedJoints(model)) {
      const D = joint.sizes.pegs?.diameter.value ?? 0;
      const distance = endDistance(joint);
      if (joint.of.kind === "brace" || pulled.has(joint) || distance === undefined) continue;
      const limit = KEPT * D;
      // below one diameter its tenon splits while it is driven, which is said
      if (distance >= limit - 1 / 32 || distance < D - 1 / 32) continue;
      yield {
        ...pegsPath(joint),
        place: joint.id,
        level: "note",
        data: {
          joint,
          what: "end",
          distance,
          limit,
          diameters: KEPT,
          pulled: undefined,
          tests: undefined,
        },
        value: distance,
        limit,
        unit: "in",
        severity: limit - distance,
      };
    }
  },
  words: ({ joint, what, distance, limit, diameters, pulled, tests }, say) => {
    const values = {
      joint: joint.id,
      into: joint.into.id,
      distance: say.length(Math.max(0, distance)),
      limit: say.length(limit),
      diameters: say.number(diameters, 1),
      peg: say.length(joint.sizes.pegs?.diameter.value ?? 0),
      force: say.force(pulled?.pull.most ?? 0),
      combination: pulled ? caseWords(pulled.solution, pulled.pull.caseId, say) : "",
      tests: tests ?? "",
    };
    if (tests !== undefined)
      return say.text(
        what === "end"
          ? "{joint} is pulled with {force} under {combination}, and its pegs of {peg} stand {distance} from the tip of the tenon. In tests the peg failed before the wood at {limit} ({diameters} diameters; {tests}). What the tenon carries is judged by its stresses; a longer tenon or thinner pegs keep the distance too."
          : "{joint} is pulled with {force} under {combination}, and its pegs of {peg} stand {distance} from the edge of {into}. In tests the peg failed before the wood at {limit} ({diameters} diameters; {tests}). Pegs that stand deeper, or thinner ones, keep the distance.",
        values,
      );
    if (!pulled)
      return say.text(
        "The peg of {peg} at {joint} stands {distance} from the tip of its tenon, less than {limit} ({diameters} diameters). Nothing here pulls at it; driven hard it can split the tip. Make the tenon longer if there is room.",
        values,
      );
    switch (what) {
      case "end":
        return say.text(
          "{joint} is pulled with {force} under {combination}, and its pegs of {peg} stand {distance} from the tip of the tenon, less than {limit} ({diameters} diameters): the tenon splits out behind them before they bend. Take a longer tenon or thinner pegs.",
          values,
        );
      case "edge":
        return say.text(
          "{joint} is pulled with {force} under {combination}, and its pegs of {peg} stand {distance} from the edge of {into}, less than {limit} ({diameters} diameters): that edge splits off. Take a longer tenon, so that they stand deeper, or thinner pegs.",
          values,
        );
    }
  },
  worked: ({ distance, limit, diameters, joint }, say) =>
    say.text("{distance} < {diameters} × {peg} = {limit}", {
      distance: say.length(distance),
      diameters: say.number(diameters, 2),
      peg: say.length(joint.sizes.pegs?.diameter.value ?? 0),
      limit: say.length(limit),
    }),
});
