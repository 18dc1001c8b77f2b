/** The kinds of joint there are, by name. To add one: write its file here beside and list it. */
import type { JointKindName } from "../../frame/frame.ts";
import type { JointKind } from "../joint.ts";
import { scribeRows } from "../scribe.ts";
import { birdsMouth } from "./birds-mouth.ts";
import { bladedScarf } from "./bladed-scarf.ts";
import { braceTenon } from "./brace-tenon.ts";
import { cornerBridle } from "./corner-bridle.ts";
import { cornerHalfLap } from "./corner-half-lap.ts";
import { dovetailLap } from "./dovetail-lap.ts";
import { halfLapScarf } from "./half-lap-scarf.ts";
import { housed } from "./housed.ts";
import { housedDovetail } from "./housed-dovetail.ts";
import { mortiseAndTenon } from "./mortise-and-tenon.ts";
import { pocket } from "./pocket.ts";
import { rafterHeel } from "./rafter-heel.ts";
import { rafterPair } from "./rafter-pair.ts";
import { screwedBrace } from "./screwed-brace.ts";
import { stepLap } from "./step-lap.ts";
import { stopSplayedScarf } from "./stop-splayed-scarf.ts";
import { stubTenon } from "./stub-tenon.ts";
import { wedgedHalfDovetail } from "./wedged-half-dovetail.ts";

const KINDS: Readonly<Record<JointKindName, JointKind>> = {
  "mortise-and-tenon": mortiseAndTenon,
  "wedged-half-dovetail": wedgedHalfDovetail,
  "brace-tenon": braceTenon,
  "birds-mouth": birdsMouth,
  "step-lap": stepLap,
  housed,
  "housed-dovetail": housedDovetail,
  pocket,
  "corner-half-lap": cornerHalfLap,
  "corner-bridle": cornerBridle,
  "dovetail-lap": dovetailLap,
  "stub-tenon": stubTenon,
  "screwed-brace": screwedBrace,
  "half-lap-scarf": halfLapScarf,
  "bladed-scarf": bladedScarf,
  "stop-splayed-scarf": stopSplayedScarf,
  "rafter-heel": rafterHeel,
  "rafter-pair": rafterPair,
};

/** A cut sheet also says what a scribed joint leaves to be marked in its place, whatever its kind. */
const SCRIBED = new Map(
  Object.values(KINDS).map((kind): [JointKindName, JointKind] => [
    kind.kind,
    { ...kind, cutSheet: (joint) => [...kind.cutSheet(joint), ...scribeRows(joint)] },
  ]),
);

/** Every kind, in the order of the catalogue. */
export const JOINT_KINDS: readonly JointKindName[] = Object.values(KINDS).map(({ kind }) => kind);

export function jointKindOf(name: JointKindName): JointKind {
  return SCRIBED.get(name) ?? KINDS[name];
}
