/**
 * Stop-splayed scarf with under-squinted butts and folding wedges. Each half ends in a butt whose inner edge stands past
 * its outer one, so that the other timber holds it down; between the butts the halves lie on a slope that steps in the
 * middle. Two folding wedges driven into the step from both sides push the butts tight.
 *
 * In the plane of the depth, u out past the joined timber's end and z up, both from the middle of the lap.
 */
import { cross, scale, type Vec2, type Vec3 } from "../../model/vec.ts";
import { inchRow, pegRows } from "../cut-rows.ts";
import { inLine } from "../fit.ts";
import type { Joint, JointKind, JointPlace, Prism, ShapedJoint } from "../joint.ts";
import type { Sized, SplaySizes } from "../joint-sizes.ts";
import { sized, toStep, usual, WEDGE_SLOPE } from "../proportions.ts";
import {
  atMost,
  lapLength,
  lapPlace,
  lapSizes,
  pegsDown,
  SHORTEST,
  scarfEnds,
  scarfNote,
  scarfPegs,
  throughWidth,
} from "../scarf.ts";

/** Lap from butt to butt: four and a half times the depth (common practice, no source: four to five). */
const LAP_IN_DEPTHS = 4.5;
/** Butt: a quarter of the depth; its inner edge stands a quarter of that past the outer one (common practice, no source). */
const BUTT = 1 / 4;
const SQUINT = 1 / 4;
/** Opening for the wedges: 1 1/4 in along the grain, a sixth of the depth high, at least 1 in (common practice, no source). */
const KEY_LENGTH = 1.25;
const KEY_HEIGHT = 1 / 6;

/** The shortest lap: beyond the wedges each half needs room for the slant of a butt, in. */
export function leastSplayedLap({ key, undercut }: SplaySizes): number {
  return key.length + 2 * undercut;
}

function splayedLap(place: JointPlace, splay: SplaySizes): Sized {
  const { of, metric, spec } = place;
  const usualLap = toStep(LAP_IN_DEPTHS * of.depth, metric, 1);
  const wanted = sized(spec?.lap, usualLap);
  if (wanted.value > leastSplayedLap(splay)) return lapLength(wanted, place, splay.undercut);
  const { value } = lapLength({ value: usualLap, from: "default" }, place, splay.undercut);
  return { value, from: wanted.from, asked: wanted.value };
}

function splaySizes({ of, metric, spec, room }: JointPlace): SplaySizes {
  const usualButt = toStep(BUTT * of.depth, metric, 1 / 4);
  // with two butts deeper than the timber nothing is left to lie on each other
  const butt = atMost(sized(spec?.butt, usualButt), of.depth / 2, usualButt);
  // at the very end of a timber everything shrinks with the room
  const most = Math.max(SHORTEST, room?.near ?? Number.POSITIVE_INFINITY);
  const length = Math.min(usual(metric, KEY_LENGTH, 32), most / 2);
  return {
    butt,
    // no more than the opening leaves the timber to move back by
    undercut: Math.min(toStep(SQUINT * butt.value, metric), length, most / 4),
    key: { length, height: Math.max(usual(metric, 1, 25), toStep(KEY_HEIGHT * of.depth, metric, 1 / 4)) },
    wedgeSlope: spec?.wedge?.slope ?? WEDGE_SLOPE,
  };
}

/** What is cut from each timber, as outlines in (u, z): the large piece and the sliver past its own butt. */
function outlines(half: number, H: number, { butt, undercut, key }: SplaySizes) {
  const n = butt.value;
  const [g, k] = [key.length / 2, key.height / 2];
  const far = half + undercut;
  const left: Vec2 = [-far, -H + n];
  const right: Vec2 = [far, H - n];
  return {
    below: [[-half, -H], left, [-g, k], [g, k], [g, -k], right, [far, -H]] as Vec2[],
    tip: [[half, H], [far, H], right] as Vec2[],
    above: [left, [-g, k], [-g, -k], [g, -k], right, [half, H], [-far, H]] as Vec2[],
    root: [[-half, -H], [-far, -H], left] as Vec2[],
  };
}

/** How far the line between the wedges slants over half the width; each keeps an eighth at its thin end. */
function wedgeSlant({ key, wedgeSlope }: SplaySizes, width: number): number {
  return Math.min((wedgeSlope * width) / 2, Math.max(0, key.length / 2 - 1 / 8));
}

/** Two wedges side by side in the opening, each thick where the other is thin. */
function foldingWedges({ of }: JointPlace, middle: Vec3, out: Vec3, splay: SplaySizes): Prism[] {
  const { key } = splay;
  const [g, W] = [key.length / 2, of.width / 2];
  const shift = wedgeSlant(splay, of.width);
  const wedge = (outline: Vec2[]): Prism => ({
    base: middle,
    u: out,
    v: cross(of.depthDir, out),
    w: of.depthDir,
    outline,
    from: -key.height / 2,
    to: key.height / 2,
  });
  return [
    wedge([
      [-g, -W],
      [-shift, -W],
      [shift, W],
      [-g, W],
    ]),
    wedge([
      [-shift, -W],
      [g, -W],
      [g, W],
      [shift, W],
    ]),
  ];
}

function shape(place: JointPlace): ShapedJoint {
  const { of, end, into } = place;
  const { middle, out } = lapPlace(of, end, into);
  const splay = splaySizes(place);
  const length = splayedLap(place, splay);
  const half = length.value / 2;
  const far = half + splay.undercut;
  const cut = outlines(half, of.depth / 2, splay);
  const solid = (outline: Vec2[]): Prism => throughWidth(of, middle, out, outline);
  const pegs = scarfPegs(place, { length: length.value, width: of.width }, 2);
  return {
    sizes: {
      housing: { value: 0, from: "default" },
      lap: lapSizes(length, (of.depth + splay.key.height) / 2, place),
      splay,
      ...(pegs ? { pegs } : {}),
    },
    solids: {
      tenons: [],
      mortises: [solid(cut.above), { ...solid(cut.root), endCut: true }],
      housings: [],
      wedges: foldingWedges(place, middle, out, splay),
      notches: [solid(cut.below), { ...solid(cut.tip), endCut: true }],
      pegs: pegs ? pegsDown(of, middle, pegs, half) : [],
    },
    ...scarfEnds(middle, out, far),
  };
}

export const stopSplayedScarf: JointKind = {
  kind: "stop-splayed-scarf",
  title: "Stop-splayed scarf",
  unfit: inLine,
  cut: "lap",
  shape,
  // down beside its seat, then along its grain until the butts close
  assembly({ of, end, sizes }) {
    return {
      direction: scale(of.depthDir, -1),
      last: {
        direction: end === "head" ? of.axis : scale(of.axis, -1),
        distance: sizes.splay?.undercut ?? 0,
      },
    };
  },
  cutSheet(joint: Joint) {
    const { lap, splay, pegs } = joint.sizes;
    if (!lap || !splay) return [];
    const { butt, undercut, key } = splay;
    const width = joint.of.width;
    const thick = key.length / 2 + wedgeSlant(splay, width);
    return [
      inchRow(
        "joined",
        "lap length, butt to butt",
        lap.length.value,
        scarfNote(lap.length, "four and a half times the depth (common practice)"),
      ),
      inchRow(
        "joined",
        "butt depth",
        butt.value,
        scarfNote(butt, "a quarter of the depth (common practice)"),
      ),
      inchRow(
        "joined",
        "inner edge of the butt past its outer one",
        undercut,
        "a quarter of the butt, under-squinted",
      ),
      inchRow("joined", "step in the middle, height", key.height, "a sixth of the depth, at least an inch"),
      inchRow("joined", "opening for the wedges along the grain", key.length, "as wide as two wedges"),
      inchRow("receiving", "lap length, butt to butt", lap.length.value, "the same on both timbers"),
      inchRow("receiving", "butt depth", butt.value, "the same on both timbers"),
      { on: "wedge", label: "folding wedges", value: 2, unit: "count", how: "driven from both sides" },
      inchRow("wedge", "wedge length", width, "the width of the timber; leave them long to drive again"),
      inchRow("wedge", "wedge height", key.height, "as high as the opening"),
      inchRow("wedge", "wedge, thick end", thick, "half the opening and half the slope over the width"),
      inchRow("wedge", "wedge, thin end", key.length - thick, "what the other leaves of the opening"),
      ...pegRows(pegs, 0).filter((r) => r.on === "peg"),
    ];
  },
};
