/**
 * Where the load of a timber is from: the roof it carries, and what other timbers set down on it. Areas follow the
 * trade's rule of halves; forces are those of the analysis.
 */
import type { Model, Timber } from "../model/model.ts";
import { dot, sub, type Vec3 } from "../model/vec.ts";
import { forceTable } from "./force-table.ts";
import { endForce, forceOnFirst } from "./joint-forces.ts";
import type { Strip } from "./line-loads.ts";
import type { SolvedCase } from "./solve-frame.ts";

const SQUARE_INCHES = 144;

/** Where a timber rests on others, along its own axis, in order. */
function restsOf(model: Model, timber: Timber): { readonly on: string; readonly at: number }[] {
  return model.joints
    .filter((j) => j.of.id === timber.id)
    .map((j) => ({ on: j.into.id, at: dot(sub(j.meeting.point, timber.origin), timber.axis) }))
    .sort((a, b) => a.at - b.at);
}

/**
 * Roof that each timber carries, measured on the slope: a rafter's (or purlin's) own strip, and for what it rests on the
 * strip up to half the way to the next rest; the overhang goes to the rest beside it.
 * @returns ft² by timber id
 */
export function roofAreas(model: Model, strips: readonly Strip[]): Map<string, number> {
  const areas = new Map<string, number>();
  const give = (id: string, squareInches: number): void => {
    areas.set(id, (areas.get(id) ?? 0) + squareInches / SQUARE_INCHES);
  };
  for (const { timber, width, to } of strips) {
    give(timber.id, width * to);
    const rests = restsOf(model, timber);
    rests.forEach(({ on, at }, k) => {
      const before = rests[k - 1];
      const after = rests[k + 1];
      const start = before ? (before.at + at) / 2 : 0;
      const end = after ? (at + after.at) / 2 : to;
      give(on, width * Math.max(0, end - start));
    });
  }
  return areas;
}

/** Load that other timbers set down on one, under the combination in which it is most. */
export interface Brought {
  /** the timber that takes it */
  readonly timber: string;
  readonly caseId: string;
  /** lb straight down, all together */
  readonly total: number;
  /** lb by the name of the entry that brings it, what lifts taken off; the most first, none that only holds up */
  readonly from: readonly { readonly member: string; readonly force: number; readonly timbers: number }[];
}

type Give = (taker: Timber, giver: Timber, down: number) => void;

/** Every contact of two timbers presses one down by what it holds the other up. */
function contacts(solved: SolvedCase, give: Give): void {
  const table = forceTable(solved);
  if (!table) return;
  const pass = (a: Timber, b: Timber, onA: Vec3): void => {
    give(a, b, -onA[2]);
    give(b, a, onA[2]);
  };
  solved.frame.pieces.forEach(({ timber, jointI, jointJ }, index) => {
    if (jointI) pass(timber, jointI.into, endForce(timber, table, index, "i"));
    if (jointJ) pass(timber, jointJ.into, endForce(timber, table, index, "j"));
  });
  for (const { tie, springs } of solved.frame.ties)
    pass(tie.meeting.a, tie.meeting.b, forceOnFirst(solved, springs));
}

/** @returns for each of the timbers that takes load from others, the combination that brings it most */
export function broughtTo(cases: readonly SolvedCase[], timbers: readonly Timber[]): Brought[] {
  const wanted = new Set(timbers.map((t) => t.id));
  const most = new Map<string, Brought>();
  for (const solved of cases) {
    const now = new Map<string, Map<string, { force: number; ids: Set<string> }>>();
    contacts(solved, (taker, giver, down) => {
      if (!wanted.has(taker.id)) return;
      const own = now.get(taker.id) ?? new Map<string, { force: number; ids: Set<string> }>();
      now.set(taker.id, own);
      const part = own.get(giver.member) ?? { force: 0, ids: new Set<string>() };
      own.set(giver.member, part);
      part.force += down;
      part.ids.add(giver.id);
    });
    for (const [timber, from] of now) {
      const parts = [...from]
        .map(([member, { force, ids }]) => ({ member, force, timbers: ids.size }))
        .filter(({ force }) => force > 0);
      const total = parts.reduce((sum, { force }) => sum + force, 0);
      if (total <= (most.get(timber)?.total ?? 0)) continue;
      most.set(timber, {
        timber,
        caseId: solved.frameCase.id,
        total,
        from: parts.sort((a, b) => b.force - a.force),
      });
    }
  }
  return [...most.values()];
}
