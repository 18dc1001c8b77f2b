/** The joints of a frame, entry by entry. */
import {
  type JointEntry,
  type JointForm,
  type JointKindName,
  type JointSpec,
  type PegSpec,
  SCARF_KINDS,
  type ScrewSpec,
  type TenonSpec,
} from "../core/frame/frame.ts";
import type { Cursor } from "./cursor.ts";
import { readFasteners } from "./frame-fasteners.ts";

const KINDS = [
  "mortise-and-tenon",
  "wedged-half-dovetail",
  "brace-tenon",
  "birds-mouth",
  "step-lap",
  "housed",
  "housed-dovetail",
  "pocket",
  "corner-half-lap",
  "corner-bridle",
  "dovetail-lap",
  "stub-tenon",
  "screwed-brace",
  "rafter-heel",
  "rafter-pair",
  ...SCARF_KINDS,
] as const satisfies readonly JointKindName[];

const FORMS = ["bridle", "lapped", "bisecting", "square", "plumb"] as const satisfies readonly JointForm[];

/** Pegs in a joint where the file does not count them (common practice); also the schema's defaults. */
const USUAL_PEGS: Readonly<Partial<Record<JointKindName, number>>> = {
  "brace-tenon": 1,
  "corner-half-lap": 1,
  "corner-bridle": 1,
  "dovetail-lap": 1,
  "half-lap-scarf": 4,
  "bladed-scarf": 4,
  "stop-splayed-scarf": 4,
  "rafter-pair": 1,
};

/** More pegs than any joint has; also the schema's limit. */
const MOST_PEGS = 24;

/** A wedge that is steeper does not stay where it is driven. */
const STEEPEST_WEDGE = 1 / 2;

/** A joint that does not say what it is or which timbers it joins is left out, and its name kept as unread. */
export function readJoints(at: Cursor): readonly JointEntry[] {
  return at.named().flatMap(([name, value]) => {
    const kind = value.at("kind").choice(KINDS);
    const of = value.at("of").refs();
    const into = value.at("into").refs();
    if (kind === undefined || of === undefined || into === undefined || value.isCut) {
      at.context.unread.add(name);
      return [];
    }
    return [{ name, path: value.path, of, into, ...readSpec(value, kind) }];
  });
}

function readSpec(at: Cursor, kind: JointKindName): JointSpec {
  const wedge = at.at("wedge");
  const pitch = wedge.at("slope").pitch(STEEPEST_WEDGE, true);
  const blade = readBlade(at.at("blade"));
  const butt = at.at("butt").size();
  const screws = readScrews(at);
  const fasten = readFasteners(at);
  return {
    kind,
    housing: at.at("housing").gap(),
    tenon: readTenon(at.at("tenon")),
    pegs: readPegs(at.at("pegs"), kind),
    drop: at.at("drop").gap(),
    wedge: wedge.isMap
      ? {
          path: wedge.path,
          species: wedge.at("species").ref(),
          slope: pitch && pitch.rise / pitch.run,
          length: wedge.at("length").size(),
        }
      : undefined,
    tail: at.at("tail").gap(),
    dovetail: readDovetail(at.at("dovetail")),
    seat: at.at("seat").size(),
    lap: at.at("lap").size(),
    form: at.at("form").choice(FORMS),
    ...readRule(at),
    ...(fasten && { fasten }),
    ...(blade && { blade }),
    ...(butt !== undefined && { butt }),
    ...(screws && { screws }),
  };
}

/** The square rule is usual and is not carried along. */
export function readRule(at: Cursor): Pick<JointSpec, "rule"> {
  return at.at("rule").choice(["square", "scribe"]) === "scribe" ? { rule: "scribe" } : {};
}

function readBlade(at: Cursor): JointSpec["blade"] {
  if (!at.isMap) return undefined;
  return { path: at.path, thickness: at.at("thickness").size(), length: at.at("length").size() };
}

/** Screws at each end of a brace where the file does not count them (common practice); also the schema's default. */
const USUAL_SCREWS = 2;

/** More screws than the end of a brace has room for; also the schema's limit. */
const MOST_SCREWS = 24;

function readScrews(holder: Cursor): ScrewSpec | "unread" | undefined {
  if (!holder.has("screws")) return undefined;
  const at = holder.at("screws");
  const count = at.has("count") ? at.at("count").count(1, MOST_SCREWS) : USUAL_SCREWS;
  const [diameter, length] = [at.at("diameter").size(), at.at("length").size()];
  const lost =
    !at.isMap ||
    count === undefined ||
    (at.has("diameter") && diameter === undefined) ||
    (at.has("length") && length === undefined);
  return lost ? "unread" : { path: at.path, count, diameter, length };
}

function readTenon(at: Cursor): TenonSpec | undefined {
  if (!at.isMap) return undefined;
  return {
    path: at.path,
    thickness: at.at("thickness").size(),
    length: at.at("length").size(),
    width: at.at("width").size(),
    setIn: at.at("set-in").gap(),
    through: at.at("through").flag(),
  };
}

export function readPegs(at: Cursor, kind: JointKindName): PegSpec | undefined {
  if (!at.isMap) return undefined;
  const count = at.has("count") ? at.at("count").count(0, MOST_PEGS) : (USUAL_PEGS[kind] ?? 2);
  if (count === undefined) return undefined;
  return { path: at.path, count, diameter: at.at("diameter").size(), draw: at.at("draw").gap() };
}

function readDovetail(at: Cursor): JointSpec["dovetail"] {
  if (!at.isMap) return undefined;
  const length = at.at("length").size();
  const depth = at.at("depth").size();
  const flare = at.at("flare").gap();
  return {
    path: at.path,
    ...(length !== undefined && { length }),
    ...(depth !== undefined && { depth }),
    ...(flare !== undefined && { flare }),
  };
}
