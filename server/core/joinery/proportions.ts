/**
 * Rules of proportion for sizes that a file does not give. All are common practice, no source, unless a line names one;
 * what a framer writes goes before them.
 */
import type { PegSpec } from "../frame/frame.ts";
import { inches, type Length } from "../quantity/length.ts";
import type { JointPlace } from "./joint.ts";
import type { PegSizes, Sized } from "./joint-sizes.ts";

/** A size from the file, else from a rule. */
export function sized(given: Length | undefined, rule: number): Sized {
  return given === undefined ? { value: rule, from: "default" } : { value: inches(given), from: "file" };
}

/** Rounds to the step that is marked out: 1/8 in, or 1 mm. */
export function toStep(value: number, metric: boolean, step = 1 / 8): number {
  const s = metric ? 1 / 25.4 : step;
  return Math.round(value / s) * s;
}

/** The same, downward: for a size that has an upper limit. */
export function downToStep(value: number, metric: boolean, step = 1 / 8): number {
  const s = metric ? 1 / 25.4 : step;
  return Math.floor(value / s + 1e-9) * s;
}

/** A usual size in either system: inches as such, or the round metric one. */
export function usual(metric: boolean, inchSize: number, mm: number): number {
  return metric ? mm / 25.4 : inchSize;
}

/** Tenon thickness: 2 in from 7 in timbers up, 1 1/2 in from 4 1/2 in, else 1 1/4 in. */
export function tenonThickness(timber: number, metric: boolean): number {
  if (timber >= 7) return usual(metric, 2, 50);
  return timber >= 4.5 ? usual(metric, 1.5, 40) : usual(metric, 1.25, 32);
}

/** Set-in of a tenon from the reference face (design: 2 in, braces 1 1/2 in), never past the middle. */
export function usualSetIn(brace: boolean, timber: number, thickness: number, metric: boolean): number {
  const rule = brace ? usual(metric, 1.5, 40) : usual(metric, 2, 50);
  return Math.max(0, Math.min(rule, (timber - thickness) / 2));
}

/** Wood kept behind a blind mortise, and clearance at its bottom. */
export const KEEP_BEHIND = 1;
export const MORTISE_CLEARANCE = 1 / 4;

/**
 * Blind tenon length: half the receiving timber, between 2 and 6 1/2 in, to the half inch (or 5 mm).
 * @param most what the timber has room for, in, where another tenon comes from the other side
 */
export function blindTenonLength(wood: number, metric: boolean, most = Number.POSITIVE_INFINITY): number {
  const step = metric ? 5 / 25.4 : 1 / 2;
  const half = Math.floor(Math.min(wood / 2, most) / step + 1e-9) * step;
  return Math.max(usual(metric, 2, 50), Math.min(usual(metric, 6.5, 165), half));
}

/** Peg: 3/4 in below 7 in timbers and in braces, 1 in above 10 in. */
export function pegDiameter(timber: number, metric: boolean): number {
  return timber > 10 ? usual(metric, 1, 25) : usual(metric, 0.75, 19);
}

/** Draw of the hole in the tenon toward the shoulder: 1/16 to 1/8 in is usual; 3/32 in where nothing is said. */
function drawbore(metric: boolean): number {
  return usual(metric, 3 / 32, 2.5);
}

/** Slope of a wedge: 1 in 10 (design). */
export const WEDGE_SLOPE = 1 / 10;

/** A wedge stands out of its mortise by at least this much when it is driven first, in (common practice, no source). */
const WEDGE_OUT = 1;

/**
 * Length of a wedge: through its mortise, with what it is driven on by later, to the half inch (or 10 mm) above.
 * @param reserve what drying asks for, in
 */
export function wedgeLength(mortise: number, reserve: number, metric: boolean): number {
  const step = metric ? 10 / 25.4 : 1 / 2;
  const length = mortise + Math.max(usual(metric, WEDGE_OUT, 25), reserve);
  return Math.ceil(length / step - 1e-9) * step;
}

/** Pegs where the file says nothing of them. */
interface PegFallback {
  readonly count: number;
  readonly diameter: number;
  /** left out = the usual draw of a tenon */
  readonly draw?: number;
}

/** Laps and lapped scarfs are bored through both timbers at once, so nothing can be drawn (common practice, no source). */
export const BORED_TOGETHER = 0;

/**
 * Peg holes of a tenon: rows at the given setbacks, holes evenly over the width.
 * The setback stands four diameters from the face (loaded edge, the largest of the remembered rows) where the tenon is
 * long enough to leave as much behind it, else halfway.
 */
export function pegSizes(
  place: JointPlace,
  spec: PegSpec | undefined,
  fallback: PegFallback,
  tenon: { readonly length: number; readonly width: number; readonly housing: number },
  columns = 1,
): PegSizes | undefined {
  const count = spec ? spec.count : fallback.count;
  if (count <= 0) return undefined;
  const diameter = sized(spec?.diameter, fallback.diameter);
  const reach = tenon.length;
  const setback = toStep(Math.min(4 * diameter.value, reach / 2), place.metric);
  const rows = Math.max(1, Math.ceil(count / columns));
  return {
    count,
    diameter,
    draw: sized(spec?.draw, fallback.draw ?? drawbore(place.metric)),
    setbacks:
      columns === 1
        ? [tenon.housing + setback]
        : Array.from(
            { length: columns },
            (_, i) => tenon.housing + toStep((reach * (i + 1)) / (columns + 1), place.metric),
          ),
    alongWidth: Array.from({ length: rows }, (_, i) => ((i + 0.5) / rows - 0.5) * tenon.width),
    fromEdge: (0.5 / rows) * tenon.width,
  };
}

/** The pegs of a tenon that slants: the edge they must not come near is its toe. @param at middle of a row by its setback; in */
export function pegsFromToe(
  pegs: PegSizes | undefined,
  at: (setback: number) => number,
  toe: number,
): PegSizes | undefined {
  if (!pegs) return undefined;
  const distances = pegs.setbacks.flatMap((s) => pegs.alongWidth.map((a) => Math.abs(at(s) + a - toe)));
  return { ...pegs, fromEdge: Math.min(...distances) };
}
