/** What the file measured on its sticks, held against the perfect timbers inside them. */
import type { Model, Timber } from "../../model/model.ts";
import {
  type MeasuredEntry,
  type MeasuredSize,
  measuredEntry,
  measuredSizes,
  surplusOf,
} from "../../shop/layout/measured.ts";
import type { Say } from "../say.ts";

export interface MeasuredWay {
  readonly entry: MeasuredEntry;
  readonly stick: Timber;
  readonly size: MeasuredSize;
  /** of the timber as it lies */
  readonly way: "width" | "depth";
  /** the key it is written under: a turned timber's width is its section's depth */
  readonly key: "width" | "depth";
  readonly measured: number;
  readonly perfect: number;
  /** inches over the perfect size, below zero where it is short */
  readonly over: number;
}

/** Every size that was measured, of every stick. */
export function* measuredWays(model: Model): Generator<MeasuredWay> {
  for (const stick of model.timbers) {
    const entry = measuredEntry(model, stick);
    if (!entry) continue;
    for (const size of measuredSizes(stick, entry))
      for (const way of ["width", "depth"] as const)
        yield {
          entry,
          stick,
          size,
          way,
          key: entry.turned ? (way === "width" ? "depth" : "width") : way,
          measured: size[way],
          perfect: stick[way],
          over: surplusOf(size, stick)[way],
        };
  }
}

/** ` 4 ft from the foot`, or nothing where it holds all along. */
export function atWords(at: number | undefined, say: Say): string {
  return at === undefined ? "" : say.text(" at {at} from its first end", { at: say.length(at) });
}
