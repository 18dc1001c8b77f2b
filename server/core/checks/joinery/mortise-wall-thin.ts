import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";
import { sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly into: string;
  readonly wall: number;
  readonly thickness: number;
  /** reference side, which is the set-in, and far side */
  readonly walls: readonly [number, number];
  readonly outside: boolean;
}

export const mortiseWallThin = defineCheck<"model", Data>({
  meta: {
    id: "mortise-wall-thin",
    title: "The wood beside a mortise is too thin",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: a mortise wall is at least as thick as the tenon",
      status: "common-practice",
    },
    explanation: {
      what: "A wall of a mortise is thinner than the tenon in it.",
      why: "The peg shears out of a thin wall, and the wall splits when the tenon is driven home.",
      formula: "wall on the reference side = set-in; far wall = width − set-in − thickness; both ≥ thickness",
      remedy: "Make the tenon thinner or change its set-in so that both walls are as thick as it is.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of judgedJoints(model)) {
      const { tenon } = j.sizes;
      if (!tenon) continue;
      const wall = Math.min(...tenon.walls);
      const thickness = tenon.thickness.value;
      if (wall >= thickness - 1e-3) continue;
      const setIn = tenon.setIn.from === "file" && tenon.thickness.from !== "file";
      yield {
        ...(setIn
          ? sizePath(j, "tenon/set-in", tenon.setIn)
          : sizePath(j, "tenon/thickness", tenon.thickness)),
        place: j.id,
        ...(wall <= 0 ? { level: "error" as const } : {}),
        data: {
          joint: j.id,
          into: j.into.id,
          wall,
          thickness,
          walls: tenon.walls,
          outside: wall <= 0,
        },
        value: wall,
        limit: thickness,
        unit: "in",
        severity: thickness - wall,
      };
    }
  },
  words: (d, say) =>
    d.outside
      ? say.text(
          "The mortise of {joint} breaks out of {into}’s side: with this thickness and set-in there is no wood beside it. Make the tenon thinner or move it.",
          {
            joint: d.joint,
            into: d.into,
          },
        )
      : say.text(
          "A wall of the mortise at {joint} is {wall} thick in {into}, thinner than the {thickness} tenon: the peg shears out of it. Make the tenon thinner or move it.",
          {
            joint: d.joint,
            into: d.into,
            wall: say.length(d.wall),
            thickness: say.length(d.thickness),
          },
        ),
  worked: (d, say) => {
    const values = {
      width: say.length(d.walls[0] + d.thickness + d.walls[1]),
      setIn: say.length(d.walls[0]),
      thickness: say.length(d.thickness),
      wall: say.length(d.wall),
    };
    return d.walls[0] <= d.walls[1]
      ? say.text("{setIn} < {thickness}", values)
      : say.text("{width} − {setIn} − {thickness} = {wall} < {thickness}", values);
  },
});
