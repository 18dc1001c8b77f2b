/** How forces, movements and what stands in their way are said beside a diagram. */
import type { Say } from "../core/checks/say.ts";
import { NEWTON_METRES_PER_POUND_INCH } from "../core/checks/speak.ts";
import type { FrameSolution, SolvedCase } from "../core/statics/solve-frame.ts";
import { timbersOf } from "../core/statics/structure.ts";
import type { ForceLayer } from "./forces-cases.ts";

const INCHES_PER_FOOT = 12;
const MM_PER_INCH = 25.4;

/** @param value lb for axial force and shear, lb·in for moments, in for movements */
export function amount(layer: ForceLayer, value: number, say: Say): string {
  if (layer === "deflected")
    return say.metric ? `${say.number(value * MM_PER_INCH, 1)} mm` : `${say.number(value, 2)} in`;
  return layer === "moment" ? say.moment(value) : say.force(value);
}

/** @returns `+1,250 lb`, `−80 lb`: with a true minus, so that neither sign is overlooked */
export const signed = (layer: ForceLayer, value: number, say: Say): string =>
  `${value < 0 ? "−" : "+"}${amount(layer, Math.abs(value), say)}`;

/** What one unit of the file's own is in the unit of the analysis, so that a scale is round to the reader. */
export function unitOf(layer: ForceLayer, say: Say): number {
  if (layer === "moment") return say.metric ? 1000 / NEWTON_METRES_PER_POUND_INCH : INCHES_PER_FOOT;
  return say.metric ? 1000 / 4.4482216152605 : 1;
}

/** @returns the largest of 1, 2, 5 times a power of ten that is not above */
export function roundBelow(value: number): number {
  if (!(value > 0) || !Number.isFinite(value)) return 1;
  const power = 10 ** Math.floor(Math.log10(value) + 1e-9);
  const step = [5, 2].find((one) => one * power <= value * (1 + 1e-9)) ?? 1;
  return step * power;
}

/** as many timbers as a sentence names */
const NAMED = 4;

/** @returns why a combination has no answer; undefined where it has one */
export function whyNone(solution: FrameSolution, cases: readonly SolvedCase[], say: Say): string | undefined {
  if (cases.some(({ combined }) => combined.status !== "failed")) return undefined;
  const fault = cases[0]?.combined.faults[0];
  if (!fault) return say.text("Nothing is drawn: the frame has no load to carry.");
  if (fault.kind === "mechanism") {
    const modes = fault.modes.length > 0 ? fault.modes : solution.mechanisms;
    const moving = timbersOf(
      modes.flatMap((m) => m.elements),
      solution.hold,
    );
    const named = moving.length > NAMED ? [...moving.slice(0, NAMED), say.text("others")] : moving;
    return say.text("Nothing is drawn: the frame moves without resistance at {timbers}.", {
      timbers: say.list(named),
    });
  }
  if (fault.kind === "unsettled")
    return say.text("Nothing is drawn: no set of braces in action agrees with its forces.");
  if (fault.kind === "inaccurate")
    return say.text("Nothing is drawn: the forces that were found do not balance.");
  return say.text("Nothing is drawn: the frame cannot be analysed as it stands.");
}
