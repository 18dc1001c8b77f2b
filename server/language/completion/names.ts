/** Names that the file defines, the woods and grades that are known, and the checks: what a value can refer to. */
import { gradeIds } from "../../core/wood/design-values.ts";
import { findSpecies, speciesIds } from "../../core/wood/species.ts";
import { child, keysOf, type Tree, valueAt } from "../../document/tree.ts";
import { acceptedPlaces, checksFirstFound } from "./accepting.ts";
import { fittingFirst } from "./fitting.ts";
import { type Name, type Naming, textAt, textOf } from "./naming.ts";

/** Such names can stand in a file as they are, without quotes. */
const PLAIN = /^[\p{L}\p{N}_][\p{L}\p{N}_@.-]*$/u;
const NULL = /^(?:null|Null|NULL)$/;
const MOST_NAMES = 500;

/** @param sorts what the schema says the value names, `x-ref` */
export function namesFor(sorts: readonly string[], naming: Naming): readonly Name[] {
  const accepted = /^\/accept\/\d+\/at$/.test(naming.path);
  const names = new Map<string, Name>();
  for (const sort of inOrder(sorts, naming))
    for (const name of accepted ? acceptedPlaces(naming) : namesOf(sort, sorts, naming))
      if (names.size < MOST_NAMES && PLAIN.test(name.text) && !NULL.test(name.text) && !names.has(name.text))
        names.set(name.text, name);
  return fittingFirst([...names.values()], naming);
}

const UPRIGHT: ReadonlySet<string> = new Set(["post", "king-post", "strut"]);

/** What runs along walls begins and ends at bents, what runs across at walls; what stands, at levels and timbers. */
function inOrder(sorts: readonly string[], { map }: Naming): readonly string[] {
  const first = UPRIGHT.has(textAt(map, "kind") ?? "")
    ? ["level", "member"]
    : valueAt(map, "walls") !== undefined
      ? ["bent"]
      : valueAt(map, "bents") !== undefined
        ? ["wall"]
        : [];
  const early = first.filter((sort) => sorts.includes(sort));
  return [...early, ...sorts.filter((sort) => !early.includes(sort))];
}

function namesOf(sort: string, sorts: readonly string[], naming: Naming): readonly Name[] {
  const { root } = naming;
  const grid = valueAt(root, "grid");
  switch (sort) {
    case "wall":
      return entriesOf(valueAt(grid, "walls"), (line) => textOf(line) ?? textAt(line, "at"));
    case "bent":
      return entriesOf(valueAt(grid, "bents"), (line) => textOf(line) ?? textAt(line, "at"));
    case "place":
      return placesOf(grid);
    case "level":
      return entriesOf(valueAt(grid, "levels"), textOf);
    case "member":
      return membersOf(naming);
    case "kind":
      return kindsInUse(naming);
    case "stick":
      return sorts.length > 1 && !naming.begun.includes("@") ? [] : sticksOf(naming);
    case "class":
      return entriesOf(valueAt(root, "timber"), (own) => textAt(own, "species"));
    case "species":
      return speciesIds().map((id) => ({ text: id, detail: findSpecies(id)?.name }));
    case "grade":
      return gradesFor(textAt(naming.map, "species")).map((id) => ({ text: id, detail: undefined }));
    case "check":
      return checksFirstFound(naming);
    default:
      return [];
  }
}

function entriesOf(map: Tree | undefined, about: (value: Tree) => string | undefined): readonly Name[] {
  if (map?.kind !== "map") return [];
  return map.entries.map(({ key, value }) => ({ text: key, detail: about(value) }));
}

/** Every crossing of a wall and a bent. */
function placesOf(grid: Tree | undefined): readonly Name[] {
  const bents = entriesOf(valueAt(grid, "bents"), () => undefined);
  return entriesOf(valueAt(grid, "walls"), () => undefined).flatMap((wall) =>
    bents.map((bent) => ({ text: wall.text + bent.text, detail: undefined })),
  );
}

/** All entries but the one in which the name is written. */
function membersOf({ root, path }: Naming): readonly Name[] {
  const [area, own] = keysOf(path);
  return entriesOf(valueAt(root, "members"), (member) => {
    const words = [textAt(member, "kind"), textAt(member, "section")];
    return words.filter((word) => word !== undefined).join(" ");
  }).filter((name) => area !== "members" || name.text !== own);
}

function kindsInUse({ root, say }: Naming): readonly Name[] {
  const members = valueAt(root, "members");
  if (members?.kind !== "map") return [];
  const kinds = members.entries.flatMap(({ value }) => textAt(value, "kind") ?? []);
  return [...new Set(kinds)].map((kind) => ({ text: kind, detail: say.text("every {kind}", { kind }) }));
}

/** Under `measured` only the sticks of the entry it stands in. */
function sticksOf({ model, path, say }: Naming): readonly Name[] {
  const [area, entry = "", part] = keysOf(path);
  const all = model?.timbers ?? [];
  const own =
    part !== "measured"
      ? all
      : area === "members"
        ? (model?.sticks.get(entry) ?? [])
        : all.filter((stick) => stick.path === child(`/${area}`, entry));
  return own.map((stick) => ({ text: stick.id, detail: say.text(stick.kind) }));
}

/** Without a known species, every grade that some wood has. */
function gradesFor(species: string | undefined): readonly string[] {
  const own = species === undefined ? [] : gradeIds(species);
  return own.length > 0 ? own : [...new Set(speciesIds().flatMap(gradeIds))];
}
