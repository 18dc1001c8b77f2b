/** What the engineering computes from a model; checks with input `results` read it, hovers and reports show it. */
import type { Model } from "./model/model.ts";

export interface Results {
  readonly model: Model;
}

/** Computes everything that follows from the model. */
export function computeResults(model: Model): Results {
  return { model };
}
