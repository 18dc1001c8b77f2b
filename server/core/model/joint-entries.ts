/** Which joint entry holds at a meeting: the nearest by name of those whose kind can be cut there. */
import type { Frame, JointEntry, JointKindName, JointSpec, Pointer } from "../frame/frame.ts";
import type { Meet, Unfit } from "../joinery/joint.ts";
import { JOINT_KINDS, jointKindOf } from "../joinery/kinds/index.ts";
import { isScarf } from "../joinery/scarf.ts";
import { isSeatKind } from "../joinery/seat.ts";
import { type Match, matches } from "./joint-match.ts";
import type { Meeting, Timber } from "./model.ts";
import { isUpright } from "./upright.ts";

/** One way to read a meeting. */
export type Side = Meet;

/** Which of two like timbers joins into the other, whatever their order in the file: the one across the walls, the lower id. */
function goesFirst(a: Timber, b: Timber): boolean {
  const lean = Math.abs(a.axis[0]) - Math.abs(b.axis[0]);
  return Math.abs(lean) > 0.5 ? lean < 0 : a.id < b.id;
}

/** Both ways to read a meeting, the natural one first: an end joins into a side, an upright's end before a lying one's. */
export function readings(m: Meeting): readonly [Side, Side] {
  const forward: Side = { of: m.a, end: m.aEnd, into: m.b, intoEnd: m.bEnd };
  const reverse: Side = { of: m.b, end: m.bEnd, into: m.a, intoEnd: m.aEnd };
  if (m.aEnd === "side" && m.bEnd !== "side") return [reverse, forward];
  if (m.bEnd === "side" && m.aEnd !== "side") return [forward, reverse];
  const steeper = Math.abs(m.a.axis[2]) - Math.abs(m.b.axis[2]);
  const first = Math.abs(steeper) > 0.5 ? steeper > 0 : goesFirst(m.a, m.b);
  return first ? [forward, reverse] : [reverse, forward];
}

/** Kinds that need an end of both timbers. */
export function jointsTwoEnds(kind: JointKindName): boolean {
  return isScarf(kind) || kind === "corner-bridle" || kind === "rafter-pair";
}

/** Seats may hold where no end takes part; every other kind needs an end of the joined timber. */
function comesWithAnEnd(kind: JointKindName, side: Side): boolean {
  return isSeatKind(kind) || side.end !== "side";
}

export interface Chosen {
  readonly side: Side;
  readonly spec: JointSpec;
  readonly entry: JointEntry | undefined;
  readonly path: Pointer;
  readonly assumed: boolean;
  readonly name: string;
  readonly rival?: JointEntry;
  readonly standsFor?: JointEntry;
}

/** An entry that names both timbers of a meeting, and whose kind cannot be cut there. */
export interface Refused {
  readonly meeting: Meeting;
  readonly side: Side;
  readonly entry: JointEntry;
  readonly unfit: Unfit;
}

/** The upper end of an upright under a timber that does not stand: it carries, and nothing draws it out. */
function carriesFromBelow({ of, end, into }: Side): boolean {
  return isUpright(of) && !isUpright(into) && end === (of.axis[2] >= 0 ? "head" : "foot");
}

/**
 * @returns the kinds to offer where two timbers meet, in the order of the catalogue: those that can be cut there. A lap
 * that ties halves the end grain of an upright that carries; it can be cut, and is offered to nobody (common practice).
 */
export function kindsThatFit(side: Side): readonly JointKindName[] {
  return JOINT_KINDS.filter(
    (kind) =>
      comesWithAnEnd(kind, side) &&
      !jointKindOf(kind).unfit(side) &&
      !(kind === "dovetail-lap" && carriesFromBelow(side)),
  );
}

type Candidate = Match & { readonly side: Side; readonly unfit: Unfit | undefined };

/**
 * @returns the entry that holds at a meeting, and those of better right that name its timbers but cannot be cut there, the
 * nearest by name first
 */
export function named(
  frame: Frame,
  meeting: Meeting,
): { readonly chosen: Chosen | undefined; readonly refused: readonly Refused[] } {
  const all = readings(meeting).flatMap((side) =>
    matches(frame, side.of, side.into)
      .filter((match) => comesWithAnEnd(match.entry.kind, side))
      .map((match): Candidate => ({ side, ...match, unfit: jointKindOf(match.entry.kind).unfit(side) })),
  );
  const fitting = all.filter(({ unfit }) => !unfit);
  const best = fitting.reduce<Candidate | undefined>(
    (top, next) => (!top || next.rank > top.rank ? next : top),
    undefined,
  );
  const seen = new Set(fitting.map(({ entry }) => entry));
  const refused = [...all]
    .sort((a, b) => b.rank - a.rank)
    .flatMap(({ side, entry, rank, unfit }): Refused[] => {
      if (!unfit || seen.has(entry) || rank <= (best?.rank ?? 0)) return [];
      seen.add(entry);
      return [{ meeting, side, entry, unfit }];
    });
  if (!best) return { chosen: undefined, refused };
  const rival = fitting.find((o) => o.entry !== best.entry && o.rank === best.rank)?.entry;
  return {
    chosen: {
      side: best.side,
      spec: best.entry,
      entry: best.entry,
      path: best.entry.path,
      assumed: false,
      name: best.entry.name,
      ...(rival ? { rival } : {}),
    },
    refused,
  };
}
