/** What a place of the file stands for in the frame: timbers, joints, piers. Hovers and the drawing's light use it. */
import type { Pointer } from "../core/frame/frame.ts";
import type { Joint } from "../core/joinery/joint.ts";
import { isSeatKind } from "../core/joinery/seat.ts";
import type { Model, Pier, Timber } from "../core/model/model.ts";
import { child, keysOf } from "../document/tree.ts";

/** `name` is the entry's name, or the place's where a single one is meant (`post@A1`). */
export type Subject =
  | { readonly kind: "timbers"; readonly name: string; readonly timbers: readonly Timber[] }
  | { readonly kind: "joints"; readonly name: string; readonly joints: readonly Joint[] }
  | { readonly kind: "piers"; readonly name: string; readonly piers: readonly Pier[] }
  /** grid lines, levels and whatever else has one id of its own in the drawing */
  | { readonly kind: "line"; readonly name: string };

const timbers = (name: string, found: readonly Timber[]): Subject | undefined =>
  found.length > 0 ? { kind: "timbers", name, timbers: found } : undefined;
const joints = (name: string, found: readonly Joint[]): Subject | undefined =>
  found.length > 0 ? { kind: "joints", name, joints: found } : undefined;
const piers = (name: string, found: readonly Pier[]): Subject | undefined =>
  found.length > 0 ? { kind: "piers", name, piers: found } : undefined;

/** Keys of the file whose value names something of the frame, wherever they stand. */
const REFERRING = new Set([
  "of",
  "into",
  "between",
  "from",
  "to",
  "under",
  "on",
  "top",
  "bottom",
  "level",
  "along",
]);

/**
 * The subject of the entry that a path lies in: `/members/post/section` → the posts.
 * @returns undefined where nothing of the frame is meant, or the entry could not be placed
 */
export function entrySubject(model: Model, path: Pointer): Subject | undefined {
  const [area, name, part, ...rest] = keysOf(path);
  if (area === undefined || name === undefined) return undefined;
  switch (area) {
    case "members":
      return timbers(
        name,
        model.sticks.get(name)?.filter((stick) => stick.path === child("/members", name)) ?? [],
      );
    case "joints":
      return joints(
        name,
        model.joints.filter((joint) => joint.entry?.name === name),
      );
    case "piers":
      return piers(
        name,
        model.piers.filter((pier) => pier.entry.name === name),
      );
    case "timber":
      return timbers(
        name,
        model.timbers.filter((timber) => timber.class?.name === name),
      );
    case "roof":
      return name === "rafters" ? rafterSubject(model, part) : undefined;
    case "grid":
      return part === undefined || rest.length > 1 ? undefined : { kind: "line", name: part };
    default:
      return undefined;
  }
}

function rafterSubject(model: Model, part: string | undefined): Subject | undefined {
  const rafters = model.timbers.filter((timber) => timber.path === "/roof/rafters");
  const own = model.joints.filter((joint) => rafters.includes(joint.of) && joint.entry === undefined);
  const isSeat = (joint: Joint): boolean => isSeatKind(joint.kind) && joint.end === "side";
  if (part === "seat") return joints("rafter-seat", own.filter(isSeat));
  if (part === "head")
    return joints(
      "rafter-head",
      own.filter((joint) => !isSeat(joint)),
    );
  return timbers("rafter", rafters);
}

/**
 * What a value refers to by name: `of: post`, `at: [A1]`, `accept: [{at: post@A2}]`.
 * @param text the value as written, without quotes
 */
export function referredSubject(model: Model, path: Pointer, text: string): Subject | undefined {
  const keys = keysOf(path);
  const [area, entry = ""] = keys;
  const list = /^\d+$/.test(keys.at(-1) ?? "");
  const key = (list ? keys.at(-2) : keys.at(-1)) ?? "";
  if (area === "accept") return key === "at" ? named(model, text) : undefined;
  if (area === "members" && (key === "at" || key === "walls" || key === "bents"))
    return timbers(
      `${entry}@${text}`,
      [...(model.sticks.get(entry) ?? [])].filter((stick) => standsAt(stick, text, key)),
    );
  if (area === "piers" && key === "at")
    return piers(
      `${entry}@${text}`,
      model.piers.filter((pier) => pier.entry.name === entry && pier.place.text === text),
    );
  return REFERRING.has(key) ? named(model, text) : undefined;
}

function standsAt(stick: Timber, text: string, key: "at" | "walls" | "bents"): boolean {
  if (key === "walls") return stick.walls.includes(text);
  if (key === "bents") return stick.bents.includes(text);
  return stick.id.slice(stick.id.indexOf("@") + 1) === text.replace(/\s+/g, "-");
}

/** Anything with a name: an entry, a stick, a joint's place, a pier, a level. */
function named(model: Model, text: string): Subject | undefined {
  const stick = model.byId.get(text);
  return (
    timbers(text, model.sticks.get(text) ?? (stick ? [stick] : [])) ??
    joints(
      text,
      model.joints.filter((joint) => joint.id === text || joint.entry?.name === text),
    ) ??
    piers(
      text,
      model.piers.filter((pier) => pier.id === text || pier.entry.name === text),
    ) ??
    timbers(
      text,
      model.timbers.filter((timber) => timber.kind === text),
    ) ??
    (model.frame.grid.levels.some((level) => level.id === text) ? { kind: "line", name: text } : undefined)
  );
}
