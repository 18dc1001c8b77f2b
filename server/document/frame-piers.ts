/** The piers of a frame, entry by entry. */
import type { PierEntry } from "../core/frame/frame.ts";
import { fromInches } from "../core/quantity/length.ts";
import type { Cursor } from "./cursor.ts";
import { readAnchor } from "./frame-anchor.ts";

export function readPiers(at: Cursor): readonly PierEntry[] {
  return at.named().flatMap(([name, value]) => {
    const pier = readPier(name, value);
    const under = value.at("under").refs() ?? [];
    // under several timbers there is one entry for each, of the same name
    if (pier !== undefined)
      return under.length === 0 ? [pier] : under.map((each) => ({ ...pier, under: each }));
    at.context.unread.add(name);
    return [];
  });
}

/** No pier of a small frame is dug deeper; a feet sign in place of an inch sign is. */
const DEEPEST = fromInches(12 * 12);

function readPier(name: string, at: Cursor): PierEntry | undefined {
  const kind = at.at("kind").choice(["tube", "pad"]);
  if (kind === undefined) return undefined;
  const size = at.at(kind === "tube" ? "diameter" : "width").size();
  const places = at.at("at").places();
  const listed = at.at("at").node;
  const top = at.at("top").height();
  const depth = at.at("depth").size(DEEPEST);
  const lost =
    at.isCut ||
    size === undefined ||
    (at.has("at") &&
      (places === undefined || (listed?.kind === "list" && places.length < listed.items.length))) ||
    (at.has("top") && top === undefined) ||
    (at.has("depth") && depth === undefined);
  if (lost) return undefined;
  return {
    name,
    path: at.path,
    under: undefined,
    at: places,
    kind,
    diameter: size,
    depth,
    top,
    lateral: at.at("lateral").choice(["single", "doubled"]) ?? "single",
    footing: readFooting(at.at("footing")),
    anchor: readAnchor(at.at("anchor")),
    rebar: readRebar(at.at("rebar")),
  };
}

function readFooting(at: Cursor): PierEntry["footing"] {
  if (!at.isMap) return undefined;
  return { path: at.path, diameter: at.at("diameter").size(), thickness: at.at("thickness").size() };
}

/** More bars than a pier of this trade has room for; also the schema's limit, like the sizes. */
const MOST_BARS = 24;
const LEAST_BAR = 3;
const LARGEST_BAR = 11;

function readRebar(at: Cursor): PierEntry["rebar"] {
  const count = at.at("count").count(1, MOST_BARS);
  const size = at.at("size").count(LEAST_BAR, LARGEST_BAR);
  return count === undefined || size === undefined ? undefined : { path: at.path, count, size };
}
