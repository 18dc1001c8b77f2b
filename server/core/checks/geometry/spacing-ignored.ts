import type { Member } from "../../frame/frame.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly name: string;
  readonly key: "spacing" | "count";
}

/** Whether the sticks of an entry go from one timber that it names to another, in a series between them. */
export function isBetween({ kind, between, ends }: Member): boolean {
  return (
    ends === undefined && between !== undefined && kind !== "brace" && kind !== "strut" && kind !== "purlin"
  );
}

/** Whether an entry is placed as a series: between two timbers, or as purlins up a slope. */
function isSeries(member: Member): boolean {
  const { kind, walls, bents, ends } = member;
  return kind === "purlin"
    ? ends === undefined && walls === undefined && bents === undefined
    : isBetween(member);
}

export const spacingIgnored = defineCheck<"frame", Data>({
  meta: {
    id: "spacing-ignored",
    title: "A spacing or count where there is no series",
    level: "warning",
    area: "geometry",
    source: { text: "placement rules of this program", status: "file-format" },
    explanation: {
      what: "An entry gives a spacing or a count, but its sticks stand on grid lines or at named ends.",
      why: "The value is not used, so there are fewer timbers than the file seems to say.",
      remedy: "Name the two timbers that a series lies between with “between”, or leave the value out.",
    },
  },
  input: "frame",
  *find(frame) {
    for (const member of frame.members) {
      if (isSeries(member)) continue;
      for (const key of ["spacing", "count"] as const)
        if (member[key] !== undefined)
          yield { path: `${member.path}/${key}`, onKey: true, data: { name: member.name, key } };
    }
  },
  words: (d, say) =>
    say.text(
      "“{key}” is ignored: {name} does not lie between two timbers, so there is no series to divide. Name them with “between”, or leave it out.",
      { key: d.key, name: d.name },
    ),
});
