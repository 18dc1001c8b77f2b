/** The kinds of joint there are, by name. To add one: write its file here beside and list it. */
import type { JointKindName } from "../../frame/frame.ts";
import type { JointKind } from "../joint.ts";
import { birdsMouth } from "./birds-mouth.ts";
import { braceTenon } from "./brace-tenon.ts";
import { cornerHalfLap } from "./corner-half-lap.ts";
import { halfLapScarf } from "./half-lap-scarf.ts";
import { housed } from "./housed.ts";
import { housedDovetail } from "./housed-dovetail.ts";
import { mortiseAndTenon } from "./mortise-and-tenon.ts";
import { pocket } from "./pocket.ts";
import { rafterHeel } from "./rafter-heel.ts";
import { rafterPair } from "./rafter-pair.ts";
import { wedgedHalfDovetail } from "./wedged-half-dovetail.ts";

const KINDS: Readonly<Record<JointKindName, JointKind>> = {
  "mortise-and-tenon": mortiseAndTenon,
  "wedged-half-dovetail": wedgedHalfDovetail,
  "brace-tenon": braceTenon,
  "birds-mouth": birdsMouth,
  housed,
  "housed-dovetail": housedDovetail,
  pocket,
  "corner-half-lap": cornerHalfLap,
  "half-lap-scarf": halfLapScarf,
  "rafter-heel": rafterHeel,
  "rafter-pair": rafterPair,
};

export function jointKindOf(name: JointKindName): JointKind {
  return KINDS[name];
}
