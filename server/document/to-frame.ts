/** Tree → frame values. Lenient: every part that can be read is there, every part that cannot is a fact. */
import type { SourceFact } from "../core/checks/source-facts.ts";
import type { Frame } from "../core/frame/frame.ts";
import { type Context, Cursor } from "./cursor.ts";
import { readGrid } from "./frame-grid.ts";
import { readJoints } from "./frame-joints.ts";
import { readMembers } from "./frame-members.ts";
import { readPiers } from "./frame-piers.ts";
import { readRoof } from "./frame-roof.ts";
import {
  readAccepted,
  readBasis,
  readClasses,
  readCrew,
  readFloors,
  readMill,
  readPrices,
  readSite,
} from "./frame-site.ts";
import { type Tree, valueAt } from "./tree.ts";

/**
 * @param root the file's tree; anything but a map gives an empty frame
 * @param names that lines which cannot be read may define
 */
export function toFrame(
  root: Tree,
  names: readonly string[],
): { readonly frame: Frame; readonly facts: readonly SourceFact[] } {
  const units = valueAt(root, "units");
  const context: Context = {
    units: units?.kind === "scalar" && units.text === "mm" ? "mm" : "inch",
    facts: [],
    unread: new Set(names),
  };
  const at = new Cursor(context, "", root);
  const frame: Frame = {
    name: at.at("frame").text() ?? "",
    units: context.units,
    basis: readBasis(at.at("basis")),
    site: readSite(at.at("site")),
    classes: readClasses(at.at("timber")),
    mill: readMill(at.at("mill")),
    grid: readGrid(at.at("grid")),
    members: readMembers(at.at("members")),
    joints: readJoints(at.at("joints")),
    roof: readRoof(at.at("roof")),
    piers: readPiers(at.at("piers")),
    floors: readFloors(at.at("floors")),
    crew: readCrew(at.at("crew")),
    prices: readPrices(at.at("prices")),
    accepted: readAccepted(at.at("accept")),
    unread: context.unread,
  };
  for (const name of namesBegun(frame, names)) context.unread.add(name);
  return { frame, facts: context.facts };
}

/**
 * Names that are used, that nothing defines, and that a lost line may be about to define: while `plate` is being typed,
 * `pla` stands there.
 */
function namesBegun(frame: Frame, begun: readonly string[]): readonly string[] {
  if (begun.length === 0) return [];
  const { classes, members, joints, grid } = frame;
  const defined = new Set([...classes, ...members, ...joints].map(({ name }) => name));
  for (const { id } of [...grid.levels, ...grid.walls, ...grid.bents]) defined.add(id);
  return refsIn(frame)
    .map((text) => text.replace(/@.*$/s, ""))
    .filter((text) => !defined.has(text) && begun.some((word) => text.startsWith(word)));
}

/** Every name that the frame uses, as it is written. */
function refsIn(value: unknown): readonly string[] {
  if (typeof value !== "object" || value === null) return [];
  if ("text" in value && typeof value.text === "string") return [value.text];
  return Object.values(value).flatMap(refsIn);
}
