/** The roof over its rafters or purlins: its deck seen from the end, its edges from the side, and the pitch as a triangle. */
import type { Say } from "../core/checks/say.ts";
import type { Model, RoofSlope } from "../core/model/model.ts";
import { solidOf } from "../core/model/solid.ts";
import { dot, sub, type Vec2 } from "../core/model/vec.ts";
import { inches } from "../core/quantity/length.ts";
import { deckCarriers } from "../core/roof/deck-carriers.ts";
import type { Body } from "./body.ts";
import type { DrawingElement } from "./drawing.ts";
import type { Layout } from "./layout.ts";
import { nearness, project, type Sight } from "./views.ts";

/** drawn thickness where the file names a covering but no deck */
const BARE_COVERING = 0.25;

/** A deck's lower face on paper, from the eave up; `out` is the way to the weather, one inch long. */
interface Topside {
  readonly slope: RoofSlope;
  readonly low: Vec2;
  readonly high: Vec2;
  readonly out: Vec2;
}

/** The plane on which a slope's deck lies: on the upper faces of what carries it; undefined where the view shows none of that. */
function topside(
  model: Model,
  slope: RoofSlope,
  sight: Sight,
  shown: ReadonlySet<string>,
): Topside | undefined {
  const carriers = deckCarriers(model, slope);
  if (!carriers.some(({ id }) => shown.has(id))) return undefined;
  const { point, normal } = slope.plane;
  const corners = carriers.flatMap((timber) => solidOf(timber).corners);
  const over = Math.max(...corners.map((p) => dot(sub(p, point), normal)));
  const inward = -Math.sign(normal[1]);
  const at = (run: number): Vec2 =>
    project(sight, [
      slope.deckFrom,
      point[1] + inward * run,
      point[2] + run * slope.slope + over / Math.cos(slope.angle),
    ]);
  const [low, high] = [at(-slope.eaveOverhang), at(slope.peakRun)];
  if (![...low, ...high].every(Number.isFinite)) return undefined;
  return { slope, low, high, out: [normal[sight.across], normal[2]] };
}

/** The decks of all slopes that a view shows. */
function topsides(model: Model, sight: Sight, bodies: readonly Body[]): Topside[] {
  const { roof } = model;
  const shown = new Set(bodies.map((body) => body.timber.id));
  return (roof?.slopes ?? []).flatMap((slope) => topside(model, slope, sight, shown) ?? []);
}

const shift = (p: Vec2, by: Vec2, k: number): Vec2 => [p[0] + by[0] * k, p[1] + by[1] * k];

/** Where the line through `a` and `b` reaches x; `b` when it is upright. */
function atX(a: Vec2, b: Vec2, x: number): Vec2 {
  const run = b[0] - a[0];
  return Math.abs(run) < 1e-6 ? b : [x, a[1] + ((b[1] - a[1]) * (x - a[0])) / run];
}

/** Plumb at the top, where two slopes close over the ridge; square to the slope at the eave. */
function fromTheEnd(tops: readonly Topside[], thickness: number): DrawingElement[] {
  return tops.map(({ low, high, out }) => {
    const outer = shift(low, out, thickness);
    const top = atX(outer, shift(high, out, thickness), high[0]);
    return { type: "poly", closed: true, points: [low, high, top, outer] };
  });
}

/** Edges only: a filled face would lie over the rafters and take their clicks. */
function fromTheSide(sight: Sight, tops: readonly Topside[]): DrawingElement[] {
  const [nearest] = [...tops].sort((a, b) => reach(sight, b.slope) - reach(sight, a.slope));
  if (nearest === undefined) return [];
  const { deckFrom, deckTo } = nearest.slope;
  const corners: Vec2[] = [
    [deckFrom, nearest.low[1]],
    [deckTo, nearest.low[1]],
    [deckTo, nearest.high[1]],
    [deckFrom, nearest.high[1]],
  ];
  return corners.map((from, i) => ({ type: "line", from, to: corners[(i + 1) % 4] ?? from }));
}

const reach = (sight: Sight, slope: RoofSlope): number => nearness(sight, slope.plane.point);

/** @returns deck and covering over the rafters or purlins that the view shows */
export function drawRoof(model: Model, sight: Sight, bodies: readonly Body[], say: Say): DrawingElement[] {
  const entry = model.frame.roof;
  if (entry === undefined || (entry.deck === undefined && entry.covering === undefined)) return [];
  const tops = topsides(model, sight, bodies);
  const boards = entry.deck?.thickness === undefined ? 0 : inches(entry.deck.thickness);
  const thickness = boards > 0 ? boards : BARE_COVERING;
  const children = sight.across === 1 ? fromTheEnd(tops, thickness) : fromTheSide(sight, tops);
  if (children.length === 0) return [];
  const covering =
    entry.covering === undefined ? undefined : say.text(entry.covering.kind.replaceAll("-", " "));
  const title = covering === undefined ? say.text("roof") : say.text("roof: {covering}", { covering });
  return [{ type: "group", classes: ["roof"], id: "roof", path: entry.path, title, children }];
}

/** A slope as metric trades say it: `35° · 70 %`. */
function metricSlope(slope: number, say: Say): string {
  return say.text("{angle} · {percent}", {
    angle: say.angle((Math.atan(slope) * 180) / Math.PI),
    percent: say.percent(slope),
  });
}

/** The pitch as a right-angled triangle over the first slope seen from the end, run level and rise plumb. */
export function drawPitch(
  model: Model,
  sight: Sight,
  bodies: readonly Body[],
  layout: Layout,
): DrawingElement[] {
  const top = sight.across === 0 ? undefined : topsides(model, sight, bodies)[0];
  if (top === undefined || !(top.slope.slope > 0)) return [];
  const { slope } = top;
  const pitch = model.frame.roof?.pitch;
  const { say, size: s } = layout;
  const [rise, run] = pitch === undefined ? [slope.slope * 12, 12] : [pitch.rise, pitch.run];
  const length = Math.min(5 * s, (3 * s) / slope.slope);
  const way = top.high[0] >= top.low[0] ? 1 : -1;
  const middle = shift([(top.low[0] + top.high[0]) / 2, (top.low[1] + top.high[1]) / 2], top.out, 1.8 * s);
  const low: Vec2 = [middle[0] - (way * length) / 2, middle[1] - (length * slope.slope) / 2];
  const high: Vec2 = [low[0] + way * length, low[1] + length * slope.slope];
  const corner: Vec2 = [low[0], high[1]];
  const texts = say.metric
    ? layout.write(
        metricSlope(slope.slope, say),
        [{ x: (low[0] + high[0]) / 2, y: corner[1] + 0.3 * s, anchor: "middle" }],
        ["dimension"],
      )
    : [
        ...layout.write(
          say.number(run),
          [{ x: (low[0] + high[0]) / 2, y: corner[1] + 0.3 * s, anchor: "middle" }],
          ["dimension"],
        ),
        ...layout.write(
          say.number(rise),
          [
            {
              x: corner[0] - way * 0.4 * s,
              y: (low[1] + corner[1]) / 2 - 0.3 * s,
              anchor: way > 0 ? "end" : "start",
            },
          ],
          ["dimension"],
        ),
      ];
  return [
    {
      type: "group",
      classes: ["dimension", "pitch"],
      children: [{ type: "poly", closed: true, points: [low, high, corner] }, ...texts],
    },
  ];
}
