import { longestRafterSpan, type RafterUse } from "../../members/rafter.ts";
import type { Results } from "../../results.ts";
import type { RafterResult } from "../../roof/rafter-results.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { MemberUse } from "../../statics/frame-results.ts";
import type { FrameSolution } from "../../statics/solve-frame.ts";
import { defineCheck } from "../check.ts";
import { overPercent, STRENGTH, worstOver } from "../members/use-words.ts";
import type { Say } from "../say.ts";
import { spanFormula } from "./span-formula.ts";

interface Data {
  readonly result: RafterResult;
  readonly use: RafterUse;
  readonly longest: number | undefined;
  /** the rafter of the slope that the frame uses more than that, under wind or with a thrust along it */
  readonly inFrame:
    | { readonly stick: string; readonly use: MemberUse; readonly solution: FrameSolution }
    | undefined;
}

const WHAT: Readonly<Record<RafterUse["what"], string>> = {
  bending: "bending between plate and ridge",
  "bending-at-seat": "bending over the seat, where the overhang hangs",
  shear: "shear",
  "shear-at-seat": "shear over the seat",
  "live-deflection": "deflection under snow or live load",
  "total-deflection": "deflection under all load, with creep",
  "tip-live-deflection": "deflection of the tail under snow or live load",
  "tip-total-deflection": "deflection of the tail under all load, with creep",
};

const IN_FRAME: Readonly<Partial<Record<MemberUse["what"], string>>> = {
  "live-deflection": "deflection under snow, wind or live load",
  "total-deflection": "deflection under all load, with creep",
};

const SNOW: Readonly<Record<string, string>> = {
  balanced: "balanced snow",
  minimum: "the least snow of low slopes",
  "unbalanced-leeward": "unbalanced snow, leeward",
  "unbalanced-windward": "unbalanced snow, windward",
  "eave-ice": "ice at the eave",
};

function combinationOf({ result, use }: Data, say: Say): string {
  const c = result.check.combinations.find((x) => x.id === use.combination);
  if (!c) return use.combination;
  const snow = c.snowCase === undefined ? undefined : SNOW[c.snowCase];
  return snow === undefined ? c.combination.text : `${c.combination.text}, ${say.text(snow)}`;
}

/** In the frame: what asks more of one of the rafters than this check, if anything does. */
function usedMore({ frame }: Results, { slope }: RafterResult, ratio: number): Data["inFrame"] {
  if (!frame) return undefined;
  return slope.rafters.reduce<Data["inFrame"]>((most, { id }) => {
    const member = frame.members.get(id);
    const use = member && worstOver(member, (what) => (STRENGTH[what] ?? IN_FRAME[what]) !== undefined);
    return use && use.ratio > (most?.use.ratio ?? ratio)
      ? { stick: id, use, solution: frame.solution }
      : most;
  }, undefined);
}

/** The seat leaves no wood that could be stressed. */
const isThrough = ({ value }: RafterUse): boolean => !Number.isFinite(value);

/** Whether a seat that cuts one of the rafters through has a finding of its own. */
function saidAtSeat({ joints }: Results["model"], { slope }: RafterResult): boolean {
  const own = new Set(slope.rafters.map(({ id }) => id));
  return joints.some(({ of, sizes }) => own.has(of.id) && sizes.seat && sizes.seat.woodLeft <= 0);
}

const amount = (use: RafterUse, value: number, say: Say): string =>
  use.unit === "psi" ? say.stress(value) : say.length(value);

export const rafterOverspanned = defineCheck<"results", Data>({
  meta: {
    id: "rafter-overspanned",
    title: "A rafter that its load overtaxes",
    level: "error",
    area: "roof",
    source: {
      text: "NDS 2018 chapters 3 and 4 (bending 3.3, shear 3.4, deflection 3.5), ASCE/SEI 7 chapters 2 and 7, limits of IBC Table 1604.3",
      status: "memory",
    },
    explanation: {
      what: "The rafters are stressed, or bend, more than their wood allows under the dead load, snow and roof live load of the site.",
      why: "An overtaxed rafter breaks under the snow it was not made for; one that sags too much lets the covering leak and the snow lie.",
      formula:
        "f_b = M/S ≤ F_b × adjustment factors; f_v = 3V/(2bd) ≤ F_v × factors, over the seat on the net depth; deflection ≤ L/180 under snow or live load, L/120 under all load with creep, L/240 and L/180 under a roof that keeps warmth or cold in (creep 2.0 green, 1.5 seasoned)",
      remedy:
        "Set them closer, make them deeper, choose a better grade, or shorten the span or the overhang.",
    },
  },
  input: "results",
  *find(results) {
    const { rafters, model } = results;
    for (const result of rafters) {
      const over = result.check.worst.filter(
        (use) => use.ratio > 1 && !(isThrough(use) && saidAtSeat(model, result)),
      );
      if (over.length === 0) continue;
      const strength = over.filter((use) => use.unit === "psi");
      const use = [...(strength.length > 0 ? strength : over)].sort((a, b) => b.ratio - a.ratio)[0];
      if (!use) continue;
      yield {
        path: `${model.frame.roof?.rafters?.path ?? "/roof/rafters"}/section`,
        level: strength.length > 0 ? "error" : "warning",
        place: `rafter@${result.slope.wall}`,
        data: {
          result,
          use,
          longest: longestRafterSpan(result.input),
          inFrame: usedMore(results, result, use.ratio),
        },
        value: use.value,
        limit: use.limit,
        unit: use.unit,
        severity: use.ratio,
      };
    }
  },
  words(d, say) {
    const { input } = d.result;
    const start = say.text(
      isThrough(d.use)
        ? "A {width} × {depth} rafter spanning {span} at {spacing} is cut through by its seat: no wood is left over the plate, where the overhang hangs, and it comes off under {combination}."
        : "A {width} × {depth} rafter spanning {span} at {spacing} has {value} of {what} against {limit} allowed ({ratio}), governed by {combination}.",
      {
        width: say.length(input.width),
        depth: say.length(input.depth),
        span: say.length(input.span),
        spacing: say.length(input.spacing),
        value: amount(d.use, d.use.value, say),
        what: say.text(WHAT[d.use.what]),
        limit: amount(d.use, d.use.limit, say),
        ratio: overPercent(d.use.ratio, say),
        combination: combinationOf(d, say),
      },
    );
    if (isThrough(d.use)) return `${start} ${say.text("Make the seat shorter, or the rafter deeper.")}`;
    const why =
      d.use.unit === "psi"
        ? say.text("It can break under that load.")
        : say.text("It sags more than a roof of this kind may.");
    const remedy =
      d.longest === undefined
        ? say.text("Make it deeper or set the rafters closer.")
        : say.text(
            "This section goes {longest} under these loads; make it deeper or set the rafters closer.",
            {
              longest: say.length(d.longest),
            },
          );
    const more = d.inFrame
      ? ` ${say.text("In the frame {stick} is used more still: to {ratio} by {what}, under {combination}.", {
          stick: d.inFrame.stick,
          ratio: overPercent(d.inFrame.use.ratio, say),
          what: say.text(STRENGTH[d.inFrame.use.what] ?? IN_FRAME[d.inFrame.use.what] ?? d.inFrame.use.what),
          combination: caseWords(d.inFrame.solution, d.inFrame.use.caseId, say),
        })}`
      : "";
    return `${start} ${why} ${remedy}${more}`;
  },
  worked: ({ use }, say) => (isThrough(use) ? undefined : spanFormula(use, say)),
});
