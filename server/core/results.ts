/** What the engineering computes from a model; checks with input `results` read it, hovers and reports show it. */
import type { Model } from "./model/model.ts";
import { type RafterResults, rafterResults } from "./roof/rafter-results.ts";

export interface Results extends RafterResults {
  readonly model: Model;
}

/** Computes everything that follows from the model. */
export function computeResults(model: Model): Results {
  return { model, ...rafterResults(model) };
}
