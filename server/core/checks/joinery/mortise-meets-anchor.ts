import type { Joint, Prism } from "../../joinery/joint.ts";
import type { Timber } from "../../model/model.ts";
import { isUpright } from "../../model/upright.ts";
import { dot, sub, type Vec3 } from "../../model/vec.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";

interface Data {
  readonly joint: string;
  readonly post: string;
  readonly pier: string;
  readonly low: number;
  readonly reach: number;
  readonly dowel: boolean;
}

/** How far steel runs up a post from its foot, in: straps and bases along its faces, a dowel inside it. */
const REACH = { "embedded-strap": 8, "post-base": 8, dowel: 6 } as const;

/** The lowest place that a joint cuts, from the post's foot, in. */
function lowest(post: Timber, prisms: readonly Prism[], foot: Vec3, up: Vec3): number {
  const heights = prisms.flatMap(({ base, u, v, w, outline, from, to }) =>
    outline.flatMap(([x, y]) =>
      [from, to].map((z) => dot(sub(base, foot), up) + x * dot(u, up) + y * dot(v, up) + z * dot(w, up)),
    ),
  );
  return Math.max(0, Math.min(post.span, ...heights));
}

const cutsOf = ({ solids }: Joint): readonly Prism[] => [...solids.mortises, ...solids.housings];

export const mortiseMeetsAnchor = defineCheck<"model", Data>({
  meta: {
    id: "mortise-meets-anchor",
    title: "A joint where the anchor holds the post",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: straps and post bases are fastened over the lowest 8 in (200 mm) of a post, dowels reach 6 in (150 mm) up; the maker’s own sheet governs",
      status: "common-practice",
    },
    explanation: {
      what: "A mortise or housing is cut in the foot of a post where the anchor’s steel is fastened to it, or where its dowel stands.",
      why: "The bolts or nails of the strap have no wood behind them there, the tenon is in their way, and the post is weakest where wind pulls at it.",
      formula: "from the post’s foot to the lowest cut ≥ 8 in (dowel: 6 in)",
      remedy: "Set the girt or sill higher, or let it rest on the pier beside the post.",
    },
  },
  input: "model",
  *find(model) {
    const anchored = new Map(
      model.piers.flatMap((pier) => {
        const { timber, entry } = pier;
        const anchor = entry.anchor;
        return timber && anchor && isUpright(timber) ? [[timber.id, { pier, anchor }] as const] : [];
      }),
    );
    if (anchored.size === 0) return;
    for (const joint of judgedJoints(model)) {
      const held = anchored.get(joint.into.id);
      const post = joint.into;
      if (!held) continue;
      const reach = REACH[held.anchor.kind];
      const standing = post.axis[2] > 0;
      const up: Vec3 = standing ? post.axis : [-post.axis[0], -post.axis[1], -post.axis[2]];
      const low = lowest(post, cutsOf(joint), standing ? post.foot.point : post.head.point, up);
      // what is set out at this height lies there to a sixteenth
      if (cutsOf(joint).length === 0 || low >= reach - 1 / 32) continue;
      yield {
        path: joint.path,
        onKey: true,
        place: joint.id,
        data: {
          joint: joint.id,
          post: post.id,
          pier: held.pier.id,
          low,
          reach,
          dowel: held.anchor.kind === "dowel",
        },
        value: low,
        limit: reach,
        unit: "in",
        severity: reach - low,
        related: [
          {
            path: held.anchor.path,
            message: (say) => say.text("the anchor of {pier}", { pier: held.pier.id }),
          },
        ],
      };
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint,
      post: d.post,
      pier: d.pier,
      low: say.length(d.low),
      reach: say.length(d.reach),
      more: say.length(d.reach - d.low),
    };
    return d.dowel
      ? say.text(
          "{joint} is cut {low} above the foot of {post}, where the dowel of {pier} stands up to {reach} inside it: the tenon and the dowel are in each other’s way. Set it {more} higher.",
          values,
        )
      : say.text(
          "{joint} is cut {low} above the foot of {post}, where the anchor of {pier} is fastened over some {reach}: its bolts find no wood there, and the tenon is in their way. Set it {more} higher, or take an anchor that is shorter by its maker’s sheet.",
          values,
        );
  },
  worked: (d, say) => say.text("{low} < {reach}", { low: say.length(d.low), reach: say.length(d.reach) }),
});
