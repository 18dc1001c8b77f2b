/** Which way a joint goes together, in words. */
import type { Say } from "../../core/checks/say.ts";
import type { Joint } from "../../core/joinery/joint.ts";
import { jointKindOf } from "../../core/joinery/kinds/index.ts";
import { dot, type Vec3 } from "../../core/model/vec.ts";

/** Cosine within which two directions are the same to the eye, about 4°. */
const ALIKE = 0.9975;

/** `straight down`, `square into the face`: without the names of timbers, so that equal joints read alike. */
export function goesIn(joint: Joint, say: Say): string {
  const { direction, last } = jointKindOf(joint.kind).assembly(joint);
  const first = wayWords(direction, joint, say);
  if (!last || last.distance < 1 / 64) return first;
  return say.text("{first}, then {distance} {last}", {
    first,
    distance: say.length(last.distance),
    last: wayWords(last.direction, joint, say),
  });
}

function wayWords(way: Vec3, { of, end, face }: Joint, say: Say): string {
  const alongGrain = Math.abs(dot(way, of.axis)) > ALIKE;
  if (!alongGrain && end !== "side" && dot(way, face.inward) > ALIKE) return say.text("square into the face");
  if (Math.abs(way[2]) > ALIKE) return way[2] < 0 ? say.text("straight down") : say.text("straight up");
  return alongGrain ? say.text("along its own length") : say.text("from the side");
}
