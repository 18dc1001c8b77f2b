import { groundedTimbers, isComplete } from "../../model/grounded.ts";
import { defineCheck } from "../check.ts";
import { maybeHeld } from "./not-placed.ts";

interface Data {
  readonly stick: string;
  /** it meets others, but none of them stands on the ground either */
  readonly withOthers: boolean;
}

export const timberFloating = defineCheck<"model", Data>({
  meta: {
    id: "timber-floating",
    title: "A timber that nothing holds up",
    level: "error",
    area: "geometry",
    source: { text: "statics: every body needs a support", status: "derived" },
    explanation: {
      what: "A timber touches no other timber and no pier, or only others that stand on nothing themselves.",
      why: "Nothing holds it up.",
      remedy: "Correct its level, its line or its ends so that it meets its neighbors.",
    },
  },
  input: "model",
  *find(model) {
    const met = new Set(model.meetings.flatMap((m) => [m.a.id, m.b.id]));
    const held = groundedTimbers(model);
    const excused = maybeHeld(model);
    const whole = isComplete(model);
    // rafters of a shed that is upside down float for that reason alone
    const upsideDown = model.roof?.slopes.some((s) => s.slope < 0)
      ? model.frame.roof?.rafters?.path
      : undefined;
    for (const t of model.timbers) {
      const withOthers = met.has(t.id);
      if (held.has(t.id) || t.path === upsideDown || excused(t) || (withOthers && !whole)) continue;
      yield { path: t.path, onKey: true, place: t.id, data: { stick: t.id, withOthers } };
    }
  },
  words: (d, say) =>
    d.withOthers
      ? say.text(
          "{stick} and what it is joined to stand on no pier and meet nothing that does, so nothing holds them up. Check their level, line and ends.",
          { stick: d.stick },
        )
      : say.text(
          "{stick} meets no other timber and no pier, so nothing holds it up. Check its level, line and ends.",
          { stick: d.stick },
        ),
});
