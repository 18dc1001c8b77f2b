/** `bentwright joint`: one joint to lay out and cut, as its hover shows it, or as a drawing. */

import type { PostFoot } from "../core/joinery/foot/post-foot.ts";
import type { Joint } from "../core/joinery/joint.ts";
import type { Model } from "../core/model/model.ts";
import { nearest } from "../core/text/nearest.ts";
import { drawFootSheet } from "../drawing/foot-sheet.ts";
import { drawJointSheet } from "../drawing/joint-sheet.ts";
import { toSvg } from "../drawing/svg.ts";
import type { Snapshot } from "../language/frame-service.ts";
import { type Command, EXIT, nameOf, readArguments, readText, WrongCall, writeTo } from "./command.ts";
import { footJson } from "./foot-json.ts";
import { footText } from "./foot-text.ts";
import { jointJson } from "./joint-json.ts";
import { jointText } from "./joint-text.ts";

const FORMATS = ["text", "json", "svg"];

const HELP = `Usage: bentwright joint FILE JOINT-ID [--format text|json|svg] [-o OUTPUT]

Prints what to cut at one joint: its kind, its timbers, the cut sizes of both and of pegs
and wedge with how each came about, the forces it passes on, what it holds against what
pulls at it, and the findings at it.

  FILE               a frame file; - reads standard input
  JOINT-ID           as hovers, drawings and findings name it: post-head@A1; the name of a
                     joint entry will do where it has one place only; a post on the anchor
                     of its pier is post-foot@A1
  --format json      for programs, as schemas/joint.schema.json describes it: inches, pounds
  --format svg       a drawing in three views, to scale, with its main sizes
  -o, --output FILE  where to write it; - (the usual) is standard output

Exit code: 0 printed, 1 the frame has no joints, 2 called wrongly, no such joint, or a file
cannot be opened.`;

export const joint: Command = {
  name: "joint",
  summary: "print or draw what to cut at one joint",
  help: HELP,
  run(args, around, service) {
    const { values, positionals } = readArguments(args, {
      format: { type: "string", default: "text" },
      output: { type: "string", short: "o", default: "-" },
    });
    const { format, output } = values;
    if (!FORMATS.includes(format))
      throw new WrongCall(`There is no format \`${format}\`; there are text, json and svg.`);
    const [file, id, ...others] = positionals;
    if (file === undefined || id === undefined || others.length > 0)
      throw new WrongCall(
        "Name one frame file and one joint, for example: pavilion.frame.yaml post-head@A1.",
      );
    const snapshot = service.open(file, 0, readText(file, around));
    const model = snapshot.evaluation?.model;
    if (!model || model.joints.length + model.feet.length === 0) {
      around.err(`${nameOf(file)} has no joint that can be placed. See: bentwright check ${file}\n`);
      return EXIT.errors;
    }
    const found = jointOf(model, id);
    const text =
      "pier" in found ? footAs(format, file, found, snapshot) : jointAs(format, file, found, snapshot);
    writeTo(output, text, around);
    return EXIT.fine;
  },
};

function jointAs(format: string, file: string, found: Joint, snapshot: Snapshot): string {
  if (format === "svg") return toSvg(drawJointSheet(found, snapshot.say), { standalone: true });
  return format === "json" ? jointJson(file, found, snapshot) : jointText(found, snapshot);
}

function footAs(format: string, file: string, found: PostFoot, snapshot: Snapshot): string {
  if (format === "svg") return toSvg(drawFootSheet(found, snapshot.say), { standalone: true });
  return format === "json" ? footJson(file, found, snapshot) : footText(found, snapshot);
}

/** More ids than this are not listed. */
const MOST_IDS = 12;

/** @throws WrongCall that names the ids which come nearest */
function jointOf(model: Model, id: string): Joint | PostFoot {
  const joints: readonly (Joint | PostFoot)[] = [...model.joints, ...model.feet];
  const exact = joints.find((one) => one.id === id);
  if (exact) return exact;
  const places = joints.filter((one) => one.id.startsWith(`${id}@`));
  const [only] = places;
  if (only && places.length === 1) return only;
  const wrong = `There is no joint \`${id}\`.`;
  if (places.length > 0) throw new WrongCall(`${wrong} ${listed("It is at these places:", idsOf(places))}`);
  const [name = "", place = ""] = id.split("@");
  const names = new Set(joints.map((one) => nameIn(one.id)));
  const ofEntry = (entry: string): string[] => idsOf(joints.filter((one) => nameIn(one.id) === entry));
  if (names.has(name)) throw new WrongCall(`${wrong} ${listed(`\`${name}\` is at:`, ofEntry(name))}`);
  const meant = nearest(name, names);
  if (meant === undefined) throw new WrongCall(`${wrong} ${listed("This frame has", [...names])}`);
  const close = ofEntry(meant).find((one) => one === `${meant}@${place}`);
  if (close !== undefined) throw new WrongCall(`${wrong} Did you mean \`${close}\`?`);
  throw new WrongCall(`${wrong} ${listed(`Did you mean \`${meant}\`? It is at:`, ofEntry(meant))}`);
}

const idsOf = (joints: readonly (Joint | PostFoot)[]): string[] => joints.map(({ id }) => id);

const nameIn = (id: string): string => id.split("@")[0] ?? id;

function listed(words: string, ids: readonly string[]): string {
  const shown = ids.slice(0, MOST_IDS);
  const more = ids.length - shown.length;
  return `${words} ${shown.join(", ")}${more > 0 ? ` and ${more} more` : ""}.`;
}
