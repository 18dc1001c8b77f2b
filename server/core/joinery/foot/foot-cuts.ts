/** The cut sheet of a post's foot on its anchor. */
import type { Note } from "../../note.ts";
import { because, inchRow } from "../cut-rows.ts";
import type { CutRow } from "../joint.ts";
import { type FootRow, holeOf, type PostFoot, woodLeft } from "./post-foot.ts";

const STAND_OFF: Note = "an exposed post is held about an inch off the concrete (common practice)";

/** @returns one line for each size, with how it came about */
export function footCuts(foot: PostFoot): readonly CutRow[] {
  const { post, standOff, strap, row, dowel } = foot;
  return [
    inchRow("joined", "end of the post above the pier", standOff.value, because(standOff, STAND_OFF)),
    inchRow(
      "joined",
      "length of the stick",
      post.length,
      "from the stand-off up, with what is cut at its head",
    ),
    ...strapRows(foot),
    ...(dowel
      ? [
          inchRow("joined", "dowel hole diameter", dowel.diameter, "the plain steel dowel"),
          inchRow(
            "joined",
            "dowel hole depth in the end grain",
            dowel.into,
            "the least for a plain steel dowel",
          ),
        ]
      : []),
    ...(row ? rowRows(foot, row) : []),
    ...(strap && row?.kind === "bolts" && woodLeft(foot) > 0
      ? [
          inchRow(
            "bolt",
            "bolt from head to nut",
            foot.through - strap.sides * strap.letIn + (strap.kerf > 0 ? 0 : strap.sides * strap.thickness),
            "wood and straps, without washers",
          ),
        ]
      : []),
  ];
}

function strapRows({ strap, through, breadth }: PostFoot): CutRow[] {
  if (!strap) return [];
  const height = inchRow(
    "joined",
    strap.kerf > 0 ? "kerf height from the end" : "notch height from the end",
    strap.height.value,
    because(strap.height, "past its fasteners, 8 in or more (common practice)"),
  );
  if (strap.kerf > 0)
    return [
      inchRow("joined", "kerf width", strap.kerf, "the plate and a little play (common practice)"),
      ...(through > strap.kerf
        ? [inchRow("joined", "face to kerf", (through - strap.kerf) / 2, "in the middle of the post")]
        : []),
      height,
    ];
  if (!(strap.letIn > 0)) return [];
  return [
    inchRow("joined", "notch depth for each strap", strap.letIn, "as the file says"),
    inchRow("joined", "notch width", Math.min(strap.width, breadth), "the strap’s width"),
    height,
  ];
}

function rowRows({ breadth }: PostFoot, row: FootRow): CutRow[] {
  const bolts = row.kind === "bolts";
  const on = bolts ? "bolt" : "screw";
  const rows: CutRow[] = [
    {
      on,
      label: bolts ? "bolts" : "screws in each strap",
      value: row.count,
      unit: "count",
      how: "as the file says",
    },
    inchRow(on, bolts ? "bolt diameter" : "screw diameter", row.diameter, "as the file says"),
    ...(row.length === undefined ? [] : [inchRow(on, "screw length", row.length, "as the file says")]),
    ...(bolts
      ? [
          inchRow(
            "joined",
            "bolt hole diameter",
            holeOf(row.diameter),
            "the bolt and the most play that it may have (NDS 12.1.3)",
          ),
        ]
      : []),
    inchRow(
      "joined",
      bolts ? "end of the post to bolt hole" : "end of the post to screw",
      row.up.value,
      because(row.up, "7 diameters, tension along the grain of softwood (NDS Table 12.5.1A)"),
    ),
  ];
  if (row.count > 1)
    rows.push(
      inchRow(
        "joined",
        bolts ? "bolt hole to bolt hole" : "screw to screw",
        row.spacing.value,
        because(row.spacing, "5 diameters, so that they hold across the grain too (NDS Table 12.5.1D)"),
      ),
    );
  rows.push(
    inchRow(
      "joined",
      bolts ? "side of the post to bolt hole" : "side of the post to screw",
      breadth / 2,
      "in the middle of its face",
    ),
  );
  return rows;
}
