/** Tree → frame values. Lenient: every part that can be read is there, every part that cannot is a fact. */
import type { SourceFact } from "../core/checks/source-facts.ts";
import type { Frame, Pointer, Ref, Units } from "../core/frame/frame.ts";
import { type Context, Cursor } from "./cursor.ts";
import { readGrid } from "./frame-grid.ts";
import { readJoints } from "./frame-joints.ts";
import { readMembers } from "./frame-members.ts";
import { readPiers } from "./frame-piers.ts";
import { readRoof } from "./frame-roof.ts";
import { readSiding } from "./frame-siding.ts";
import {
  readAccepted,
  readBasis,
  readClasses,
  readCrew,
  readFloors,
  readMill,
  readPrices,
  readQuestions,
  readSite,
} from "./frame-site.ts";
import { lostSections } from "./lost.ts";
import { numberValue } from "./plain.ts";
import { type Tree, valueAt } from "./tree.ts";
import { unreadLoads } from "./unread-loads.ts";

/** What is known of the file's writing before its values are read. */
export interface Writing {
  /** names that lines which cannot be read may define */
  readonly names: readonly string[];
  /** maps and lists that lost a part */
  readonly incomplete: ReadonlySet<Tree>;
  readonly facts: readonly SourceFact[];
}

/** @param root the file's tree; anything but a map gives an empty frame */
export function toFrame(
  root: Tree,
  { names, incomplete, facts }: Writing,
): { readonly frame: Frame; readonly facts: readonly SourceFact[] } {
  const context: Context = {
    units: unitsOf(root, names),
    facts: [],
    unread: new Set(names),
    incomplete,
  };
  const at = new Cursor(context, "", root);
  const lost = lostSections(at, facts);
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
    siding: readSiding(at.at("siding")),
    floors: readFloors(at.at("floors")),
    crew: readCrew(at.at("crew")),
    prices: readPrices(at.at("prices")),
    accepted: readAccepted(at.at("accept")),
    questions: readQuestions(at.at("ask")),
    unread: context.unread,
    lost,
    joinsWhole: joinsWhole(at, names, lost),
    // last: by now all of the file was read
    unreadLoads: unreadLoads(root, incomplete, [...facts, ...context.facts]),
  };
  for (const lines of ["walls", "bents"] as const)
    if (coincide(frame.grid[lines])) lost.add(`/grid/${lines}`);
  if (at.has("roof") && frame.roof === undefined) lost.add("/roof");
  for (const name of namesBegun(frame, names)) context.unread.add(name);
  return { frame, facts: context.facts };
}

/** An entry of the joints that cannot be read, or one cut off, may be the one that names a joint. */
function joinsWhole(at: Cursor, names: readonly string[], lost: ReadonlySet<Pointer>): boolean {
  if (names.length > 0) return false;
  return (["members", "joints"] as const).every((section) => {
    const entries = at.at(section);
    return (
      !lost.has(entries.path) &&
      !entries.isCut &&
      (section === "members" || entries.entries().every(([name]) => !at.context.unread.has(name)))
    );
  });
}

/** Where two lines stand at one place, one of them is a slip, and everything on it stands wrong. */
function coincide(lines: Frame["grid"]["walls"]): boolean {
  return new Set(lines.map((line) => line.at)).size < lines.length;
}

/** Larger bare numbers than this, in a grid, are no inches: 83 ft. */
const MOST_INCHES = 1000;

/** While the line of the units is being typed, the distances of the grid tell which they are. */
function unitsOf(root: Tree, names: readonly string[]): Units {
  const units = valueAt(root, "units");
  if (units?.kind === "scalar" && units.text === "mm") return "mm";
  const keys = root.kind === "map" ? root.entries.map(({ key }) => key) : [];
  const begun = [...names, ...keys].some((name) => name !== "units" && "units".startsWith(name));
  const halfTyped = units === undefined ? begun : units.kind !== "scalar" || units.text !== "inch";
  return halfTyped && distances(valueAt(root, "grid")).some((each) => each > MOST_INCHES) ? "mm" : "inch";
}

/** The bare numbers of a part of the file. */
function distances(node: Tree | undefined): readonly number[] {
  if (node?.kind === "scalar") return [numberValue(node.text) ?? 0];
  return node?.kind === "map" ? node.entries.flatMap(({ value }) => distances(value)) : [];
}

/**
 * Names that are used, that nothing defines, and that a lost line may be about to define: while `plate` is being typed,
 * `pla` stands there.
 */
function namesBegun(frame: Frame, begun: readonly string[]): readonly string[] {
  if (begun.length === 0) return [];
  const { classes, members, joints, grid } = frame;
  const entries = new Set([...members, ...joints].map(({ name }) => name));
  for (const { id } of [...grid.levels, ...grid.walls, ...grid.bents]) entries.add(id);
  const woods = new Set(classes.map(({ name }) => name));
  return refsIn(frame).flatMap(({ text, path }) => {
    const name = text.replace(/@.*$/s, "");
    const defined = path.endsWith("/timber") ? woods : entries;
    return !defined.has(name) && begun.some((word) => name.startsWith(word)) ? [name] : [];
  });
}

/** Every name that the frame uses, as it is written. */
function refsIn(value: unknown): readonly Ref[] {
  if (typeof value !== "object" || value === null) return [];
  if ("text" in value && "path" in value && typeof value.text === "string" && typeof value.path === "string")
    return [{ text: value.text, path: value.path }];
  return Object.values(value).flatMap(refsIn);
}
