import { type FootStrap, type PostFoot, screwRoom, woodLeft } from "../../joinery/foot/post-foot.ts";
import { defineCheck, type Fix } from "../check.ts";
import type { Say } from "../say.ts";

type Data = Facts & {
  readonly foot: string;
  readonly through: number;
  readonly strap: FootStrap;
  readonly path: string;
};

/** All in inches. */
type Facts =
  | { readonly kind: "let-in" | "kerf"; readonly cut: number; readonly left: number }
  | { readonly kind: "wide"; readonly breadth: number }
  | { readonly kind: "screws"; readonly length: number; readonly room: number };

/** What a size may be over, in: less than a saw is true to. */
const SLACK = 1 / 32;

/** Straps and plates that are let in take at most so much of the post (common practice, no source). */
const MOST_CUT = 1 / 2;

function factsOf(foot: PostFoot, strap: FootStrap): (Facts & { readonly path: string })[] {
  const spec = foot.anchor.strap;
  if (spec === undefined || spec === "unread") return [];
  const { through, breadth, row } = foot;
  const inKerf = strap.kerf > 0;
  const cut = inKerf ? strap.kerf : strap.sides * strap.letIn;
  const room = screwRoom(foot);
  const length = row?.kind === "screws" ? (row.length ?? 0) : 0;
  return [
    ...(cut > MOST_CUT * through + SLACK
      ? [
          {
            kind: inKerf ? ("kerf" as const) : ("let-in" as const),
            cut,
            left: woodLeft(foot),
            path: `${spec.path}/${inKerf ? "thickness" : "let-in"}`,
          },
        ]
      : []),
    ...(strap.width > breadth + SLACK
      ? [{ kind: "wide" as const, breadth, path: `${spec.path}/width` }]
      : []),
    ...(row && room > 0 && length - strap.thickness > room + SLACK
      ? [{ kind: "screws" as const, length, room, path: `${row.path}/length` }]
      : []),
  ];
}

const sizeOf = (d: Facts & { readonly strap: FootStrap }): number =>
  d.kind === "wide" ? d.strap.width : d.kind === "screws" ? d.length - d.strap.thickness : d.cut;

const limitOf = (d: Facts & { readonly through: number }): number =>
  d.kind === "wide" ? d.breadth : d.kind === "screws" ? d.room : MOST_CUT * d.through;

/** The longest screw that stays inside, in steps of 1/2 in or 5 mm; undefined where none does. */
function screwThatFits(room: number, thickness: number, say: Say): number | undefined {
  const step = say.metric ? 5 / 25.4 : 1 / 2;
  const fits = step * Math.floor((room + thickness) / step + 1e-6);
  return fits > thickness ? fits : undefined;
}

function cutWords(d: Data & { readonly kind: "let-in" | "kerf" }, say: Say): string {
  const values = {
    foot: d.foot,
    cut: say.length(d.cut),
    depth: say.length(d.strap.letIn),
    left: say.length(d.left),
    through: say.length(d.through),
    half: say.length(limitOf(d)),
    thickness: say.length(d.strap.thickness),
  };
  const how =
    d.kind === "kerf"
      ? say.text("At {foot} the plate of {thickness} takes a kerf of {cut} in a post of {through}", values)
      : d.strap.sides === 2
        ? say.text("At {foot} each strap is let in {depth} deep into a post of {through}", values)
        : say.text("At {foot} the strap is let in {depth} deep into a post of {through}", values);
  const remedy =
    d.kind === "kerf"
      ? say.text("Take a thinner plate.")
      : say.text("Let it in no deeper than it is thick, {thickness}.", values);
  return d.left > 0
    ? say.text(
        "{how}: {left} of wood is left there, less than half of the post, for its bolts and for the load above. {remedy}",
        { ...values, how, remedy },
      )
    : say.text("{how}: nothing of the post is left there for its bolts or for the load above. {remedy}", {
        how,
        remedy,
      });
}

function screwWords(d: Data & { readonly kind: "screws" }, say: Say): string {
  const values = {
    foot: d.foot,
    length: say.length(d.length),
    reach: say.length(d.length - d.strap.thickness),
    room: say.length(d.room),
  };
  const how =
    d.strap.sides === 2
      ? say.text(
          "At {foot} screws of {length} reach {reach} into the wood from both faces, and to the middle there are {room}: their points meet, and only what lies before the middle is counted.",
          values,
        )
      : say.text(
          "At {foot} screws of {length} reach {reach} into {room} of wood: their points stand out of the far face, and what stands out holds nothing.",
          values,
        );
  const fits = screwThatFits(d.room, d.strap.thickness, say);
  const remedy =
    fits === undefined
      ? say.text("Take shorter ones.")
      : say.text("Take ones of {fits} or shorter.", { fits: say.length(fits) });
  return say.text("{how} {remedy}", { how, remedy });
}

export const anchorUnfit = defineCheck<"model", Data>({
  meta: {
    id: "anchor-unfit",
    title: "An anchor that its post has no wood for",
    level: "warning",
    area: "ground",
    source: {
      text: "the post’s own sizes; at most half of it cut away by common practice",
      status: "common-practice",
    },
    explanation: {
      what: "Straps are let in, or a kerf is cut, so deep that less than half of the post is left between them; steel is wider than the face of the post that it lies on; or screws are longer than the wood that they go into: those of two opposite straps meet in the middle. An error where nothing of the post is left.",
      why: "Bolts and thread hold only in wood that is there, and the post carries its load on what is left of it.",
      formula:
        "straps × let-in ≤ half of the post; plate + 1/16 in ≤ half of the post; width of the steel ≤ width of the post; length of the screw − thickness of the steel ≤ wood to the far face, or to the middle where screws come from both faces",
      remedy: "Let straps in as deep as they are thick, take narrower steel, or shorter screws.",
    },
  },
  input: "model",
  *find({ feet }) {
    for (const foot of feet) {
      const { strap, through } = foot;
      if (!strap) continue;
      for (const facts of factsOf(foot, strap)) {
        const data: Data = { ...facts, foot: foot.id, through, strap };
        yield {
          path: facts.path,
          apart: facts.kind,
          place: foot.pier.id,
          ...("left" in facts && facts.left === 0 ? { level: "error" as const } : {}),
          data,
          value: sizeOf(data),
          limit: limitOf(data),
          unit: "in",
          severity: sizeOf(data) - limitOf(data),
        };
      }
    }
  },
  words: (d, say) => {
    switch (d.kind) {
      case "let-in":
      case "kerf":
        return cutWords({ ...d, kind: d.kind }, say);
      case "screws":
        return screwWords(d, say);
      case "wide":
        return say.text(
          "At {foot} the steel is {width} wide and the post {breadth}: what stands past the post has no wood behind it and is not counted. Take steel of {breadth} or narrower.",
          { foot: d.foot, width: say.length(d.strap.width), breadth: say.length(d.breadth) },
        );
    }
  },
  worked: (d, say) => {
    const limit = say.length(limitOf(d));
    const value = say.length(sizeOf(d));
    const thickness = say.length(d.strap.thickness);
    switch (d.kind) {
      case "let-in":
        return say.text("{sides} × {depth} = {value} > {through} ÷ 2 = {limit}", {
          sides: d.strap.sides,
          depth: say.length(d.strap.letIn),
          value,
          through: say.length(d.through),
          limit,
        });
      case "kerf":
        return say.text("{value} > {through} ÷ 2 = {limit}", {
          value,
          through: say.length(d.through),
          limit,
        });
      case "screws":
        return say.text("{length} − {thickness} = {value} > {limit}", {
          length: say.length(d.length),
          thickness,
          value,
          limit,
        });
      case "wide":
        return say.text("{value} > {limit}", { value, limit });
    }
  },
  fixes: (d, say): Fix[] => {
    const size =
      d.kind === "wide"
        ? d.breadth
        : d.kind === "screws"
          ? screwThatFits(d.room, d.strap.thickness, say)
          : d.kind === "let-in" && d.strap.sides * d.strap.thickness <= MOST_CUT * d.through
            ? d.strap.thickness
            : undefined;
    if (size === undefined) return [];
    const text = say.length(size);
    const title =
      d.kind === "wide"
        ? say.text("Take steel of {size}", { size: text })
        : d.kind === "screws"
          ? say.text("Take screws of {size}", { size: text })
          : say.text("Let them in {size} deep", { size: text });
    return [{ title, edits: [{ kind: "replace", path: d.path, text }] }];
  },
});
