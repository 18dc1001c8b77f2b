/** Lines of a cut sheet that several kinds share. */
import { lengthNote, type Note } from "../note.ts";
import type { CutRow, Joint, PegSizes, Sized, TenonSizes } from "./joint.ts";

/** How a size came about, in one line. */
export function because(size: Sized, rule: Note): Note {
  return size.from === "file" ? "as the file says" : rule;
}

const inch = (on: CutRow["on"], label: string, value: number, how: Note): CutRow => ({
  on,
  label,
  value,
  unit: "in",
  how,
});

export { inch as inchRow };

const USUAL_DRAW: Note = {
  text: "usual draw (common practice {least} to {most})",
  parts: { least: { value: 1 / 16, unit: "in" }, most: { value: 1 / 8, unit: "in" } },
};

export function housingRows(joint: Joint, label = "housing depth"): CutRow[] {
  const { housing } = joint.sizes;
  return housing.value > 0
    ? [inch("receiving", label, housing.value, because(housing, "usual for this joint (common practice)"))]
    : [];
}

/** @param lengthRule how the length came about where the file gives none */
export function tenonRows(tenon: TenonSizes, lengthRule: Note = "half the timber it enters"): CutRow[] {
  const far = tenon.setIn.value + tenon.thickness.value;
  const depth = tenon.through
    ? "through the timber"
    : lengthNote("tenon length and {length} of room at the bottom", 0.25);
  return [
    inch(
      "joined",
      "tenon length",
      tenon.length.value,
      because(tenon.length, tenon.through ? "through to the far face" : lengthRule),
    ),
    inch(
      "joined",
      "tenon thickness",
      tenon.thickness.value,
      because(tenon.thickness, "usual for a timber of this size"),
    ),
    inch(
      "joined",
      "tenon width",
      tenon.width.value,
      because(
        tenon.width,
        tenon.relishCut > 0 ? "full, less what a free end needs" : "full width of the timber",
      ),
    ),
    inch("joined", "shoulder to tip", tenon.length.value, "square to the shoulder"),
    inch("receiving", "mortise length along the grain", tenon.width.value, "the tenon’s width"),
    inch("receiving", "mortise width", tenon.thickness.value, "the tenon’s thickness"),
    inch("receiving", "mortise depth from the housed face", tenon.mortiseDepth, depth),
    inch(
      "receiving",
      "reference face to near cheek",
      tenon.setIn.value,
      because(tenon.setIn, "the usual set-in, or centered where widths differ"),
    ),
    inch("receiving", "reference face to far cheek", far, "set-in and thickness"),
  ];
}

/**
 * Pegs are numbered across the tenon, row by row from the shoulder, as they are drawn.
 * @param holds for the pegs to name, by their place in `setbacks` and in `alongWidth`
 * @returns `peg 3`, `pegs 1 and 2`
 */
function pegNames(
  { setbacks, alongWidth, count }: PegSizes,
  holds: (row: number, column: number) => boolean,
): string {
  const numbers = setbacks
    .flatMap((_, row) => alongWidth.map((__, column) => ({ row, column })))
    .slice(0, count)
    .flatMap(({ row, column }, i) => (holds(row, column) ? [i + 1] : []));
  const last = numbers.at(-1) ?? 0;
  return numbers.length < 2 ? `peg ${last}` : `pegs ${numbers.slice(0, -1).join(", ")} and ${last}`;
}

/** @param edge what `fromEdge` is measured from */
export function pegRows(pegs: PegSizes | undefined, housing: number, edge = "tenon edge"): CutRow[] {
  if (!pegs) return [];
  const rows: CutRow[] = [
    {
      on: "peg",
      label: "pegs",
      value: pegs.count,
      unit: "count",
      how: "as the file says, or the usual number",
    },
    inch(
      "peg",
      "peg hole diameter",
      pegs.diameter.value,
      because(pegs.diameter, "usual for a timber of this size"),
    ),
  ];
  const { setbacks, alongWidth, nearest = 0 } = pegs;
  pegs.setbacks.forEach((setback, i) => {
    const n = setbacks.length > 1 ? `, ${pegNames(pegs, (row) => row === i)}` : "";
    rows.push(
      inch("receiving", `face to peg hole${n}`, setback, "square from the face, across the cheeks"),
      inch(
        "joined",
        `shoulder to peg hole${n}`,
        setback - housing - pegs.draw.value,
        pegs.draw.value > 0 ? "nearer the shoulder by the draw" : "in line with the hole of the cheeks",
      ),
    );
  });
  const named = (column: number): string => pegNames(pegs, (_, each) => each === column);
  const twoRows = setbacks.length > 1;
  const first = twoRows ? `, ${named(nearest)}` : "";
  rows.push(inch("joined", `${edge} to peg hole${first}`, pegs.fromEdge, "evenly over the width"));
  const [one, next] = alongWidth;
  if (one !== undefined && next !== undefined) {
    const second = nearest === 0 ? 1 : nearest - 1;
    const pair = twoRows ? `${first} to ${named(second)}` : "";
    rows.push(inch("joined", `peg hole to peg hole${pair}`, next - one, "across the tenon, evenly"));
  }
  if (pegs.draw.value > 0)
    rows.push(inch("peg", "drawbore offset", pegs.draw.value, because(pegs.draw, USUAL_DRAW)));
  return rows;
}
