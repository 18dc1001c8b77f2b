/** What the limit of a check is made of, as a table: reference value, factors, area, share of a length, each with its source. */
import { amountWords, noteWords } from "../../core/checks/amount-words.ts";
import type { Say } from "../../core/checks/say.ts";
import type { WorstUse } from "../uses.ts";
import { STATUS_WORDS } from "./status.ts";
import { table } from "./table.ts";
import { amountText } from "./use-words.ts";

/** @returns one table, or none where nothing is known of the limit */
export function limitTable(
  use: Pick<WorstUse, "reference" | "factors" | "area" | "share">,
  say: Say,
): string[] {
  const rows = [
    ...(use.reference
      ? [
          [
            say.text("reference value"),
            // what an interaction is made of is a stress, though its own sum has no unit
            amountText(use.reference.value, "psi", say),
            use.reference.source,
            say.text(STATUS_WORDS[use.reference.status]),
          ],
        ]
      : []),
    ...use.factors.map((f) => [
      f.note === undefined ? f.symbol : `${f.symbol} (${noteWords(f.note, say)})`,
      say.number(f.value, 3),
      f.source,
      say.text(STATUS_WORDS[f.status]),
    ]),
  ];
  if (use.area)
    rows.push([
      say.text("{what} ({note})", { what: say.text("bearing area"), note: noteWords(use.area.note, say) }),
      amountWords({ value: use.area.value, unit: "in2" }, say),
      use.area.source,
      say.text(STATUS_WORDS[use.area.status]),
    ]);
  if (use.share)
    rows.push([
      say.text("share of {length} ({note})", {
        length: amountWords({ value: use.share.length, unit: "in" }, say),
        note: noteWords(use.share.note, say),
      }),
      `1/${say.number(use.share.divisor.value, 0)}`,
      use.share.divisor.source,
      say.text(STATUS_WORDS[use.share.divisor.status]),
    ]);
  const columns = [say.text("limit from"), say.text("value"), say.text("source"), say.text("known")];
  return rows.length === 0 ? [] : [table(columns, rows)];
}
