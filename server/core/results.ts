/** What the engineering computes from a model; checks with input `results` read it, hovers and reports show it. */
import { crowdedSeries } from "./model/crowded-series.ts";
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
  /** undefined for a model without timbers, or while `complete` is false */
  readonly frame: FrameResults | undefined;
  /** every entry of the file is in the model and none is a heap of sticks, so that what follows from the whole can be told */
  readonly complete: boolean;
}

/**
 * Computes everything that follows from the model.
 * @param previous the last answer, whose forces may serve again
 */
export function computeResults(model: Model, previous?: Results): Results {
  // sticks heaped up in one place are no frame, and hundreds of them would keep the editor waiting
  const complete = isComplete(model) && crowdedSeries(model).length === 0;
  return {
    model,
    complete,
    ...rafterResults(model),
    decks: [...deckResults(model), ...floorDecks(model)],
    frame: complete ? analyseFrame(model, previous?.frame) : undefined,
  };
}
