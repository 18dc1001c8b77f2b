import type { Joint } from "../../joinery/joint.ts";
import type { Model, Timber } from "../../model/model.ts";
import { isUpright } from "../../model/upright.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly stick: string;
  readonly member: string;
  readonly to: string;
  /** in, above the datum */
  readonly top: number;
}

/** Share of an upright’s section that touches where it stands against something. */
const LEAST_SHARE = 1 / 8;

/** The rafters that a name stands for: an entry, a stick, or the kind. */
const raftersNamed = ({ sticks, byId, timbers }: Model, text: string): readonly Timber[] => {
  const one = byId.get(text);
  const all = sticks.get(text) ?? (one ? [one] : timbers.filter(({ kind }) => kind === text));
  return all.filter(({ kind }) => kind === "rafter");
};

export const headUnderPeak = defineCheck<"model", Data>({
  meta: {
    id: "head-under-peak",
    title: "A post whose head meets no face of the rafters it goes up to",
    level: "warning",
    area: "geometry",
    source: { text: "placement rule of this program: plane geometry", status: "file-format" },
    explanation: {
      what: "A post or king-post goes up to rafters, and its head touches none of them with a face: as under a peak, where two of them slope away from its middle, and it ends square below both.",
      why: "No joint holds its head, so it carries nothing and stands loose.",
      remedy:
        "Let the rafters go up to the king-post and be tenoned into it (`to: king-post` at the rafters, its own `to` a level), or set it under one rafter, or under a ridge.",
    },
  },
  input: "model",
  *find(model) {
    // an edge that touches a slope is a narrow strip of contact, and no joint
    const wide = ({ meeting }: Joint, { width, depth }: Timber): boolean =>
      meeting.area > LEAST_SHARE * width * depth;
    const held = new Set(
      model.joints.flatMap((joint) => [
        ...(wide(joint, joint.of) ? [`${joint.of.id} ${joint.end}`] : []),
        ...(joint.of.kind === "rafter" && wide(joint, joint.into)
          ? [`${joint.into.id} head`, `${joint.into.id} foot`]
          : []),
      ]),
    );
    for (const { name, path, to } of model.members.values()) {
      if (!to || raftersNamed(model, to.text).length === 0) continue;
      for (const stick of model.sticks.get(name) ?? []) {
        const top = stick.axis[2] > 0 ? "head" : "foot";
        if (!isUpright(stick) || model.doubles.has(stick.id) || held.has(`${stick.id} ${top}`)) continue;
        yield {
          path: `${path}/to`,
          place: stick.id,
          data: { stick: stick.id, member: name, to: to.text, top: stick[top].point[2] },
        };
      }
    }
  },
  words: (d, say) =>
    say.text(
      "{stick} ends {top} up, below {to}, and touches it with no face: no joint holds its head. Under a peak let the rafters be tenoned into it (“to: {member}” at them, and a level here); or set it under one of them.",
      { stick: d.stick, member: d.member, to: d.to, top: say.length(d.top) },
    ),
});
