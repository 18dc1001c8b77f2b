import { type BearingUse, bearingUse, padFor, soilBearing } from "../../ground/bearing.ts";
import type { Pier } from "../../model/model.ts";
import { caseWords } from "../../statics/case-words.ts";
import { areaWords } from "../amount-words.ts";
import { defineCheck, type Fix } from "../check.ts";
import { fineLength, steps } from "../formula-words.ts";
import type { Say } from "../say.ts";
import { type OnSoil, onSoil } from "./on-soil.ts";
import { nextSize, padFix, pierStep, WIDEST_FOOTING } from "./pier-sizes.ts";

interface Data extends Pick<OnSoil, "soil" | "solution"> {
  readonly use: BearingUse;
  /** every pier of the entry: a size that is proposed stands at all of them */
  readonly alike: readonly OnSoil[];
}

interface Footing {
  readonly diameter: number;
  readonly thickness: number;
}

/** Least thickness of a spread footing, and how far it reaches past the tube at least, inches (IRC R403.1.1; published). */
const LEAST_THICKNESS = 6;
const LEAST_PROJECTION = 2;

const isPad = ({ entry }: Pier): boolean => entry.kind === "pad";

/** A load nearer to the middle of a pad stands on it, in: less than is told in 1/16 in. */
const OFF_MIDDLE = 1 / 32;

/** The load stands over the edge of the pad. */
const tips = ({ pressure }: BearingUse): boolean => !Number.isFinite(pressure);

/** No thinner than it reaches past the tube (IRC R403.1.1; published), in usual steps. */
function thicknessFor(diameter: number, pier: Pier, say: Say): number {
  const step = pierStep(say);
  const least = Math.max(LEAST_THICKNESS, (diameter - pier.diameter) / 2);
  return Math.max(pier.footing?.thickness ?? 0, step * Math.ceil(least / step - 1e-6));
}

function withFooting(pier: Pier, footing: Footing): Pier {
  return { ...pier, footing, bottom: pier.tubeBottom - footing.thickness };
}

/** Whether the soil carries every pier of the entry, each changed alike. */
const carries = ({ alike, soil }: Data, changed: (pier: Pier) => Pier): boolean =>
  alike.every(({ pier, cases }) => (bearingUse(changed(pier), cases, soil)?.ratio ?? 2) <= 1);

/** The smallest usual footing under a tube that does. */
function footingFor(d: Data, say: Say): Footing | undefined {
  const { use } = d;
  const { pier } = use;
  const made = (diameter: number): Footing => ({ diameter, thickness: thicknessFor(diameter, pier, say) });
  const least = padFor(use.down + use.weight, use.allowed.value).round;
  // footings of that size and more; a heavier one may need the next
  const from = Math.max(
    least - pierStep(say),
    pier.footing?.diameter ?? pier.diameter + 2 * LEAST_PROJECTION - 1e-3,
  );
  const diameter = nextSize(from, WIDEST_FOOTING, say, (size) =>
    carries(d, (each) => withFooting(each, made(size))),
  );
  return diameter === undefined ? undefined : made(diameter);
}

/** The smallest usual side of a pad that does. */
function padSide(d: Data, say: Say): number | undefined {
  return nextSize(d.use.pier.diameter, WIDEST_FOOTING, say, (diameter) =>
    carries(d, (pier) => ({ ...pier, diameter })),
  );
}

function remedyWords(d: Data, say: Say): string {
  if (isPad(d.use.pier)) {
    const side = padSide(d, say);
    if (side !== undefined) return say.text("A pad of {side} does.", { side: say.length(side) });
  } else {
    const footing = footingFor(d, say);
    if (footing)
      return say.text("A footing {diameter} across and {thickness} thick does.", {
        diameter: say.length(footing.diameter),
        thickness: say.length(footing.thickness),
      });
  }
  return say.text("No usual footing does: set more posts on piers of their own, or have the soil tested.");
}

export const pierBearing = defineCheck<"results", Data>({
  meta: {
    id: "pier-bearing",
    title: "A pier that presses too hard on the soil",
    level: "error",
    area: "ground",
    source: {
      text: "IBC 2012 Table 1806.2 (bearing also IRC Table R401.4.1): presumptive values for soil that nobody has tested, against service loads",
      status: "published",
    },
    explanation: {
      what: "Under some load combination the post and the weight of its own concrete press more on the soil than the code allows for soil of that class.",
      why: "The pier settles, each pier by another amount, and the joints above it take what the ground gives.",
      formula:
        "(load of the post + weight of pier and footing) ÷ area of the footing, or of the tube without one ≤ bearing of the soil; what a push does to a tube the soil beside it takes (see pier-pushed-over); a pad’s edge presses more: by 1 + 6 e/B up to e = B/6, beyond that with 2 × load ÷ (3 B (B/2 − e)), and it tips from e = B/2 on, where e is the push times its height over the load; displaced soil is not taken off, what sticks to the shaft does not count",
      remedy:
        "Cast a wider footing under the tube, no thinner than it reaches past it; or have the soil tested, since presumptive values are low.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    const piers = onSoil(frame);
    for (const { pier, cases, soil, solution } of piers) {
      const use = bearingUse(pier, cases, soil);
      if (!use || use.ratio <= 1 + 1e-9) continue;
      const key = isPad(pier) ? "width" : pier.footing ? "footing/diameter" : "diameter";
      yield {
        path: `${pier.entry.path}/${key}`,
        place: pier.id,
        data: {
          use,
          alike: piers.filter((each) => each.pier.entry.path === pier.entry.path),
          soil,
          solution,
        },
        ...(tips(use)
          ? { value: use.off, limit: pier.diameter / 2, unit: "in" as const }
          : { value: use.pressure, limit: use.allowed.value, unit: "psf" as const }),
        // equal reactions at mirrored places differ in the last digits
        severity: tips(use) ? Number.MAX_VALUE : Math.round(use.pressure),
      };
    }
  },
  words: (d, say) => {
    const { use } = d;
    const values = {
      pier: use.pier.id,
      post: use.pier.timber?.id ?? "",
      combination: caseWords(d.solution, use.caseId, say),
      down: say.force(use.down),
      weight: say.force(use.weight),
      help: remedyWords(d, say),
    };
    if (tips(use))
      return say.text(
        "{pier} tips under {combination}: a push of {push} at its top, with {down} from {post} and {weight} of its own on it, puts the load {off} off its middle, and its edge is {half} away. {help}",
        {
          ...values,
          push: say.force(use.push),
          off: say.length(use.off),
          half: say.length(use.pier.diameter / 2),
        },
      );
    // off its middle a pad carries less than its area times the soil's pressure: nothing is "left" to tell
    if (isPad(use.pier) && use.off > OFF_MIDDLE)
      return say.text(
        "{pier} presses the soil at its edge with {pressure} under {combination}: {down} from {post} and {weight} of its own concrete stand {off} off its middle, because {push} push at its top, {height} above its base. “soil: {soil}” carries {allowed} by the code’s table; beyond that the pad settles on that side and leans. {help}",
        {
          ...values,
          pressure: say.pressure(use.pressure),
          off: say.length(use.off),
          push: say.force(use.push),
          height: say.length(use.pier.top[2] - use.pier.bottom),
          soil: d.soil,
          allowed: say.pressure(use.allowed.value),
        },
      );
    return say.text(
      "{pier} presses the soil with {pressure} under {combination}: {down} from {post} and {weight} of its own concrete on {area}. “soil: {soil}” carries {allowed} by the code’s table, which leaves {left} for the post; beyond that the pier settles and the joints above it open. {help}",
      {
        ...values,
        pressure: say.pressure(use.pressure),
        area: areaWords(use.area, say),
        soil: d.soil,
        allowed: say.pressure(use.allowed.value),
        left: say.force(Math.max(0, soilBearing(use.area, use.weight, use.allowed.value).net)),
      },
    );
  },
  worked: ({ use }, say) => {
    const load = `(${say.force(use.down)} + ${say.force(use.weight)})`;
    const compared = `${say.pressure(use.pressure)} > ${say.pressure(use.allowed.value)}`;
    const across = say.length(use.pier.footing?.diameter ?? use.pier.diameter);
    if (!isPad(use.pier)) return `${load} ÷ (π × (${across})² ÷ 4) = ${compared}`;
    const { off } = use;
    const e = `${say.force(use.push)} × ${fineLength(use.pier.top[2] - use.pier.bottom, say)} ÷ ${load} = ${fineLength(off, say)}`;
    if (tips(use)) return `e: ${e} > ${across} ÷ 2 = ${say.length(use.pier.diameter / 2)}`;
    return steps(
      `e: ${e}`,
      off <= use.pier.diameter / 6
        ? `${load} ÷ (${across})² × (1 + 6 × ${fineLength(off, say)} ÷ ${across}) = ${compared}`
        : `2 × ${load} ÷ (3 × ${across} × (${across} ÷ 2 − ${fineLength(off, say)})) = ${compared}`,
    );
  },
  fixes: (d, say): Fix[] => {
    const { entry, footing: before } = d.use.pier;
    if (isPad(d.use.pier)) return padFix(d.use.pier, padSide(d, say), say);
    const footing = footingFor(d, say);
    if (!footing) return [];
    const [diameter, thickness] = [say.length(footing.diameter), say.length(footing.thickness)];
    const replaced = (key: string, text: string) =>
      ({ kind: "replace", path: `${entry.path}/footing/${key}`, text }) as const;
    return [
      {
        title: say.text("Take a footing of {diameter}, {thickness} thick", { diameter, thickness }),
        edits: before
          ? [
              replaced("diameter", diameter),
              ...(footing.thickness > before.thickness + 1e-6 ? [replaced("thickness", thickness)] : []),
            ]
          : [
              {
                kind: "add",
                path: entry.path,
                key: "footing",
                text: `{diameter: ${diameter}, thickness: ${thickness}}`,
              },
            ],
      },
    ];
  },
});
