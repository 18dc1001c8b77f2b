import { defineCheck } from "../check.ts";
import { maybeHeld } from "./not-placed.ts";

interface Data {
  readonly stick: string;
}

export const timberFloating = defineCheck<"model", Data>({
  meta: {
    id: "timber-floating",
    title: "A timber meets nothing",
    level: "error",
    area: "geometry",
    source: { text: "statics: every body needs a support", status: "derived" },
    explanation: {
      what: "A timber touches no other timber and no pier.",
      why: "Nothing holds it up.",
      remedy: "Correct its level, its line or its ends so that it meets its neighbors.",
    },
  },
  input: "model",
  *find(model) {
    const held = new Set<string>();
    for (const m of model.meetings) {
      held.add(m.a.id);
      held.add(m.b.id);
    }
    for (const pier of model.piers) if (pier.timber) held.add(pier.timber.id);
    const excused = maybeHeld(model);
    for (const t of model.timbers)
      if (!held.has(t.id) && !excused(t))
        yield { path: t.path, onKey: true, place: t.id, data: { stick: t.id } };
  },
  words: (d, say) =>
    say.text(
      "{stick} meets no other timber and no pier, so nothing holds it up. Check its level, line and ends.",
      {
        stick: d.stick,
      },
    ),
});
