import type { Joint } from "../../joinery/joint.ts";
import type { Sized } from "../../joinery/joint-sizes.ts";
import { leastSplayedLap } from "../../joinery/kinds/stop-splayed-scarf.ts";
import { downToStep } from "../../joinery/proportions.ts";
import { isScarf } from "../../joinery/scarf.ts";
import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import { judgedJoints } from "./judged.ts";
import { sizeFound, sizePath } from "./size-path.ts";

interface Data {
  readonly what: "end" | "wide" | "thick" | "blades" | "butts" | "none" | "short";
  readonly joint: string;
  readonly stick: string;
  /** what is asked for, in */
  readonly size: number;
  /** what it is held against, in */
  readonly limit: number;
  /** the timber's depth, in */
  readonly depth: number;
  /** end: from the middle of the lap to where the stick ends, and what is cut past each end of the lap, in */
  readonly near: number;
  readonly past: number;
  /** end: how much farther from that end it would fit, and what lap fits where it is; undefined = no such way, in */
  readonly move?: number;
  /** what would fit: the text to stand at `path`, where that is given in the file, in */
  readonly fits?: number;
  readonly path: string | undefined;
}

/** Two butts, two blades and the like take no more than what is there. */
const HALF = 1 / 2;
/** Below this many depths a lap only joins and no longer bends with the timber. */
const SHORT = 2;

type Wrong = Pick<Data, "what" | "size" | "limit"> &
  Partial<Data> & { readonly key: string; readonly of: Sized; readonly level?: "warning" };

function* wrongOf(joint: Joint): Generator<Wrong> {
  const { of, sizes } = joint;
  const { lap, blade, splay } = sizes;
  if (!isScarf(joint.kind) || !lap) return;
  const { length, room } = lap;
  const asked = length.asked ?? length.value;
  const past = splay?.undercut ?? 0;
  const least = splay ? leastSplayedLap(splay) : 0;
  const usual = SHORT * of.depth;
  if (asked <= least)
    yield { what: "none", key: "lap", of: length, size: asked, limit: least, fits: 2 * usual };
  else if (length.asked !== undefined && room) {
    const half = asked / 2 + past;
    yield {
      what: "end",
      key: "lap",
      of: length,
      size: asked,
      limit: 2 * (room.near - past),
      near: room.near,
      past,
      stick: room.stick,
      ...(2 * half <= room.near + room.other ? { move: half - room.near } : {}),
      // a short one would be a poor scarf
      ...(length.value >= usual ? { fits: length.value } : {}),
    };
  } else if (asked < usual - 1e-6)
    yield {
      what: "short",
      level: "warning",
      key: "lap",
      of: length,
      size: asked,
      limit: usual,
      fits: 2 * usual,
    };
  if (blade?.thickness.asked !== undefined)
    yield {
      what: "wide",
      key: "blade/thickness",
      of: blade.thickness,
      size: blade.thickness.asked,
      limit: of.width,
      fits: blade.thickness.value,
    };
  else if (blade && blade.thickness.value > of.width * HALF + 1e-6)
    yield {
      what: "thick",
      level: "warning",
      key: "blade/thickness",
      of: blade.thickness,
      size: blade.thickness.value,
      limit: of.width * HALF,
      fits: of.width / 4,
    };
  if (blade?.length.asked !== undefined && blade.length.asked > asked * HALF + 1e-6)
    yield {
      what: "blades",
      key: "blade/length",
      of: blade.length,
      size: blade.length.asked,
      limit: asked * HALF,
      fits: asked / 4,
    };
  if (splay?.butt.asked !== undefined)
    yield {
      what: "butts",
      key: "butt",
      of: splay.butt,
      size: splay.butt.asked,
      limit: of.depth * HALF,
      fits: splay.butt.value,
    };
}

export const scarfUnfit = defineCheck<"model", Data>({
  meta: {
    id: "scarf-unfit",
    title: "A scarf that does not fit its timbers",
    level: "error",
    area: "joinery",
    source: {
      text: "geometry; that a lap is at least twice the depth and a blade at most half the width is common practice, no source",
      status: "common-practice",
    },
    explanation: {
      what: "The lap of a scarf runs out past the end of one of its two lengths, its blades are as thick as the timber or longer than the lap, its two butts are deeper than the timber, or, as a warning, the lap is shorter than twice the depth or a blade thicker than half the width.",
      why: "What runs past the wood cannot be cut, and it is drawn and reckoned no larger than the wood allows. A short lap levers its pegs out as soon as the timber bends, and thin cheeks split off beside a blade.",
      formula:
        "lap ÷ 2 ≤ from the middle of the lap to the nearer end; blade thickness ≤ width ÷ 2; 2 × blade length ≤ lap; 2 × butt ≤ depth; lap > wedges + 2 × slant of a butt; lap ≥ 2 × depth",
      remedy:
        "Move the splice farther from the end, or leave the sizes out: a lap of three to four and a half depths, blades half as long as the depth and butts of a quarter of it follow from the timber.",
    },
  },
  input: "model",
  *find(model) {
    for (const joint of judgedJoints(model)) {
      for (const { key, of: size, level, ...wrong } of wrongOf(joint)) {
        const written = sizePath(joint, key, size);
        const splice = model.frame.members.find((m) => m.path === joint.of.path)?.splice;
        // a lap by the rule is right by itself: its place is wrong
        const where = size.from === "default" && splice ? { path: `${splice.path}/at` } : written;
        const data: Data = {
          joint: joint.id,
          stick: joint.of.id,
          depth: joint.of.depth,
          near: 0,
          past: 0,
          ...wrong,
          path: size.from === "file" ? written.path : undefined,
        };
        yield {
          ...sizeFound(joint, where, wrong.size, wrong.limit, data),
          apart: wrong.what,
          ...(level ? { level } : {}),
        };
      }
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint,
      stick: d.stick,
      size: say.length(d.size),
      limit: say.length(d.limit),
      depth: say.length(d.depth),
      fits: say.length(d.fits ?? d.limit),
      near: say.length(d.near),
      over: say.length(d.size / 2 + d.past - d.near),
      move: say.length(d.move ?? 0),
    };
    switch (d.what) {
      case "end":
        if (d.move !== undefined && d.fits !== undefined)
          return say.text(
            "The lap of {joint} is {size} long, and {stick} ends {near} from its middle: it runs out {over} past that end and cannot be cut. Move the splice {move} away from that end, or shorten the lap to {fits}; it is drawn so short here.",
            values,
          );
        return d.move === undefined
          ? say.text(
              "The lap of {joint} is {size} long, and {stick} ends {near} from its middle: it runs out {over} past that end and cannot be cut. Shorten the lap to {limit}; it is drawn so short here.",
              values,
            )
          : say.text(
              "The lap of {joint} is {size} long, and {stick} ends {near} from its middle: it runs out {over} past that end and cannot be cut. Move the splice {move} away from that end; it is drawn {limit} long here.",
              values,
            );
      case "wide":
        return say.text(
          "The blade of {joint} is {size} thick, and the timber is {limit} wide: no wood is left beside its slot. Make it {fits} thick; it is drawn so here.",
          values,
        );
      case "thick":
        return say.text(
          "The blade of {joint} is {size} thick, more than {limit}, half of the timber’s width: the cheeks beside its slot split off. Make it {fits} thick.",
          values,
        );
      case "blades":
        return say.text(
          "Each blade of {joint} is {size} long, more than {limit}, half of the lap: the two run into each other. Make them {fits} long, or the lap longer.",
          values,
        );
      case "butts":
        return say.text(
          "Each butt of {joint} is {size} deep, more than {limit}, half of the timber’s depth of {depth}: nothing is left of the halves between the two. Make it {fits} deep; it is drawn so here.",
          values,
        );
      case "none":
        return say.text(
          "The lap of {joint} is {size} long, and its wedges and the slant of its butts alone take {limit}: it cannot be cut. Make the lap {fits} long.",
          values,
        );
      case "short":
        return say.text(
          "The lap of {joint} is {size} long, less than {limit}, twice the timber’s depth of {depth}: its pegs are levered out as soon as the timber bends. Make it {fits} long.",
          values,
        );
    }
  },
  worked: (d, say) => {
    const values = {
      size: say.length(d.size),
      limit: say.length(d.limit),
      depth: say.length(d.depth),
      near: say.length(d.near),
      past: say.length(d.past),
      double: say.length(2 * d.limit),
    };
    switch (d.what) {
      case "end":
        return d.past > 0
          ? say.text("{size} > 2 × ({near} − {past}) = {limit}", values)
          : say.text("{size} > 2 × {near} = {limit}", values);
      case "wide":
        return say.text("{size} ≥ {limit}", values);
      case "thick":
      case "blades":
      case "butts":
        return say.text("{size} > {double} ÷ 2 = {limit}", values);
      case "none":
        return say.text("{size} ≤ {limit}", values);
      case "short":
        return say.text("{size} < 2 × {depth} = {limit}", values);
    }
  },
  fixes: (d, say) =>
    replaceFix(
      d.path,
      d.fits === undefined ? undefined : say.length(downToStep(d.fits, say.metric)),
      (size) =>
        d.what === "butts"
          ? say.text("Make the butts {size} deep", { size })
          : d.what === "wide" || d.what === "thick"
            ? say.text("Make the blades {size} thick", { size })
            : d.what === "blades"
              ? say.text("Make the blades {size} long", { size })
              : say.text("Make the lap {size} long", { size }),
    ),
});
