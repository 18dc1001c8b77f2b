import type { Model, RoofSlope } from "../../model/model.ts";
import { solidOf } from "../../model/solid.ts";
import { inches } from "../../quantity/length.ts";
import { deckCarriers } from "../../roof/deck-carriers.ts";
import { boardSpan, panelByThickness } from "../../roof/deck-spans.ts";
import { defineCheck } from "../check.ts";

interface Data extends Reach {
  readonly hang: number;
}

interface Reach {
  /** most that the deck may hang, in */
  readonly limit: number;
  /** what it spans between rafters, in; undefined where the file gives no thickness */
  readonly span: number | undefined;
}

/** The most that any deck hangs past the last rafter without lookouts, inches. */
const MOST = 24;
/** A deck that nobody measured: boards or panels of usual thickness reach so far past the last rafter. */
const USUAL = 12;

/**
 * Half of what the deck spans: the end moment wc²/2 of a cantilever c = L/2 is that of a simple span L, wL²/8.
 */
function reach(model: Model): Reach {
  const deck = model.frame.roof?.deck;
  if (!deck?.thickness) return { limit: USUAL, span: undefined };
  const thickness = inches(deck.thickness);
  const known = deck.kind === "panels" ? panelByThickness(thickness)?.free : boardSpan(thickness)?.value;
  const span = known ?? 2 * USUAL;
  return { limit: Math.min(MOST, span / 2), span };
}

/** How far the deck runs past the outermost timber that it lies on, inches. */
function hangs(model: Model, slope: RoofSlope): number {
  const solids = deckCarriers(model, slope).map(solidOf);
  if (solids.length === 0) return 0;
  const low = Math.min(...solids.map((s) => s.low[0]));
  const high = Math.max(...solids.map((s) => s.high[0]));
  return Math.max(low - slope.deckFrom, slope.deckTo - high);
}

export const rakeOverhangLong = defineCheck<"model", Data>({
  meta: {
    id: "rake-overhang-long",
    title: "A deck that hangs too far past the last rafter",
    level: "warning",
    area: "roof",
    source: {
      text: "statics: a cantilever of half the span is stressed like the span itself; never more than 24 in, which is common in light framing with lookouts",
      status: "derived",
    },
    explanation: {
      what: "At the rake the roof’s deck runs on past the last rafter farther than half of what it spans between rafters, or than 24 in; twice that is an error.",
      why: "Nothing carries its edge: it sags and springs, and wind and snow break it off.",
      formula:
        "overhang past the last rafter ≤ half of the deck’s longest span, at most 24 in; 12 in where no thickness is given",
      remedy:
        "Let the plates run on, so that a rafter stands nearer the edge, carry the edge with lookouts, or shorten the rake.",
    },
  },
  input: "model",
  *find(model) {
    const rake = model.frame.roof?.rafters?.overhang?.rake;
    const path = model.frame.roof?.rafters?.path;
    if (rake === undefined || path === undefined) return;
    const { limit, span } = reach(model);
    const hang = Math.max(0, ...(model.roof?.slopes ?? []).map((slope) => hangs(model, slope)));
    if (hang <= limit + 1 / 16) return;
    yield {
      path: `${path}/overhang/rake`,
      ...(hang > 2 * limit ? { level: "error" as const } : {}),
      data: { hang, limit, span },
      value: hang,
      limit,
      unit: "in",
      severity: hang - limit,
    };
  },
  words: (d, say) =>
    say.text(
      "The deck hangs {hang} past the last rafter, and it carries {limit} at most by itself: its edge sags, and wind and snow break it off. Let the plates run on so that a rafter stands nearer the edge, carry the edge with lookouts, or shorten the rake.",
      { hang: say.length(d.hang), limit: say.length(Math.floor(d.limit * 4) / 4) },
    ),
  worked: (d, say) => {
    const values = {
      hang: say.length(d.hang),
      span: say.length(d.span ?? 0),
      most: say.length(d.span === undefined ? USUAL : MOST),
      limit: say.length(d.limit),
    };
    return d.span === undefined
      ? say.text("{hang} > {most}", values)
      : say.text("{hang} > min({most}, {span} ÷ 2) = {limit}", values);
  },
});
