import { groupBy } from "../../collect.ts";
import type { AnchorSpec } from "../../frame/anchor.ts";
import { anchorReach } from "../../joinery/foot/post-foot.ts";
import type { Joint, Prism } from "../../joinery/joint.ts";
import { isLap } from "../../joinery/near-joints.ts";
import type { Pier, Timber } from "../../model/model.ts";
import { solidOf } from "../../model/solid.ts";
import { isUpright } from "../../model/upright.ts";
import { dot, scale, sub, type Vec3 } from "../../model/vec.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck, type Found } from "../check.ts";
import { judgedJoints } from "./judged.ts";

interface Data {
  readonly joint: string;
  readonly timber: string;
  readonly pier: string;
  readonly low: number;
  readonly reach: number;
  readonly dowel: boolean;
  /** a sill or beam over its pier */
  readonly lies: boolean;
}

/** Width of a strap where the file gives none, and a lying timber’s wood above it, in (common practice, no source). */
const USUAL_WIDTH = 2.5;
const ABOVE_STRAP = 2;

/** Where the steel of a pier lies at a timber, from the middle of what it holds. */
interface Held {
  readonly pier: Pier;
  readonly anchor: AnchorSpec;
  /** the timber's end or its underside over the pier, and the way up from there */
  readonly foot: Vec3;
  readonly up: Vec3;
  /** in */
  readonly reach: number;
  /** of a lying timber: along it, and half of the steel’s width that way */
  readonly beside: { readonly axis: Vec3; readonly half: number } | undefined;
}

function uprightHeld(pier: Pier, post: Timber, anchor: AnchorSpec): Held {
  const standing = post.axis[2] > 0;
  const up: Vec3 = standing ? post.axis : scale(post.axis, -1);
  const foot = standing ? post.foot.point : post.head.point;
  return { pier, anchor, foot, up, reach: anchorReach(anchor), beside: undefined };
}

/** Straps stand on both sides of a lying timber over its pier, and end below its upper edge. */
function lyingHeld(pier: Pier, timber: Timber, anchor: AnchorSpec): Held {
  const up: Vec3 = [0, 0, 1];
  const low = solidOf(timber).low[2];
  const strap = anchor.strap === "unread" ? undefined : anchor.strap;
  const usual = Math.min(anchorReach(anchor), timber.depth - ABOVE_STRAP);
  const width = strap?.width === undefined ? USUAL_WIDTH : inches(strap.width);
  return {
    pier,
    anchor,
    foot: [pier.top[0], pier.top[1], low],
    up,
    reach: strap?.height === undefined ? usual : anchorReach(anchor),
    beside: { axis: timber.axis, half: anchor.kind === "dowel" ? 1 / 4 : width / 2 },
  };
}

/** From where to where a prism lies along a direction, from a point. */
function rangeOf(prism: Prism, from: Vec3, way: Vec3): readonly [number, number] {
  const { base, u, v, w, outline, from: start, to } = prism;
  const at = outline.flatMap(([x, y]) =>
    [start, to].map((z) => dot(sub(base, from), way) + x * dot(u, way) + y * dot(v, way) + z * dot(w, way)),
  );
  return [Math.min(...at), Math.max(...at)];
}

/** The lowest place that a joint cuts where the steel is, from the timber's end or underside, in; undefined = it cuts beside it. */
function lowest(prisms: readonly Prism[], { foot, up, beside }: Held): number | undefined {
  const near = prisms.filter((prism) => {
    if (!beside) return true;
    const [low, high] = rangeOf(prism, foot, beside.axis);
    return low < beside.half - 1e-6 && high > 1e-6 - beside.half;
  });
  return near.length === 0
    ? undefined
    : Math.max(0, Math.min(...near.map((prism) => rangeOf(prism, foot, up)[0])));
}

const cutsOf = ({ solids }: Joint): readonly Prism[] => [...solids.mortises, ...solids.housings];

function foundAt(joint: Joint, { pier, anchor, reach, beside }: Held, low: number): Found<Data> {
  return {
    path: joint.path,
    onKey: true,
    place: joint.id,
    data: {
      joint: joint.id,
      timber: joint.into.id,
      pier: pier.id,
      low,
      reach,
      dowel: anchor.kind === "dowel",
      lies: beside !== undefined,
    },
    value: low,
    limit: reach,
    unit: "in",
    severity: reach - low,
    related: [{ path: anchor.path, message: (say) => say.text("the anchor of {pier}", { pier: pier.id }) }],
  };
}

export const mortiseMeetsAnchor = defineCheck<"model", Data>({
  meta: {
    id: "mortise-meets-anchor",
    title: "A joint where the anchor holds its timber",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: straps and post bases are fastened over the lowest 8 in (200 mm) of a post, dowels reach 6 in (150 mm) up; the maker’s own sheet governs",
      status: "common-practice",
    },
    explanation: {
      what: "A mortise or housing is cut in the foot of a post, or in a sill or beam right over its pier, where the anchor’s steel is fastened to it, or where its dowel stands. Laps and scarfs over a pier are left out.",
      why: "The bolts or nails of the strap have no wood behind them there, the tenon is in their way, and the timber is weakest where wind pulls at it.",
      formula:
        "from the post’s foot, or the underside of what lies over the pier, to the lowest cut ≥ the height of the strap; without one 8 in (dowel: 6 in), in a lying timber at most its depth less 2 in, over the width of the strap (2 1/2 in)",
      remedy:
        "Set the girt or sill higher, or let it rest on the pier beside the post; set a pier beside the mortise of the post above.",
    },
  },
  input: "model",
  *find(model) {
    const anchored = groupBy(
      model.piers.flatMap((pier) => {
        const { timber, entry } = pier;
        const { anchor } = entry;
        if (!timber || !anchor) return [];
        const held = (isUpright(timber) ? uprightHeld : lyingHeld)(pier, timber, anchor);
        return [{ id: timber.id, held }];
      }),
      ({ id }) => id,
    );
    if (anchored.size === 0) return;
    for (const joint of judgedJoints(model)) {
      const timber = joint.into;
      for (const { held } of anchored.get(timber.id) ?? []) {
        // bolts pass through both halves of a lap or a scarf, and hold them together
        if (held.beside && isLap(joint.kind)) continue;
        const low = lowest(cutsOf(joint), held);
        // what is set out at this height lies there to a sixteenth
        if (low === undefined || low >= held.reach - 1 / 32) continue;
        yield foundAt(joint, held, low);
      }
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint,
      post: d.timber,
      timber: d.timber,
      pier: d.pier,
      low: say.length(d.low),
      reach: say.length(d.reach),
      more: say.length(d.reach - d.low),
    };
    if (d.lies)
      return d.dowel
        ? say.text(
            "{joint} is cut down to {low} above the underside of {timber} right over {pier}, whose dowel stands up to {reach} inside it: the tenon and the dowel are in each other’s way. Set the pier or the joint aside, or make the tenon {more} shorter.",
            values,
          )
        : say.text(
            "{joint} is cut down to {low} above the underside of {timber} right over {pier}, whose anchor is fastened over some {reach}: its bolts find no wood there, and the tenon is in their way. Set the pier or the joint aside, or make the tenon {more} shorter.",
            values,
          );
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
