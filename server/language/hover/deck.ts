/** How far the deck of a roof or floor is used between its supports, under the key that names it. */
import type { Say } from "../../core/checks/say.ts";
import {
  DECK_LOADS,
  type DeckPanels,
  type DeckResult,
  type DeckStrip,
  PERSON,
} from "../../core/roof/deck-strip.ts";
import { limitTable } from "./limit-table.ts";
import { amountText, ratioText, USE_WORDS } from "./use-words.ts";

const panelRatio = ({ live, total, rule, reserve }: DeckPanels): number =>
  Math.max(live / (rule.load.live * reserve), total / (rule.load.total * reserve));

const ratioOf = (deck: DeckResult): number =>
  deck.kind === "panels" ? panelRatio(deck) : (deck.uses[0]?.ratio ?? 0);

function stripText(strip: DeckStrip, say: Say): string[] {
  const [use] = strip.uses;
  if (!use) return [];
  const head = say.text(
    "Over {span} used to **{ratio}** by {what}: {value} of {limit} under dead load and {load}. Reckoned as No.2 of the wood that carries it ({species}), on two supports.",
    {
      span: say.length(strip.span),
      ratio: ratioText(use.ratio, say),
      what: say.text(USE_WORDS[use.what]),
      value: amountText(use.value, use.unit, say),
      limit: amountText(use.limit, use.unit, say),
      load: say.text(DECK_LOADS[use.load], { weight: say.force(PERSON.load) }),
      species: strip.species,
    },
  );
  return [head, ...limitTable({ reference: use.reference, factors: use.factors }, say)];
}

function panelText(panels: DeckPanels, say: Say): string {
  const { rule, span, live, total, reserve } = panels;
  return say.text(
    "Over {span} used to **{ratio}**: rated {rating} by its thickness, it carries {live} and in all {total}; {load} lays {own} on it square to the slope, and {all} with dead load ({source}, remembered).",
    {
      span: say.length(span),
      ratio: ratioText(panelRatio(panels), say),
      rating: rule.rating,
      live: say.pressure(rule.load.live * reserve),
      total: say.pressure(rule.load.total * reserve),
      load: say.text(DECK_LOADS[panels.load]),
      own: say.pressure(live),
      all: say.pressure(total),
      source: rule.source,
    },
  );
}

/** @returns paragraphs of the one that is used most; none for none */
export function deckHover(decks: readonly DeckResult[], say: Say): string[] {
  const most = decks.reduce<DeckResult | undefined>(
    (worst, deck) => (worst && ratioOf(worst) >= ratioOf(deck) ? worst : deck),
    undefined,
  );
  if (!most) return [];
  return most.kind === "panels" ? [panelText(most, say)] : stripText(most, say);
}
