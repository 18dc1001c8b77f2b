import { groupBy } from "../../collect.ts";
import type { Joint } from "../../joinery/joint.ts";
import { jointKindOf } from "../../joinery/kinds/index.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";

interface Data {
  readonly of: string;
  readonly into: string;
  readonly kind: Joint["kind"];
  readonly count: number;
  readonly name: string;
  /** pointer of the roof's rafters, where it is their heads that meet: the roof names that joint */
  readonly heads: string | undefined;
}

export const jointAssumed = defineCheck<"model", Data>({
  meta: {
    id: "joint-assumed",
    title: "A joint is assumed",
    level: "note",
    area: "joinery",
    source: {
      text: "common practice, no source: the usual joint between timbers of these kinds",
      status: "common-practice",
    },
    explanation: {
      what: "Two timbers meet, and the file names no joint there. The usual kind with usual sizes is taken.",
      why: "Sizes that nobody chose get cut; naming the joint makes them yours and lets them be checked.",
      remedy: "Write the joint into the file; the fix does it with the sizes that were taken.",
    },
  },
  input: "model",
  *find(model) {
    const assumed = judgedJoints(model).filter((j) => j.assumed);
    for (const [, group] of groupBy(assumed, (j) => `${j.of.member} ${j.into.member} ${j.kind}`)) {
      const first = group[0];
      if (!first) continue;
      const data = {
        of: first.of.member,
        into: first.into.member,
        kind: first.kind,
        count: group.length,
        heads:
          first.kind === "rafter-pair" && first.of.path === model.frame.roof?.rafters?.path
            ? first.of.path
            : undefined,
        name: freeName(first, new Set([...model.members.keys(), ...model.frame.joints.map((j) => j.name)])),
      };
      for (const joint of group)
        yield {
          path: first.of.path,
          onKey: true,
          apart: `${first.into.member} ${first.kind}`,
          place: joint.id,
          counted: true,
          data,
          value: group.length,
          unit: "count",
        };
    }
  },
  words: (d, say) =>
    say.text(
      d.count === 1
        ? "{of} meets {into} at one place without a named joint; a {kind} of usual sizes is assumed there. Name it to choose its sizes."
        : "{of} meets {into} at {count} places without a named joint; a {kind} of usual sizes is assumed there. Name it to choose its sizes.",
      {
        of: d.of,
        into: d.into,
        count: d.count,
        kind: say.text(jointKindOf(d.kind).title).toLowerCase(),
      },
    ),
  fixes: (d, say) => [
    {
      title: say.text("Write this joint into the file"),
      edits: [
        d.heads === undefined
          ? {
              kind: "add",
              path: "/joints",
              key: d.name,
              text: `{kind: ${d.kind}, of: ${d.of}, into: ${d.into}}`,
            }
          : { kind: "add", path: d.heads, key: "head", text: "{kind: bridle}" },
      ],
    },
  ],
});

function freeName(joint: Joint, taken: ReadonlySet<string>): string {
  const base = `${joint.of.member}-to-${joint.into.member}`;
  let name = base;
  for (let n = 2; taken.has(name); n++) name = `${base}-${n}`;
  return name;
}
