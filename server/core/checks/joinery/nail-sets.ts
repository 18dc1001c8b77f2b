/** Every set of nails of a frame that has a size: at seats and at heads of rafters, and where purlins lie on what carries them. */
import type { Model, Timber } from "../../model/model.ts";
import { fastenings, isHousedHead, isRafterSeat } from "../../roof/fastening.ts";
import { type NailPlaces, nailPlaces, purlinNailPlaces } from "../../roof/nail-places.ts";
import { crossingName, purlinFastening } from "../../roof/purlin-crossings.ts";
import { type SizedFasteners, sizedFasteners } from "../../roof/sized-fasteners.ts";
import { judgedCrossings, judgedJoints } from "./judged.ts";

export interface NailSet {
  /** the joint's id, or `purlin@A.2 on principal@A1` */
  readonly place: string;
  /** what they go through, and what they hold in */
  readonly of: Timber;
  readonly into: Timber;
  readonly fasteners: SizedFasteners;
  readonly places: NailPlaces;
  /** pointer of the map that sizes them */
  readonly written: string;
}

/** @returns sets of one joint or crossing each */
export function* nailSets(model: Model): Generator<NailSet> {
  const fasteningOf = fastenings(model);
  for (const joint of judgedJoints(model)) {
    if (!isRafterSeat(joint) && !isHousedHead(joint)) continue;
    const { written } = fasteningOf(joint);
    const fasteners = sizedFasteners(written);
    const places = fasteners && nailPlaces(joint, fasteners);
    const { id, of, into } = joint;
    if (fasteners && places && written !== undefined && written !== "unread")
      yield { place: id, of, into, fasteners, places, written: written.path };
  }
  for (const crossing of judgedCrossings(model)) {
    const { written } = purlinFastening(model, crossing);
    const fasteners = sizedFasteners(written);
    const places = fasteners && purlinNailPlaces(crossing, fasteners);
    const { upper: of, lower: into } = crossing;
    if (fasteners && places && written !== undefined && written !== "unread")
      yield { place: crossingName(crossing), of, into, fasteners, places, written: written.path };
  }
}
