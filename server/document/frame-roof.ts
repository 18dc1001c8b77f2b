/** The roof of a frame. */
import type { CeilingKind, CoveringKind, Roof } from "../core/frame/roof.ts";
import { MOST_IN_SERIES } from "../core/model/series.ts";
import { fromInches, type Length } from "../core/quantity/length.ts";
import type { Cursor } from "./cursor.ts";
import { readFasteners } from "./frame-fasteners.ts";
import { readPegs, readRule } from "./frame-joints.ts";
import { measuredIn } from "./frame-measured.ts";

const COVERINGS = [
  "standing-seam",
  "ribbed-steel",
  "corrugated-steel",
  "asphalt-shingles",
  "wood-shingles",
  "wood-shakes",
  "slate",
  "clay-tile",
  "roll-roofing",
] as const satisfies readonly CoveringKind[];

const CEILINGS = ["plaster", "plasterboard", "boards", "none"] as const satisfies readonly CeilingKind[];

/** @returns undefined without a readable `kind`, or when the pitch is written and cannot be read */
export function readRoof(at: Cursor): Roof | undefined {
  const kind = at.at("kind").choice(["gable", "shed"]);
  if (kind === undefined) return undefined;
  const pitch = at.at("pitch").pitch();
  const deck = at.at("deck");
  const deckKind = deck.at("kind").choice(["boards", "panels", "purlins"]);
  const covering = at.at("covering");
  const coveringKind = covering.at("kind").choice(COVERINGS);
  const ceiling = at.at("ceiling");
  const ceilingKind = ceiling.at("kind").choice(CEILINGS);
  const roof: Roof = {
    path: at.path,
    kind,
    pitch,
    high: at.at("high").ref(),
    rafters: readRafters(at.at("rafters")),
    deck:
      deckKind === undefined
        ? undefined
        : {
            path: deck.path,
            kind: deckKind,
            thickness: deck.at("thickness").size(),
            spacing: deck.at("spacing").size(),
            laid: deck.at("laid").choice(["across", "diagonal"]) ?? "across",
          },
    covering:
      coveringKind === undefined
        ? undefined
        : {
            path: covering.path,
            kind: coveringKind,
            coverage: covering.at("coverage").size(),
            weight: covering.at("weight").amount("pressure"),
          },
    unclear: (at.has("deck") && deckKind === undefined) || (at.has("covering") && coveringKind === undefined),
    ceiling:
      ceilingKind === undefined
        ? undefined
        : { path: ceiling.path, kind: ceilingKind, weight: ceiling.at("weight").amount("pressure") },
  };
  return at.isCutItself || (at.has("pitch") && pitch === undefined) ? undefined : roof;
}

type Rafters = NonNullable<Roof["rafters"]>;

/** @returns undefined when what decides their number, size or place is written and cannot be read */
function readRafters(at: Cursor): Rafters | undefined {
  if (!at.isMap) return undefined;
  const seat = at.at("seat");
  const overhang = readOverhang(at.at("overhang"));
  const rafters: Rafters = {
    path: at.path,
    section: at.at("section").section(),
    timber: at.at("timber").ref(),
    spacing: at.at("spacing").size(),
    count: at.at("count").count(2, MOST_IN_SERIES),
    layout: at.at("layout").choice(["even", "fixed"]) ?? "even",
    seat: { ...readSeat(seat), path: seat.isMap ? seat.path : at.path },
    head: readHead(at.at("head")),
    overhang: overhang ?? { path: at.path, eave: fromInches(0), rake: undefined, high: fromInches(0) },
    fasten: readFasteners(at),
    ...measuredIn(at),
  };
  const lost =
    at.isCut ||
    rafters.section === undefined ||
    (at.has("spacing") && rafters.spacing === undefined) ||
    (at.has("count") && rafters.count === undefined) ||
    (at.has("overhang") && overhang === undefined);
  if (lost) at.context.unread.add("rafter");
  return lost ? undefined : rafters;
}

/** A bird's mouth unless it says otherwise. */
function readSeat(at: Cursor): Omit<Rafters["seat"], "path"> {
  const stepped = at.at("kind").choice(["birds-mouth", "step-lap"]) === "step-lap";
  const housing = stepped ? at.at("housing").size() : undefined;
  const form = stepped ? at.at("form").choice(["plumb", "square"]) : undefined;
  return {
    kind: stepped ? "step-lap" : "birds-mouth",
    seat: at.at("length").size(),
    ...(housing !== undefined && { housing }),
    ...(form && { form }),
    ...readRule(at),
  };
}

function readHead(at: Cursor): Rafters["head"] {
  const kind = at.at("kind").choice(["housed", "birds-mouth", "bridle", "lapped"]);
  if (kind === undefined) return undefined;
  return {
    path: at.path,
    kind,
    into: at.at("into").ref(),
    housing: at.at("housing").gap(),
    ...readRule(at),
    pegs: readPegs(at.at("pegs"), "rafter-pair"),
    fasten: readFasteners(at),
  };
}

function readOverhang(at: Cursor): Rafters["overhang"] | undefined {
  if (!at.isMap) return undefined;
  const part = (key: string): Length | undefined => (at.has(key) ? at.at(key).gap() : fromInches(0));
  const eave = part("eave");
  const high = part("high");
  const rake = at.at("rake").gap();
  if (eave === undefined || high === undefined || (at.has("rake") && rake === undefined)) return undefined;
  return { path: at.path, eave, rake, high };
}
