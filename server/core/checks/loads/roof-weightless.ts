import { defineCheck } from "../check.ts";

export const roofWeightless = defineCheck<"frame", Record<string, never>>({
  meta: {
    id: "roof-weightless",
    title: "A roof that weighs nothing",
    level: "warning",
    area: "loads",
    source: { text: "ASCE 7 section 3.1: dead load is the weight of all that is built in", status: "memory" },
    explanation: {
      what: "The roof has neither a deck nor a covering, so its weight on the rafters is taken as nothing.",
      why: "Too little dead load hides overstress and sag; too much of it would hide uplift. Neither may come from a line that is missing.",
      remedy: "Give the roof its deck and its covering; a covering may state its weight.",
    },
  },
  input: "frame",
  *find({ roof, lost }) {
    if (!roof || roof.deck || roof.covering) return;
    if ([...lost].some((at) => at === "" || at === roof.path || at.startsWith(`${roof.path}/`))) return;
    yield { path: roof.path, onKey: true, data: {} };
  },
  words: (_, say) =>
    say.text(
      "The roof has neither “deck” nor “covering”, so nothing but its own rafters and purlins is weighed. Write for example “deck: {deck}” and “covering: {covering}”.",
      { deck: "{kind: boards, thickness: 1 in}", covering: "{kind: standing-seam}" },
    ),
});
