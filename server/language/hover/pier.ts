/** A pier under the cursor: how high and how deep it goes at each place. */
import type { Say } from "../../core/checks/say.ts";
import { groupBy } from "../../core/collect.ts";
import type { Pier } from "../../core/model/model.ts";
import { escapeMarkdown, table } from "./table.ts";

/**
 * Heights above the datum of the piers of an entry, equal ones together.
 * @param piers not empty
 */
export function pierHover(name: string, piers: readonly Pier[], say: Say): string {
  const groups = groupBy(
    piers.map((pier) => ({ pier, cells: cellsOf(pier, say) })),
    ({ cells }) => cells.join("|"),
  );
  const rows = [...groups.values()].map((group) => [
    group.map(({ pier }) => pier.place.text).join(", "),
    ...(group[0]?.cells ?? []),
  ]);
  const title = say.text(piers.length === 1 ? "**{name}** · 1 pier" : "**{name}** · {count} piers", {
    name: escapeMarkdown(name),
    count: piers.length,
  });
  const columns = [
    say.text("piers"),
    say.text("top"),
    say.text("lowest ground"),
    say.text("bottom"),
    say.text("top to bottom"),
  ];
  return [
    title,
    table(columns, rows),
    say.text("Heights are above the datum; the footing is included."),
  ].join("\n\n");
}

function cellsOf(pier: Pier, say: Say): string[] {
  const [, , top] = pier.top;
  return [
    say.length(top),
    say.length(pier.groundLow),
    say.length(pier.bottom),
    say.lengthBoth(top - pier.bottom),
  ];
}
