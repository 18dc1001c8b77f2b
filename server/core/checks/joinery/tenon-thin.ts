import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import type { Say } from "../say.ts";
import { judgedJoints } from "./judged.ts";
import { sizeFound, sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly thickness: number;
  /** of the thickness, where the file gives it */
  readonly path: string | undefined;
}

/** Least thickness of a tenon, inches. */
const LEAST = 1.25;

export const tenonThin = defineCheck<"model", Data>({
  meta: {
    id: "tenon-thin",
    title: "A tenon too thin",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: tenons of 1 1/2 to 2 in in 6 to 8 in timbers, none below 1 1/4 in",
      status: "common-practice",
    },
    explanation: {
      what: "A tenon is thinner than 1 1/4 in.",
      why: "It splits at the peg and breaks when the frame is raised; a peg bends in it before it bears.",
      formula: "thickness ≥ 1 1/4 in",
      remedy: "In a timber 6 in wide make it 1 1/2 in thick, in one 8 in wide 2 in.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of judgedJoints(model)) {
      const size = j.sizes.tenon?.thickness;
      const thickness = size?.value;
      if (thickness === undefined || thickness >= LEAST - 1e-6) continue;
      const where = sizePath(j, "tenon/thickness", size);
      yield sizeFound(j, where, thickness, LEAST, {
        joint: j.id,
        thickness,
        path: size?.from === "file" ? where.path : undefined,
      });
    }
  },
  words: (d, say) =>
    say.text(
      "The tenon at {joint} is {thickness} thick, less than {least}: it splits at the peg and breaks in raising. Make it {better} or more.",
      {
        joint: d.joint,
        thickness: say.length(d.thickness),
        least: say.length(LEAST),
        better: say.length(better(say)),
      },
    ),
  worked: (d, say) =>
    say.text("{thickness} < {least}", { thickness: say.length(d.thickness), least: say.length(LEAST) }),
  fixes: (d, say) =>
    replaceFix(d.path, say.length(better(say)), (thickness) =>
      say.text("Make the tenon {thickness} thick", { thickness }),
    ),
});

/** The usual thickness, inches. */
const better = (say: Say): number => (say.metric ? 40 / 25.4 : 1.5);
