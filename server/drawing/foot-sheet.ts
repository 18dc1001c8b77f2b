/** The drawing of a post's foot on its anchor: onto the straps, along them, and the post's end from below. */
import type { Say } from "../core/checks/say.ts";
import { heightsOf, type PostFoot } from "../core/joinery/foot/post-foot.ts";
import type { Drawing, DrawingElement, Vertex } from "./drawing.ts";
import { levelLanes, type Stretch, uprightLanes } from "./joint-lanes.ts";
import { moved } from "./moved.ts";
import { boxOfAll, captioned, grownText, jointSheet, sizesIn } from "./sheet-text.ts";

/** Post shown above the steel and pier below the end, in shares of the post. */
const ABOVE = 0.6;
const BELOW = 0.5;

interface View {
  readonly id: "front" | "side" | "face";
  readonly caption: string;
  readonly bare: readonly DrawingElement[];
  readonly level: readonly Stretch[];
  readonly upright: readonly Stretch[];
}

const corners = (left: number, right: number, low: number, high: number): Vertex[] => [
  [left, low],
  [right, low],
  [right, high],
  [left, high],
];

const rectangle = (left: number, right: number, low: number, high: number, name: string): DrawingElement[] =>
  right > left && high > low
    ? [{ type: "poly", closed: true, points: corners(left, right, low, high), classes: [name] }]
    : [];

const line = (from: Vertex, to: Vertex, name: string): DrawingElement => ({
  type: "line",
  from,
  to,
  classes: [name],
});

/** The four sides of a rectangle. */
function frameOf(left: number, right: number, low: number, high: number, name: string): DrawingElement[] {
  const all = corners(left, right, low, high);
  return all.map((from, i) => line(from, all[(i + 1) % 4] ?? from, name));
}

/** Where it goes on, a zigzag. */
function breakAt(left: number, right: number, at: number, size: number): DrawingElement {
  const tooth = Math.min(0.45 * size, (right - left) / 6);
  const middle = (left + right) / 2;
  const points: Vertex[] = [
    [left, at],
    [middle - tooth, at],
    [middle - tooth / 2, at + tooth],
    [middle + tooth / 2, at - tooth],
    [middle + tooth, at],
    [right, at],
  ];
  return { type: "poly", points, closed: false, classes: ["break"] };
}

/** Post and pier of an elevation so wide, both broken off; the post's end lies at height 0. */
function wood(foot: PostFoot, wide: number, size: number): DrawingElement[] {
  const { reach, standOff, pier } = foot;
  const high = reach + ABOVE * Math.max(foot.through, foot.breadth);
  const half = wide / 2;
  const top = -standOff.value;
  const low = top - BELOW * Math.max(foot.through, foot.breadth);
  const round = pier.diameter / 2;
  return [
    ...rectangle(-half, half, 0, high, "wood"),
    line([-half, 0], [half, 0], "seen"),
    line([-half, 0], [-half, high], "seen"),
    line([half, 0], [half, high], "seen"),
    breakAt(-half, half, high, size),
    line([-round, top], [round, top], "seen"),
    line([-round, low], [-round, top], "seen"),
    line([round, low], [round, top], "seen"),
    breakAt(-round, round, low, size),
  ];
}

/** Looked at along the bolts: the straps lie flat, their holes are round. */
function front(foot: PostFoot, size: number, say: Say): View {
  const { strap, row, breadth, standOff, dowel } = foot;
  const heights = row ? heightsOf(row) : [];
  const hidden = strap?.place === "in-kerf" ? "hidden" : "seen";
  const [hole] = foot.holes;
  const [first = 0, second] = heights;
  return {
    id: "front",
    caption: say.text("Onto the straps"),
    bare: [
      ...wood(foot, breadth, size),
      ...(strap
        ? frameOf(-strap.width / 2, strap.width / 2, -standOff.value, strap.height.value, hidden)
        : []),
      ...heights.map(
        (at): DrawingElement => ({
          type: "circle",
          center: [0, at],
          radius: (hole?.diameter ?? 0) / 2,
          classes: ["peg-hole"],
        }),
      ),
      ...(dowel ? frameOf(-dowel.diameter / 2, dowel.diameter / 2, 0, dowel.into, "hidden") : []),
    ],
    level: [
      // to the left edge: the words of a narrow strap stand at its right, where a line down from that edge would cross them
      ...(row ? [{ from: -breadth / 2, to: 0 }] : []),
      ...(strap ? [{ from: -strap.width / 2, to: strap.width / 2 }] : []),
    ],
    upright: [
      { from: -standOff.value, to: 0 },
      ...(row ? [{ from: 0, to: first }] : []),
      ...(second === undefined ? [] : [{ from: first, to: second }]),
      ...(strap && strap.height.from === "file" ? [{ from: 0, to: strap.height.value }] : []),
      ...(dowel ? [{ from: 0, to: dowel.into }] : []),
    ],
  };
}

/** Looked at square to the bolts: the straps stand on edge. */
function side(foot: PostFoot, size: number, say: Say): View {
  const { strap, row, through, standOff, holes } = foot;
  const half = through / 2;
  const steel = (left: number, right: number): DrawingElement[] =>
    strap ? frameOf(left, right, -standOff.value, strap.height.value, "seen") : [];
  const kerf = strap?.kerf ?? 0;
  const face = half - (strap?.letIn ?? 0);
  const thick = strap?.thickness ?? 0;
  return {
    id: "side",
    caption: say.text("Side"),
    bare: [
      ...wood(foot, through, size),
      ...(strap && kerf > 0
        ? [
            ...rectangle(-kerf / 2, kerf / 2, 0, strap.height.value, "air"),
            ...frameOf(-kerf / 2, kerf / 2, 0, strap.height.value, "seen"),
            ...steel(-thick / 2, thick / 2),
          ]
        : []),
      ...(strap && kerf === 0 ? steel(face, face + thick) : []),
      ...(strap?.place === "both-faces" ? steel(-face - thick, -face) : []),
      ...(row ? heightsOf(row) : []).flatMap((at) =>
        holes.slice(0, row?.kind === "screws" ? (strap?.sides ?? 1) : 1).flatMap(({ from, to, diameter }) => {
          const reckon = (p: typeof from): number =>
            (p[0] - foot.end[0]) * foot.run[0] +
            (p[1] - foot.end[1]) * foot.run[1] +
            (p[2] - foot.end[2]) * foot.run[2];
          const [a, b] = [reckon(from), reckon(to)];
          return [-1, 1].map((k) =>
            line([a, at + (k * diameter) / 2], [b, at + (k * diameter) / 2], "hidden"),
          );
        }),
      ),
    ],
    level: [
      ...(kerf > 0 ? [{ from: -kerf / 2, to: kerf / 2 }] : []),
      ...(strap && strap.letIn > 0 ? [{ from: face, to: half }] : []),
    ],
    upright: [],
  };
}

/** The post's end with what is cut out of it. */
function below(foot: PostFoot, say: Say): View {
  const { strap, through, breadth, dowel, plate } = foot;
  const [half, deep] = [breadth / 2, through / 2];
  const wide = Math.min(strap?.width ?? 0, breadth) / 2;
  const cut = (low: number, high: number, reach: number): DrawingElement[] => [
    ...rectangle(-reach, reach, low, high, "gone"),
    ...frameOf(-reach, reach, low, high, "seen"),
  ];
  return {
    id: "face",
    caption: say.text("From below"),
    bare: [
      ...rectangle(-half, half, -deep, deep, "wood"),
      ...frameOf(-half, half, -deep, deep, "seen"),
      ...(strap && strap.kerf > 0 ? cut(-strap.kerf / 2, strap.kerf / 2, half) : []),
      ...(strap && strap.letIn > 0 ? cut(deep - strap.letIn, deep, wide) : []),
      ...(strap && strap.letIn > 0 && strap.sides === 2 ? cut(-deep, strap.letIn - deep, wide) : []),
      ...(plate === undefined ? [] : frameOf(-plate / 2, plate / 2, -plate / 2, plate / 2, "hidden")),
      ...(dowel
        ? [{ type: "circle", center: [0, 0], radius: dowel.diameter / 2, classes: ["peg-hole"] } as const]
        : []),
    ],
    level: [{ from: -half, to: half }],
    upright: [{ from: -deep, to: deep }],
  };
}

function withMeasures({ bare, level, upright }: View, size: number, say: Say): DrawingElement[] {
  const box = boxOfAll(bare);
  return [
    ...bare,
    ...levelLanes(level, box, -1, size, say).elements,
    ...uprightLanes(upright, box, 1, size, say).elements,
  ];
}

/** @returns the title of the drawing: `post-foot@A1 · Post foot on a metal anchor` */
export const footTitle = (foot: PostFoot, say: Say): string =>
  `${foot.id} · ${say.text("Post foot on a metal anchor")}`;

function fastenerWords({ row, holes }: PostFoot, say: Say): string[] {
  if (!row) return [];
  const values = {
    count: row.count,
    diameter: say.length(row.diameter),
    length: say.length(row.length ?? 0),
    hole: say.length(holes[0]?.diameter ?? 0),
  };
  return [
    row.kind === "bolts"
      ? say.text("Bolts {diameter}: {count}, holes {hole}.", values)
      : say.text("Screws {diameter} × {length}: {count} in each strap.", values),
  ];
}

function sheetAt(foot: PostFoot, size: number, say: Say): Drawing {
  const gap = 1.6 * size;
  let edge = 0;
  const views = [front(foot, size, say), side(foot, size, say), below(foot, say)].map((view) => {
    const all = captioned(view.caption, withMeasures(view, size, say), boxOfAll(view.bare), size);
    const box = boxOfAll(all);
    const dx = edge - box.left;
    edge += box.right - box.left + gap;
    return { id: view.id, elements: all.map((element) => moved(element, dx, 0)) };
  });
  const title = footTitle(foot, say);
  const between = say.text("Foot of {of} on {into}.", { of: foot.post.id, into: foot.pier.id });
  const words = [sizesIn(say), ...fastenerWords(foot, say)];
  return jointSheet({ title, below: between, words, views }, size, say);
}

/**
 * Draws the foot of a post in three views.
 * @param say words its numbers in the file's units
 */
export function drawFootSheet(foot: PostFoot, say: Say): Drawing {
  return grownText(Math.max(foot.through, foot.breadth) / 8, (size) => sheetAt(foot, size, say));
}
