import type { Joint } from "../../joinery/joint.ts";
import { isScarf } from "../../joinery/scarf.ts";
import type { Model } from "../../model/model.ts";
import { isUpright } from "../../model/upright.ts";
import { dot } from "../../model/vec.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";

interface Data {
  readonly joint: string;
  readonly near: string;
  readonly distance: number;
  readonly span: number;
  readonly most: number;
}

/** Share of the span within which a scarf lies near enough to a post. */
const NEAR = 1 / 4;
/** Posts are not set out closer than this, in. */
const SLACK = 1;

interface Post {
  readonly id: string;
  readonly at: number;
}

/** Uprights that carry one of the two lengths, or in which one ends, and piers under them; along the scarf's timber. */
function postsOf(model: Model, { of, into }: Joint): Post[] {
  const own = new Set([of.id, into.id]);
  const along = (p: readonly [number, number, number]): number => dot(p, of.axis);
  // by its own middle: a post under a scarf meets both lengths
  const posts = new Map(
    model.joints.flatMap(({ of, into }) => {
      const post = own.has(into.id) ? of : own.has(of.id) ? into : undefined;
      return post && isUpright(post) ? [[post.id, along(post.origin)] as const] : [];
    }),
  );
  const uprights = [...posts].map(([id, at]): Post => ({ id, at }));
  const piers = model.piers.flatMap((p): Post[] =>
    p.timber && own.has(p.timber.id) ? [{ id: p.id, at: along(p.top) }] : [],
  );
  return [...uprights, ...piers].sort((a, b) => a.at - b.at);
}

export const scarfInSpan = defineCheck<"model", Data>({
  meta: {
    id: "scarf-in-span",
    title: "A scarf too far from a post",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: a scarf lies over a post or within a quarter of the span beside it",
      status: "common-practice",
    },
    explanation: {
      what: "Two lengths of a lying timber are scarfed in the middle part of a span between posts.",
      why: "A scarf bends with a small share of what the whole timber carries; here it counts as a hinge. In the middle part of a span the timber sags at it, or folds, and what is beside it carries more.",
      formula: "distance from the middle of the lap to the nearer post ≤ span ÷ 4",
      remedy: "Move it over a post, or beside one where a brace comes up to the timber.",
    },
  },
  input: "model",
  *find(model) {
    for (const joint of judgedJoints(model)) {
      const [lap] = joint.solids.mortises;
      if (!isScarf(joint.kind) || !lap || isUpright(joint.of)) continue;
      const at = dot(lap.base, joint.of.axis);
      const posts = postsOf(model, joint);
      const before = posts.findLast((p) => p.at <= at);
      const after = posts.find((p) => p.at > at);
      // past the last post it carries a free end, which then falls: the forces tell
      if (!before || !after) continue;
      const span = after.at - before.at;
      const near = at - before.at <= after.at - at ? before : after;
      const distance = Math.abs(at - near.at);
      const most = span * NEAR;
      if (distance <= most + SLACK) continue;
      const spliced = joint.path.endsWith("/splice");
      yield {
        ...(spliced ? { path: `${joint.path}/at` } : { path: joint.path, onKey: true as const }),
        place: joint.id,
        data: { joint: joint.id, near: near.id, distance, span, most },
        value: distance,
        limit: most,
        unit: "in",
        severity: distance - most,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{joint} lies {distance} from {near} in a span of {span}: it bends like a hinge there, and the timber sags at it. Put it over a post, or within {most} of one.",
      {
        joint: d.joint,
        near: d.near,
        distance: say.length(d.distance),
        span: say.length(d.span),
        most: say.length(d.most),
      },
    ),
  worked: (d, say) =>
    say.text("{distance} > {span} ÷ 4 = {most}", {
      distance: say.length(d.distance),
      span: say.length(d.span),
      most: say.length(d.most),
    }),
});
