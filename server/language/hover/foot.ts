/** The foot of a post on its anchor: what to cut and bore, and what it holds each way. */
import { noteWords, sizeWords } from "../../core/checks/amount-words.ts";
import type { Say } from "../../core/checks/say.ts";
import { groupBy } from "../../core/collect.ts";
import { cutWords } from "../../core/joinery/cut-words.ts";
import { footCuts } from "../../core/joinery/foot/foot-cuts.ts";
import {
  FOOT_WAYS,
  type FootLack,
  type FootWay,
  footHold,
  type WayHold,
} from "../../core/joinery/foot/foot-hold.ts";
import { LIMIT_WORDS } from "../../core/joinery/foot/foot-limits.ts";
import { footAssembly, type PostFoot } from "../../core/joinery/foot/post-foot.ts";
import type { CutRow } from "../../core/joinery/joint.ts";
import type { Factor } from "../../core/sourced.ts";
import { caseWords } from "../../core/statics/case-words.ts";
import { type FootUse, footUses } from "../../core/statics/foot-uses.ts";
import type { FrameResults } from "../../core/statics/frame-results.ts";
import { drawFootSheet, footTitle } from "../../drawing/foot-sheet.ts";
import { pictureOf } from "../picture.ts";
import { escapeMarkdown, table } from "./table.ts";
import { hasForces } from "./unsolved.ts";
import { ratioText } from "./use-words.ts";

export const FOOT_TITLE = "Post foot on a metal anchor";

/** Ten years of load, for feet of a frame that has no forces yet. */
const NORMAL: Factor = { symbol: "C_D", value: 1, status: "published", source: "NDS Table 2.3.2" };

const LACKS: Readonly<Record<FootLack, string>> = {
  wood: "what wood the post is of",
  strap: "the thickness and width of its steel (`strap`)",
  fasteners: "its bolts or screws (`bolts`, `screws`)",
  "kerf-bolts": "bolts through the plate in its kerf (`bolts`), which screws do not hold",
  dowel: "what its dowel holds (`capacity`): it keeps the post in its place, and nothing here says how hard",
  unread: "a part of its anchor that cannot be read",
};

/** @returns `sideways, along its bolts` */
function wayWords(way: FootWay, say: Say): string {
  switch (way) {
    case "down":
      return say.text("pressed down");
    case "uplift":
      return say.text("lifted");
    case "along-bolts":
      return say.text("sideways, along its bolts");
    case "across-bolts":
      return say.text("sideways, square to its bolts");
  }
}

/** @returns which way it goes together, as a sentence */
export function footGoesIn(foot: PostFoot, say: Say): string {
  const down = footAssembly(foot).direction[2] < -0.9975;
  return say.text("{timber} goes in {way}.", {
    timber: foot.post.id,
    way: down ? say.text("straight down") : say.text("along its own length"),
  });
}

/** What each way asks and holds, as cells. @param all `footUses` of the frame, empty without forces */
export function footHoldRows(
  foot: PostFoot,
  all: readonly FootUse[],
  frame: FrameResults | undefined,
  say: Say,
): { readonly columns: string[]; readonly rows: string[][] } {
  const uses = new Map(all.filter((use) => use.foot.id === foot.id).map((use) => [use.way, use]));
  const normal = footHold(foot, NORMAL);
  const columns = [
    say.text("way"),
    say.text("at most"),
    say.text("holds"),
    say.text("limited by"),
    say.text("used"),
  ];
  const rows = FOOT_WAYS.flatMap((way) => {
    const use = uses.get(way);
    const hold = use ? use.hold : normal.ways[way];
    if (!use && !hold) return [];
    return [[wayWords(way, say), askedWords(use, frame, say), ...holdCells(hold, use, say)]];
  });
  return { columns, rows };
}

function askedWords(use: FootUse | undefined, frame: FrameResults | undefined, say: Say): string {
  if (!frame || !hasForces(frame)) return say.text("not known");
  return use ? `${say.force(use.force)}, ${caseWords(frame.solution, use.caseId, say)}` : say.text("nothing");
}

function holdCells(hold: WayHold | undefined, use: FootUse | undefined, say: Say): string[] {
  if (!hold) return [say.text("not known"), "", ""];
  const [first] = hold.limits;
  const ratio = use?.ratio;
  return [
    hold.whole
      ? say.force(first.value.value)
      : say.text("at most {force}", { force: say.force(first.value.value) }),
    say.text(LIMIT_WORDS[first.kind]),
    ratio === undefined
      ? ""
      : hold.whole || !Number.isFinite(ratio)
        ? ratioText(ratio, say)
        : say.text("at least {ratio}", { ratio: ratioText(ratio, say) }),
  ];
}

/** What the file has to say before more is known, and what no figure here covers. */
export function footRemarks(foot: PostFoot, say: Say): string[] {
  const { lacks, ways } = footHold(foot, NORMAL);
  const { kind, strap, bolts, screws } = foot.anchor;
  return [
    ...(lacks.length === 0
      ? []
      : [
          say.text("Not known, for want of: {lacks}.", {
            lacks: say.list(lacks.map((one) => say.text(LACKS[one]))),
          }),
        ]),
    ...(kind === "dowel" && (strap ?? bolts ?? screws) !== undefined
      ? [
          say.text(
            "Its `strap`, `bolts` and `screws` are not counted: a dowel has none. Where there are any, its kind is `embedded-strap` or `post-base`.",
          ),
        ]
      : []),
    ...(ways.down?.whole === false
      ? [
          say.text(
            "Pressed down, no more than what is named is judged: the plate or seat under the end grain and what carries it are for the maker to say (`capacity: {down: …, because: …}`).",
          ),
        ]
      : []),
    say.text(
      "Each way alone. Steel without a grade counts as common mild steel; how the anchor holds in the concrete is for its maker to say.",
    ),
  ];
}

function partOf({ on }: Pick<CutRow, "on">, { post }: PostFoot, say: Say): string {
  return on === "joined" ? post.member : on === "bolt" ? say.text("bolts") : say.text("screws");
}

/** Equal for feet that are cut alike. */
const sheetOf = (foot: PostFoot, say: Say): string[][] =>
  footCuts(foot).map((row) => [
    partOf(row, foot, say),
    sizeWords(row, say),
    cutWords(row, say),
    noteWords(row.how, say),
  ]);

/** More tables than this are no longer read. */
const MOST_TABLES = 4;

/**
 * The feet on the piers of an entry, those that are cut alike together, and what the one that is used most holds.
 * @returns Markdown; nothing without feet
 */
export function footHover(
  feet: readonly PostFoot[],
  frame: FrameResults | undefined,
  say: Say,
  pictures: boolean,
): string[] {
  const [first] = feet;
  if (!first) return [];
  const uses = frame ? footUses(frame) : [];
  const ratios = new Map(
    feet.map((foot) => [
      foot,
      Math.max(0, ...uses.flatMap((use) => (use.foot.id === foot.id ? [use.ratio ?? 0] : []))),
    ]),
  );
  const worst = feet.reduce(
    (most, foot) => ((ratios.get(foot) ?? 0) > (ratios.get(most) ?? 0) ? foot : most),
    first,
  );
  const groups = [...groupBy(feet, (foot) => JSON.stringify(sheetOf(foot, say))).values()];
  const sheets = groups.slice(0, MOST_TABLES).flatMap((group) => {
    const [one] = group;
    if (!one) return [];
    const places = say.list(group.map(({ pier }) => pier.place.text));
    return [
      say.text("At {places}:", { places: escapeMarkdown(places) }),
      table([say.text("on"), say.text("size"), say.text("cut"), say.text("how")], sheetOf(one, say)),
    ];
  });
  const { columns, rows } = footHoldRows(worst, uses, frame, say);
  return [
    `**${say.text(FOOT_TITLE)}**`,
    ...(pictures && (worst.strap || worst.row)
      ? [pictureOf(footTitle(worst, say), drawFootSheet(worst, say))]
      : []),
    ...sheets,
    escapeMarkdown(footGoesIn(worst, say)),
    say.text("What holds {foot}:", { foot: escapeMarkdown(worst.id) }),
    table(columns, rows),
    ...footRemarks(worst, say),
  ];
}
