import { ASSUMED_GRADE } from "../../wood/design-values.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly name: string;
  readonly path: string;
}

export const gradeAssumed = defineCheck<"frame", Data>({
  meta: {
    id: "grade-assumed",
    title: "No grade is given, so No.2 is taken",
    level: "note",
    area: "timber",
    source: {
      text: "common practice, no source: own-sawn timber without a stamp counts as No.2",
      status: "common-practice",
    },
    explanation: {
      what: "A timber class names no grade.",
      why: "Design values depend on the grade; own-sawn timber without a stamp is taken as No.2.",
      remedy: "Have the timbers graded and name the grade, or keep No.2 and sort out what falls below it.",
    },
  },
  input: "frame",
  *find(frame) {
    for (const c of frame.classes)
      if (!c.grade && c.name !== "pegs" && c.values.size === 0 && !c.unreadValues)
        yield { path: c.path, onKey: true, data: { name: c.name, path: c.path } };
  },
  words: (d, say) =>
    say.text(
      "{name} names no grade, so {grade} is taken for its strength. Name the grade once the timbers are graded.",
      {
        name: d.name,
        grade: ASSUMED_GRADE === "no-2" ? "No.2" : ASSUMED_GRADE,
      },
    ),
  fixes: (d, say) => [
    {
      title: say.text("Write the grade that is assumed: {grade}", { grade: ASSUMED_GRADE }),
      edits: [{ kind: "add", path: d.path, key: "grade", text: ASSUMED_GRADE }],
    },
  ],
});
