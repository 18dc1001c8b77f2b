import type { CoveringKind } from "../../frame/roof.ts";
import { COVERINGS } from "../../roof/coverings.ts";
import { defineCheck } from "../check.ts";
import { COVERING_NAMES } from "./covering-names.ts";

interface Data {
  readonly covering: CoveringKind;
  readonly source: string;
}

export const coveringNeedsDeck = defineCheck<"frame", Data>({
  meta: {
    id: "covering-needs-deck",
    title: "A covering on purlins that needs a closed deck",
    level: "error",
    area: "roof",
    source: {
      text: "IRC R905.2.1 (asphalt shingles) and R905.5.1 (roll roofing): on solidly sheathed decks",
      status: "memory",
    },
    explanation: {
      what: "Asphalt shingles or roll roofing are laid on spaced purlins.",
      why: "They are soft: between the purlins they sag, tear and have nothing to be nailed to.",
      remedy: "Deck the roof with boards or panels, or take steel, wood shingles or slate on purlins.",
    },
  },
  input: "frame",
  *find({ roof }) {
    if (!roof?.covering || roof.deck?.kind !== "purlins") return;
    const { kind } = roof.covering;
    const { closedDeck } = COVERINGS[kind];
    if (!closedDeck) return;
    yield {
      path: `${roof.deck.path}/kind`,
      data: { covering: kind, source: closedDeck.source },
      related: [
        { path: `${roof.covering.path}/kind`, message: (say) => say.text("the covering that it carries") },
      ],
    };
  },
  words: (d, say) =>
    say.text(
      "{covering} needs a closed deck ({source}): on purlins it sags and tears, and has nothing to be nailed to. Take boards or panels.",
      { covering: COVERING_NAMES[d.covering], source: d.source },
    ),
});
