/** The joints of a frame, entry by entry. */
import type {
  JointEntry,
  JointForm,
  JointKindName,
  JointSpec,
  PegSpec,
  TenonSpec,
} from "../core/frame/frame.ts";
import type { Cursor } from "./cursor.ts";

const KINDS = [
  "mortise-and-tenon",
  "wedged-half-dovetail",
  "brace-tenon",
  "birds-mouth",
  "housed",
  "housed-dovetail",
  "pocket",
  "corner-half-lap",
  "half-lap-scarf",
  "rafter-heel",
  "rafter-pair",
] as const satisfies readonly JointKindName[];

const FORMS = ["bridle", "lapped", "bisecting", "square"] as const satisfies readonly JointForm[];

/** Pegs in a joint where the file does not count them (common practice); also the schema's defaults. */
const USUAL_PEGS: Readonly<Partial<Record<JointKindName, number>>> = {
  "brace-tenon": 1,
  "corner-half-lap": 1,
  "half-lap-scarf": 4,
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
  return {
    kind,
    housing: at.at("housing").gap(),
    tenon: readTenon(at.at("tenon")),
    pegs: readPegs(at.at("pegs"), kind),
    drop: at.at("drop").gap(),
    wedge: wedge.isMap
      ? { path: wedge.path, species: wedge.at("species").ref(), slope: pitch && pitch.rise / pitch.run }
      : undefined,
    tail: at.at("tail").gap(),
    dovetail: readDovetail(at.at("dovetail")),
    seat: at.at("seat").size(),
    lap: at.at("lap").size(),
    form: at.at("form").choice(FORMS),
  };
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
