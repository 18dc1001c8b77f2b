/** Timbers on paper: true outlines with notches and hollows, edges that show, and the hatching of what is cut. */
import type { Say } from "../core/checks/say.ts";
import type { Joint, Prism } from "../core/joinery/joint.ts";
import { isScarf } from "../core/joinery/scarf.ts";
import { add, cross, dot, scale, sub, type Vec2, type Vec3 } from "../core/model/vec.ts";
import type { Body } from "./body.ts";
import type { DrawingElement, Vertex } from "./drawing.ts";
import { area, hatch, hull, inside, notched } from "./outline.ts";
import { project, type Sight } from "./views.ts";

/** cosine within which a face counts as seen square on */
const SQUARE_ON = 0.9995;

const prismCorners = (prism: Prism): Vec3[] =>
  [prism.from, prism.to].flatMap((w) =>
    prism.outline.map(([u, v]) =>
      add(prism.base, add(scale(prism.u, u), add(scale(prism.v, v), scale(prism.w, w)))),
    ),
  );

const extent = (points: readonly Vec3[], axis: Vec3): readonly [number, number] => {
  const along = points.map((p) => dot(p, axis));
  return [Math.min(...along), Math.max(...along)];
};

/** Notches that run through the whole breadth of the timber toward the eye, so that the outline shows them. */
function openNotches(sight: Sight, body: Body, joints: readonly Joint[]): Vec2[][] {
  const [low, high] = extent(body.corners, sight.toward);
  return joints.flatMap(({ of, solids }) =>
    (of.id === body.timber.id ? solids.notches : solids.mortises).flatMap((prism) => {
      const corners = prismCorners(prism);
      const [from, to] = extent(corners, sight.toward);
      const through = Math.abs(dot(prism.w, sight.toward)) > SQUARE_ON && from < low + 0.1 && to > high - 0.1;
      // seen square on, its two ends lie on each other
      return through ? [corners.slice(0, prism.outline.length).map((p) => project(sight, p))] : [];
    }),
  );
}

/** The outline with the hollow of a curved timber seen square on: its long edge becomes an arc into the wood. */
function hollowed(sight: Sight, body: Body): Vertex[] | undefined {
  const { timber, flat } = body;
  const curve = timber.curve;
  if (curve === undefined || body.cut || Math.abs(dot(timber.widthDir, sight.toward)) < SQUARE_ON)
    return undefined;
  // corners with one width sign: the straight edge from foot to head, and the hollow edge back
  const [straight, hollow] = curve.side > 0 ? [0, 3] : [3, 0];
  const ring = [flat[straight], flat[straight + 4], flat[hollow + 4], flat[hollow]];
  const [a, b, c, d] = ring;
  if (a === undefined || b === undefined || c === undefined || d === undefined) return undefined;
  const chord = Math.hypot(d[0] - c[0], d[1] - c[1]);
  if (!(chord > 0) || !(curve.rise > 0)) return undefined;
  // tan(angle/4) = 2 rise / chord; the arc bends into the wood, against the ring's own turn
  const bulge = ((2 * curve.rise) / chord) * (area([a, b, c, d]) > 0 ? -1 : 1);
  return [a, b, [c[0], c[1], bulge], d];
}

/** Edges of the solid between two faces that both show: a tail cut, the upper face of a rafter seen from the eave. */
function showingEdges(sight: Sight, body: Body): DrawingElement[] {
  if (body.cut) return [];
  const { corners, flat } = body;
  const at = (i: number): Vec3 => corners[i] ?? [0, 0, 0];
  const middle = scale(corners.reduce(add, [0, 0, 0] as Vec3), 1 / Math.max(1, corners.length));
  // foot, head, then the side after each long edge
  const faces = [
    [0, 1, 2, 3],
    [4, 5, 6, 7],
    ...[0, 1, 2, 3].map((i) => [i, (i + 1) % 4, ((i + 1) % 4) + 4, i + 4]),
  ];
  const shows = faces.map((face) => {
    const [p, q, r, s] = face.map(at);
    if (p === undefined || q === undefined || r === undefined || s === undefined) return false;
    const normal = cross(sub(r, p), sub(s, q));
    const outward = dot(normal, sub(p, middle)) < 0 ? -1 : 1;
    return (dot(normal, sight.toward) * outward) / Math.max(1e-9, Math.hypot(...normal)) > 0.01;
  });
  const side = (i: number): boolean => shows[2 + (i % 4)] === true;
  const edges: [number, number][] = [];
  for (let i = 0; i < 4; i++) {
    if (side(i) && side(i + 3)) edges.push([i, i + 4]);
    if (side(i) && shows[0]) edges.push([i, (i + 1) % 4]);
    if (side(i) && shows[1]) edges.push([i + 4, ((i + 1) % 4) + 4]);
  }
  return edges.flatMap(([i, j]): DrawingElement[] => {
    const [from, to] = [flat[i], flat[j]];
    return from && to ? [{ type: "line", from, to, classes: ["edge"] }] : [];
  });
}

/** `post@A1, 8 in × 8 in, 7'-10 1/2" long`: the stick as it is cut, tenons included. */
function titleOf(body: Body, say: Say): string {
  const { id, width, depth, length } = body.timber;
  const words = { id, width: say.length(width), depth: say.length(depth), length: say.length(length) };
  return say.text("{id}, {width} × {depth}, {length} long", words);
}

/**
 * Draws bodies that are already in painter's order.
 * @param joints every joint of the frame: those cut on a timber give its notches and tenons, scarfs on both
 * @returns one group for each body, in the same order
 */
export function drawTimbers(
  sight: Sight,
  bodies: readonly Body[],
  joints: readonly Joint[],
  say: Say,
  hatchSpacing: number,
): DrawingElement[] {
  const cutOn = new Map<string, Joint[]>();
  const cut = (timber: string, joint: Joint): void => {
    const own = cutOn.get(timber);
    if (own === undefined) cutOn.set(timber, [joint]);
    else own.push(joint);
  };
  for (const joint of joints) {
    cut(joint.of.id, joint);
    // both halves of a scarf lie in one plane: whichever is drawn last must not cover the other
    if (isScarf(joint.kind)) cut(joint.into.id, joint);
  }
  return bodies.map((body, i) => {
    const own = cutOn.get(body.timber.id) ?? [];
    const arc = hollowed(sight, body);
    const notches = body.cut || arc !== undefined ? [] : openNotches(sight, body, own);
    const points = arc ?? (notches.length > 0 ? notched(body.outline, notches) : body.outline);
    const lines = body.cut
      ? hatch(body.outline, hatchSpacing).map(
          ([from, to]): DrawingElement => ({ type: "line", from, to, classes: ["hatch"] }),
        )
      : arc === undefined
        ? showingEdges(sight, body)
        : [];
    return {
      type: "group",
      classes: ["timber", `kind-${body.timber.kind}`, ...(body.cut ? ["section"] : [])],
      id: body.timber.id,
      path: body.timber.path,
      title: titleOf(body, say),
      covered: isCovered(body, bodies.slice(i + 1)),
      children: [{ type: "poly", points, closed: true }, ...lines],
    };
  });
}

/** Whether one nearer timber hides all of it. */
function isCovered(body: Body, nearer: readonly Body[]): boolean {
  return nearer.some(
    (front) =>
      front.timber.curve === undefined &&
      front.box.left <= body.box.left + 0.01 &&
      front.box.right >= body.box.right - 0.01 &&
      front.box.bottom <= body.box.bottom + 0.01 &&
      front.box.top >= body.box.top - 0.01 &&
      body.outline.every((p) => inside(front.outline, p, 0.01)),
  );
}

/** @returns the outline of a straight solid on paper */
export const prismOutline = (sight: Sight, prism: Prism): Vec2[] =>
  hull(prismCorners(prism).map((p) => project(sight, p)));
