import { defineCheck } from "../check.ts";

interface Data {
  readonly joint: string;
  readonly seat: number;
  readonly notch: number;
  readonly limit: number;
  readonly longest: number;
  /** of the seat's length, where the file gives it */
  readonly path: string | undefined;
}

/** The largest quarter inch, or 5 mm, that is not longer. */
function shorter(length: number, metric: boolean): number {
  const step = metric ? 5 / 25.4 : 1 / 4;
  return Math.floor(length / step + 1e-6) * step;
}

/** Share of the rafter's depth that a notch at its end may take. */
const SHARE = 1 / 4;

export const birdsMouthDeep = defineCheck<"model", Data>({
  meta: {
    id: "birds-mouth-deep",
    title: "A bird’s mouth cut too deep",
    level: "warning",
    area: "roof",
    source: {
      text: "NDS 2018 4.4.3 and IRC R802.7.1: a notch at an end takes at most a quarter of the depth",
      status: "memory",
    },
    explanation: {
      what: "The seat of a bird’s mouth cuts more than a quarter of the rafter’s depth away.",
      why: "The rafter splits at the corner of the notch, and the overhang hangs on what is left.",
      formula: "seat × sin θ ≤ depth ÷ 4",
      remedy:
        "Shorten the seat, take a deeper rafter, or leave the seat out: the longest allowed one is then taken.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of model.joints) {
      const { seat } = j.sizes;
      if (!seat) continue;
      const limit = j.of.depth * SHARE;
      if (seat.depth <= limit + 1e-6) continue;
      const given = seat.level.from === "file";
      yield {
        path: given ? `${j.path}/length` : j.path,
        ...(given ? {} : { onKey: true as const }),
        place: j.id,
        data: {
          joint: j.id,
          seat: seat.level.value,
          notch: seat.depth,
          limit,
          longest: limit / Math.sin((seat.angle * Math.PI) / 180),
          path: given ? `${j.path}/length` : undefined,
        },
        value: seat.depth,
        limit,
        unit: "in",
        severity: seat.depth - limit,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "A seat of {seat} cuts {notch} into the rafter at {joint}, more than a quarter of its depth ({limit}): it splits there. Seat at most {longest}.",
      {
        joint: d.joint,
        seat: say.length(d.seat),
        notch: say.length(d.notch),
        limit: say.length(d.limit),
        longest: say.length(shorter(d.longest, say.metric)),
      },
    ),
  worked: (d, say) =>
    say.text("{seat} × {sine} = {notch} > {depth} ÷ 4 = {limit}", {
      seat: say.length(d.seat),
      sine: say.number(d.notch / d.seat, 3),
      notch: say.length(d.notch),
      depth: say.length(d.limit / SHARE),
      limit: say.length(d.limit),
    }),
  fixes: (d, say) => {
    const text = say.length(shorter(d.longest, say.metric));
    return d.path === undefined
      ? []
      : [
          {
            title: say.text("Seat {length}", { length: text }),
            edits: [{ kind: "replace", path: d.path, text }],
          },
        ];
  },
});
