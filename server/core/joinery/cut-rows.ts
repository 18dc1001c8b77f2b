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
  pegs.setbacks.forEach((setback, i) => {
    const n = pegs.setbacks.length > 1 ? ` ${i + 1}` : "";
    rows.push(
      inch("receiving", `face to peg hole${n}`, setback, "square from the face, across the cheeks"),
      inch(
        "joined",
        `shoulder to peg hole${n}`,
        setback - housing - pegs.draw.value,
        "nearer the shoulder by the draw",
      ),
    );
  });
  rows.push(inch("joined", `${edge} to peg hole`, pegs.fromEdge, "evenly over the width"));
  const [one, next] = pegs.alongWidth;
  if (one !== undefined && next !== undefined) {
    rows.push(inch("joined", "peg hole to peg hole", next - one, "across the tenon, evenly"));
  }
  rows.push(inch("peg", "drawbore offset", pegs.draw.value, because(pegs.draw, USUAL_DRAW)));
  return rows;
}
