/** The analysis model as plain data: one list of nodes and elements, two ways in which rafters sit, every combination. */
import type { FrameLink, FrameSupport, LoadCase, PointLoad, SpreadLoad } from "../core/analysis/structure.ts";
import type { Say } from "../core/checks/say.ts";
import { frameCaseWords } from "../core/statics/case-words.ts";
import { endForces, isSolved } from "../core/statics/force-table.ts";
import type { FrameSolution, SolvedCase } from "../core/statics/solve-frame.ts";
import type { FrameStructure } from "../core/statics/structure.ts";
import { figure, figures } from "./figures-json.ts";

const UNITS = { length: "in", force: "lb", moment: "lb-in", stress: "psi", angle: "rad" } as const;

const CONVENTIONS = [
  "Global axes are right-handed: x along the walls from the first bent, y across the bents from the first wall, z up. Six numbers are three forces (or shifts), then three moments (or turns).",
  "An element runs from the end of offsetI (from node i, global axes) to the end of offsetJ; offsets are rigid. Its local x runs from end to end, local y is the part of ydir square to x (the timber's depth), local z = x cross y.",
  "Iz bends in the local x-y plane, Iy in the local x-z plane, J twists. Shear does not deform a section.",
  "releaseI and releaseJ name local turns that are free at that end; endSpringI and endSpringJ are springs between node and end along local motions, lb/in or lb-in/rad.",
  "An element with axialOnly carries force along its length only; loads across it go to its two ends by the lever rule.",
  "oneWay push: the element takes no tension. Those named in `dropped` of a combination have let go: leave them out and give their loads to their ends: those across them by the lever rule, those along them half to each. Where bracesBothWays is true no element is one-way.",
  "A link is a spring between two points along a fixed direction, a vector of length 1, rigid offsets leading from its nodes to the points; its points lie on one line along the direction.",
  "Supports hold the motions named in fixed, global axes. Turns of a node that nothing resists are idle: hold them by any soft spring.",
  "seats hold: rafters are held on the plates all ways. seats slide: they slide level but bear, and the ridge is held sideways; what that hold carries is put back as loads on the plates' nodes.",
  "Spread loads run from one distance to another from end i of the element, force per length of the element in global axes, straight in between.",
  "endForces are the twelve forces on the element at end i and end j, local axes, behind the springs and releases: tension shows as a negative first and a positive seventh number. A point load at the very end counts with the end.",
  "displacements are the shifts and turns of every node, global axes; a turn that is idle may be anything.",
] as const;

/** Arms, releases and springs only where there are any. */
function elementsOf(frame: FrameStructure) {
  const { nodes, elements } = frame.structure;
  return elements.map((e, index) => ({
    id: e.id,
    timber: frame.pieces[index]?.timber.id ?? "",
    i: nodes[e.i]?.id ?? "",
    j: nodes[e.j]?.id ?? "",
    ...(e.offsetI ? { offsetI: figures(e.offsetI) } : {}),
    ...(e.offsetJ ? { offsetJ: figures(e.offsetJ) } : {}),
    A: figure(e.A),
    Iy: figure(e.Iy ?? 0),
    Iz: figure(e.Iz ?? 0),
    J: figure(e.J ?? 0),
    E: figure(e.E),
    G: figure(e.G ?? 0),
    ydir: figures(e.ydir),
    ...(e.releaseI && e.releaseI.length > 0 ? { releaseI: e.releaseI } : {}),
    ...(e.releaseJ && e.releaseJ.length > 0 ? { releaseJ: e.releaseJ } : {}),
    ...(e.endSpringI ? { endSpringI: e.endSpringI } : {}),
    ...(e.endSpringJ ? { endSpringJ: e.endSpringJ } : {}),
    ...(e.axialOnly ? { axialOnly: true } : {}),
    ...(e.oneWay ? { oneWay: e.oneWay } : {}),
  }));
}

type NodeName = (node: number) => string;

const namesOf =
  (frame: FrameStructure): NodeName =>
  (node) =>
    frame.structure.nodes[node]?.id ?? "";

const linkOf = (l: FrameLink, name: NodeName) => ({
  id: l.id,
  i: name(l.i),
  j: name(l.j),
  ...(l.offsetI ? { offsetI: figures(l.offsetI) } : {}),
  ...(l.offsetJ ? { offsetJ: figures(l.offsetJ) } : {}),
  direction: figures(l.direction),
  stiffness: figure(l.stiffness),
});

const supportOf = (s: FrameSupport, name: NodeName) => ({
  node: name(s.node),
  fixed: Object.keys(s.fixed ?? {}),
});

/** What differs by how the rafters sit. */
function seatsOf(solved: SolvedCase) {
  const { frame, seats } = solved;
  const { links, supports } = frame.structure;
  const name = namesOf(frame);
  return {
    seats,
    links: (links ?? []).map((l) => linkOf(l, name)),
    supports: supports.map((s) => supportOf(s, name)),
  };
}

function elementLoad(load: PointLoad | SpreadLoad, idOf: (element: number) => string) {
  const element = idOf(load.element);
  return load.kind === "point"
    ? { element, kind: load.kind, at: figure(load.at), force: figures(load.force ?? [0, 0, 0]) }
    : {
        element,
        kind: load.kind,
        from: figure(load.from ?? 0),
        to: figure(load.to ?? 0),
        start: figures(load.start),
        end: figures(load.end ?? load.start),
      };
}

function loadsOf(load: LoadCase, frame: FrameStructure) {
  const name = namesOf(frame);
  const idOf = (element: number): string => frame.structure.elements[element]?.id ?? "";
  return {
    elements: (load.elementLoads ?? []).map((l) => elementLoad(l, idOf)),
    nodes: (load.nodeLoads ?? []).map(({ node, force, moment }) => ({
      node: name(node),
      force: figures(force ?? [0, 0, 0]),
      moment: figures(moment ?? [0, 0, 0]),
    })),
  };
}

/** What Bentwright found, for comparison. */
function answerOf(solved: SolvedCase) {
  const { combined, frame } = solved;
  const name = namesOf(frame);
  return {
    status: combined.status,
    dropped: combined.dropped,
    reactions: combined.reactions().map(({ node, force }) => ({ node: name(node), force: figures(force) })),
    endForces: isSolved(solved)
      ? frame.structure.elements.map(({ id }, index) => ({
          element: id,
          i: figures(endForces(combined.tips, index, "i")),
          j: figures(endForces(combined.tips, index, "j")),
        }))
      : [],
    displacements:
      combined.status === "failed"
        ? []
        : frame.structure.nodes.map(({ id }, node) => ({
            node: id,
            motion: figures(combined.displacement(node)),
          })),
  };
}

/** @returns what schemas/model.schema.json describes, without its head */
export function modelJson(solution: FrameSolution, say: Say) {
  const { hold, cases } = solution;
  const byHold = cases.filter((c) => c.seats === "hold");
  const bySlide = cases.filter((c) => c.seats === "slide");
  return {
    units: UNITS,
    conventions: CONVENTIONS,
    nodes: hold.structure.nodes.map(({ id, at }) => ({ id, at: figures(at) })),
    elements: elementsOf(hold),
    seats: [byHold[0], bySlide[0]].flatMap((solved) => (solved ? [seatsOf(solved)] : [])),
    combinations: cases.map((solved) => ({
      id: solved.frameCase.id,
      seats: solved.seats,
      text: solved.frameCase.combination.text,
      words: frameCaseWords(solved.frameCase, say),
      bracesBothWays: solved.bracesNominal,
      loads: loadsOf(solved.load(), solved.frame),
      answer: answerOf(solved),
    })),
  };
}
