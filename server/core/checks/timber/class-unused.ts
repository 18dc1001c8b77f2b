import { isWhole } from "../../frame/frame.ts";
import { isComplete } from "../../model/grounded.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly name: string;
  /** the class that timbers take without naming one */
  readonly others: readonly string[];
}

/** Read by its name alone: the wood of the pegs. */
const PEGS = "pegs";

export const classUnused = defineCheck<"model", Data>({
  meta: {
    id: "class-unused",
    title: "A timber class that no timber is of",
    level: "note",
    area: "timber",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "A class under timber is the wood of no timber: no entry names it, and none takes it by its kind.",
      why: "Most often an entry was meant to be of this wood and is still reckoned as another one, with other strength and weight.",
      remedy:
        "Name it in the entries that are of it (`timber: oak`), or take it out. A class called frame is taken by every timber that names none, rafters by the roof's rafters, pegs by the pegs.",
    },
  },
  input: "model",
  ofTheWhole: true,
  *find(model) {
    // what cannot be read or placed may be of it
    if (!isComplete(model) || !isWhole(model.frame) || (model.frame.roof && !model.roof)) return;
    const used = new Set(model.timbers.map((t) => t.class?.name));
    // timbers that take none of several have a finding of their own
    if (used.size === 0 || used.has(undefined)) return;
    for (const { name, path } of model.frame.classes)
      if (name !== PEGS && !used.has(name))
        yield {
          path,
          onKey: true,
          data: { name, others: [...used].flatMap((other) => other ?? []).sort() },
        };
  },
  words: ({ name, others }, say) =>
    say.text(
      "No timber is of “{name}”: all are of {others}. Name it in the entries that are of it (timber: {name}), or take it out.",
      { name, others: say.list(others) },
    ),
});
