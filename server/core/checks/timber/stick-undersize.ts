import type { Model } from "../../model/model.ts";
import { fromInches, inches } from "../../quantity/length.ts";
import { formatSection } from "../../quantity/quantity.ts";
import { LEAST_OVER } from "../../shop/layout/ends.ts";
import { type MeasuredEntry, measuredSizes } from "../../shop/layout/measured.ts";
import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import { atWords, measuredWays } from "./measured-sticks.ts";

interface Data {
  readonly stick: string;
  readonly key: "width" | "depth";
  readonly measured: number;
  readonly perfect: number;
  readonly at: number | undefined;
  /** pointer of the entry, and the section that all its measured sticks have; undefined where none can be proposed */
  readonly entry: string;
  readonly section: string | undefined;
}

/** The largest section that every measured stick of an entry has inside it; planed and nominal sizes are left alone. */
function sectionInside(model: Model, entry: MeasuredEntry): string | undefined {
  const { section } = entry;
  const sticks = model.timbers.filter(({ path }) => path === entry.path);
  if (!section || section.nominal || sticks.some((s) => s.class?.surface === "planed")) return undefined;
  const sizes = sticks.flatMap((stick) => measuredSizes(stick, entry));
  const least = (way: "width" | "depth", own: number): number =>
    Math.min(own, ...sizes.map((size) => size[way]));
  const [w, d] = [inches(section.width), inches(section.depth)];
  const [width, depth] = entry.turned
    ? [least("depth", w), least("width", d)]
    : [least("width", w), least("depth", d)];
  return formatSection({ width: fromInches(width), depth: fromInches(depth) }, model.frame.units);
}

export const stickUndersize = defineCheck<"model", Data>({
  meta: {
    id: "stick-undersize",
    title: "A stick smaller than its perfect timber",
    level: "error",
    area: "timber",
    source: {
      text: "common practice, no source: by the square rule every joint is cut to the perfect timber inside the rough one, so the rough one is nowhere smaller",
      status: "common-practice",
    },
    explanation: {
      what: "A stick measures less than its section in the file.",
      why: "The perfect timber is not inside it: housings and shoulders cut to that size stay open, and its strength was checked for more wood than there is.",
      formula: "measured size ≥ section, in width and in depth, at every place that was measured",
      remedy:
        "Move the stick along or turn it end for end if no joint needs the wood there, choose another stick, or make the section of the entry smaller.",
    },
  },
  input: "model",
  *find(model) {
    for (const { entry, stick, size, key, measured, perfect, over } of measuredWays(model)) {
      if (over > -LEAST_OVER) continue;
      yield {
        path: `${size.path}/${key}`,
        place: stick.id,
        data: {
          stick: stick.id,
          key,
          measured,
          perfect,
          at: size.at,
          entry: entry.path,
          section: sectionInside(model, entry),
        },
        value: measured,
        limit: perfect,
        unit: "in",
        severity: -over,
        related: [{ path: `${entry.path}/section`, message: (say) => say.text("the perfect size") }],
      };
    }
  },
  words: (d, say) =>
    say.text(
      d.key === "width"
        ? "{stick} measures {measured} in width{at}, {short} less than the perfect {perfect}: housings and shoulders cut to that size stay open, and it was checked for more wood than it has. Move it or turn it end for end, choose another stick, or a smaller section."
        : "{stick} measures {measured} in depth{at}, {short} less than the perfect {perfect}: housings and shoulders cut to that size stay open, and it was checked for more wood than it has. Move it or turn it end for end, choose another stick, or a smaller section.",
      {
        stick: d.stick,
        measured: say.length(d.measured),
        perfect: say.length(d.perfect),
        short: say.length(d.perfect - d.measured),
        at: atWords(d.at, say),
      },
    ),
  worked: (d, say) =>
    say.text("{measured} < {perfect}", {
      measured: say.length(d.measured),
      perfect: say.length(d.perfect),
    }),
  fixes: (d, say) =>
    replaceFix(`${d.entry}/section`, d.section, (section) =>
      say.text("Section {section}, which all its measured sticks have", { section }),
    ),
});
