import { inches } from "../../quantity/length.ts";
import { smallestLog } from "../../shop/log.ts";
import { logsFor } from "../../shop/logs-for.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly stick: string;
  readonly width: number;
  readonly depth: number;
  readonly needs: number;
  readonly largest: number;
  readonly length: number;
  readonly longest: number;
  readonly tooThick: boolean;
}

export const largerThanLogs = defineCheck<"model", Data>({
  meta: {
    id: "larger-than-logs",
    title: "A timber larger than any log",
    level: "error",
    area: "timber",
    source: {
      text: "plane geometry: a full-edged timber fits the circle of the small end when its diagonal does",
      status: "derived",
    },
    explanation: {
      what: "No log of the species in the file is thick and long enough for a timber.",
      why: "It cannot be sawn with full edges from what is there.",
      formula: "√(width² + depth²) ≤ diameter at the small end, and length ≤ length of the log",
      remedy: "Choose a smaller section, or list a larger log.",
    },
  },
  input: "model",
  *find(model) {
    const { path } = model.frame.mill;
    for (const t of model.timbers) {
      const own = logsFor(model, t);
      if (!own) continue;
      const needs = smallestLog(t.width, t.depth);
      const thick = own.filter((l) => inches(l.smallEnd) >= needs - 1e-6);
      if (thick.some((l) => inches(l.length) >= t.length - 1e-6)) continue;
      const largest = Math.max(...own.map((l) => inches(l.smallEnd)));
      const longest = Math.max(0, ...thick.map((l) => inches(l.length)));
      const tooThick = thick.length === 0;
      yield {
        path: t.path,
        onKey: true,
        place: t.id,
        data: {
          stick: t.id,
          width: t.width,
          depth: t.depth,
          needs,
          largest,
          length: t.length,
          longest,
          tooThick,
        },
        value: tooThick ? needs : t.length,
        limit: tooThick ? largest : longest,
        unit: "in",
        severity: needs,
        related: [{ path: `${path}/logs`, message: (say) => say.text("the logs there are") }],
      };
    }
  },
  words: (d, say) =>
    d.tooThick
      ? say.text(
          "{stick}, {width} × {depth}, needs a log of {needs} at the small end, and the largest is {largest}: it would have waney edges. Choose a smaller section or a larger log.",
          {
            stick: d.stick,
            width: say.length(d.width),
            depth: say.length(d.depth),
            needs: say.length(d.needs),
            largest: say.length(d.largest),
          },
        )
      : say.text(
          "{stick}, {width} × {depth}, is {length} long, and the longest log that is thick enough for it is {longest}, so it cannot be sawn in one piece. Choose a smaller section, splice it, or list a longer log.",
          {
            stick: d.stick,
            width: say.length(d.width),
            depth: say.length(d.depth),
            length: say.length(d.length),
            longest: say.length(d.longest),
          },
        ),
  worked: (d, say) =>
    d.tooThick
      ? say.text("√(({width})² + ({depth})²) = {needs} > {largest}", {
          width: say.length(d.width),
          depth: say.length(d.depth),
          needs: say.length(d.needs),
          largest: say.length(d.largest),
        })
      : say.text("{length} > {longest}", { length: say.length(d.length), longest: say.length(d.longest) }),
});
