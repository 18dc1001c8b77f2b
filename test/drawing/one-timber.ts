/** One timber of a hand-made frame, analysed under given loads, so that its diagrams can be told by hand. */
import { prepare } from "../../server/core/analysis/analyse.ts";
import type { FrameSupport, SpreadLoad } from "../../server/core/analysis/structure.ts";
import { makeSay } from "../../server/core/checks/speak.ts";
import { asdCombinations } from "../../server/core/loads/combinations.ts";
import { buildModel } from "../../server/core/model/build.ts";
import type { Timber } from "../../server/core/model/model.ts";
import { along, cross, type Vec3 } from "../../server/core/model/vec.ts";
import type { FrameResults } from "../../server/core/statics/frame-results.ts";
import { rectangleSection } from "../../server/core/statics/rectangle.ts";
import type { Piece } from "../../server/core/statics/skeleton.ts";
import { bodyOf } from "../../server/drawing/body.ts";
import { drawForces } from "../../server/drawing/forces.ts";
import type { DrawnForces } from "../../server/drawing/forces-basis.ts";
import type { ForceLayer } from "../../server/drawing/forces-cases.ts";
import { Layout } from "../../server/drawing/layout.ts";
import { sightOf } from "../../server/drawing/views.ts";
import { emptyFrame } from "./hand-model.ts";

/** psi */
export const E = 1_000_000;
/** em of the drawing, inches */
const SIZE = 3;

export interface OneTimber {
  readonly foot: Vec3;
  readonly axis: Vec3;
  readonly depthDir: Vec3;
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  /** of the foot, then of the head */
  readonly supports: readonly FrameSupport[];
  /** lb/in over all of its length, and lb at its head */
  readonly spread: Vec3;
  readonly tip?: Vec3;
}

function timberOf({ foot, axis, depthDir, length, width, depth }: OneTimber): Timber {
  return {
    id: "beam",
    member: "beam",
    kind: "plate",
    path: "/members/beam",
    class: undefined,
    width,
    depth,
    origin: foot,
    axis,
    widthDir: cross(depthDir, axis),
    depthDir,
    span: length,
    foot: { point: foot, normal: [-axis[0], -axis[1], -axis[2]] },
    head: { point: along(foot, axis, length), normal: axis },
    length,
    reference: { width: 0, depth: 0 },
    curve: undefined,
    rule: "free-ends",
    walls: [],
    bents: [],
  };
}

/** The front view (y to the right, z up) of the timber with a layer over it. */
export function drawOne(given: OneTimber, layer: ForceLayer): DrawnForces {
  const timber = timberOf(given);
  const head = along(given.foot, given.axis, given.length);
  const structure = {
    nodes: [
      { id: "foot", at: given.foot },
      { id: "head", at: head },
    ],
    elements: [
      {
        id: "beam#1",
        i: 0,
        j: 1,
        E,
        G: E / 16,
        ...rectangleSection(given.width, given.depth),
        ydir: given.depthDir,
      },
    ],
    links: [],
    supports: given.supports,
  };
  const none: Vec3 = [0, 0, 0];
  const spread: SpreadLoad = {
    kind: "spread",
    element: 0,
    from: 0,
    to: given.length,
    start: given.spread,
    end: given.spread,
  };
  const load = { id: "D", elementLoads: [spread], nodeLoads: [{ node: 1, force: given.tip ?? none }] };
  const prepared = prepare(structure);
  const combined = prepared.superpose([load]).combine("1", [1]);
  const piece: Piece = {
    timber,
    from: 0,
    to: given.length,
    i: { node: 0, arm: none },
    j: { node: 1, arm: none },
    jointI: undefined,
    jointJ: undefined,
  };
  const frame = {
    structure,
    pieces: [piece],
    elementsOf: new Map([["beam", [0]]]),
    timberOf: new Map([["beam#1", timber]]),
    ties: [],
  };
  const [combination] = asdCombinations("asce-7-16");
  const frameCase = { id: "1", combination, parts: [], vertical: true };
  const solved = { frameCase, seats: "hold", frame, combined, bracesNominal: false };
  const solution = {
    hold: frame,
    cases: [solved],
    mechanisms: prepared.found.mechanisms,
    failed: combined.status === "failed" ? [{ caseId: "1", faults: combined.faults }] : [],
  };
  const results = { solution, members: new Map() } as unknown as FrameResults;
  const say = makeSay("inch");
  const sight = sightOf(buildModel(emptyFrame()), "front", say);
  const body = bodyOf(sight, timber);
  if (!body) throw new Error("the timber has no place");
  return drawForces(sight, [body], { layer, caseId: "1", frame: results }, new Layout(SIZE, say));
}
