/** Lines of a cut sheet that several kinds share. */
import { lengthNote, type Note } from "../note.ts";
import type { CutRow, Joint } from "./joint.ts";
import type { DovetailSizes, PegSizes, Sized, TenonSizes } from "./joint-sizes.ts";

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

/** The widths of a dovetail's socket along the other timber: it is narrower where the dovetail comes in. */
export function socketWidthRows({ neck, tip, flare }: DovetailSizes): CutRow[] {
  return [
    inch("receiving", "socket width at its mouth", neck, "the dovetail’s neck, on the face that it enters"),
    inch("receiving", "socket width at its far end", tip, "the dovetail’s tip"),
    inch("receiving", "socket flare on each side", flare.value, "as the dovetail, over the socket’s length"),
  ];
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
 * @param holds for the pegs that are meant, by their place in `setbacks` and in `alongWidth`
 */
function pegNumbers(
  { setbacks, alongWidth, count }: PegSizes,
  holds: (row: number, column: number) => boolean,
): number[] {
  return setbacks
    .flatMap((_, row) => alongWidth.map((__, column) => ({ row, column })))
    .slice(0, count)
    .flatMap(({ row, column }, i) => (holds(row, column) ? [i + 1] : []));
}

/** By what is measured from. */
const TO_PEGS = {
  "tenon edge": "tenon edge to peg hole",
  "tenon top": "tenon top to peg hole",
  "tenon front": "tenon front to peg hole",
  "tongue edge": "tongue edge to peg hole",
  toe: "toe to peg hole",
} as const;

/** @param edge what `fromEdge` is measured from */
export function pegRows(
  pegs: PegSizes | undefined,
  housing: number,
  edge: keyof typeof TO_PEGS = "tenon edge",
): CutRow[] {
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
  const twoRows = setbacks.length > 1;
  pegs.setbacks.forEach((setback, i) => {
    const which = twoRows ? { pegs: { from: pegNumbers(pegs, (row) => row === i) } } : {};
    const face = inch("receiving", "face to peg hole", setback, "square from the face, across the cheeks");
    const shoulder = inch(
      "joined",
      "shoulder to peg hole",
      setback - housing - pegs.draw.value,
      pegs.draw.value > 0 ? "nearer the shoulder by the draw" : "in line with the hole of the cheeks",
    );
    rows.push({ ...face, ...which }, { ...shoulder, ...which });
  });
  const inColumn = (column: number): number[] => pegNumbers(pegs, (_, each) => each === column);
  const from = inColumn(nearest);
  rows.push({
    ...inch("joined", TO_PEGS[edge], pegs.fromEdge, "evenly over the width"),
    ...(twoRows && { pegs: { from } }),
  });
  const [one, next] = alongWidth;
  if (one !== undefined && next !== undefined) {
    const second = nearest === 0 ? 1 : nearest - 1;
    rows.push({
      ...inch("joined", "peg hole to peg hole", next - one, "across the tenon, evenly"),
      ...(twoRows && { pegs: { from, to: inColumn(second) } }),
    });
  }
  if (pegs.draw.value > 0)
    rows.push(inch("peg", "drawbore offset", pegs.draw.value, because(pegs.draw, USUAL_DRAW)));
  return rows;
}
