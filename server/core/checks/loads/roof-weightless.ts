import { defineCheck } from "../check.ts";
import { isRoofLost } from "./roof-lost.ts";

type Missing = "both" | "deck" | "covering";

interface Data {
  readonly missing: Missing;
}

export const roofWeightless = defineCheck<"frame", Data>({
  meta: {
    id: "roof-weightless",
    title: "A roof that weighs too little",
    level: "warning",
    area: "loads",
    source: { text: "ASCE 7 section 3.1: dead load is the weight of all that is built in", status: "memory" },
    explanation: {
      what: "The roof has no covering, or neither a deck nor purlins under it, so what is missing weighs nothing on the rafters.",
      why: "Too little dead load hides overstress and sag; too much of it would hide uplift. Neither may come from a line that is missing.",
      remedy: "Give the roof its deck and its covering; a covering may state its weight.",
    },
  },
  input: "frame",
  *find(frame) {
    const { roof, members } = frame;
    if (!roof || isRoofLost(frame, roof)) return;
    const decked = roof.deck !== undefined || members.some(({ kind }) => kind === "purlin");
    if (decked && roof.covering) return;
    const missing = roof.covering ? "deck" : decked ? "covering" : "both";
    yield { path: roof.path, onKey: true, data: { missing } };
  },
  words: ({ missing }, say) => {
    const examples = { deck: "{kind: boards, thickness: 1 in}", covering: "{kind: standing-seam}" };
    switch (missing) {
      case "both":
        return say.text(
          "The roof has neither “deck” nor “covering”, so nothing but its own rafters and purlins is weighed. Write for example “deck: {deck}” and “covering: {covering}”.",
          examples,
        );
      case "deck":
        return say.text(
          "The roof has no “deck” and no purlins, so what its covering lies on is not weighed. Write for example “deck: {deck}”.",
          examples,
        );
      case "covering":
        return say.text(
          "The roof has no “covering”, so it is weighed without one. Write for example “covering: {covering}”.",
          examples,
        );
    }
  },
});
