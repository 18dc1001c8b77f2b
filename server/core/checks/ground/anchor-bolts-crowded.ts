import { footDistances } from "../../joinery/foot/foot-room.ts";
import { type FootRow, type PostFoot, topOf } from "../../joinery/foot/post-foot.ts";
import { defineCheck } from "../check.ts";
import type { Say } from "../say.ts";

type What = "end" | "spacing" | "edge" | "steel-top" | "steel-side";

interface Short {
  readonly what: What;
  /** in */
  readonly have: number;
  readonly need: number;
  /** for the full value, in */
  readonly full: number;
}

interface Data extends Short {
  readonly foot: string;
  readonly kind: FootRow["kind"];
  readonly diameter: number;
  readonly path: string;
}

/** Steel from the center of a hole to its own edge, in diameters (AISC 360 Table J3.4 in round figures; memory). */
const STEEL_EDGE = 1.5;

/** What a size may fall short, in: less than a saw is true to. */
const SLACK = 1 / 32;

function shortOf(foot: PostFoot, row: FootRow): Short[] {
  const wood = (footDistances(foot) ?? []).flatMap(({ what, have, need, full }): Short[] =>
    what === "end" || what === "spacing" || what === "edge" ? [{ what, have, need, full }] : [],
  );
  const { strap } = foot;
  const need = STEEL_EDGE * row.diameter;
  const steel: Short[] = strap
    ? [
        { what: "steel-top", have: strap.height.value - topOf(row), need, full: need },
        { what: "steel-side", have: strap.width / 2, need, full: need },
      ]
    : [];
  return [...wood, ...steel].filter(({ have, need: least }) => have < least - SLACK);
}

function pathOf({ anchor }: PostFoot, row: FootRow, what: What): string {
  const strap = anchor.strap === "unread" ? undefined : anchor.strap;
  switch (what) {
    case "end":
      return row.up.from === "file" ? `${row.path}/up` : `${row.path}/diameter`;
    case "spacing":
      return row.spacing.from === "file" ? `${row.path}/spacing` : `${row.path}/diameter`;
    case "edge":
      return `${row.path}/diameter`;
    case "steel-top":
      return strap?.height === undefined ? `${row.path}/diameter` : `${strap.path}/height`;
    case "steel-side":
      return strap ? `${strap.path}/width` : `${row.path}/diameter`;
  }
}

function whereWords({ what, have, foot, kind }: Data, say: Say): string {
  const values = { foot, have: say.length(have) };
  const bolts = kind === "bolts";
  switch (what) {
    case "end":
      return bolts
        ? say.text("At {foot} the lowest bolt sits {have} above the end of the post", values)
        : say.text("At {foot} the lowest screw sits {have} above the end of the post", values);
    case "spacing":
      return bolts
        ? say.text("At {foot} the bolts sit {have} from one another", values)
        : say.text("At {foot} the screws sit {have} from one another", values);
    case "edge":
      return bolts
        ? say.text("At {foot} the bolts sit {have} from the edge of the post", values)
        : say.text("At {foot} the screws sit {have} from the edge of the post", values);
    case "steel-top":
      return say.text("At {foot} the steel ends {have} above its topmost hole", values);
    case "steel-side":
      return say.text("At {foot} the steel has {have} from its hole to its edge", values);
  }
}

export const anchorBoltsCrowded = defineCheck<"model", Data>({
  meta: {
    id: "anchor-bolts-crowded",
    title: "Bolts or screws of an anchor too near an end, an edge or each other",
    level: "warning",
    area: "ground",
    source: {
      text: "NDS Tables 12.5.1A to D; steel past a hole by AISC 360 Table J3.4 in round figures",
      status: "memory",
    },
    explanation: {
      what: "In the foot of a post the bolts or screws of its anchor have less wood to its end, to its edge or between them than they need to count at all, up or sideways, or the steel ends too near its holes. Where the file states what holds sideways (“capacity”), a push square to the bolts asks for nothing. Screws under 1/4 in are held to the same, for which the NDS gives no number.",
      why: "The wood below a bolt shears out toward the end of the post, or splits along the row, long before the bolt is loaded as it could be.",
      formula:
        "in diameters: end ≥ 3.5 (7 for the full value, in softwood pulled along the grain); a push square to the bolts makes each a row of its own: spacing ≥ 5 (2.5 to 5 where the bolt is shorter in the wood than 6 diameters), edge ≥ 4; for uplift alone spacing ≥ 3 (4), edge ≥ 1.5; steel to the middle of a hole ≥ 1.5",
      remedy: "Set the bolts higher and farther apart, take thinner ones, or steel that is longer and wider.",
    },
  },
  input: "model",
  *find({ feet }) {
    for (const foot of feet) {
      const { row } = foot;
      if (!row) continue;
      for (const short of shortOf(foot, row)) {
        const path = pathOf(foot, row, short.what);
        yield {
          path,
          apart: short.what,
          place: foot.pier.id,
          data: { ...short, foot: foot.id, kind: row.kind, diameter: row.diameter, path },
          value: short.have,
          limit: short.need,
          unit: "in",
          severity: short.need - short.have,
        };
      }
    }
  },
  words: (d, say) => {
    const values = { where: whereWords(d, say), need: say.length(d.need), full: say.length(d.full) };
    if (d.what === "spacing" && d.full < d.need + 1e-6)
      return say.text(
        "{where}, less than the {need} from which they hold a push square to them: each is a row of its own then, and the wood splits between them. Give them {full}.",
        values,
      );
    return d.full > d.need + 1e-6
      ? say.text(
          "{where}, less than the {need} from which they count at all: the wood shears out or splits there. Give them {full}, with which they hold in full.",
          values,
        )
      : d.what === "edge"
        ? say.text(
            "{where}, less than the {need} they need: the wood splits there. Take thinner ones.",
            values,
          )
        : say.text("{where}, less than the {need} it needs: it tears there. Take larger steel.", values);
  },
  worked: (d, say) => say.text("{have} < {need}", { have: say.length(d.have), need: say.length(d.need) }),
  fixes: (d, say) =>
    d.path.endsWith("/up") || d.path.endsWith("/spacing")
      ? [
          {
            title: say.text("Give them {full}", { full: say.length(d.full) }),
            edits: [{ kind: "replace", path: d.path, text: say.length(d.full) }],
          },
        ]
      : [],
});
