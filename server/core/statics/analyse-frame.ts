/** The whole frame analysis: combinations, timbers, joints, piers and racking. */
import { once } from "../analysis/once.ts";
import type { Roof } from "../frame/roof.ts";
import { groundedTimbers } from "../model/grounded.ts";
import type { Model } from "../model/model.ts";
import type { FrameResults } from "./frame-results.ts";
import { jointActions } from "./joint-actions.ts";
import { jointForces, pierReactions } from "./joint-forces.ts";
import { basisHolds, memberBasis } from "./member-basis.ts";
import { memberResults } from "./member-results.ts";
import type { JointActions } from "./prepared-frame.ts";
import { solveFrame } from "./solve-frame.ts";

/**
 * All that the forces depend on, as one text: where timbers lie and what they are, where they join and how stiffly, what
 * loads them. Sizes that only decide whether a force can be carried are not in it: while they are typed the forces stay.
 */
function signatureOf(model: Model, actions: JointActions): string {
  const { frame } = model;
  const grounded = groundedTimbers(model);
  return JSON.stringify([
    frame.basis,
    { ...frame.site, frostDepth: 0, soil: 0 },
    // what fastens the rafters takes no part in how the frame carries
    frame.roof && { ...frame.roof, rafters: withoutFasteners(frame.roof.rafters) },
    frame.floors,
    frame.siding,
    // what cannot be read is a gap, and not the same as what is not there
    frame.unreadLoads,
    model.timbers.map((t) => [
      t.id,
      t.kind,
      t.walls,
      t.bents,
      t.origin,
      t.axis,
      t.depthDir,
      t.span,
      t.width,
      t.depth,
      t.class?.name,
      grounded.has(t.id),
    ]),
    frame.classes.map((c) => [c, [...c.values]]),
    model.roof?.slopes.map((s) => ({ ...s, rafters: s.rafters.map((r) => r.id) })),
    model.joints.map((j) => [
      j.id,
      j.kind,
      j.of.id,
      j.end,
      j.into.id,
      j.meeting.point,
      // an end that meets two timbers hangs on the one that the file names
      j.assumed,
      actions.endSpring(j),
      actions.pulls(j.of),
    ]),
    model.meetings.map((m) => [m.a.id, m.b.id, m.point, m.area]),
    model.piers.map((p) => [p.id, p.timber?.id, p.top, p.groundLow]),
  ]);
}

/** Rafters by what decides how they carry: neither what fastens them nor what the rough sticks measure. */
function withoutFasteners(rafters: Roof["rafters"]): Roof["rafters"] {
  if (!rafters) return undefined;
  const { measured: _, ...perfect } = rafters;
  return { ...perfect, fasten: undefined, head: rafters.head && { ...rafters.head, fasten: undefined } };
}

/**
 * What the checks of timbers depend on besides the forces, as one text: cuts and hollows for their net sections, the sizes
 * of joints and piers for bearing, whether the roof has something heated under it for how far it may bend.
 */
function shapesOf(model: Model): string {
  return JSON.stringify([
    model.joints.map((j) => [j.id, j.sizes, j.solids]),
    model.timbers.map((t) => t.curve),
    model.frame.site.snow?.thermal,
    model.piers.map((p) => [p.diameter, p.entry.kind, p.entry.anchor?.standOff]),
  ]);
}

/**
 * @param previous the last answer: its forces serve again when nothing that they depend on has changed
 * @returns undefined for a model without timbers
 */
export function analyseFrame(model: Model, previous?: FrameResults): FrameResults | undefined {
  if (model.timbers.length === 0) return undefined;
  const actions = jointActions(model);
  const signature = signatureOf(model, actions);
  const kept = previous?.signature === signature ? previous : undefined;
  const solution = kept?.solution ?? solveFrame(model, actions, previous?.solution);
  // only frames that stand as they did ask for it
  const shapes = once(() => shapesOf(model));
  const sameFrame = previous?.solution.prepared === solution.prepared && previous.shapes() === shapes();
  const basis =
    sameFrame && basisHolds(previous.basis, solution.cases)
      ? previous.basis
      : memberBasis(model, solution.hold, solution.cases);
  const sameForces = kept !== undefined && basis === kept.basis;
  return {
    model,
    signature,
    shapes,
    solution,
    basis,
    members: sameForces ? kept.members : memberResults(basis, solution.cases, previous?.members),
    unchecked: basis.unchecked,
    joints: kept?.joints ?? jointForces(solution.cases),
    piers: pierReactions(model, solution.cases),
    racking: solution.racking,
  };
}
