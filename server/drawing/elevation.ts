/** A view of the frame as a drawing: ground, piers, timbers with their joints, roof, grid, levels, dimensions, scale. */
import type { Say } from "../core/checks/say.ts";
import type { Joint } from "../core/joinery/joint.ts";
import type { Model } from "../core/model/model.ts";
import { solidOf } from "../core/model/solid.ts";
import { inches } from "../core/quantity/length.ts";
import type { Body } from "./body.ts";
import { levelChain, uprightChain } from "./dimensions.ts";
import { type Box, boxOf, type Drawing, type DrawingElement, elementBox, sound, union } from "./drawing.ts";
import { drawForces } from "./forces.ts";
import type { Overlay } from "./forces-cases.ts";
import { drawLegend } from "./forces-legend.ts";
import { drawCenter, drawGrid, drawLevels, type LevelAt } from "./grid.ts";
import { drawGround, groundLine } from "./ground.ts";
import { drawJoint } from "./joints.ts";
import { Layout } from "./layout.ts";
import { paintOrder } from "./order.ts";
import { drawFoot } from "./paper.ts";
import { drawPier } from "./piers.ts";
import { drawPitch, drawRoof } from "./roof.ts";
import { bodiesOf, jointsOf, piersOf } from "./select.ts";
import { drawTimbers } from "./timbers.ts";
import { nearness, type Sight, sightOf } from "./views.ts";

/** how many ems of text the larger side of the frame measures: readable in a narrow panel, small beside the wood */
const EMS = 48;
/** what is drawn where the frame has nothing yet: a post's height and a little more */
const EMPTY: Box = { left: 0, bottom: 0, right: 120, top: 96 };
/** no text smaller than this, inches of the frame */
const LEAST_TEXT = 0.25;

/**
 * Draws one view of a frame. Any model gives a drawing, an empty one too; what has no place is left out.
 * @param view `front`, `side`, a bent or a wall (see `viewsOf`); one that the frame does not have gives the front
 * @param overlay forces drawn over it, with their legend under it
 * @returns the drawing; the same model always gives the same one
 */
export function drawElevation(model: Model, view: string, say: Say, overlay?: Overlay): Drawing {
  const sight = sightOf(model, view, say);
  const bodies = bodiesOf(model, sight);
  const joints = jointsOf(model, bodies);
  const painted = paintOrder(sight, bodies, joints);
  const piers = sound(piersOf(model, sight).map((pier) => drawPier(model, sight, pier, say)));
  const roof = sound(drawRoof(model, sight, bodies, say));
  const around = frameBox(model, sight, [...bodies.map((body) => body.box), ...boxesOf([...piers, ...roof])]);
  const size = Math.max(LEAST_TEXT, Math.max(around.right - around.left, around.top - around.bottom) / EMS);
  const layout = new Layout(size, say);

  const grounds = sound(drawGround(model, sight, widened(around, 3 * size), size, say));
  const timbers = withJoints(
    sight,
    painted,
    joints,
    drawTimbers(sight, painted, model.joints, say, size / 4),
    say,
  );
  const frame = [...piers, ...timbers, ...grounds, ...roof];
  const measured = measure(model, sight, bodies, layout, union([around, ...boxesOf(grounds)]) ?? around);
  const center = drawCenter(sight, bodies, around, size);
  const pitch = drawPitch(model, sight, bodies, layout);
  const empty = bodies.length === 0 ? nothing(layout, around) : [];
  const forces = overlay && drawForces(sight, bodies, overlay, layout);
  const over = [...center, ...pitch, ...measured.before, ...(forces?.elements ?? []), ...empty];
  const elements = sound([...measured.behind, ...frame, ...over]);

  const bare = union(boxesOf(elements)) ?? around;
  if (forces) {
    const room = bare.right - bare.left;
    elements.push(drawLegend(layout, forces.legend, bare.left, bare.bottom - 1.5 * size, room));
  }
  const drawn = union(boxesOf(elements)) ?? around;
  const foot = drawFoot(layout, title(model, sight, say), drawn);
  const whole = union([drawn, ...boxesOf(foot.elements)]) ?? drawn;
  return {
    title: title(model, sight, say),
    viewBox: widened(whole, 1.5 * size, 1.5 * size),
    elements: [...elements, ...sound(foot.elements)],
    textSize: size,
    scale: foot.scale,
    ...(forces ? { classes: ["with-layer"] } : {}),
  };
}

const title = (model: Model, sight: Sight, say: Say): string =>
  model.frame.name === ""
    ? sight.title
    : say.text("{frame}: {view}", { frame: model.frame.name, view: sight.title });

const boxesOf = (elements: readonly DrawingElement[]): Box[] =>
  elements.flatMap((element) => elementBox(element) ?? []);

const widened = (box: Box, across: number, up = 0): Box => ({
  left: box.left - across,
  right: box.right + across,
  bottom: box.bottom - up,
  top: box.top + up,
});

/** What the timbers, piers and grid lines take; a frame without timbers still shows its grid. */
function frameBox(model: Model, sight: Sight, boxes: readonly Box[]): Box {
  const lines = boxOf(sight.lines.map((line) => [line.at, 0] as const));
  const reach = lines === undefined ? undefined : { ...lines, top: EMPTY.top };
  const seen = union(boxes);
  if (seen === undefined)
    return reach === undefined || reach.right - reach.left > 1e6 ? EMPTY : widened(reach, 12);
  const level = (reach === undefined ? [] : [{ ...seen, left: reach.left, right: reach.right }]).filter(
    (box) => Math.abs(box.left) < 1e6 && Math.abs(box.right) < 1e6 && model.timbers.length > 0,
  );
  return union([seen, ...level]) ?? seen;
}

function nothing(layout: Layout, around: Box): DrawingElement[] {
  const x = (around.left + around.right) / 2;
  const y = (around.bottom + around.top) / 2;
  return layout.write(layout.say.text("No timber to draw here yet"), [{ x, y, anchor: "middle" }], ["label"]);
}

/** A joint this far (inches) behind the near end of a timber is not shown through it: the nearest one stands for it. */
const DEEP = 24;

/** Each joint is drawn on top of its two timbers, and under whatever is nearer than both. */
function withJoints(
  sight: Sight,
  painted: readonly Body[],
  joints: readonly Joint[],
  timbers: readonly DrawingElement[],
  say: Say,
): DrawingElement[] {
  const place = new Map(painted.map((body, i) => [body.timber.id, i]));
  const after: Joint[][] = painted.map(() => []);
  for (const joint of joints) {
    const [a, b] = [place.get(joint.of.id) ?? 0, place.get(joint.into.id) ?? 0];
    const over = painted[Math.max(a, b)];
    const deep = over !== undefined && !over.cut && over.near - nearness(sight, joint.meeting.point) > DEEP;
    after[deep ? Math.min(a, b) : Math.max(a, b)]?.push(joint);
  }
  return timbers.flatMap((timber, i) => [
    timber,
    ...(after[i] ?? []).map((joint) => ({
      ...drawJoint(sight, joint, say),
      covered: timber.covered === true,
    })),
  ]);
}

interface Measured {
  /** under the frame: grid lines, levels */
  readonly behind: DrawingElement[];
  /** over it: dimensions */
  readonly before: DrawingElement[];
}

/** Grid, levels and dimensions round the frame, each in a lane of its own. */
function measure(model: Model, sight: Sight, bodies: readonly Body[], layout: Layout, around: Box): Measured {
  const s = layout.size;
  const wood = union(bodies.map((body) => body.box)) ?? around;
  const grid = drawGrid(layout, sight.lines, around, sight.across === 0 ? "bent" : "wall");

  // below the grid's names: from line to line, then from the first to the last
  const at = sight.lines.map((line) => line.at);
  const ends = at.length > 2 ? [Math.min(...at), Math.max(...at)] : [];
  const lane = grid.bottom - 2 * s;
  const spacing = levelChain(layout, at, lane, () => grid.bottom - 0.3 * s);
  const overall = levelChain(layout, ends, lane - 2.6 * s, () => lane);

  // above the frame: over everything
  const tips = bodies.length === 0 ? [] : [wood.left, wood.right];
  const over = levelChain(layout, tips, around.top + 2.6 * s, () => wood.top + 0.5 * s);

  // at the right: from level to level, then from the ground to the top
  const tops = bodies.length === 0 ? undefined : topsOf(model, bodies, wood);
  const levels = levelsOf(model, tops, layout.say);
  const heights = uprightChain(
    layout,
    levels.map((level) => level.height),
    around.right + 1.5 * s,
    () => around.right + 0.3 * s,
  );
  const nearest = sight.layers[0]?.at ?? 0;
  const ground = groundLine(model, sight, nearest, wood.left, wood.right).map((p) => p[1]);
  const lowest =
    ground.length > 0 ? Math.min(...ground) : Math.min(wood.bottom, ...levels.map((level) => level.height));
  const beside = heights.right + 1.5 * s;
  const height =
    tops === undefined ? [] : uprightChain(layout, [lowest, tops.top], beside, () => beside - s).elements;

  return {
    behind: [...grid.elements, ...drawLevels(layout, levels, grid.left)],
    before: [...spacing, ...overall, ...over, ...heights.elements, ...height],
  };
}

/** wood less than this (inches) over a ridge has no height of its own: rafters let into it stand a little proud */
const PROUD = 1;

interface Tops {
  /** top of the ridge timber, where the view shows it or ends at its height */
  readonly ridge: number | undefined;
  /** what the frame is measured up to: the ridge, or wood that stands higher */
  readonly top: number;
}

function topsOf(model: Model, bodies: readonly Body[], wood: Box): Tops {
  const shown = new Set(bodies.map((body) => body.timber));
  const ridges = model.timbers
    .filter((timber) => timber.kind === "ridge")
    .map((timber) => ({ height: solidOf(timber).high[2], shown: shown.has(timber) }))
    .filter((ridge) => ridge.shown || Math.abs(ridge.height - wood.top) < PROUD)
    .map((ridge) => ridge.height);
  if (ridges.length === 0) return { ridge: undefined, top: wood.top };
  const ridge = Math.max(...ridges);
  return { ridge, top: wood.top - ridge < PROUD ? ridge : wood.top };
}

/** The file's levels, height 0, the ridge, and the top of the wood where that is higher. */
function levelsOf(model: Model, tops: Tops | undefined, say: Say): LevelAt[] {
  const levels: LevelAt[] = model.frame.grid.levels
    .map((level) => ({ name: level.id, height: inches(level.height), id: level.id, path: level.path }))
    .filter((level) => Math.abs(level.height) < 1e6);
  const name = (height: number, words: string): void => {
    if (levels.every((level) => Math.abs(level.height - height) > 1 / 32))
      levels.push({ name: words, height });
  };
  if (tops?.ridge !== undefined) name(tops.ridge, say.text("ridge"));
  if (tops !== undefined) name(tops.top, say.text("top"));
  name(0, say.text("datum"));
  return levels;
}
