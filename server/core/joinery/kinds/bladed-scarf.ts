/**
 * Bladed scarf: two timbers end to end, each halved over the lap; each half ends in a blade in the middle of its width,
 * which stands in a slot of the other timber and keeps the halves from working sideways. A peg crosses each blade.
 */
import { along, scale, type Vec3 } from "../../model/vec.ts";
import { inchRow, pegRows } from "../cut-rows.ts";
import { rectangle } from "../face.ts";
import { inLine } from "../fit.ts";
import type { Joint, JointKind, JointPlace, Peg, Prism, ShapedJoint } from "../joint.ts";
import type { BladeSizes, PegSizes } from "../joint-sizes.ts";
import { sized, tenonThickness, toStep } from "../proportions.ts";
import {
  atMost,
  block,
  lapLength,
  lapPlace,
  lapSizes,
  scarfEnds,
  scarfNote,
  scarfPegs,
  throughWidth,
} from "../scarf.ts";

/** Lap, blades included: three times the depth (common practice, no source: two and a half to four). */
const LAP_IN_DEPTHS = 3;

/** Pegs through the blades, level across the timber: the joined one's first. */
function bladePegs(
  place: JointPlace,
  middle: Vec3,
  out: Vec3,
  half: number,
  blade: number,
  pegs: PegSizes,
): Peg[] {
  const { of } = place;
  const heights = (count: number): number[] =>
    Array.from({ length: count }, (_, i) => (((i + 0.5) / count) * of.depth) / 2);
  const first = Math.ceil(pegs.count / 2);
  const hole = (u: number, w: number): Peg => {
    const at = along(along(middle, out, u), of.depthDir, w);
    return {
      from: along(at, of.widthDir, -of.width / 2),
      to: along(at, of.widthDir, of.width / 2),
      diameter: pegs.diameter.value,
    };
  };
  return [
    ...heights(first).map((w) => hole(half - blade / 2, w)),
    ...heights(pegs.count - first).map((w) => hole(-half + blade / 2, -w)),
  ];
}

/** The blade of the receiving timber, as the slot that it fills in the joined one; none in other kinds. */
export function otherBlade({ sizes, solids }: Joint): Prism[] {
  return sizes.blade ? solids.notches.slice(1, 2) : [];
}

function shape(place: JointPlace): ShapedJoint {
  const { of, end, into, metric, spec } = place;
  const { middle, out } = lapPlace(of, end, into);
  const length = lapLength(sized(spec?.lap, toStep(LAP_IN_DEPTHS * of.depth, metric, 1)), place);
  const half = length.value / 2;
  const usualThickness = Math.min(tenonThickness(of.width, metric), of.width / 2);
  // half the depth, in a short lap no more than a third of that
  const usualLength = Math.min(toStep(of.depth / 2, metric, 1 / 2), length.value / 3);
  const blade: BladeSizes = {
    // as thick as the timber it leaves no slot in the other one
    thickness: atMost(sized(spec?.blade?.thickness, usualThickness), of.width - 1e-3, usualThickness),
    length: atMost(sized(spec?.blade?.length, usualLength), half),
  };
  const b = blade.length.value;
  const t = blade.thickness.value / 2;
  const [W, H] = [of.width / 2, of.depth / 2];
  const solid = (u: readonly [number, number], v: readonly [number, number], w: readonly [number, number]) =>
    block(of, middle, out, u, v, w);
  const lap = (u: readonly [number, number], w: readonly [number, number]) =>
    throughWidth(of, middle, out, rectangle(u, w));
  const tip = [half - b, half] as const;
  const root = [-half, -half + b] as const;
  const [above, below] = [[0, H] as const, [-H, 0] as const];
  const cheeks = (u: readonly [number, number], w: readonly [number, number]) => [
    solid(u, [-W, -t], w),
    solid(u, [t, W], w),
  ];
  const base = scarfPegs(place, { length: b, width: H });
  const pegs = base && { ...base, setbacks: [b / 2] };
  return {
    sizes: {
      housing: { value: 0, from: "default" },
      lap: lapSizes(length, H, place),
      blade,
      ...(pegs ? { pegs } : {}),
    },
    solids: {
      tenons: [solid(tip, [-t, t], above)],
      mortises: [lap([-half, half - b], above), solid(tip, [-t, t], above), ...cheeks(root, below)],
      housings: [],
      wedges: [],
      notches: [lap([-half + b, half], below), solid(root, [-t, t], below), ...cheeks(tip, above)],
      pegs: pegs ? bladePegs(place, middle, out, half, b, pegs) : [],
    },
    ...scarfEnds(middle, out, half),
  };
}

export const bladedScarf: JointKind = {
  kind: "bladed-scarf",
  title: "Bladed scarf",
  unfit: inLine,
  cut: "lap",
  shape,
  assembly: ({ of }) => ({ direction: scale(of.depthDir, -1) }),
  cutSheet(joint: Joint) {
    const { lap, blade, pegs } = joint.sizes;
    if (!lap || !blade) return [];
    const rest = lap.length.value - 2 * blade.length.value;
    return [
      inchRow(
        "joined",
        "lap length, blades included",
        lap.length.value,
        scarfNote(lap.length, "three times the depth (common practice)"),
      ),
      inchRow("joined", "lap between the blades", rest, "the lap less both blades"),
      inchRow("joined", "cut away below", lap.depth, "half the depth"),
      inchRow(
        "joined",
        "blade length",
        blade.length.value,
        scarfNote(blade.length, "half the depth, at most a third of the lap"),
      ),
      inchRow(
        "joined",
        "blade thickness, in the middle of the width",
        blade.thickness.value,
        scarfNote(blade.thickness, "usual for a timber of this size"),
      ),
      inchRow("joined", "slot length, below", blade.length.value, "as the other’s blade"),
      inchRow("receiving", "lap length, blades included", lap.length.value, "the same on both timbers"),
      inchRow("receiving", "cut away above", lap.depth, "half the depth"),
      inchRow("receiving", "blade length", blade.length.value, "the same on both timbers"),
      inchRow("receiving", "blade thickness", blade.thickness.value, "the same on both timbers"),
      inchRow("receiving", "slot length, above", blade.length.value, "as the other’s blade"),
      ...pegRows(pegs, 0).filter((r) => r.on === "peg"),
      ...(pegs
        ? [inchRow("peg", "blade’s end to pegs", blade.length.value / 2, "half in each blade, level across")]
        : []),
    ];
  },
};
