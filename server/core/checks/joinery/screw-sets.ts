/** Every set of screws of a frame that has a size: at ends of braces, at seats and heads of rafters, and where purlins lie on what carries them. */

import { SCREW_SLACK } from "../../fasteners/screw-room.ts";
import type { Pointer } from "../../frame/frame.ts";
import { type ScrewDistance, screwDistances } from "../../joinery/brace-screw-room.ts";
import type { Joint } from "../../joinery/joint.ts";
import { plumbThrough, seatRun } from "../../joinery/seat.ts";
import type { Model, Timber } from "../../model/model.ts";
import { mostScrews, mostScrewsOver, woodThrough } from "../../roof/fastener-room.ts";
import { fastenings, isHousedHead, isRafterSeat } from "../../roof/fastening.ts";
import { type RidgeWood, ridgeWood, woodBefore } from "../../roof/head-fasteners.ts";
import { crossingName, type PurlinCrossing, purlinFastening } from "../../roof/purlin-crossings.ts";
import { sizedFasteners } from "../../roof/sized-fasteners.ts";
import { judgedCrossings, judgedJoints } from "./judged.ts";

export interface ScrewSet {
  /** the joint's id, or `purlin@A.2 on principal@A1` */
  readonly place: string;
  /** what they go through, and what they hold in */
  readonly of: Timber;
  readonly into: Timber;
  /** where a finding stands that has no map of its own */
  readonly path: Pointer;
  readonly at: "brace" | "seat" | "head" | "purlin";
  /** in, along the rafter's seat or the purlin over its carrier, where they stand one behind the other */
  readonly run: number;
  readonly count: number;
  /** in */
  readonly diameter: number;
  readonly length: number;
  /** where one that is too long comes out of the timber that they hold in */
  readonly exit: RidgeWood["exit"];
  /** least wood from under a head to there, and most to the timber's near face, in */
  readonly through: number;
  readonly wood: number;
  /** the most that stand there with their distances */
  readonly most: number;
  /** of a brace: the distance that is shortest for its need; undefined = all are kept */
  readonly short: ScrewDistance | undefined;
  /** pointer of the map that sizes them; undefined = the file leaves them to the usual ones */
  readonly written: string | undefined;
  /** whether that map gives count and length */
  readonly gives: { readonly count: boolean; readonly length: boolean };
}

const isShort = ({ have, need }: ScrewDistance): boolean => have < need - SCREW_SLACK;

const placeOf = ({ id, of, into, path, sizes }: Joint) => ({
  place: id,
  of,
  into,
  path,
  run: seatRun(sizes),
});

/** Straight through the purlin into what carries it. */
function purlinSet(model: Model, crossing: PurlinCrossing): ScrewSet | undefined {
  const { written } = purlinFastening(model, crossing);
  const sized = sizedFasteners(written);
  if (sized?.kind !== "screws" || written === undefined || written === "unread") return undefined;
  const { upper, lower, wood, under, run } = crossing;
  return {
    place: crossingName(crossing),
    of: upper,
    into: lower,
    path: upper.path,
    at: "purlin",
    run,
    count: sized.count,
    diameter: sized.diameter,
    length: sized.length,
    exit: "face",
    through: wood + under,
    wood,
    most: mostScrewsOver(crossing, sized.diameter),
    short: undefined,
    written: written.path,
    gives: { count: true, length: true },
  };
}

function braceSet(joint: Joint): ScrewSet | undefined {
  const { screws, housing } = joint.sizes;
  const spec = joint.entry?.screws;
  if (!screws || spec === "unread") return undefined;
  const { count, wood } = screws;
  const diameter = screws.diameter.value;
  const fits = (n: number): boolean => !screwDistances(joint, n, diameter).some(isShort);
  let most = count;
  while (most > 0 && !fits(most)) most--;
  const short = screwDistances(joint, count, diameter)
    .filter(isShort)
    .reduce<ScrewDistance | undefined>(
      (worst, one) => (!worst || one.have / one.need < worst.have / worst.need ? one : worst),
      undefined,
    );
  return {
    ...placeOf(joint),
    at: "brace",
    count,
    diameter,
    length: screws.length.value,
    exit: "face",
    through: Math.min(...wood) + joint.face.thickness - housing.value,
    wood: Math.max(...wood),
    most,
    short,
    written: spec?.path,
    gives: { count: spec !== undefined, length: spec?.length !== undefined },
  };
}

/** @returns sets of one joint or crossing each, without nails and without screws whose size is left out or cannot be read */
export function* screwSets(model: Model): Generator<ScrewSet> {
  const fasteningOf = fastenings(model);
  for (const joint of judgedJoints(model)) {
    const seat = isRafterSeat(joint);
    if (!seat && !isHousedHead(joint)) {
      const set = braceSet(joint);
      if (set) yield set;
      continue;
    }
    const { written } = fasteningOf(joint);
    const sized = sizedFasteners(written);
    if (sized?.kind !== "screws" || written === undefined || written === "unread") continue;
    const through = woodThrough(joint);
    yield {
      ...placeOf(joint),
      at: seat ? "seat" : "head",
      count: sized.count,
      diameter: sized.diameter,
      length: sized.length,
      exit: seat ? "face" : ridgeWood(joint).exit,
      through,
      wood: plumbThrough(joint)?.rafter ?? woodBefore(joint),
      most: mostScrews(joint, sized.diameter),
      short: undefined,
      written: written.path,
      gives: { count: true, length: true },
    };
  }
  for (const crossing of judgedCrossings(model)) {
    const set = purlinSet(model, crossing);
    if (set) yield set;
  }
}
