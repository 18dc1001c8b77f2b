/** What the file measured on its sticks, held against the perfect timbers inside them. */
import type { Member } from "../../frame/frame.ts";
import type { Model, Timber } from "../../model/model.ts";
import { type MeasuredSize, measuredSizes, surplusOf } from "../../shop/layout/measured.ts";
import type { Say } from "../say.ts";

export interface MeasuredWay {
  readonly member: Member;
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
    const member = model.members.get(stick.member);
    if (!member) continue;
    for (const size of measuredSizes(stick, member))
      for (const way of ["width", "depth"] as const)
        yield {
          member,
          stick,
          size,
          way,
          key: member.turned ? (way === "width" ? "depth" : "width") : way,
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
