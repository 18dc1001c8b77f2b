import { isComplete } from "../../model/grounded.ts";
import type { Model, Timber } from "../../model/model.ts";
import { unsupportedEnds } from "../../model/unsupported.ts";
import { defineCheck } from "../check.ts";
import { atPlace } from "./at-place.ts";
import { maybeHeld } from "./not-placed.ts";

interface Data {
  readonly stick: string;
  readonly held: { readonly by: string; readonly reach: number } | undefined;
}

/** The place that put a post there, else its entry. */
function placeOf(model: Model, timber: Timber): { readonly path: string; readonly onKey?: true } {
  const path = atPlace(model, timber);
  return path === undefined ? { path: timber.path, onKey: true } : { path };
}

export const endUnsupported = defineCheck<"model", Data>({
  meta: {
    id: "end-unsupported",
    title: "An end in mid-air",
    level: "error",
    area: "geometry",
    source: { text: "statics: a beam on one hinge turns, a post needs a footing", status: "derived" },
    explanation: {
      what: "A post of a frame on piers has neither a pier nor a timber under its foot, or a lying or raking timber is held at one place only.",
      why: "Joints of timbers turn like hinges: a timber held at one place swings down, and a post without footing hangs on what it should carry. While it does, no forces of the frame can be found, or none to rely on.",
      remedy: "Set a pier under the post; carry the timber on to a second post, beam or pier.",
    },
  },
  input: "model",
  *find(model) {
    if (!isComplete(model)) return;
    const found = unsupportedEnds(model);
    if (found.length === 0) return;
    const excused = maybeHeld(model);
    for (const { timber, held } of found) {
      if (excused(timber)) continue;
      yield {
        ...(held ? { path: timber.path, onKey: true } : placeOf(model, timber)),
        place: timber.id,
        data: { stick: timber.id, held: held && { by: held.by.id, reach: held.reach } },
        ...(held ? { severity: held.reach } : {}),
      };
    }
  },
  words: (d, say) =>
    d.held
      ? say.text(
          "{stick} is held at {by} only: its other end, {reach} away, meets no timber and no pier, so it swings down about that joint. Carry it on to a post or a beam, or set one under that end; until then no forces of the frame can be found, or none to rely on.",
          { stick: d.stick, by: d.held.by, reach: say.length(d.held.reach) },
        )
      : say.text(
          "{stick} stands on nothing: neither a pier nor a timber is under its foot, so it hangs on what it should carry. Set a pier under it, or let it stand on a sill or a beam.",
          { stick: d.stick },
        ),
});
