/** How the loads of a frame came about, as tables: hovers and the command line show them. */
import { amountWords, noteWords } from "../core/checks/amount-words.ts";
import type { Say } from "../core/checks/say.ts";
import type { Amount } from "../core/note.ts";
import type { LoadPart, LoadPattern, LoadPressure, LoadSection } from "../core/statics/load-lines.ts";
import { STATUS_WORDS } from "./hover/status.ts";

export interface LoadTables {
  readonly title: string;
  /** head first: symbol, what, value, how known, source */
  readonly lines: readonly (readonly string[])[];
  /** how the load cases are meant */
  readonly caption: string;
  /** head first: load case, then each part of the frame; nothing where the lines say it all */
  readonly patterns: readonly (readonly string[])[];
  /** where the coefficients of the load cases are from and how well they are known; nothing without cases */
  readonly known: string;
}

const TITLE: Readonly<Record<LoadPart, string>> = {
  weight: "Own weight of the timbers",
  "least-weight": "Least weight: all that holds the frame down in 0.6 D + 0.6 W",
  roof: "Weight of the roof over its rafters",
  "roof-live": "Roof live load",
  snow: "Snow by {standard}",
  wind: "Wind by {standard}",
  siding: "Siding of the walls",
  floor: "Floor",
};

const CAPTION: Readonly<Partial<Record<LoadPart, string>>> = {
  "roof-live": "On the level area:",
  snow: "On the level area; lengths down from the ridge:",
  wind: "Coefficient and net pressure square to the surface, plus presses and minus lifts; lengths from the edge that the wind meets:",
};

/** @param standard `ASCE 7-16` */
export function loadTables(section: LoadSection, standard: string, say: Say): LoadTables {
  const plain = say.text(TITLE[section.part], { standard });
  const { name } = section;
  const title =
    name === undefined ? plain : say.text("{title}: {name}", { title: plain, name: say.text(name) });
  const rows = section.lines.map(({ id, symbol, what, value, unit, note, source, status }) => [
    section.part === "weight" || section.part === "least-weight" ? id : (symbol ?? ""),
    note === undefined
      ? noteWords(what, say)
      : say.text("{what} ({note})", { what: noteWords(what, say), note: noteWords(note, say) }),
    amountText({ value, unit }, say),
    say.text(STATUS_WORDS[status]),
    say.text(source),
  ]);
  const head = ["", say.text("what"), say.text("value"), say.text("known"), say.text("source")];
  // where all is one, the lines have said it
  const cases = section.part === "roof-live" && section.patterns.length < 2 ? [] : section.patterns;
  return {
    title,
    lines: [head, ...rows],
    caption: say.text(CAPTION[section.part] ?? "Load cases:"),
    patterns: patternTable(cases, say),
    known: cases.length === 0 ? "" : casesKnown(cases, say),
  };
}

/** `Load cases by ASCE 7 Figure 27.3-1 (remembered …).` */
function casesKnown(patterns: readonly LoadPattern[], say: Say): string {
  const each = patterns.map(({ source, status }) =>
    say.text("{source} ({known})", { source: say.text(source), known: say.text(STATUS_WORDS[status]) }),
  );
  return say.text("Load cases by {sources}.", { sources: say.list([...new Set(each)]) });
}

/** @returns a sentence on what of snow and wind nobody has compared with the print; none where all of it was seen */
export function loadNotes(sections: readonly LoadSection[], standard: string, say: Say): string[] {
  const open = sections
    .filter(({ part }) => part === "snow" || part === "wind")
    .flatMap(({ lines, patterns }) => [...lines, ...patterns])
    .filter(({ status }) => status === "memory" || status === "uncertain");
  if (open.length === 0) return [];
  return [
    say.text(
      "Of snow and wind by {standard} these stand as remembered: {sources}. Compare them with a print before you build.",
      { standard, sources: [...new Set(open.map(({ source }) => say.text(source)))].join("; ") },
    ),
  ];
}

/** Three decimals of a factor, as its standard prints it. */
function amountText(amount: Amount, say: Say): string {
  return amount.unit === "ratio" ? say.number(amount.value, 3) : amountWords(amount, say);
}

/** A column for each part of the frame; cases that press alike stand in one row. */
function patternTable(patterns: readonly LoadPattern[], say: Say): string[][] {
  const nameOf = ({ on }: LoadPressure): string => noteWords(on, say);
  const columns = [...new Set(patterns.flatMap(({ pressures }) => pressures.map(nameOf)))];
  const rows = new Map<string, { readonly ids: string[]; readonly cells: readonly string[] }>();
  for (const { id, words, pressures } of patterns) {
    const cells = columns.map((column) =>
      cellText(
        pressures.filter((p) => nameOf(p) === column),
        say,
      ),
    );
    const key = cells.join("\n");
    const row = rows.get(key) ?? { ids: [], cells };
    row.ids.push(words === undefined ? id : noteWords(words, say));
    rows.set(key, row);
  }
  if (rows.size === 0) return [];
  return [
    [say.text("load case"), ...columns],
    ...[...rows.values()].map(({ ids, cells }) => [ids.join(", "), ...cells]),
  ];
}

/** `1.1: 18.2 psf`; where it changes along the part, from one end to the other. */
function cellText(pressures: readonly LoadPressure[], say: Say): string {
  return pressures
    .map(({ psf, coefficient, to }) => {
      const pressure = say.pressure(psf);
      const text = coefficient === undefined ? pressure : `${say.number(coefficient, 2)}: ${pressure}`;
      const whole = to === undefined || (pressures.length === 1 && coefficient !== undefined);
      return whole
        ? text
        : say.text("{text} up to {to}", { text, to: amountWords({ value: to, unit: "ft" }, say) });
    })
    .join("; ");
}
