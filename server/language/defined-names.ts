/**
 * What a file defines under names, and what a written name stands for. From the tree, not from the frame: an entry that
 * cannot be read yet still has its name and its place.
 */
import { MEMBER_KINDS, type Pointer } from "../core/frame/frame.ts";
import { child, type Entry, type Tree, valueAt } from "../document/tree.ts";

/** Where names of each sort are defined. */
export const SECTIONS = {
  wall: "/grid/walls",
  bent: "/grid/bents",
  level: "/grid/levels",
  class: "/timber",
  member: "/members",
  joint: "/joints",
  pier: "/piers",
  floor: "/floors",
} as const satisfies Readonly<Record<string, Pointer>>;

export type Sort = keyof typeof SECTIONS;

/** Names that must not be the same, though they are defined in different sections. */
export const TOGETHER: Readonly<Record<Sort, readonly Sort[]>> = {
  wall: ["wall", "level", "member", "joint"],
  bent: ["bent"],
  level: ["wall", "level", "member", "joint"],
  member: ["wall", "level", "member", "joint", "pier"],
  joint: ["wall", "level", "member", "joint", "pier"],
  pier: ["member", "joint", "pier"],
  class: ["class"],
  floor: ["floor"],
};

export interface DefinedNames {
  readonly of: Readonly<Record<Sort, ReadonlyMap<string, Entry>>>;
  /** members by their kind, the roof's own rafters among them */
  readonly ofKind: ReadonlyMap<string, readonly Pointer[]>;
  /** where an entry is called like a kind: that entry, and behind it the others of the kind */
  readonly alsoKind: ReadonlyMap<string, readonly Pointer[]>;
  /** `/roof/rafters`, where it is written */
  readonly rafters: Tree | undefined;
}

/** A stretch of a written name and what it stands for. */
export interface NamePart {
  readonly from: number;
  readonly to: number;
  /** more than one where a kind is named; then every use of the kind has this very list */
  readonly definitions: readonly Pointer[];
  /** it stands, too or only, for every timber of this kind */
  readonly byKind: boolean;
}

/** How the roof's own rafters, and the joints at their feet and heads, begin their ids. */
export const ROOF_NAMES: Readonly<Record<string, string | undefined>> = {
  rafter: "",
  "rafter-seat": "seat",
  "rafter-head": "head",
  "rafter-pair": "head",
};

/** Ends of the names of joints that no entry names, behind the name of a timber; else another timber stands there. */
const ASSUMED = new Set(["scarf", "pair", "corner", "seat"]);

export function definedNames(root: Tree): DefinedNames {
  const grid = valueAt(root, "grid");
  const names = (node: Tree | undefined): ReadonlyMap<string, Entry> =>
    new Map(node?.kind === "map" ? node.entries.map((entry) => [entry.key, entry] as const) : []);
  const of = {
    wall: names(valueAt(grid, "walls")),
    bent: names(valueAt(grid, "bents")),
    level: names(valueAt(grid, "levels")),
    class: names(valueAt(root, "timber")),
    member: names(valueAt(root, "members")),
    joint: names(valueAt(root, "joints")),
    pier: names(valueAt(root, "piers")),
    floor: names(valueAt(root, "floors")),
  };
  const rafters = valueAt(valueAt(root, "roof"), "rafters");
  const ofKind = new Map<string, Pointer[]>(MEMBER_KINDS.map((kind) => [kind, []]));
  for (const [name, { value }] of of.member)
    ofKind.get(kindOf(value) ?? "")?.push(child(SECTIONS.member, name));
  if (rafters) ofKind.get("rafter")?.push("/roof/rafters");
  const alsoKind = new Map<string, readonly Pointer[]>();
  for (const [kind, all] of ofKind) {
    const own = at("member", kind);
    const others = all.filter((path) => path !== own);
    if (of.member.has(kind) && others.length > 0) alsoKind.set(kind, [own, ...others]);
  }
  return { of, ofKind, alsoKind, rafters };
}

/** What a member, joint or pier says it is. */
function kindOf(entry: Tree | undefined): string | undefined {
  const kind = valueAt(entry, "kind");
  return kind?.kind === "scalar" ? kind.text : undefined;
}

/**
 * @param sorts what the schema says a value may name, the members of its `x-ref`; `joint` and `pier` beside `stick`
 *   where a place of them may stand too
 * @param widely a name that is a kind too stands for all timbers of it, even where one entry is called so: joints
 * @returns the parts of `text` that stand for something in the file, in their order; none for a length or a slip
 */
export function partsOf(
  names: DefinedNames,
  text: string,
  sorts: readonly string[],
  widely = false,
): readonly NamePart[] {
  for (const sort of ["bent", "wall"] as const)
    if (sorts.includes(sort) && names.of[sort].has(text)) return [whole(text, [at(sort, text)])];
  // what begins with a figure is a length
  if (sorts.includes("place") && /^[A-Z](?:[1-9]\d*|@.+)$/s.test(text)) return placeParts(names, text, 0);
  for (const sort of ["level", "class"] as const)
    if (sorts.includes(sort) && names.of[sort].has(text)) return [whole(text, [at(sort, text)])];
  if (sorts.includes("member")) {
    const found = membersNamed(names, text, widely);
    if (found) return [found];
  }
  return sorts.includes("stick") ? stickParts(names, text, sorts) : [];
}

function at(sort: Sort, name: string): Pointer {
  return child(SECTIONS[sort], name);
}

function whole(text: string, definitions: readonly Pointer[], byKind = false): NamePart {
  return { from: 0, to: text.length, definitions, byKind };
}

/** The entry of that name, else every one of that kind. */
function membersNamed(names: DefinedNames, text: string, widely: boolean): NamePart | undefined {
  const both = widely ? names.alsoKind.get(text) : undefined;
  if (both) return whole(text, both, true);
  if (names.of.member.has(text)) return whole(text, [at("member", text)]);
  const kind = names.ofKind.get(text) ?? [];
  return kind.length > 0 ? whole(text, kind, true) : undefined;
}

/** `A1`: wall A and bent 1; `B@4 ft 9 in`: wall B. Two places may be joined as in `knee@A2-A3`. */
function placeParts(names: DefinedNames, text: string, from: number): NamePart[] {
  const written = text.slice(from);
  // behind the wall of such a place come the figures of a length
  const token = /@/.test(written)
    ? /^([A-Z])(?=@)/g
    : /(?<![^-])(?:([A-Z])([1-9]\d*)?|([1-9]\d*)([A-Z])?)(?![^-.])/g;
  return [...written.matchAll(token)].flatMap((match) => {
    let start = from + match.index;
    return match.slice(1).flatMap((name): NamePart[] => {
      if (name === undefined) return [];
      const sort = /\d/.test(name) ? "bent" : "wall";
      const part = { from: start, to: start + name.length, definitions: [at(sort, name)], byKind: false };
      start += name.length;
      return names.of[sort].has(name) ? [part] : [];
    });
  });
}

/** `post@A1`, `rafter@A.4`, `joist.3`, `post-head@A1`, also with an end behind. */
function stickParts(names: DefinedNames, text: string, sorts: readonly string[]): NamePart[] {
  const name = /^[^@.]*/.exec(text)?.[0] ?? "";
  const head = headParts(names, name, sorts);
  const numbered = /^@\d+(?![^.])/.test(text.slice(name.length)) && head.some((part) => isRow(names, part));
  return numbered || text[name.length] !== "@"
    ? head
    : [...head, ...placeParts(names, text, name.length + 1)];
}

function headParts(names: DefinedNames, name: string, sorts: readonly string[]): NamePart[] {
  const found = (["member", "joint", "pier"] as const)
    .filter((sort) => (sort === "member" || sorts.includes(sort)) && names.of[sort].has(name))
    .map((sort) => at(sort, name));
  if (found.length > 0) return [whole(name, found)];
  const part = Object.hasOwn(ROOF_NAMES, name) ? ROOF_NAMES[name] : undefined;
  if (names.rafters && part !== undefined && (part === "" || sorts.includes("joint"))) {
    const inside = part !== "" && valueAt(names.rafters, part) !== undefined;
    return [whole(name, [inside ? `/roof/rafters/${part}` : "/roof/rafters"])];
  }
  return sorts.includes("joint") ? assumedParts(names, name) : [];
}

/** `tie-post@A1`, `plate-scarf@A`: a joint that the file names nowhere is called after its timbers. */
function assumedParts(names: DefinedNames, name: string): NamePart[] {
  for (const { index } of name.matchAll(/-/g)) {
    const [of, into] = [name.slice(0, index), name.slice(index + 1)];
    const first = whole(of, [at("member", of)]);
    if (!names.of.member.has(of)) continue;
    if (ASSUMED.has(into)) return [first];
    if (names.of.member.has(into))
      return [first, { from: index + 1, to: name.length, definitions: [at("member", into)], byKind: false }];
  }
  return [];
}

/** Timbers in several bays are numbered bay by bay (`joist@1.3`), and their joints with them: that is no bent. */
function isRow(names: DefinedNames, { definitions }: NamePart): boolean {
  return definitions.some((path) => {
    const [, section, name = ""] = path.split("/");
    if (section === "members") return inBays(names.of.member.get(name)?.value);
    const of = section === "joints" ? valueAt(names.of.joint.get(name)?.value, "of") : undefined;
    return textsOf(of).some((text) =>
      (membersNamed(names, text.replace(/@.*$/s, ""), true)?.definitions ?? []).some((member) =>
        inBays(names.of.member.get(member.slice(SECTIONS.member.length + 1))?.value),
      ),
    );
  });
}

/** Between two single sticks there is one bay, and no number for it. */
function inBays(entry: Tree | undefined): boolean {
  return kindOf(entry) !== "brace" && textsOf(valueAt(entry, "between")).some((text) => !text.includes("@"));
}

/** The words of a list, or of a single value. */
export function textsOf(value: Tree | undefined): readonly string[] {
  if (value?.kind === "list") return value.items.flatMap((item) => textsOf(item.value));
  return value?.kind === "scalar" ? [value.text] : [];
}
