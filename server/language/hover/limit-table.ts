/** What the limit of a check is made of, as a table: reference value, factors, area, share of a length, each with its source. */
import { amountWords, noteWords } from "../../core/checks/amount-words.ts";
import type { Say } from "../../core/checks/say.ts";
import type { Factor } from "../../core/sourced.ts";
import type { WorstUse } from "../uses.ts";
import { STATUS_WORDS } from "./status.ts";
import { table } from "./table.ts";
import { amountText } from "./use-words.ts";

const factorRow = (f: Factor, symbol: string, say: Say): string[] => [
  f.note === undefined ? symbol : `${symbol} (${noteWords(f.note, say)})`,
  say.number(f.value, 3),
  f.source,
  say.text(STATUS_WORDS[f.status]),
];

/** What a factor is worked from, which is no factor of the limit itself; factors of one are left out. */
function madeRows({ symbol, from }: Factor, say: Say): string[][] {
  if (!from) return [];
  const named = (what: string): string => say.text("{what} in {factor}", { what, factor: symbol });
  const { reference, factors } = from;
  return [
    [
      named(from.symbol),
      amountText(reference.value, "psi", say),
      reference.source,
      say.text(STATUS_WORDS[reference.status]),
    ],
    ...factors
      .filter((f) => f.value !== 1)
      .map((f) => factorRow(f, named(`${f.symbol} × ${from.symbol}`), say)),
  ];
}

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
    ...use.factors.flatMap((f) => [factorRow(f, f.symbol, say), ...madeRows(f, say)]),
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
