/** The formula of NDS 12.4 with its numbers: fasteners that are drawn out and pushed sideways at once. */
import type { CombinedUse } from "../fasteners/combined.ts";
import { steps } from "./formula-words.ts";
import type { Say } from "./say.ts";

/**
 * @param sideways lb; @param outward lb
 * @param Z Z′, lb; @param W W′, lb
 */
export function bothWays(
  kind: "screw" | "nail",
  use: CombinedUse,
  sideways: number,
  outward: number,
  Z: number,
  W: number,
  say: Say,
): string {
  const [s, o] = [Math.abs(sideways), Math.max(0, outward)];
  const values = {
    sideways: say.force(s),
    outward: say.force(o),
    force: say.force(use.force),
    angle: say.angle(use.angle),
    Z: say.force(Z),
    W: say.force(W),
    limit: say.force(use.allowed.value),
  };
  const tooMuch = say.text("{force} > {limit}", values);
  // along one of the two alone, or where one of them is nothing, no formula mixes them
  if (s === 0 || o === 0 || !(Z > 0 && W > 0)) return tooMuch;
  return steps(
    say.text("α: atan({outward} ÷ {sideways}) = {angle}", values),
    kind === "screw"
      ? say.text(
          "√(({sideways})² + ({outward})²) = {force} > {W} × {Z} ÷ ({W} × cos² {angle} + {Z} × sin² {angle}) = {limit}",
          values,
        )
      : say.text(
          "√(({sideways})² + ({outward})²) = {force} > {W} × {Z} ÷ ({W} × cos {angle} + {Z} × sin {angle}) = {limit}",
          values,
        ),
  );
}
