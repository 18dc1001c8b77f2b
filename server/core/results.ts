/** What the engineering computes from a model; checks with input `results` read it, hovers and reports show it. */
import { isComplete } from "./model/grounded.ts";
import type { Model } from "./model/model.ts";
import { deckResults } from "./roof/deck-results.ts";
import type { DeckResult } from "./roof/deck-strip.ts";
import { type RafterResults, rafterResults } from "./roof/rafter-results.ts";
import { analyseFrame } from "./statics/analyse-frame.ts";
import { floorDecks } from "./statics/floor-decks.ts";
import type { FrameResults } from "./statics/frame-results.ts";

export interface Results extends RafterResults {
  readonly model: Model;
  /** decks between their supports: of each slope of the roof and of each floor, where all of it is known */
  readonly decks: readonly DeckResult[];
  /** undefined for a model without timbers, or while a part of the file is not in it */
  readonly frame: FrameResults | undefined;
  /** every entry of the file is in the model, so that what follows from the whole can be told */
  readonly complete: boolean;
}

/**
 * Computes everything that follows from the model.
 * @param previous the last answer, whose forces may serve again
 */
export function computeResults(model: Model, previous?: Results): Results {
  const complete = isComplete(model);
  return {
    model,
    complete,
    ...rafterResults(model),
    decks: [...deckResults(model), ...floorDecks(model)],
    frame: complete ? analyseFrame(model, previous?.frame) : undefined,
  };
}
