import { endBreadth } from "../../joinery/end-breadth.ts";
import type { Sized } from "../../joinery/joint-sizes.ts";
import { dot, type Vec3 } from "../../model/vec.ts";
import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import { judgedJoints } from "./judged.ts";
import { sizeFound, sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly of: string;
  readonly what: "width" | "thickness";
  readonly size: number;
  readonly wood: number;
  /** of the timber's section, which the face may cut at a slant */
  readonly side: number;
  readonly path: string | undefined;
}

export const tenonWide = defineCheck<"model", Data>({
  meta: {
    id: "tenon-wide",
    title: "A tenon larger than its timber",
    level: "error",
    area: "joinery",
    source: { text: "geometry: a tenon is cut out of the end of its timber", status: "derived" },
    explanation: {
      what: "A tenon is wider or thicker than the end of the timber it is cut on.",
      why: "Such a tenon cannot be cut, and the mortise for it would weaken the other timber for nothing.",
      formula:
        "width ≤ the timber along the grain of the mortise, for a brace its depth ÷ the sine of its angle",
      remedy: "Give at most the size of the timber, or leave the size out: the usual one follows from it.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of judgedJoints(model)) {
      const { tenon, wedge } = j.sizes;
      if (!tenon) continue;
      const judge = function* (what: Data["what"], size: Sized, axis: Vec3) {
        const wood = endBreadth(j, axis);
        const { width, depth, widthDir, depthDir } = j.of;
        const side = Math.abs(dot(widthDir, axis)) > Math.abs(dot(depthDir, axis)) ? width : depth;
        if (size.value <= wood + 1e-3) return;
        const where = sizePath(j, `tenon/${what}`, size);
        yield sizeFound(j, where, size.value, wood, {
          joint: j.id,
          of: j.of.id,
          what,
          size: size.value,
          wood,
          side,
          path: size.from === "file" ? where.path : undefined,
        });
      };
      // the height of a half-dovetail follows from its drop
      if (!wedge) yield* judge("width", tenon.width, j.face.grain);
      yield* judge("thickness", tenon.thickness, j.face.across);
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint,
      of: d.of,
      size: say.length(d.size),
      wood: say.length(d.wood),
    };
    return d.what === "width"
      ? say.text(
          "The tenon at {joint} is {size} wide, and the end of {of} that it is cut on has {wood} of wood that way: it cannot be cut. Make it {wood} or less.",
          values,
        )
      : say.text(
          "The tenon at {joint} is {size} thick, and {of} that it is cut on is {wood} thick there: it cannot be cut. Make it {wood} or less.",
          values,
        );
  },
  worked: (d, say) => {
    const values = { size: say.length(d.size), side: say.length(d.side), wood: say.length(d.wood) };
    return d.side > d.wood - 1e-3
      ? say.text("{size} > {wood}", values)
      : say.text("{size} > {side} ÷ sin {angle} = {wood}", {
          ...values,
          angle: say.angle((Math.asin(d.side / d.wood) * 180) / Math.PI),
        });
  },
  fixes: (d, say) => {
    const step = say.metric ? 5 / 25.4 : 1 / 2;
    if (d.wood < step || d.what === "thickness") return [];
    return replaceFix(d.path, say.length(Math.floor(d.wood / step + 1e-9) * step), (width) =>
      say.text("Make the tenon {width} wide", { width }),
    );
  },
});
