import type { Joint } from "../../joinery/joint.ts";
import { defineCheck } from "../check.ts";
import { seatKey, sizePath } from "../joinery/size-path.ts";
import { replaceFix } from "../replace-fix.ts";
import type { Say } from "../say.ts";

interface Data {
  readonly joint: string;
  readonly rafter: string;
  /** of the rafter, square to its edges, in */
  readonly depth: number;
  /** what the heel cut leaves of that, below zero where it goes through; undefined = enough */
  readonly left: number | undefined;
  /** plumb depth of a step under which the sole lies; undefined = a bird's mouth */
  readonly step: number | undefined;
  /** of the slope, radians */
  readonly angle: number;
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

/** Share that has to stand over the heel cut at the very least (common practice, no source). */
const LEAST_LEFT = 1 / 4;

/** Less wood than a saw is true to, in: none. */
const NOTHING = 1 / 32;

/** What rounding takes from a usual step, in, at most. */
const ROUNDED = 1 / 8;

/** The longest seat whose notch keeps the limit, in; a step that the file leaves out grows and shrinks with its seat. */
function longest({ of, sizes: { step, housing } }: Joint, limit: number, angle: number): number {
  if (!step) return limit / Math.sin(angle);
  const whole = ((1 - LEAST_LEFT) * of.depth) / Math.sin(angle);
  if (step.form === "square") return whole;
  return Math.min(
    whole,
    housing.from === "file"
      ? (2 * (limit / Math.cos(angle) + housing.value)) / Math.tan(angle)
      : (4 * (limit - ROUNDED * Math.cos(angle))) / Math.sin(angle),
  );
}

/** `1.5 in × 0.6`, or with a step `(4 in ÷ 2 × 1 − 1/2 in) × 0.707`. */
function notchWords({ seat, step, angle }: Data, say: Say): string {
  const length = say.length(seat);
  return step === undefined
    ? `${length} × ${say.number(Math.sin(angle), 3)}`
    : `(${length} ÷ 2 × ${say.number(Math.tan(angle), 3)} − ${say.length(step)}) × ${say.number(Math.cos(angle), 3)}`;
}

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
      what: "The seat of a bird’s mouth, or the level sole of a step-lap seat, cuts more than a quarter of the rafter’s depth away where the rafter bears. Where less than a quarter is left over the heel cut, or nothing, it is an error.",
      why: "The rafter splits at the corner of the notch, and the overhang hangs on what is left.",
      formula:
        "seat × sin θ ≤ depth ÷ 4, and never more than 3/4 of the depth (common practice, no source); over a plumb step (length ÷ 2 × tan θ − step) × cos θ ≤ depth ÷ 4; a step square to the rafter leaves the whole depth",
      remedy:
        "Shorten the seat, make the step deeper, take a deeper rafter, or leave the length out: the usual one is then taken.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of model.joints) {
      const { seat, step, housing } = j.sizes;
      if (!seat) continue;
      const notch = step ? step.notch : seat.depth;
      const { depth } = j.of;
      const least = depth * LEAST_LEFT;
      const left = seat.woodLeft < least - 1e-6 ? seat.woodLeft : undefined;
      const limit = depth * SHARE;
      if (left === undefined && notch <= limit + 1e-6) continue;
      const angle = (seat.angle * Math.PI) / 180;
      const place = sizePath(j, seatKey(j), seat.level);
      yield {
        ...place,
        place: j.id,
        ...(left === undefined ? {} : { level: "error" as const }),
        data: {
          joint: j.id,
          rafter: j.of.id,
          depth,
          left,
          step: step && housing.value,
          angle,
          seat: seat.level.value,
          notch,
          limit,
          longest: longest(j, limit, angle),
          path: place.onKey ? undefined : place.path,
        },
        ...(left === undefined ? { value: notch, limit } : { value: left, limit: least }),
        unit: "in",
        severity: left === undefined ? notch - limit : depth + least - left,
      };
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint,
      rafter: d.rafter,
      seat: say.length(d.seat),
      depth: say.length(d.depth),
      heel: say.length(d.depth - (d.left ?? 0)),
      left: say.length(d.left ?? 0),
      notch: say.length(d.notch),
      limit: say.length(d.limit),
      longest: say.length(shorter(d.longest, say.metric)),
    };
    if (d.left === undefined)
      return say.text(
        "A seat of {seat} cuts {notch} into the rafter at {joint}, more than a quarter of its depth ({limit}): it splits there. Seat at most {longest}.",
        values,
      );
    return d.left < NOTHING
      ? say.text(
          "A seat of {seat} cuts {rafter} through at {joint}: its heel cut goes {heel} deep, square to the rafter, and the rafter is {depth} deep. Nothing is left over the plate, and the tail falls off. Seat at most {longest}.",
          values,
        )
      : say.text(
          "A seat of {seat} cuts {rafter} almost through at {joint}: of its depth of {depth} the heel cut leaves {left}, less than a quarter, and the rafter breaks off there. Seat at most {longest}.",
          values,
        );
  },
  worked: (d, say) =>
    d.left === undefined
      ? say.text("{made} = {notch} > {depth} ÷ 4 = {limit}", {
          made: notchWords(d, say),
          notch: say.length(d.notch),
          depth: say.length(d.depth),
          limit: say.length(d.limit),
        })
      : say.text("{depth} − {seat} × {sine} = {left} < {depth} ÷ 4 = {least}", {
          depth: say.length(d.depth),
          seat: say.length(d.seat),
          sine: say.number(Math.sin(d.angle), 3),
          left: say.length(d.left),
          least: say.length(d.depth * LEAST_LEFT),
        }),
  fixes: (d, say) =>
    replaceFix(d.path, say.length(shorter(d.longest, say.metric)), (length) =>
      say.text("Seat {length}", { length }),
    ),
});
