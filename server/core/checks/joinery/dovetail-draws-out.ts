import { drawOut, dryingOf, tailSlope } from "../../joinery/dovetail-drying.ts";
import type { Joint } from "../../joinery/joint.ts";
import { usual } from "../../joinery/proportions.ts";
import { defineCheck } from "../check.ts";
import { fineLength, steps } from "../formula-words.ts";
import { judgedJoints } from "./judged.ts";

interface Data {
  readonly joint: string;
  readonly of: string;
  /** what the timber loses across the tail, a fraction, and the tail's width at its tip, in */
  readonly shrinkage: number;
  readonly tip: number;
  readonly drawn: number;
  readonly limit: number;
  readonly what: Flared | Wedged;
}

interface Flared {
  readonly kind: "flared";
  readonly flare: number;
  readonly length: number;
  /** drying takes all of its flare */
  readonly lost: boolean;
  readonly pegged: boolean;
}

interface Wedged {
  readonly kind: "wedged";
  /** rise of the lower edge over the length of the tail */
  readonly rise: number;
  readonly length: number;
  /** the wedge: what it is driven on, and its rise for each inch */
  readonly reserve: number;
  readonly slope: number;
}

/** A shoulder that opens no farther is not spoken of, in and mm (common practice, no source). */
const SEEN = 1 / 4;
const SEEN_MM = 6;

function flaredOf({
  of,
  sizes: { dovetail, pegs },
}: Joint): Pick<Data, "tip" | "drawn" | "what"> | undefined {
  const drawn = dovetail && drawOut(of, dovetail);
  if (!dovetail || drawn === undefined || !(dovetail.flare.value > 0)) return undefined;
  const length = dovetail.length.value;
  const lost = drawn >= length - 1e-9;
  const what = {
    kind: "flared",
    flare: dovetail.flare.value,
    length,
    lost,
    pegged: pegs !== undefined,
  } as const;
  return { tip: dovetail.tip, drawn, what };
}

function wedgedOf({ of, sizes }: Joint): Pick<Data, "tip" | "drawn" | "what"> | undefined {
  const { wedge, tenon } = sizes;
  const [rate, shrinkage] = [tailSlope(sizes), dryingOf(of)];
  if (!wedge || !tenon || !shrinkage || rate <= 0) return undefined;
  const length = tenon.length.value;
  const what = {
    kind: "wedged",
    rise: rate * length,
    length,
    reserve: wedge.reserve,
    slope: wedge.slope,
  } as const;
  return { tip: wedge.tip, drawn: (shrinkage * wedge.tip) / rate, what };
}

export const dovetailDrawsOut = defineCheck<"model", Data>({
  meta: {
    id: "dovetail-draws-out",
    title: "A dovetail that draws out as it dries",
    level: "warning",
    area: "joinery",
    source: {
      text: "plane geometry of the flare (derived); shrinkage to 12 percent moisture, Wood Handbook Eq 4-9 with the tangential values of chapter 4; common practice, no source: an opening of up to 1/4 in (6 mm) is not spoken of",
      status: "common-practice",
    },
    explanation: {
      what: "A tail cut from green timber shrinks across its width, while its socket, which lies along the grain of the other timber, keeps its length: the tail draws out until its flanks are tight again, at most. A note says how far; a warning where drying takes all of the flare, so that the tail slips through the mouth of its socket. Of a wedged half-dovetail, the note says how far its wedge must be driven on instead.",
      why: "The shoulder opens by that much before the joint holds, and the flanks bear on what is left of their length; without any flare left nothing holds. A wedge that is cut off flush cannot be driven again.",
      formula:
        "s = S × tip ÷ (2 × flare ÷ length) for two flared sides, S × tip ÷ (rise ÷ length) for one; S = S_0 (1 − 12/30); warning where s ≥ length; the wedge takes up S × tip, so it goes on by S × tip ÷ its slope",
      remedy:
        "Cut the tail from dry timber, give it more flare, or let a peg or a wedge keep it tight. Leave wedges standing out and drive them on each year until the timber is dry.",
    },
  },
  input: "model",
  *find(model) {
    const seen = usual(model.frame.units === "mm", SEEN, SEEN_MM);
    for (const joint of judgedJoints(model)) {
      const found = joint.sizes.wedge ? wedgedOf(joint) : flaredOf(joint);
      const shrinkage = dryingOf(joint.of);
      if (!found || !shrinkage || !Number.isFinite(found.drawn)) continue;
      const { what, drawn } = found;
      const lost = what.kind === "flared" && what.lost;
      if (!lost && drawn <= seen + 1 / 32) continue;
      const written = joint.entry?.dovetail;
      const at = lost && written?.flare !== undefined ? `${written.path}/flare` : undefined;
      const limit = lost ? what.length : seen;
      yield {
        ...(at === undefined ? { path: joint.path, onKey: true as const } : { path: at }),
        place: joint.id,
        ...(lost ? {} : { level: "note" as const }),
        data: { joint: joint.id, of: joint.of.id, shrinkage, limit, ...found },
        value: drawn,
        limit,
        unit: "in",
        severity: drawn,
      };
    }
  },
  words: ({ joint, of, what, drawn, shrinkage, tip }, say) => {
    const values = {
      joint,
      of,
      drawn: say.length(drawn),
      lost: say.length(shrinkage * tip),
      tip: say.length(tip),
      length: say.length(what.length),
      flare: say.length(what.kind === "flared" ? what.flare : 0),
      reserve: say.length(what.kind === "wedged" ? what.reserve : 0),
    };
    if (what.kind === "wedged")
      return say.text(
        "As {of} dries, the tail at {joint} loses up to {lost} of its {tip}. Driving the wedge on by {reserve} in all takes that up; without it the joint draws out by {drawn}. Leave the wedge that much longer than the mortise, and drive it again each year until the timber is dry.",
        values,
      );
    if (what.lost)
      return say.text(
        "As {of} dries, the tail at {joint} loses up to {lost} of its {tip}, and its flare of {flare} on each side is no more than that: it slips through the mouth of its socket, and nothing holds. Give it more flare, or cut it from dry timber.",
        values,
      );
    return what.pegged
      ? say.text(
          "As {of} dries, the tail at {joint} loses up to {lost} of its {tip}, and its flanks are tight again only when it has drawn out by {drawn} of its {length}. Its peg holds it until then. More flare or dry timber shortens the way.",
          values,
        )
      : say.text(
          "As {of} dries, the tail at {joint} loses up to {lost} of its {tip}, and its flanks are tight again only when it has drawn out by {drawn} of its {length}: the shoulder may open that far. More flare or dry timber shortens the way.",
          values,
        );
  },
  worked: ({ what, shrinkage, tip, drawn, limit }, say) => {
    const values = {
      S: say.number(shrinkage, 4),
      tip: say.length(tip),
      flare: say.length(what.kind === "flared" ? what.flare : 0),
      rise: fineLength(what.kind === "wedged" ? what.rise : 0, say),
      length: say.length(what.length),
      drawn: fineLength(drawn, say),
      limit: say.length(limit),
      slope: say.number(what.kind === "wedged" ? what.slope : 0, 3),
      reserve: fineLength(what.kind === "wedged" ? what.reserve : 0, say),
    };
    if (what.kind === "wedged")
      return steps(
        say.text("{S} × {tip} ÷ ({rise} ÷ {length}) = {drawn} > {limit}", values),
        say.text("the wedge: {S} × {tip} ÷ {slope} = {reserve}", values),
      );
    return say.text(
      what.lost
        ? "{S} × {tip} ÷ (2 × {flare} ÷ {length}) = {drawn} ≥ {limit}"
        : "{S} × {tip} ÷ (2 × {flare} ÷ {length}) = {drawn} > {limit}",
      values,
    );
  },
});
