import type { Member } from "../../frame/frame.ts";
import { isBraceEnd } from "../../model/joint-usual.ts";
import type { Timber } from "../../model/model.ts";
import { dot } from "../../model/vec.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly stick: string;
  readonly timber: string;
  readonly depth: number;
  readonly leg: number;
  readonly room: number;
  readonly least: number;
}

/** A brace as deep as its corner must not fail by a rounding of the last digit. */
const SLACK = 1e-6;

/** The leg of a brace along a timber, and where the file gives it. */
function legAlong(
  member: Member,
  timber: Timber,
): { readonly leg: number; readonly path: string } | undefined {
  const own = member.legs?.find((l) => l.along.text === timber.id || l.along.text === timber.member);
  if (own) return { leg: inches(own.length), path: own.along.path };
  return member.leg && { leg: inches(member.leg), path: `${member.path}/leg` };
}

export const braceShort = defineCheck<"model", Data>({
  meta: {
    id: "brace-short",
    title: "A brace too short for its depth",
    level: "error",
    area: "geometry",
    source: { text: "plane trigonometry: the height of the triangle of corner and legs", status: "derived" },
    explanation: {
      what: "A brace is deeper than the corner between its legs, so nothing of it runs free.",
      why: "Its two ends run into each other in the corner: it cannot be cut, and stiffens nothing.",
      formula:
        "leg × sin(angle to the timber) must be more than the depth of the brace; at 45°, leg > 1.414 × depth",
      remedy: "Give it longer legs or a shallower section.",
    },
  },
  input: "model",
  *find(model) {
    for (const { of, into, kind, end } of model.joints) {
      const member = model.members.get(of.member);
      if (of.kind !== "brace" || !isBraceEnd(kind) || end !== "foot" || !member) continue;
      const given = legAlong(member, into);
      if (!given) continue;
      const sine = Math.sqrt(Math.max(0, 1 - dot(of.axis, into.axis) ** 2));
      const room = given.leg * sine;
      if (room > of.depth + SLACK) continue;
      const least = of.depth / Math.max(sine, 1e-3);
      yield {
        path: given.path,
        place: of.id,
        data: { stick: of.id, timber: into.id, depth: of.depth, leg: given.leg, room, least },
        value: given.leg,
        limit: least,
        unit: "in",
        severity: least - given.leg,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{stick} is {depth} deep, and a leg of {leg} along {timber} leaves {room} between the corner and its long edge: its two ends run into each other. Give it legs of more than {least}, or a shallower section.",
      {
        stick: d.stick,
        timber: d.timber,
        depth: say.length(d.depth),
        leg: say.length(d.leg),
        room: say.length(d.room),
        least: say.length(d.least),
      },
    ),
  worked: (d, say) =>
    say.text("{leg} ≤ {depth} ÷ {sine} = {least}", {
      leg: say.length(d.leg),
      depth: say.length(d.depth),
      sine: say.number(d.depth / d.least, 3),
      least: say.length(d.least),
    }),
});
