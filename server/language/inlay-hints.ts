/** Behind a section: how far the worst of its sticks is used, by what, and which loads that leaves out. */
import { type InlayHint, type MarkupContent, MarkupKind, type Range } from "vscode-languageserver-types";
import type { Say } from "../core/checks/say.ts";
import { groupBy } from "../core/collect.ts";
import { CAUTION } from "./caution.ts";
import type { Snapshot } from "./frame-service.ts";
import { withoutWords } from "./gap-words.ts";
import { timberForces } from "./hover/timber-forces.ts";
import { ratioText, USE_WORDS } from "./hover/use-words.ts";
import { type WorstUse, worstUse } from "./uses.ts";

/** @returns hints within a range; none for entries without a section of their own or without a check */
export function inlayHints(snapshot: Snapshot, range: Range): InlayHint[] {
  const { document, evaluation, reading, say } = snapshot;
  if (!evaluation || !reading) return [];
  const { model, results } = evaluation;
  const gaps = results.frame?.solution.loads.gaps ?? [];
  const [first, last] = [document.offsetAt(range.start), document.offsetAt(range.end)];
  return [...groupBy(model.timbers, ({ path }) => path)].flatMap(([path, sticks]) => {
    const section = reading.index.fullRange(`${path}/section`);
    if (!section || section.end < first || section.end > last) return [];
    const use = worstUse(sticks, results);
    if (!use) return [];
    return [
      {
        position: document.positionAt(section.end),
        label: [useText(use, say), ...withoutWords(gaps, say)].join(", "),
        paddingLeft: true,
        data: { uri: snapshot.uri, path },
      },
    ];
  });
}

/** `0.83 bending, D+S` */
function useText({ ratio, what, combination }: WorstUse, say: Say): string {
  return say.text("{ratio} {what}, {combination}", {
    ratio: ratioText(ratio, say),
    what: say.text(USE_WORDS[what]),
    combination: combination.replaceAll(" ", ""),
  });
}

/** Which entry of which document a hint belongs to, as it comes back from the editor. */
export function hintOf({ data }: InlayHint): { readonly uri: string; readonly path: string } | undefined {
  if (typeof data !== "object" || data === null) return undefined;
  const [uri, path]: unknown[] = [Reflect.get(data, "uri"), Reflect.get(data, "path")];
  return typeof uri === "string" && typeof path === "string" ? { uri, path } : undefined;
}

/** What shows when the mouse rests on a hint: worked out only then. */
export function hintDetails({ evaluation, say }: Snapshot, path: string): MarkupContent | undefined {
  const sticks = evaluation?.model.timbers.filter((timber) => timber.path === path) ?? [];
  if (!evaluation || sticks.length === 0) return undefined;
  const parts = [...timberForces(sticks, evaluation.results, say), `_${say.text(CAUTION)}_`];
  return { kind: MarkupKind.Markdown, value: parts.join("\n\n") };
}
