/** Every set of nails of a frame that has a size: at seats and at heads of rafters. */
import type { Joint } from "../../joinery/joint.ts";
import type { Model } from "../../model/model.ts";
import { fastenings, isHousedHead, isRafterSeat } from "../../roof/fastening.ts";
import { type NailPlaces, nailPlaces } from "../../roof/nail-places.ts";
import { type SizedFasteners, sizedFasteners } from "../../roof/sized-fasteners.ts";
import { judgedJoints } from "./judged.ts";

export interface NailSet {
  readonly joint: Joint;
  readonly fasteners: SizedFasteners;
  readonly places: NailPlaces;
  /** pointer of the map that sizes them */
  readonly written: string;
}

/** @returns sets of one joint each */
export function* nailSets(model: Model): Generator<NailSet> {
  const fasteningOf = fastenings(model);
  for (const joint of judgedJoints(model)) {
    if (!isRafterSeat(joint) && !isHousedHead(joint)) continue;
    const { written } = fasteningOf(joint);
    const fasteners = sizedFasteners(written);
    const places = fasteners && nailPlaces(joint, fasteners);
    if (fasteners && places && written !== undefined && written !== "unread")
      yield { joint, fasteners, places, written: written.path };
  }
}
