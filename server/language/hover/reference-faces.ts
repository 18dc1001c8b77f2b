/** From which faces a timber is laid out, in one line. */
import type { Say } from "../../core/checks/say.ts";
import type { Model, Timber } from "../../core/model/model.ts";
import { stands } from "../../core/shop/layout/faces.ts";
import { referenceWords } from "../face-words.ts";

/** What holds for all sticks of an entry that look different ways. */
function ruleOf(timber: Timber): string {
  if (timber.kind === "brace")
    return "Reference faces: 1 is the side flush with those of its timbers, 2 is the long edge.";
  if (stands(timber))
    return "Reference faces: 1 looks out of its wall, 2 out of its bent; in inner ones toward wall A and bent 1.";
  return "Reference faces: 1 looks outward, in inner walls and bents toward wall A and bent 1; 2 is the top.";
}

/** The two reference faces of the sticks of an entry. */
export function referenceFaces(sticks: readonly Timber[], model: Model, say: Say): string {
  const [first] = sticks;
  if (!first) return "";
  const words = new Set(sticks.map((stick) => referenceWords(stick, model, say)));
  const [only] = words;
  return words.size === 1 && only !== undefined
    ? say.text("Reference faces: {faces}.", { faces: only })
    : say.text(ruleOf(first));
}
