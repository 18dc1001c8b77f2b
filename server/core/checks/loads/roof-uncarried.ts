import { isComplete } from "../../model/grounded.ts";
import { roofStrips } from "../../statics/line-loads.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly walls: readonly string[];
}

const CARRY: ReadonlySet<string> = new Set(["rafter", "purlin"]);

export const roofUncarried = defineCheck<"model", Data>({
  meta: {
    id: "roof-uncarried",
    title: "A roof that no timber carries",
    level: "warning",
    area: "loads",
    source: { text: "statics: a load needs a timber that carries it", status: "derived" },
    explanation: {
      what: "The file describes a roof, but no rafters and no purlins lie on one of its slopes.",
      why: "Snow, wind and the roof's own weight on that slope are in no timber's check: silence about them is no pass.",
      remedy: "Give the roof rafters, or name principal rafters or purlins among the members.",
    },
  },
  input: "model",
  ofTheWhole: true,
  *find(model) {
    const { roof } = model.frame;
    if (!roof || !isComplete(model)) return;
    // rafters that lack something to lie on have a finding of their own
    const named = roof.rafters !== undefined || model.frame.members.some((m) => CARRY.has(m.kind));
    if (!model.roof && named) return;
    const carried = new Set(roofStrips(model).map((s) => s.slope.wall));
    const bare = (model.roof?.slopes ?? []).filter((s) => !carried.has(s.wall)).map((s) => s.wall);
    if (model.roof && bare.length === 0) return;
    yield { path: roof.path, onKey: true, data: { walls: bare } };
  },
  words: (d, say) =>
    d.walls.length > 0
      ? say.text(
          "No rafters and no purlins lie on the slope over wall {walls}, so its snow, wind and weight load no timber and are in no check. Give the roof “rafters”, or name rafters or purlins among the members.",
          { walls: say.list(d.walls) },
        )
      : say.text(
          "No timber of the frame carries this roof, so its snow, wind and weight are in no check. It needs plates in its walls and rafters, or purlins, on them.",
          {},
        ),
});
