/** Figures, with their sources and notes, as the reports for programs carry them. */
import { noteWords } from "../core/checks/amount-words.ts";
import type { Say } from "../core/checks/say.ts";
import type { Note } from "../core/note.ts";
import type { Factor, Sourced } from "../core/sourced.ts";

/** Ten figures: rounding shows nowhere, and the text stays short. Never minus nought. */
export function figure(value: number): number {
  return Number(value.toPrecision(10)) + 0;
}

export const figures = (values: readonly number[]): number[] => values.map(figure);

export const sourcedOf = ({ value, status, source }: Sourced) => ({ value: figure(value), status, source });

/** What a note says in the units of the file, and its amounts in those of the report. */
export function noted(note: Note | undefined, say: Say) {
  if (note === undefined) return {};
  if (typeof note === "string") return { note: say.text(note) };
  const amounts = Object.entries(note.parts).flatMap(([name, part]) =>
    "words" in part ? [] : [[name, { value: figure(part.value), unit: part.unit }] as const],
  );
  return {
    note: noteWords(note, say),
    ...(amounts.length > 0 ? { amounts: Object.fromEntries(amounts) } : {}),
  };
}

const plainFactor = (f: Factor, say: Say) => ({ symbol: f.symbol, ...sourcedOf(f), ...noted(f.note, say) });

/** With what it is worked from, where that is no factor of the product. */
export const factorOf = (f: Factor, say: Say) => ({
  ...plainFactor(f, say),
  ...(f.from
    ? {
        from: {
          symbol: f.from.symbol,
          reference: sourcedOf(f.from.reference),
          factors: f.from.factors.map((own) => plainFactor(own, say)),
          value: figure(f.from.value),
        },
      }
    : {}),
});
