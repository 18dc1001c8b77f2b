/**
 * The drawing of one joint: three views with the main cut sizes, legible at the width of a hover and larger. Built from
 * the joint's solids alone, so that every kind of joint has one.
 */
import { noteWords, sizeWords } from "../core/checks/amount-words.ts";
import type { Say } from "../core/checks/say.ts";
import { cutWords } from "../core/joinery/cut-words.ts";
import type { Joint } from "../core/joinery/joint.ts";
import { jointKindOf } from "../core/joinery/kinds/index.ts";
import { dot } from "../core/model/vec.ts";
import { type Box, type Drawing, type DrawingElement, sound } from "./drawing.ts";
import { type JointView, jointEyes } from "./joint-eyes.ts";
import { levelLanes, uprightLanes } from "./joint-lanes.ts";
import { type Measure, measuresOf } from "./joint-measures.ts";
import { type JointParts, jointParts, solidsInPlace } from "./joint-parts.ts";
import { drawJointView, type JointEdges, jointEdges, showsAlone } from "./joint-view.ts";
import { moved } from "./moved.ts";
import { boxOfAll, captioned, grownText, jointSheet, sizesIn } from "./sheet-text.ts";

/** Most cut sizes listed where a joint has no solids to measure on. */
const MOST_ROWS = 8;

interface PlacedView {
  readonly view: JointView;
  readonly elements: readonly DrawingElement[];
  readonly box: Box;
}

/** What a view shows, in two or three words. */
function captionOf({ id, eye }: JointView, joint: Joint, alone: boolean, say: Say): string {
  if (id === "face")
    return say.text(alone ? "Cut into {timber}" : "Onto {timber}", { timber: joint.into.id });
  if (eye.toward[2] > 0.7) return say.text("From above");
  if (eye.toward[2] < -0.7) return say.text("From below");
  if (id === "side") return say.text("Side");
  return joint.face.reference === 0 ? say.text("Front") : say.text("Reference face");
}

function withMeasures(
  joint: Joint,
  view: JointView,
  bare: readonly DrawingElement[],
  measures: readonly Measure[],
  size: number,
  say: Say,
): DrawingElement[] {
  const box = boxOfAll(bare);
  const { face } = joint;
  const own = measures.filter((one) => one.view === view.id);
  const stretches = (on: "level" | "upright"): { from: number; to: number }[] => {
    const axis = view[on];
    const sense = dot(face[axis], on === "level" ? view.eye.right : view.eye.up) < 0 ? -1 : 1;
    return own
      .filter((one) => one.axis === axis)
      .map(({ from, to }) => (sense > 0 ? { from, to } : { from: -to, to: -from }));
  };
  // on the far side of the receiving timber no joined timber is in the way
  const inwardUp = view.upright === "inward" && dot(face.inward, view.eye.up) > 0;
  const inwardLeft = view.level === "inward" && dot(face.inward, view.eye.right) < 0;
  const level = levelLanes(stretches("level"), box, inwardUp ? 1 : -1, size, say);
  const upright = uprightLanes(stretches("upright"), box, inwardLeft ? -1 : 1, size, say);
  return [...bare, ...level.elements, ...upright.elements];
}

function laidOut(
  joint: Joint,
  parts: JointParts,
  edges: JointEdges,
  measures: readonly Measure[],
  size: number,
  say: Say,
): PlacedView[] {
  const made = jointEyes(joint).map((view): PlacedView => {
    const bare = sound(drawJointView(joint, view, parts, edges, size));
    const measured = withMeasures(joint, view, bare, measures, size, say);
    const caption = captionOf(view, joint, showsAlone(view, parts), say);
    const elements = captioned(caption, measured, boxOfAll(bare), size);
    return { view, elements, box: boxOfAll(elements) };
  });
  const [front, side, face] = made;
  if (!front || !side || !face) return [];
  const gap = 1.6 * size;
  const right = ({ box }: PlacedView, of: PlacedView): number => of.box.right + gap - box.left;
  const below = ({ box }: PlacedView): number => front.box.bottom - gap - box.top;
  const across = (one: PlacedView): number => {
    const { column, row } = one.view;
    // past both of what it stands beside
    if (column > 0 && row !== 0) return Math.max(right(one, front), right(one, face));
    return column > 0 ? right(one, front) : column < 0 ? front.box.left - gap - one.box.right : 0;
  };
  const upward = (one: PlacedView): number => {
    const { column, row } = one.view;
    if (column !== 0 && row !== 0) return below(face);
    return row > 0 ? front.box.top + gap - one.box.bottom : row < 0 ? below(one) : 0;
  };
  return made.map((one) => {
    const [dx, dy] = [across(one), upward(one)];
    const shifted = one.elements.map((element) => moved(element, dx, dy));
    return { view: one.view, elements: shifted, box: boxOfAll(shifted) };
  });
}

function pegWords({ sizes: { pegs } }: Joint, say: Say): string[] {
  if (!pegs) return [];
  const { count, diameter, draw } = pegs;
  const values = { count, diameter: say.length(diameter.value), draw: say.length(draw.value) };
  if (draw.value > 0)
    return [
      count === 1
        ? say.text("Peg hole {diameter}, drawn {draw}.", values)
        : say.text("{count} peg holes {diameter}, drawn {draw}.", values),
    ];
  return [
    count === 1
      ? say.text("Peg hole {diameter}, not drawn.", values)
      : say.text("{count} peg holes {diameter}, not drawn.", values),
  ];
}

function screwWords({ sizes: { screws } }: Joint, say: Say): string[] {
  if (!screws) return [];
  const { count, diameter, length } = screws;
  const values = { count, diameter: say.length(diameter.value), length: say.length(length.value) };
  return [
    count === 1
      ? say.text("Screw {diameter} × {length}.", values)
      : say.text("{count} screws {diameter} × {length}.", values),
  ];
}

/** What the lines and marks of the drawing mean, and what its numbers count. */
function legend(joint: Joint, say: Say): string[] {
  const reference = joint.face.reference === 0 ? "" : ` ${say.text("Triangle: reference face.")}`;
  const held = [...pegWords(joint, say), ...screwWords(joint, say)];
  return [`${sizesIn(say)}${reference}`, ...held];
}

/** The cut sizes in words, for a joint that has no solids to measure on. */
function rowsOf(joint: Joint, say: Say): string[] {
  const { tenons, mortises, housings, notches } = joint.solids;
  if ([tenons, mortises, housings, notches].some((list) => list.length > 0)) return [];
  return jointKindOf(joint.kind)
    .cutSheet(joint)
    .slice(0, MOST_ROWS)
    .map((row) =>
      say.text("{label}: {value} ({how})", {
        label: sizeWords(row, say),
        value: cutWords(row, say),
        how: noteWords(row.how, say),
      }),
    );
}

/** @returns the title of the drawing: `post-head@A1 · Mortise and tenon` */
export const jointTitle = (joint: Joint, say: Say): string =>
  `${joint.id} · ${say.text(jointKindOf(joint.kind).title)}`;

function sheetAt(
  joint: Joint,
  parts: JointParts,
  edges: JointEdges,
  measures: readonly Measure[],
  size: number,
  say: Say,
): Drawing {
  const title = jointTitle(joint, say);
  const below = say.text("{of} into {into}", { of: joint.of.id, into: joint.into.id });
  const words = [...rowsOf(joint, say), ...legend(joint, say)];
  const views = laidOut(joint, parts, edges, measures, size, say).map(({ view, elements }) => ({
    id: view.id,
    elements,
  }));
  return jointSheet({ title, below, words, views }, size, say);
}

/**
 * Draws a joint in three views. Any joint gives a drawing; what has no place is left out.
 * @param say words its numbers in the file's units
 */
export function drawJointSheet(given: Joint, say: Say): Drawing {
  const joint = { ...given, solids: solidsInPlace(given) };
  const parts = jointParts(joint);
  const edges = jointEdges(parts);
  const measures = measuresOf(joint);
  return grownText(Math.max(joint.into.width, joint.into.depth) / 8, (size) =>
    sheetAt(joint, parts, edges, measures, size, say),
  );
}
