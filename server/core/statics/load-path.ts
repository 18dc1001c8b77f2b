/**
 * Where the load of a timber is from: the roof it carries, and what other timbers set down on it. Areas follow the
 * trade's rule of halves; forces are those of the analysis.
 */
import { common } from "../model/box.ts";
import type { Model, Timber } from "../model/model.ts";
import type { Vec3 } from "../model/vec.ts";
import { isSolved } from "./force-table.ts";
import { endForce, forceOnFirst } from "./joint-forces.ts";
import type { Strip } from "./line-loads.ts";
import { contactsOf, supportBy } from "./member-supports.ts";
import type { SolvedCase } from "./solve-frame.ts";

const SQUARE_INCHES = 144;

/** Where a timber rests on another: axial positions on the one and on the other. */
interface Rest {
  readonly on: Timber;
  readonly at: number;
  readonly onAt: number;
}

/** What a timber carries of the roof, along its axis; from and to are one where another timber sets it down. */
interface Area {
  readonly from: number;
  readonly to: number;
  readonly squareInches: number;
}

/** Share of an area that lies between two axial positions. */
function between({ from, to, squareInches }: Area, start: number, end: number): number {
  if (to - from < 1e-9) return from >= start && from < end ? squareInches : 0;
  return (squareInches * common([from, to], [start, end])) / (to - from);
}

/** What each rest of a timber takes: up to half the way to the next one, the outer ones all that lies past them. */
function setDown(rests: readonly Rest[], areas: readonly Area[]): { rest: Rest; squareInches: number }[] {
  return rests.map((rest, k) => {
    const before = rests[k - 1];
    const after = rests[k + 1];
    const start = before ? (before.at + rest.at) / 2 : Number.NEGATIVE_INFINITY;
    const end = after ? (rest.at + after.at) / 2 : Number.POSITIVE_INFINITY;
    return { rest, squareInches: areas.reduce((sum, a) => sum + between(a, start, end), 0) };
  });
}

const areBoth = (kind: Timber["kind"], a: Timber, b: Timber): boolean => a.kind === kind && b.kind === kind;

/**
 * Roof that each timber carries, measured on the slope: its own strips, and what purlins and rafters set down on it by the
 * rule of halves: purlins on rafters or walls, rafters on plates and the ridge.
 * @param strips of the model, or of an earlier one whose forces still hold: timbers and contacts are those of the model
 * @returns ft² by timber id
 */
export function roofAreas(model: Model, strips: readonly Strip[]): Map<string, number> {
  const timbers = new Map(model.timbers.map((t) => [t.id, t]));
  const contacts = contactsOf(model);
  const restsOf = (timber: Timber): Rest[] =>
    (contacts.get(timber.id) ?? [])
      // two rafters of a pair lean on each other: neither sets its roof down on the other
      .filter((contact) => supportBy(timber, contact) && !areBoth("rafter", timber, contact.other))
      .map(({ other, at, otherAt }) => ({ on: other, at, onAt: otherAt }));
  const carried = new Map<string, Area[]>();
  const give = ({ id }: Timber, area: Area): void => {
    const own = carried.get(id);
    if (own) own.push(area);
    else carried.set(id, [area]);
  };
  for (const { timber, width, from, to } of strips)
    give(timber, { from, to, squareInches: width * (to - from) });
  // purlins lie on rafters, never rafters on purlins: so rafters know all they carry when their turn comes
  for (const kind of ["purlin", "rafter"] as const) {
    for (const [id, areas] of [...carried]) {
      const timber = timbers.get(id);
      if (timber?.kind !== kind) continue;
      for (const { rest, squareInches } of setDown(restsOf(timber), areas))
        if (squareInches > 0) give(rest.on, { from: rest.onAt, to: rest.onAt, squareInches });
    }
  }
  return new Map(
    [...carried].map(([id, areas]) => [
      id,
      areas.reduce((sum, { squareInches }) => sum + squareInches, 0) / SQUARE_INCHES,
    ]),
  );
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
  if (!isSolved(solved)) return;
  const { tips } = solved.combined;
  const pass = (a: Timber, b: Timber, onA: Vec3): void => {
    give(a, b, -onA[2]);
    give(b, a, onA[2]);
  };
  solved.frame.pieces.forEach(({ timber, jointI, jointJ }, index) => {
    if (jointI) pass(timber, jointI.into, endForce(timber, tips, index, "i"));
    if (jointJ) pass(timber, jointJ.into, endForce(timber, tips, index, "j"));
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
