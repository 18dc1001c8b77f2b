/** The parts of a frame that say where it stands, what it is cut from and who raises it. */
import type {
  Accepted,
  Crew,
  DesignValueKey,
  Floor,
  Mill,
  Price,
  Question,
  TimberClass,
} from "../core/frame/frame.ts";
import type { Basis, Site } from "../core/frame/site.ts";
import { fromInches } from "../core/quantity/length.ts";
import type { Cursor } from "./cursor.ts";

/** Frost goes nowhere deeper that is built on: 20 ft (common practice, no source). */
const DEEPEST_FROST = fromInches(240);

export function readBasis(at: Cursor): Basis {
  return {
    path: at.path,
    loads: at.at("loads").choice(["asce-7-16", "asce-7-22"]),
    riskCategory: at.at("risk-category").choice(["i", "ii", "iii", "iv"]),
  };
}

/** No town lies higher. */
const HIGHEST = fromInches(18_000 * 12);

/** The schema's limits. */
const TOPOGRAPHY = { least: 1, most: 4 };

/** What the schema reports as out of its limits is not taken. */
function within(
  at: Cursor,
  { least, most }: { readonly least: number; readonly most: number },
): number | undefined {
  const value = at.number();
  return value !== undefined && value >= least && value <= most ? value : undefined;
}

export function readSite(at: Cursor): Site {
  const snow = at.at("snow");
  const wind = at.at("wind");
  const winterWind = snow.at("winter-wind").number();
  return {
    path: at.path,
    snow: snow.isMap
      ? {
          path: snow.path,
          ground: snow.at("ground").amount("pressure"),
          exposure: snow.at("exposure").choice(["fully-exposed", "partially-exposed", "sheltered"]),
          thermal: snow
            .at("thermal")
            .choice(["heated", "cold-ventilated", "open", "unheated", "freezer", "greenhouse"]),
          slides: snow.at("slides").flag(),
          ...(winterWind !== undefined && winterWind > 0 && winterWind <= 1 ? { winterWind } : {}),
        }
      : undefined,
    wind: wind.isMap
      ? {
          path: wind.path,
          speed: wind.at("speed").amount("speed"),
          exposure: wind.at("exposure").choice(["B", "C", "D"]),
          flow: wind.at("flow").choice(["clear", "obstructed"]),
          topography: within(wind.at("topography"), TOPOGRAPHY),
        }
      : undefined,
    elevation: at.at("elevation").gap(HIGHEST),
    frostDepth: at.at("frost-depth").gap(DEEPEST_FROST),
    soil: at.at("soil").choice(["bedrock", "sedimentary-rock", "gravel", "sand", "clay"]),
    ground: at
      .at("ground")
      .entries()
      .flatMap(([key, value]) => {
        const height = value.offset();
        return height === undefined ? [] : [{ key, height, path: value.path }];
      }),
  };
}

/**
 * psi, least and most: about a tenth of the least and five times the most in NDS Supplement tables 4A and 4D as this program
 * has them, so that worn wood and the strongest of the tropics pass, and a slip of the unit does not (common practice).
 */
const STRENGTHS = [
  ["Fb", 40, 10_000],
  ["Ft", 20, 10_000],
  ["Fv", 10, 1_000],
  ["Fc-perp", 25, 5_000],
  ["Fc", 25, 10_000],
] as const;
/** The schema's limits: balsa has about 0.1, the heaviest woods 1.2 (Wood Handbook; from memory). */
const GRAVITY = { least: 0.05, most: 1.5 };
/** psi, the least: no wood is half as soft (common practice); 1,600 psi is a slip for 1,600,000 */
const STIFFNESSES = [
  ["E", 150_000],
  ["E-min", 50_000],
] as const;
/** lb/ft³; balsa weighs twice as much (from memory) */
const LIGHTEST = 3;

/** Also the schema's limits. */
const MOST_LOGS = 1000;
const MOST_PEOPLE = 200;

function readValues(at: Cursor): Pick<TimberClass, "values" | "unreadValues"> {
  const values = new Map<DesignValueKey, number>();
  for (const [key, least, most] of STRENGTHS) {
    const stress = at.at(key).amount("stress", { least, most, above: false });
    if (stress !== undefined) values.set(key, stress);
  }
  for (const [key, least] of STIFFNESSES) {
    const stress = at.at(key).amount("stress", { least });
    if (stress !== undefined) values.set(key, stress);
  }
  const gravity = within(at.at("G"), GRAVITY);
  if (gravity !== undefined) values.set("G", gravity);
  // a key that is mistyped may be any of them
  const unread = at.isMap ? at.entries().some(([key]) => !values.has(key as DesignValueKey)) : at.isWritten;
  return { values, ...(unread && { unreadValues: true }) };
}

/** Defaults: green and rough, as own-sawn timber is (common practice, and the safe side). */
export function readClasses(at: Cursor): readonly TimberClass[] {
  return at.named().flatMap(([name, value]) => {
    if (!value.isMap) {
      at.context.unread.add(name);
      return [];
    }
    // what the class lacks may stand behind the cut
    if (value.isCut) at.context.unread.add(name);
    return [
      {
        name,
        path: value.path,
        species: value.at("species").ref(),
        grade: value.at("grade").ref(),
        seasoning: value.at("seasoning").choice(["green", "dry"]) ?? "green",
        surface: value.at("surface").choice(["rough", "planed"]) ?? "rough",
        ...readValues(value.at("values")),
        because: value.at("because").text(),
        weight: value.at("weight").amount("density", { least: LIGHTEST, above: false }),
      },
    ];
  });
}

export function readMill(at: Cursor): Mill {
  return {
    path: at.path,
    longestCut: at.at("longest-cut").size(),
    kerf: at.at("kerf").gap(),
    logs: at
      .at("logs")
      .items()
      .flatMap((log) => {
        const smallEnd = log.at("small-end").size();
        const length = log.at("length").size();
        const count = log.at("count").count(1, MOST_LOGS);
        if (smallEnd === undefined || length === undefined || count === undefined) return [];
        return [{ path: log.path, species: log.at("species").ref(), smallEnd, length, count }];
      }),
  };
}

export function readFloors(at: Cursor): readonly Floor[] {
  return at.entries().flatMap(([name, value]) => {
    if (!value.isMap) return [];
    const deck = value.at("deck");
    return [
      {
        name,
        path: value.path,
        on: value.at("on").ref(),
        live: value.at("live").amount("pressure"),
        deck: deck.isMap
          ? {
              path: deck.path,
              kind: deck.at("kind").choice(["boards", "panels"]),
              thickness: deck.at("thickness").size(),
            }
          : undefined,
        dead: value.at("dead").amount("pressure"),
      },
    ];
  });
}

export function readCrew(at: Cursor): Crew | undefined {
  if (!at.isMap) return undefined;
  const machine = at.at("machine");
  const kind = machine.at("kind").choice(["forks", "crane", "hoist", "gin-pole"]);
  return {
    path: at.path,
    people: at.at("people").count(1, MOST_PEOPLE),
    each: at.at("each").amount("force"),
    machine:
      kind === undefined
        ? undefined
        : { path: machine.path, kind, limit: machine.at("limit").amount("force") },
  };
}

export function readPrices(at: Cursor): readonly Price[] {
  return at.entries().flatMap(([item, value]) => {
    const each = value.number();
    return each === undefined || each < 0 ? [] : [{ item, path: value.path, each }];
  });
}

export function readQuestions(at: Cursor): readonly Question[] {
  return at.items().flatMap((item) => {
    const [what, whom] = [item.at("what").text(), item.at("whom").text()];
    return what === undefined || whom === undefined ? [] : [{ path: item.path, what, whom }];
  });
}

/** Without a reason nothing is accepted. */
export function readAccepted(at: Cursor): readonly Accepted[] {
  return at.items().flatMap((item) => {
    const check = item.at("check").text();
    const because = item.at("because").text();
    if (check === undefined || because === undefined || because.trim() === "") return [];
    // A place that cannot be read must not turn into "everywhere".
    const place = item.at("at").text();
    return place === undefined && item.has("at") ? [] : [{ path: item.path, check, at: place, because }];
  });
}
