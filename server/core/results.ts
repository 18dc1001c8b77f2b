/** What the engineering computes from a model; checks with input `results` read it, hovers and reports show it. */
import type { RafterCheck } from './members/rafter.ts';
import type { Model, RoofSlope } from './model/model.ts';

export interface RafterResult {
  readonly slope: RoofSlope;
  readonly check: RafterCheck;
}

export interface Results {
  readonly model: Model;
  /** one for each roof slope whose rafters, loads and wood are known */
  readonly rafters: readonly RafterResult[];
  /** why a part could not be computed, so that nobody takes silence for safety */
  readonly skipped: readonly { readonly what: 'rafters'; readonly because: 'loads-missing' | 'wood-unknown' | 'no-rafters' }[];
}
