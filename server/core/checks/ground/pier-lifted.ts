import { tiesFooting } from "../../ground/pier-concrete.ts";
import { pierHold, type UpliftHold } from "../../ground/uplift.ts";
import type { WayHold } from "../../joinery/foot/foot-hold.ts";
import type { Pier } from "../../model/model.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FootUse } from "../../statics/foot-uses.ts";
import type { FrameResults, PierReaction } from "../../statics/frame-results.ts";
import { defineCheck, type Fix, type Found } from "../check.ts";
import { lacksWeight } from "../loads/lacks-weight.ts";
import type { Say } from "../say.ts";
import { footPath, heldWords, limitFormula, limitRemedy } from "./foot-words.ts";
import { DEEPEST_PIER, depthFix, nextSize, tubeFix, WIDEST_TUBE } from "./pier-sizes.ts";

/** The pier is too light, or the post is not tied to it, or its anchor holds less than pulls. */
type Data = Lifted &
  (
    | { readonly kind: "light"; readonly hold: UpliftHold }
    | { readonly kind: "loose" }
    | { readonly kind: "weak"; readonly use: FootUse & { readonly hold: WayHold } }
  );

interface Lifted {
  readonly pier: Pier;
  readonly up: PierReaction["up"];
  readonly solution: FrameResults["solution"];
}

/** Uplift below this is none, lb: less than the post's own foot weighs. */
const NOTHING = 5;

/** A post's bolted or cast-in anchor holds it down, a pin in its end grain only keeps its place unless the file says more. */
const ties = ({ entry: { anchor } }: Pier): boolean =>
  anchor !== undefined && (anchor.kind !== "dowel" || anchor.capacity !== undefined);

function pathOf({ pier, ...d }: Data): Pick<Found<Data>, "path" | "onKey"> {
  const { entry } = pier;
  const { kind } = d;
  if (kind === "weak") return footPath(d.use.foot, d.use.hold, "uplift");
  if (kind === "light" && entry.kind === "tube") return { path: `${entry.path}/diameter` };
  if (kind === "loose" && entry.anchor) return { path: `${entry.anchor.path}/kind` };
  return { path: entry.path, onKey: true };
}

const isHeavy = (pier: Pier, d: Data): boolean => pierHold(pier, d.up.most).short === 0;

function widerTube(d: Data, say: Say): number | undefined {
  const { pier } = d;
  return nextSize(pier.diameter, WIDEST_TUBE, say, (diameter) => isHeavy({ ...pier, diameter }, d));
}

function deeperTube(d: Data, say: Say): number | undefined {
  const { pier } = d;
  return nextSize(pier.groundLow - pier.tubeBottom, DEEPEST_PIER, say, (depth) =>
    isHeavy({ ...pier, tubeBottom: pier.groundLow - depth }, d),
  );
}

/** What holds, lb. */
function limitOf(d: Data): number {
  if (d.kind === "weak") return d.use.hold.limits[0].value.value;
  return d.kind === "light" ? d.hold.held : 0;
}

function remedyWords(d: Data, say: Say): string {
  if (d.pier.entry.kind === "pad") return say.text("Make the pad larger or thicker.");
  const [wider, deeper] = [widerTube(d, say), deeperTube(d, say)];
  if (wider !== undefined && deeper !== undefined)
    return say.text("A tube of {wider}, or a depth of {deeper}, holds it.", {
      wider: say.length(wider),
      deeper: say.length(deeper),
    });
  if (wider !== undefined) return say.text("A tube of {wider} holds it.", { wider: say.length(wider) });
  return say.text("Tie it with bars to a footing that is heavy enough.");
}

export const pierLifted = defineCheck<"shared", Data>({
  meta: {
    id: "pier-lifted",
    title: "A pier that the wind lifts",
    level: "error",
    area: "ground",
    source: {
      text: "ASCE 7 section 2.4, 0.6 D + 0.6 W, as remembered: the weight of the pier counts with 0.6; concrete 150 lb/ft³",
      status: "memory",
    },
    explanation: {
      what: "Under wind a post pulls at its pier with more than the weight of the pier holds or than its anchor’s bolts, screws and straps do, or nothing ties the post to it.",
      why: "The pier works up out of the ground, or the post lifts off, and the frame goes with it.",
      formula:
        "net uplift ≤ 0.6 × weight of the pier; its footing counts where bars tie it to the pier; soil on a footing and along the shaft is left out; the frame counts with 0.6 of its least weight: dry timber of the lightest species of its name, the lighter end of the roofing; an anchor’s bolts by the yield modes of NDS 12.3 with C_D, C_g and C_Δ, the wood below them by NDS appendix E, its straps by AISC 360",
      remedy:
        "Take a wider or deeper tube, or bars into a footing below; tie the post down with a strap cast into the concrete or a post base. What the anchor itself holds is its maker’s to say; where the file gives its straps and bolts, or its capacity with a reason, that is judged too.",
    },
  },
  input: "shared",
  ofTheWhole: true,
  *find({ frame, footUses }) {
    // without the weight of a timber nothing tells how much of the wind is left
    if (!frame || lacksWeight(frame)) return;
    const { solution } = frame;
    const pulls = new Map(
      footUses().flatMap((use) => (use.way === "uplift" ? [[use.foot.pier.id, use] as const] : [])),
    );
    for (const { pier, up } of frame.piers) {
      if (up.most < NOTHING) continue;
      const hold = pierHold(pier, up.most);
      const use = pulls.get(pier.id);
      const data: Data[] = [
        ...(ties(pier) ? [] : [{ kind: "loose" as const, pier, up, solution }]),
        ...(hold.short > 0 ? [{ kind: "light" as const, hold, pier, up, solution }] : []),
        ...(use?.hold && (use.ratio ?? 0) > 1
          ? [
              {
                kind: "weak" as const,
                use: { ...use, hold: use.hold },
                pier,
                up: { most: use.force, caseId: use.caseId },
                solution,
              },
            ]
          : []),
      ];
      for (const each of data)
        yield {
          ...pathOf(each),
          apart: each.kind,
          place: pier.id,
          data: each,
          value: each.up.most,
          limit: limitOf(each),
          unit: "lb",
          // equal reactions at mirrored places differ in the last digits
          severity: Math.round(each.kind === "light" ? hold.short : up.most),
        };
    }
  },
  words: (d, say) => {
    const values = {
      pier: d.pier.id,
      post: d.pier.timber?.id ?? "",
      up: say.force(d.up.most),
      combination: caseWords(d.solution, d.up.caseId, say),
    };
    if (d.kind === "loose")
      return d.pier.entry.anchor
        ? say.text(
            "{post} pulls at {pier} with {up} under {combination}, and a dowel holds nothing down: it slides out of the end grain. Take a strap cast into the concrete, or a post base.",
            values,
          )
        : say.text(
            "{post} pulls at {pier} with {up} under {combination}, and nothing ties it down. Say what does, as “anchor: {kind: embedded-strap}”, rated for that by its maker.",
            values,
          );
    if (d.kind === "weak")
      return say.text("{post} pulls at {pier} with {up} under {combination}, {held}. {help}", {
        ...values,
        held: heldWords(d.use.hold, say),
        help: limitRemedy(d.use.hold, "uplift", say),
      });
    return say.text(
      "{pier} is lifted with {up} under {combination}, more than the {held} that its weight of {weight} holds with 0.6 of it{footing}. {help} Its anchor must hold {up} too.",
      {
        ...values,
        held: say.force(d.hold.held),
        weight: say.weight(d.hold.pier),
        footing:
          d.pier.footing && !tiesFooting(d.pier)
            ? say.text("; without bars the footing stays in the ground")
            : "",
        help: remedyWords(d, say),
      },
    );
  },
  worked: (d, say) =>
    d.kind === "weak"
      ? limitFormula(d.up.most, d.use.hold, say)
      : d.kind === "light"
        ? say.text("{up} > 0.6 × {weight} = {held}", {
            up: say.force(d.up.most),
            weight: say.force(d.hold.pier),
            held: say.force(d.hold.held),
          })
        : say.text("{up} > {none}", { up: say.force(d.up.most), none: say.force(0) }),
  fixes: (d, say): Fix[] => {
    if (d.kind !== "light" || d.pier.entry.kind === "pad") return [];
    return [...tubeFix(d.pier, widerTube(d, say), say), ...depthFix(d.pier, deeperTube(d, say), say)];
  },
});
