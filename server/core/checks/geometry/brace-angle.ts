import { isBraceEnd } from "../../model/joint-usual.ts";
import { dot } from "../../model/vec.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly stick: string;
  readonly angle: number;
  /** how far it runs beside the other timber and along it, inches */
  readonly across: number;
  readonly along: number;
  readonly timber: string;
}

const LEAST = 30;
const MOST = 60;
/** a brace drawn at 30° must not fail by a rounding of the last digit */
const SLACK = 1e-6;

export const braceAngle = defineCheck<"model", Data>({
  meta: {
    id: "brace-angle",
    title: "A brace too flat or too steep",
    level: "warning",
    area: "geometry",
    source: {
      text: "common practice, no source: braces stand between 30° and 60°",
      status: "common-practice",
    },
    explanation: {
      what: "A brace meets one of its timbers at less than 30° or more than 60°.",
      why: "A flat brace pushes its timbers apart more than it stiffens the corner, and its tenon has little wood to bear on.",
      formula: "tan(angle to the post) = leg on the beam ÷ leg on the post",
      remedy: "Make the two legs more alike.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of model.joints) {
      if (!isBraceEnd(j.kind) || j.of.kind !== "brace" || j.end !== "foot") continue;
      const angle = (Math.acos(Math.min(1, Math.abs(dot(j.of.axis, j.into.axis)))) * 180) / Math.PI;
      if (angle >= LEAST - SLACK && angle <= MOST + SLACK) continue;
      const limit = angle < LEAST ? LEAST : MOST;
      const path = j.of.path;
      const legs = model.members.get(j.of.member)?.legs?.[0]?.along.path;
      yield {
        path: legs ? legs.slice(0, legs.lastIndexOf("/")) : path,
        onKey: true,
        place: j.of.id,
        data: {
          stick: j.of.id,
          angle,
          across: j.of.span * Math.sin((angle * Math.PI) / 180),
          along: j.of.span * Math.cos((angle * Math.PI) / 180),
          timber: j.into.id,
        },
        value: angle,
        limit,
        unit: "deg",
        severity: Math.abs(angle - limit),
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{stick} stands at {angle} to {timber}, outside {least} to {most}: it stiffens the corner little and its tenon bears badly. Make its legs more alike.",
      {
        stick: d.stick,
        timber: d.timber,
        angle: say.angle(d.angle),
        least: say.angle(LEAST),
        most: say.angle(MOST),
      },
    ),
  worked: (d, say) =>
    say.text("atan({across} ÷ {along}) = {angle} {sign} {limit}", {
      across: say.length(d.across),
      along: say.length(d.along),
      angle: say.angle(d.angle),
      sign: d.angle < LEAST ? "<" : ">",
      limit: say.angle(d.angle < LEAST ? LEAST : MOST),
    }),
});
