/** Above an entry: how many sticks it stands for, how far they are used, what presses or pulls them most. */
import type { CodeLens } from "vscode-languageserver-types";
import type { Say } from "../core/checks/say.ts";
import { groupBy } from "../core/collect.ts";
import type { Timber } from "../core/model/model.ts";
import type { Results } from "../core/results.ts";
import { type ForceKind, memberForces } from "../core/statics/member-forces.ts";
import type { Snapshot } from "./frame-service.ts";
import { withoutWords } from "./gap-words.ts";
import { ratioText, USE_WORDS } from "./hover/use-words.ts";
import { worstUse } from "./uses.ts";

/** @returns one lens for each entry that stands for timbers */
export function codeLenses({ document, evaluation, reading, say }: Snapshot): CodeLens[] {
  if (!evaluation || !reading) return [];
  const { model, results } = evaluation;
  return [...groupBy(model.timbers, ({ path }) => path)].map(([path, sticks]) => {
    const { start, end } = reading.index.keyRange(path);
    return {
      range: { start: document.positionAt(start), end: document.positionAt(end) },
      // a lens without a command of its own only shows its words
      command: { title: words(sticks, results, say), command: "" },
    };
  });
}

/** `6 sticks · 0.83 bending · pressed by up to 4,065 lb` */
function words(sticks: readonly Timber[], results: Results, say: Say): string {
  const count = say.text(sticks.length === 1 ? "1 stick" : "{count} sticks", { count: sticks.length });
  const use = worstUse(sticks, results);
  const figures = [
    ...(use ? [`${ratioText(use.ratio, say)} ${say.text(USE_WORDS[use.what])}`] : []),
    ...along(sticks, results, say),
  ];
  const gaps = results.frame?.solution.loads.gaps ?? [];
  return [count, ...figures, ...(figures.length > 0 ? withoutWords(gaps, say) : [])].join(" · ");
}

/** Forces below this say nothing, lb. */
const SMALL = 1;

const alongLength = (kind: ForceKind): boolean => kind === "tension" || kind === "compression";

/** The larger of what presses and what pulls a stick along its length. */
function along(sticks: readonly Timber[], { frame }: Results, say: Say): string[] {
  if (!frame) return [];
  let [pressed, pulled] = [0, 0];
  for (const { id } of sticks) {
    const forces = memberForces(frame.solution.cases, id, alongLength);
    pressed = Math.max(pressed, forces?.compression.value ?? 0);
    pulled = Math.max(pulled, forces?.tension.value ?? 0);
  }
  if (Math.max(pressed, pulled) < SMALL) return [];
  return pulled > pressed
    ? [say.text("pulled by up to {force}", { force: say.force(pulled) })]
    : [say.text("pressed by up to {force}", { force: say.force(pressed) })];
}
