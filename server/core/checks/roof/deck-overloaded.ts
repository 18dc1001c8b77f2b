import type { CheckKind } from "../../members/utilisation.ts";
import { boardSpan } from "../../roof/deck-spans.ts";
import {
  DECK_LOADS,
  type DeckLoad,
  type DeckPanels,
  type DeckResult,
  type DeckStrip,
  type DeckUse,
  longestDeckSpan,
  PERSON,
} from "../../roof/deck-strip.ts";
import { defineCheck } from "../check.ts";
import { overPercent } from "../members/use-words.ts";
import type { Say } from "../say.ts";
import { spanFormula } from "./span-formula.ts";

type Data =
  | { readonly kind: "strip"; readonly strip: DeckStrip; readonly use: DeckUse }
  | { readonly kind: "panels"; readonly panels: DeckPanels; readonly by: "live" | "total" };

const WHAT: Readonly<Partial<Record<CheckKind, string>>> = {
  bending: "bending",
  shear: "shear",
  "live-deflection": "deflection under snow or live load",
  "total-deflection": "deflection under all load, with creep",
};

const loadWords = (load: DeckLoad, say: Say): string =>
  say.text(DECK_LOADS[load], { weight: say.force(PERSON.load) });

const allowed = ({ rule, reserve }: DeckPanels, by: "live" | "total"): number => rule.load[by] * reserve;

/** How far the span table lets boards of a roof reach, in; `deck-overspanned` tells of what goes farther. */
const tableReach = ({ kind, on, thickness }: DeckStrip): number =>
  kind === "boards" && "wall" in on ? (boardSpan(thickness)?.value ?? 0) : Number.POSITIVE_INFINITY;

/** @returns what is over, the worst first; a stress before a deflection */
function judge(deck: DeckResult): (Data & { readonly ratio: number }) | undefined {
  if (deck.kind === "panels") {
    const by = (["live", "total"] as const).map((one) => ({ one, ratio: deck[one] / allowed(deck, one) }));
    const worst = by.reduce((a, b) => (b.ratio > a.ratio ? b : a));
    return worst.ratio > 1 ? { kind: "panels", panels: deck, by: worst.one, ratio: worst.ratio } : undefined;
  }
  const over = deck.uses.filter(({ ratio }) => ratio > 1);
  const use = over.find(({ unit }) => unit === "psi") ?? over[0];
  // that it sags has been said
  if (use?.unit === "in" && deck.span > tableReach(deck) + 1e-6) return undefined;
  return use && { kind: "strip", strip: deck, use, ratio: use.ratio };
}

function stripWords(strip: DeckStrip, use: DeckUse, say: Say): string {
  const amount = (value: number): string => (use.unit === "psi" ? say.stress(value) : say.length(value));
  const longest = longestDeckSpan(strip);
  const reach = longest === undefined ? undefined : Math.min(longest, tableReach(strip));
  const values = {
    thickness: say.length(strip.thickness),
    breadth: say.length(strip.breadth),
    span: say.length(strip.span),
    value: amount(use.value),
    limit: amount(use.limit),
    what: say.text(WHAT[use.what] ?? use.what),
    load: loadWords(use.load, say),
    ratio: overPercent(use.ratio, say),
    species: strip.species,
  };
  const start =
    strip.kind === "boards"
      ? say.text(
          "Boards {thickness} thick over {span} have {value} of {what} against {limit} allowed ({ratio}) under dead load and {load}.",
          values,
        )
      : say.text(
          "Purlins of {breadth} × {thickness}, laid flat, over {span} have {value} of {what} against {limit} allowed ({ratio}) under dead load and {load}.",
          values,
        );
  const why =
    use.unit === "psi"
      ? say.text("They can break under that load.")
      : "floor" in strip.on
        ? say.text("They sag more than a floor may.")
        : say.text("They sag more than a roof of this kind may.");
  const taken = say.text(
    "Reckoned as No.2 of the wood that carries them ({species}), since the file names none for the deck.",
    values,
  );
  const remedy =
    reach === undefined || reach <= 0
      ? say.text("Take them thicker or set their supports closer.")
      : say.text("They reach {longest} under these loads: take them thicker or set their supports closer.", {
          longest: say.length(reach),
        });
  return `${start} ${why} ${taken} ${remedy}`;
}

export const deckOverloaded = defineCheck<"results", Data>({
  meta: {
    id: "deck-overloaded",
    title: "A deck that its load overtaxes",
    level: "error",
    area: "roof",
    source: {
      text: "NDS 2018 chapters 3 and 4 on a simple span, shear beside an inner support by the beam diagrams of two equal spans (AWC DA6, AISC Manual Table 3-23), ASCE/SEI 7 chapters 4 and 7 (300 lb on 30 in by 30 in of any roof that is walked on for upkeep), loads of panels in IRC Table R503.2.1.1(1)",
      status: "memory",
    },
    explanation: {
      what: "The boards or purlins of the roof, or the boards of a floor, are stressed, or bend, more than their wood allows between their supports, or panels of the roof carry more than their rating, under snow, live load or a person.",
      why: "Span tables of decks hold for usual loads. Under heavy snow a deck that they allow sags or breaks first of all.",
      formula:
        "Boards (a strip 12 in wide) and purlins are simple spans, with loads square to the slope and the wood of what carries them, No.2. Bending: f_b = M/S ≤ F_b × adjustment factors. Shear: f_v = 3V/(2bd) ≤ F_v × factors. V has with it what running on over a support adds beside it: w L/8, so 5/8 w L in all, less what lies within their depth of the support. Deflection: as of rafters; of a floor L/360 under live load and L/240 under all. Panels: load ≤ that of their rating × (its widest spacing ÷ spacing)².",
      remedy: "Take the deck thicker, or set the rafters, purlins or joists closer.",
    },
  },
  input: "results",
  *find({ decks }) {
    for (const result of decks) {
      const data = judge(result);
      if (!data) continue;
      const strength = data.kind === "strip" && data.use.unit === "psi";
      yield {
        path: result.path,
        level: strength ? "error" : "warning",
        place: "wall" in result.on ? `deck@${result.on.wall}` : result.on.floor,
        data,
        ...(data.kind === "strip"
          ? { value: data.use.value, limit: data.use.limit, unit: data.use.unit }
          : { value: data.panels[data.by], limit: allowed(data.panels, data.by), unit: "psf" as const }),
        severity: data.ratio,
      };
    }
  },
  words(d, say) {
    if (d.kind === "strip") return stripWords(d.strip, d.use, say);
    const { panels, by } = d;
    const values = {
      thickness: say.length(panels.thickness),
      span: say.length(panels.span),
      value: say.pressure(panels[by]),
      limit: say.pressure(allowed(panels, by)),
      load: loadWords(panels.load, say),
      rating: panels.rule.rating,
    };
    return say.text(
      by === "live"
        ? "Panels {thickness} thick, rated {rating}, carry {limit} over {span}, and {load} lays {value} on them square to the slope: they sag and may break. Take thicker panels or set their supports closer."
        : "Panels {thickness} thick, rated {rating}, carry {limit} in all over {span}, and dead load and {load} lay {value} on them square to the slope: they sag and may break. Take thicker panels or set their supports closer.",
      values,
    );
  },
  worked(d, say) {
    if (d.kind === "strip") return spanFormula(d.use, say);
    const { panels, by } = d;
    return say.text("{value} > {load} × ({widest} ÷ {span})² = {limit}", {
      value: say.pressure(panels[by]),
      load: say.pressure(panels.rule.load[by]),
      widest: say.length(panels.rule.held),
      span: say.length(panels.span),
      limit: say.pressure(allowed(panels, by)),
    });
  },
});
