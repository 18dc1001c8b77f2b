/** What a dovetail carries, as the formulas of its limits with their numbers. */
import type { DovetailHold } from "../../joinery/dovetail-tension.ts";
import { fineLength, madeStress, steps } from "../formula-words.ts";
import type { Say } from "../say.ts";

/**
 * Every limit with its numbers, and the pull against the least of them.
 * @param pull lb
 */
export function dovetailFormula({ terms, limits, tension }: DovetailHold, pull: number, say: Say): string {
  const { tail, socket, weaker, split, end } = terms;
  const flank = weaker.on === "tail" ? tail : socket;
  const all = Object.values(limits).map((pounds) => say.force(pounds));
  const values = {
    L: say.length(terms.length),
    drawn: fineLength(terms.drawn, say),
    bears: fineLength(terms.bears, say),
    flare: say.length(terms.flare),
    t: say.length(terms.depth),
    neck: say.length(terms.neck),
    angle: say.angle(terms.angle),
    theta: say.angle(weaker.angle),
    Fc: say.stress(flank.Fc.value),
    Fp: say.stress(flank["Fc-perp"].value),
    F: say.stress(weaker.stress),
    Fv: say.stress(tail.Fv.value),
    Ft: say.stress(tail.Ft.value),
    socketFv: say.stress(socket.Fv.value),
    reach: fineLength(split.effective, say),
    d: say.length(split.depth),
    e: fineLength(end.counted, say),
    breadth: fineLength(end.breadth, say),
    bearing: say.force(limits.bearing),
    shear: say.force(limits["tail-shear"]),
    tension: say.force(limits["neck-tension"]),
    split: say.force(limits["socket-split"]),
    end: say.force(limits["socket-end"]),
    pull: say.force(pull),
    least: say.force(tension.value),
    all: all.join(", "),
  };
  if (terms.bears <= 0) return steps(say.text("{drawn} ≥ {L}", values), say.text("{pull} > {least}", values));
  return steps(
    terms.drawn > 0 ? say.text("it bears: {L} − {drawn} = {bears}", values) : undefined,
    say.text("α: atan({flare} ÷ {L}) = {angle}", values),
    madeStress("F_c", flank.Fc, say),
    madeStress("F_c⊥", flank["Fc-perp"], say),
    madeStress("F_v", tail.Fv, say),
    madeStress("F_t", tail.Ft, say),
    say.text(
      "weaker flank, {theta} to its grain: {Fc} × {Fp} ÷ ({Fc} × sin² {theta} + {Fp} × cos² {theta}) = {F}",
      values,
    ),
    say.text("flanks: 2 × {bears} × {t} × {F} × {flare} ÷ {L} = {bearing}", values),
    say.text("shear of the tail: 2 × {bears} × {t} × {Fv} ÷ 2 = {shear}", values),
    say.text("neck: {neck} × {t} × {Ft} = {tension}", values),
    split.near
      ? say.text("split of the socket: 2/3 × {socketFv} × {t} × {reach} × ({reach} ÷ {d})² = {split}", values)
      : say.text("split of the socket: 2 × 2/3 × {socketFv} × {t} × {reach} = {split}", values),
    say.text("wood to the end: 2 × {socketFv} × {e} × {breadth} × {flare} ÷ {L} = {end}", values),
    say.text("{pull} > min({all}) = {least}", values),
  );
}
