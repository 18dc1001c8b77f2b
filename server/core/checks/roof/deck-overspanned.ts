import type { Frame } from "../../frame/frame.ts";
import type { Roof } from "../../frame/roof.ts";
import type { Model, Timber } from "../../model/model.ts";
import { inches } from "../../quantity/length.ts";
import { carrierSpacing } from "../../roof/deck-carriers.ts";
import {
  BOARD_RATE,
  type BoardRule,
  boardSpan,
  boardsFor,
  panelByThickness,
  WIDEST_PURLINS,
} from "../../roof/deck-spans.ts";
import { isSpaced } from "../../roof/rafter-results.ts";
import { defineCheck } from "../check.ts";

type Deck = NonNullable<Roof["deck"]>;

type Data = { readonly spacing: number; readonly thickness: number } & (
  | { readonly kind: "boards"; readonly longest: number; readonly diagonal: boolean }
  | { readonly kind: "panels" | "purlins"; readonly longest: number }
  | { readonly kind: "boards-thin" | "panels-thin" }
  | { readonly kind: "edges"; readonly longest: number }
  | {
      readonly kind: "tongue";
      readonly rule: BoardRule;
      /** how far plain boards reach, in */
      readonly plain: number;
      readonly diagonal: boolean;
    }
);

/** Of a roof deck in the code, in. */
const THINNEST = { boards: 5 / 8, panels: 3 / 8 } as const;

/** What a deck is made of where the file states no thickness, in; as in its weight. */
const USUAL = { boards: 1, panels: 0.625, purlins: 1.5 } as const;

/** Center to center of what carries the deck, the widest of all slopes. */
function supportSpacing(model: Model): number | undefined {
  const spacings = (model.roof?.slopes ?? []).flatMap((slope) => carrierSpacing(model, slope) ?? []);
  return spacings.length > 0 ? Math.max(...spacings) : undefined;
}

const STEEL: ReadonlySet<string | undefined> = new Set(["standing-seam", "ribbed-steel", "corrugated-steel"]);

/** @returns what is wrong, undefined where nothing is */
function judge(
  deck: Deck,
  frame: Frame,
  spacing: number | undefined,
  purlins: number | undefined,
): Data | undefined {
  const thickness = deck.thickness === undefined ? USUAL[deck.kind] : inches(deck.thickness);
  if (deck.kind === "purlins") {
    // purlins that are timbers of their own are what the sheets lie on
    const apart = purlins ?? (deck.spacing === undefined ? 0 : inches(deck.spacing));
    const wide = STEEL.has(frame.roof?.covering?.kind) && apart > WIDEST_PURLINS.value + 1e-6;
    return wide ? { kind: "purlins", spacing: apart, thickness, longest: WIDEST_PURLINS.value } : undefined;
  }
  if (spacing === undefined) return undefined;
  if (deck.kind === "panels") {
    const rule = panelByThickness(thickness);
    if (!rule) return { kind: "panels-thin", spacing, thickness };
    if (spacing > rule.held + 1e-6) return { kind: "panels", spacing, thickness, longest: rule.held };
    return spacing > rule.free + 1e-6 ? { kind: "edges", spacing, thickness, longest: rule.free } : undefined;
  }
  if (deck.laid === "diagonal") return judgeBoards(spacing * Math.SQRT2, thickness, true);
  return judgeBoards(spacing, thickness, false);
}

/** @param spacing of their supports, along the boards, inches */
function judgeBoards(spacing: number, thickness: number, diagonal: boolean): Data | undefined {
  const span = boardSpan(thickness);
  if (!span) return { kind: "boards-thin", spacing, thickness };
  if (spacing > span.value + 1e-6)
    return { kind: "boards", spacing, thickness, longest: span.value, diagonal };
  const rule = boardsFor(spacing);
  return rule && spacing > span.plain + 1e-6
    ? { kind: "tongue", spacing, thickness, rule, plain: span.plain, diagonal }
    : undefined;
}

/** The number that is too large or too small, and its limit, in. */
function compared(data: Data): { readonly value: number; readonly limit: number } {
  switch (data.kind) {
    case "boards-thin":
      return { value: data.thickness, limit: THINNEST.boards };
    case "panels-thin":
      return { value: data.thickness, limit: THINNEST.panels };
    case "tongue":
      return { value: data.spacing, limit: data.plain };
    default:
      return { value: data.spacing, limit: data.longest };
  }
}

/** The spacing that is written for purlins of their own, else their entry. */
function purlinPath(
  model: Model,
  { member, path }: Timber,
): { readonly path: string; readonly onKey?: true } {
  return model.members.get(member)?.spacing === undefined
    ? { path, onKey: true }
    : { path: `${path}/spacing` };
}

export const deckOverspanned = defineCheck<"model", Data>({
  meta: {
    id: "deck-overspanned",
    title: "A deck that reaches too far",
    level: "warning",
    area: "roof",
    source: {
      text: "IRC R803.1 (boards: 5/8 in at 24 in seen in print, wider spacings remembered) and Table R503.2.1.1(1) (panels), practice for steel on purlins",
      status: "memory",
    },
    explanation: {
      what: "The boards, panels or sheets of the roof span farther between their supports than their thickness allows. Panels whose edges must be held, and boards that need tongue and groove, are notes.",
      why: "A thin deck sags and springs underfoot, its fasteners work loose, and under snow it breaks.",
      formula:
        "boards: 24 in for 5/8 in and in proportion to the thickness (38.4 × thickness) up to 1 1/2 in, which reaches 72 in; panels: by the weakest rating of their thickness, long way across the supports; steel on purlins: 36 in",
      remedy: "Take a thicker deck or set the rafters or purlins closer.",
    },
  },
  input: "model",
  *find(model) {
    const deck = model.frame.roof?.deck;
    if (model.frame.roof && !isSpaced(model.frame.roof)) return;
    const spacing = supportSpacing(model);
    const purlin = model.timbers.find((t) => t.rule === "purlins-up-slope");
    const data = deck && judge(deck, model.frame, spacing, purlin && spacing);
    if (!data) return;
    const key = data.kind === "purlins" ? "spacing" : "thickness";
    const { value, limit } = compared(data);
    yield {
      ...(data.kind === "purlins" && purlin
        ? purlinPath(model, purlin)
        : { path: deck[key] === undefined ? `${deck.path}/kind` : `${deck.path}/${key}` }),
      level: data.kind === "edges" || data.kind === "tongue" ? "note" : "warning",
      data,
      value,
      limit,
      unit: "in",
    };
  },
  words(d, say) {
    const values = {
      thickness: say.length(d.thickness),
      spacing: say.length(d.spacing),
      longest: "longest" in d ? say.length(d.longest) : "",
      along: "diagonal" in d && d.diagonal ? ` ${say.text("along the diagonal")}` : "",
    };
    switch (d.kind) {
      case "boards":
        return say.text(
          "Boards {thickness} thick reach {longest} between their supports, and these are {spacing} apart{along}: they sag and spring. Take thicker boards or set the supports closer.",
          values,
        );
      case "panels":
        return say.text(
          "Panels {thickness} thick reach {longest} between their supports even with held edges, and these are {spacing} apart: they sag between them. Take thicker panels or set the supports closer.",
          values,
        );
      case "purlins":
        return say.text(
          "Steel sheets lie on purlins at most {longest} apart, and these are {spacing} apart: the sheets dent underfoot and sag under snow. Set them closer, or go by the maker’s load table.",
          values,
        );
      case "boards-thin":
        return say.text(
          "Boards {thickness} thick are thinner than any roof deck of the code ({least}): they break underfoot. Take thicker boards.",
          { ...values, least: say.length(THINNEST.boards) },
        );
      case "panels-thin":
        return say.text(
          "Panels {thickness} thick are thinner than any roof deck of the code ({least}): they break underfoot. Take thicker panels.",
          { ...values, least: say.length(THINNEST.panels) },
        );
      case "edges":
        return say.text(
          "Panels {thickness} thick on supports {spacing} apart need their long edges held by tongue and groove, blocking or clips; free edges reach {longest}.",
          values,
        );
      case "tongue":
        return say.text(
          "Boards on supports {spacing} apart{along} need tongue and groove, and wood of at least {Fb} in bending and {E} of elasticity.",
          {
            ...values,
            Fb: say.stress(d.rule.wood?.Fb ?? 0),
            E: say.stress(d.rule.wood?.E ?? 0),
          },
        );
    }
  },
  worked: (d, say) => {
    const values = {
      spacing: say.length("diagonal" in d && d.diagonal ? d.spacing / Math.SQRT2 : d.spacing),
      along: say.length(d.spacing),
      thickness: say.length(d.thickness),
      longest: "longest" in d ? say.length(d.longest) : "",
      plain: "plain" in d ? say.length(d.plain) : "",
      rate: say.number(BOARD_RATE, 1),
    };
    const spacing =
      "diagonal" in d && d.diagonal ? say.text("{spacing} × √(2) = {along}", values) : values.spacing;
    switch (d.kind) {
      case "boards":
        return Math.abs(d.longest - BOARD_RATE * d.thickness) < 1e-6
          ? say.text("{spacing} > {rate} × {thickness} = {longest}", { ...values, spacing })
          : say.text("{spacing} > {longest}", { ...values, spacing });
      case "panels":
      case "purlins":
      case "edges":
        return say.text("{spacing} > {longest}", values);
      case "tongue":
        return say.text("{spacing} > {plain}", { ...values, spacing });
      case "boards-thin":
      case "panels-thin":
        return say.text("{thickness} < {least}", {
          ...values,
          least: say.length(d.kind === "boards-thin" ? THINNEST.boards : THINNEST.panels),
        });
    }
  },
});
