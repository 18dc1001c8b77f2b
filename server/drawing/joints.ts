/** What a joint hides in the wood: tenons and housings dashed, pegs, screws, wedges. */
import type { Say } from "../core/checks/say.ts";
import type { JointKindName } from "../core/frame/frame.ts";
import type { Joint, JointEnd, Peg, Prism } from "../core/joinery/joint.ts";
import { otherBlade } from "../core/joinery/kinds/bladed-scarf.ts";
import { dot, scale, sub, unit } from "../core/model/vec.ts";
import type { DrawingElement } from "./drawing.ts";
import { area } from "./outline.ts";
import { prismOutline } from "./timbers.ts";
import { project, type Sight } from "./views.ts";

const NAMES: Readonly<Record<JointKindName, string>> = {
  "mortise-and-tenon": "mortise and tenon",
  "wedged-half-dovetail": "wedged half dovetail",
  "brace-tenon": "brace tenon",
  "birds-mouth": "bird's mouth",
  "step-lap": "step-lap seat",
  housed: "housed end",
  "housed-dovetail": "housed dovetail",
  pocket: "drop-in pocket",
  "corner-half-lap": "corner half lap",
  "corner-bridle": "corner bridle",
  "dovetail-lap": "dovetail lap",
  "stub-tenon": "stub tenon",
  "screwed-brace": "screwed brace",
  "half-lap-scarf": "half-lap scarf",
  "bladed-scarf": "bladed scarf",
  "stop-splayed-scarf": "stop-splayed scarf",
  "rafter-heel": "rafter heel",
  "rafter-pair": "rafter pair",
};

const ENDS: Readonly<Record<JointEnd, string>> = {
  foot: "{id}, {kind}: foot of {of} in {into}",
  head: "{id}, {kind}: head of {of} in {into}",
  side: "{id}, {kind}: {of} on {into}",
};

const outlines = (sight: Sight, prisms: readonly Prism[], name: string): DrawingElement[] =>
  prisms.flatMap((prism): DrawingElement[] => {
    const points = prismOutline(sight, prism);
    // seen along a flat side a solid shrinks to a line, which its timber's edge already shows
    return Math.abs(area(points)) > 1e-3 ? [{ type: "poly", points, closed: true, classes: [name] }] : [];
  });

/** A peg or screw seen from its end is a circle; from the side, the hidden edges of its hole. */
function drawPeg(sight: Sight, peg: Peg): DrawingElement[] {
  const way = sub(peg.to, peg.from);
  const [from, to] = [project(sight, peg.from), project(sight, peg.to)];
  if (Math.abs(dot(unit(way), sight.toward)) > 0.99) {
    return [{ type: "circle", center: from, radius: peg.diameter / 2, classes: ["peg"] }];
  }
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (!(length > 0)) return [];
  const [nx, ny] = scale([-(to[1] - from[1]), to[0] - from[0], 0], peg.diameter / 2 / length);
  return [-1, 1].map((side) => ({
    type: "line",
    from: [from[0] + side * nx, from[1] + side * ny],
    to: [to[0] + side * nx, to[1] + side * ny],
    classes: ["peg", "dashed"],
  }));
}

/** @returns the group of one joint */
export function drawJoint(sight: Sight, joint: Joint, say: Say): DrawingElement {
  const { solids } = joint;
  return {
    type: "group",
    classes: ["joint", `joint-${joint.kind}`],
    id: joint.id,
    path: joint.path,
    title: say.text(ENDS[joint.end], {
      id: joint.id,
      kind: say.text(NAMES[joint.kind]),
      of: joint.of.id,
      into: joint.into.id,
    }),
    children: [
      ...outlines(sight, solids.housings, "housing"),
      ...outlines(sight, [...solids.tenons, ...otherBlade(joint)], "tenon"),
      ...outlines(sight, solids.tines ?? [], "tenon"),
      ...outlines(sight, solids.wedges, "wedge"),
      ...[...solids.pegs, ...(solids.screws ?? [])].flatMap((peg) => drawPeg(sight, peg)),
    ],
  };
}
