/** One view of a joint: its wood, what is seen and what is hidden, breaks, pegs, and the mark of the reference face. */
import type { Joint, Peg, Prism } from "../core/joinery/joint.ts";
import type { EndPlane } from "../core/model/model.ts";
import { add, dot, length, scale, sub, unit, type Vec2, type Vec3 } from "../core/model/vec.ts";
import { type Edge, edgesOf } from "./cut-edges.ts";
import { type CutSolid, prismPoint, type Side } from "./cut-solid.ts";
import type { DrawingElement, Vertex } from "./drawing.ts";
import type { JointView } from "./joint-eyes.ts";
import { type JointParts, prismCorners, type TimberPart } from "./joint-parts.ts";
import { area, hull, notched } from "./outline.ts";
import { type Eye, type FlatLine, onPaper, seenLines, shapeOf } from "./seen-lines.ts";

/** A break is drawn as a zigzag unless one looks at it more squarely than this (cosine). */
const FACING = 0.1;
/** cosine within which a direction counts as the line of sight */
const ALONG_SIGHT = 0.99;

/** Edges of the parts, worked out once for all views. */
export interface JointEdges {
  readonly joined: readonly Edge[];
  readonly receiving: readonly Edge[];
  readonly wedges: readonly Edge[];
}

export function jointEdges({ joined, receiving, wedges }: JointParts): JointEdges {
  const sides = (solid: CutSolid): Side[] => [...solid.wood, ...solid.cut].flatMap((block) => block.sides);
  const [own, other] = [sides(joined.solid), sides(receiving.solid)];
  return {
    joined: edgesOf(joined.solid, other),
    receiving: edgesOf(receiving.solid, own),
    wedges: wedges.flatMap((wedge) => edgesOf(wedge, other)),
  };
}

/** Whether the receiving timber is shown alone: onto its face, where something is cut into it. */
export function showsAlone({ id }: JointView, { receiving }: JointParts): boolean {
  return id === "face" && receiving.gone.length > 0;
}

const lines = (all: readonly FlatLine[], classes: readonly string[]): DrawingElement[] =>
  all.map(([from, to]) => ({ type: "line", from, to, classes }));

const filled = (points: readonly Vertex[], name: string): DrawingElement[] =>
  points.length > 2 ? [{ type: "poly", points, closed: true, classes: [name] }] : [];

/** The outline of a solid on paper; seen along its length the very outline, which may go in and out. */
function prismShape(eye: Eye, prism: Prism): Vec2[] {
  return Math.abs(dot(prism.w, eye.toward)) > ALONG_SIGHT
    ? prism.outline.map((o) => onPaper(eye, prismPoint(prism, o, prism.from)))
    : shapeOf(eye, prismCorners(prism));
}

/** Whether an outline nowhere goes in: it is as large as its hull. */
const isConvex = (shape: readonly Vec2[]): boolean =>
  Math.abs(area(shape)) > Math.abs(area(hull(shape))) - 1e-3;

/** The outline of a timber without its tenon: what is cut right through it along the line of sight is left out. */
function woodShape(eye: Eye, { body, gone }: TimberPart, edges: readonly Edge[]): Vec2[] {
  const depth = (points: readonly Vec3[]): readonly [number, number] => {
    const at = points.map((p) => dot(p, eye.toward));
    return [Math.min(...at), Math.max(...at)];
  };
  const [low, high] = depth(body.corners);
  const through = gone.filter((prism) => {
    const [from, to] = depth(prismCorners(prism));
    const isThrough = from < low + 0.1 && to > high - 0.1 && isEven(eye, prism, to - from);
    return isThrough && isConvex(prismShape(eye, prism));
  });
  const isBody = (p: Vec3): boolean => body.faces.every(({ normal, level }) => dot(normal, p) < level + 0.02);
  const left = edges.flatMap(({ from, to }) => [from, to]).filter(isBody);
  const corners = through.length > 0 ? body.corners : left;
  return notched(
    shapeOf(eye, corners),
    through.map((prism) => prismShape(eye, prism)),
  );
}

/** Whether a solid is as thick everywhere along the line of sight, so that its outline is all of it. */
const isEven = (eye: Eye, prism: Prism, thick: number): boolean => {
  const volume = Math.abs(area(prism.outline) * (prism.to - prism.from));
  return Math.abs(area(prismShape(eye, prism))) * thick < volume * 1.01;
};

const liesOn = ({ from, to }: Edge, plane: EndPlane): boolean =>
  [from, to].every((p) => Math.abs(dot(sub(p, plane.point), plane.normal)) < 1e-3);

const turnedAway = (eye: Eye, plane: EndPlane): boolean => Math.abs(dot(plane.normal, eye.toward)) < FACING;

/** The zigzag where a timber goes on; it stands for the edges of the break. */
function breakLines(
  eye: Eye,
  { breaks }: TimberPart,
  edges: readonly Edge[],
  size: number,
): DrawingElement[] {
  return breaks
    .filter((plane) => turnedAway(eye, plane))
    .flatMap((plane): DrawingElement[] => {
      const ends = edges
        .filter((edge) => liesOn(edge, plane))
        .flatMap(({ from, to }) => [onPaper(eye, from), onPaper(eye, to)]);
      const [a, b] = farthest(ends);
      if (!a || !b) return [];
      const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
      const wide = Math.hypot(dx, dy);
      if (wide < 0.1) return [];
      const tooth = Math.min(0.45 * size, wide / 6);
      const at = (share: number, out: number): Vertex => [
        a[0] + dx * share - (dy / wide) * out,
        a[1] + dy * share + (dx / wide) * out,
      ];
      const step = tooth / wide;
      const points = [
        at(0, 0),
        at(0.5 - step, 0),
        at(0.5 - step / 2, tooth),
        at(0.5 + step / 2, -tooth),
        at(0.5 + step, 0),
        at(1, 0),
      ];
      return [{ type: "poly", points, closed: false, classes: ["break"] }];
    });
}

function farthest(points: readonly Vec2[]): readonly Vec2[] {
  let best: readonly Vec2[] = [];
  let most = 0;
  points.forEach((a, i) => {
    for (const b of points.slice(i + 1)) {
      const wide = Math.hypot(b[0] - a[0], b[1] - a[1]);
      if (wide > most) [most, best] = [wide, [a, b]];
    }
  });
  return best;
}

/** A peg seen from its end is its hole; from the side the two hidden edges of it, its center line between them. */
function pegLines(eye: Eye, peg: Peg): DrawingElement[] {
  const way = unit(sub(peg.to, peg.from));
  const [from, to] = [onPaper(eye, peg.from), onPaper(eye, peg.to)];
  if (Math.abs(dot(way, eye.toward)) > ALONG_SIGHT)
    return [{ type: "circle", center: from, radius: peg.diameter / 2, classes: ["peg-hole"] }];
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (!(long > 0)) return [];
  const [nx, ny] = [
    (-(to[1] - from[1]) / long) * (peg.diameter / 2),
    ((to[0] - from[0]) / long) * (peg.diameter / 2),
  ];
  return [-1, 1].map((side) => ({
    type: "line",
    from: [from[0] + side * nx, from[1] + side * ny],
    to: [to[0] + side * nx, to[1] + side * ny],
    classes: ["hidden"],
  }));
}

/** A triangle that stands on the edge of the reference face, where the view shows that face as a line. */
function referenceMark(
  joint: Joint,
  view: JointView,
  { receiving }: JointParts,
  size: number,
): DrawingElement[] {
  const { face } = joint;
  if (face.reference === 0 || Math.abs(dot(face.across, view.eye.toward)) > 0.5) return [];
  const middle = scale(receiving.body.corners.reduce(add, [0, 0, 0] as Vec3), 1 / 8);
  const edge = face.reference > 0 ? face.edges[1] : face.edges[0];
  const at = add(middle, scale(face.across, edge - dot(sub(middle, face.origin), face.across)));
  const [x, y] = onPaper(view.eye, at);
  const out = scale(face.across, face.reference);
  const [ox, oy] = [dot(out, view.eye.right), dot(out, view.eye.up)];
  const [tall, half] = [0.7 * size, 0.4 * size];
  return filled(
    [
      [x, y],
      [x + ox * tall - oy * half, y + oy * tall + ox * half],
      [x + ox * tall + oy * half, y + oy * tall - ox * half],
    ],
    "reference-mark",
  );
}

/**
 * Draws one view about the face's origin.
 * @param size em of the drawing's text, inches of the frame: the breaks and marks follow it
 */
export function drawJointView(
  joint: Joint,
  view: JointView,
  parts: JointParts,
  edges: JointEdges,
  size: number,
): DrawingElement[] {
  const { eye } = view;
  const { solids } = joint;
  const alone = showsAlone(view, parts);
  const receiving = { part: parts.receiving, edges: edges.receiving };
  const timbers = alone ? [receiving] : [{ part: parts.joined, edges: edges.joined }, receiving];
  const shown = alone ? edges.receiving : [...edges.joined, ...edges.receiving, ...edges.wedges];
  const broken = timbers.flatMap(({ part }) => part.breaks).filter((plane) => turnedAway(eye, plane));
  const drawn = shown.filter(
    (edge) => !broken.some((plane) => liesOn(edge, plane)) && length(sub(edge.to, edge.from)) > 0,
  );
  const hiding = [...timbers.map(({ part }) => part.solid), ...(alone ? [] : parts.wedges)];
  const { seen, hidden } = seenLines(eye, drawn, hiding);
  const shapes = (prisms: readonly Prism[], name: string): DrawingElement[] =>
    prisms.flatMap((prism) => {
      const shape = prismShape(eye, prism);
      return Math.abs(area(shape)) > 1e-3 ? filled(shape, name) : [];
    });
  return [
    ...(alone ? [] : shapes(solids.tenons, "wood")),
    ...timbers.flatMap(({ part, edges: own }) => filled(woodShape(eye, part, own), "wood")),
    ...(alone
      ? [...solids.housings, ...solids.mortises].flatMap((prism) =>
          shapes([prism], isConvex(prismShape(eye, prism)) ? "gone" : "air"),
        )
      : [...shapes(solids.tenons, "inner-wood"), ...shapes(solids.wedges, "inner-wedge")]),
    ...lines(hidden, ["hidden"]),
    ...[...solids.pegs, ...(solids.screws ?? [])].flatMap((pin) => pegLines(eye, pin)),
    ...lines(seen, ["seen"]),
    ...timbers.flatMap(({ part, edges: own }) => breakLines(eye, part, own, size)),
    ...referenceMark(joint, view, parts, size),
  ];
}
