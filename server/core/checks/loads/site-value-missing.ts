import type { Frame } from "../../frame/frame.ts";
import type { Model } from "../../model/model.ts";
import { enclosureOfFrame, goesByFlow } from "../../statics/enclosure.ts";
import { lacksWinterWind } from "../../statics/snow-loads.ts";
import { needsWind } from "../../statics/wind-need.ts";
import { defineCheck } from "../check.ts";
import type { SourceFacts } from "../source-facts.ts";

type Missing =
  | "snow"
  | "snow-exposure"
  | "snow-thermal"
  | "winter-wind"
  | "wind"
  | "wind-bare"
  | "wind-and-snow"
  | "wind-exposure"
  | "wind-flow"
  | "frost-depth"
  | "soil"
  | "basis-loads"
  | "risk-category";

interface Data {
  readonly missing: Missing;
  /** the map that is in the file already and takes the value, or the map that the value stands in: `/site`; empty for the file */
  readonly into: string;
  /** the key that the value stands under */
  readonly key: string;
}

interface Words {
  readonly what: string;
  /** what is written, beside others where it needs them */
  readonly example: { readonly inch: string; readonly mm: string };
  readonly whom: string;
}

const both = (example: string): Words["example"] => ({ inch: example, mm: example });

const HAZARD_MAP = "the building department or the hazard map of the load standard";

const WORDS: Readonly<Record<Missing, Words>> = {
  snow: {
    what: "the ground snow load",
    example: { inch: "ground: 45 psf", mm: "ground: 2.2 kPa" },
    whom: HAZARD_MAP,
  },
  "snow-exposure": {
    what: "how exposed the roof is to wind that clears snow",
    example: both("exposure: partially-exposed"),
    whom: "your own look at the site",
  },
  "winter-wind": {
    what: "the winter wind parameter W2, by which asce-7-22 drifts snow over the ridge of this roof",
    example: both("winter-wind: 0.45"),
    whom: "the hazard map of the load standard, for your place",
  },
  "snow-thermal": {
    what: "whether the roof is heated or open",
    example: both("thermal: open"),
    whom: "your own plan",
  },
  wind: {
    what: "the wind speed",
    example: { inch: "speed: 107 mph", mm: "speed: 48 m/s" },
    whom: HAZARD_MAP,
  },
  "wind-bare": {
    what: "the wind speed, which a frame without a roof asks for when it has siding or stands more than 8 ft above the ground (common practice)",
    example: { inch: "speed: 107 mph, exposure: C", mm: "speed: 48 m/s, exposure: C" },
    whom: HAZARD_MAP,
  },
  "wind-and-snow": {
    what: "the wind speed and the exposure category (B woods and suburbs, C open, D shore), which the snow on a roof goes by too",
    example: { inch: "speed: 107 mph, exposure: C", mm: "speed: 48 m/s, exposure: C" },
    whom: "the building department or the hazard map of the load standard, the exposure from your own look at the site",
  },
  "wind-exposure": {
    what: "the exposure category (B woods and suburbs, C open, D shore), which wind and the snow on a roof go by",
    example: both("exposure: C"),
    whom: "your own look at the site",
  },
  "wind-flow": {
    what: "whether wind passes freely under the roof, where sides are open",
    example: both("flow: clear"),
    whom: "your own plan; goods stacked over half the opening obstruct it",
  },
  "frost-depth": {
    what: "the frost depth",
    example: { inch: "frost-depth: 32 in", mm: "frost-depth: 800" },
    whom: "the building department",
  },
  soil: {
    what: "the soil under the piers",
    example: both("soil: sand"),
    whom: "a test pit or the building department",
  },
  "basis-loads": {
    what: "which edition of ASCE 7 the snow and wind values belong to",
    example: both("loads: asce-7-16"),
    whom: "where the values are from; those of 7-16 and 7-22 must not be mixed",
  },
  "risk-category": {
    what: "the risk category",
    example: both("risk-category: i"),
    whom: "the load standard (i for barns and sheds, ii for dwellings)",
  },
};

/** The example in the maps that the file does not have yet: `wind: {speed: 107 mph}` for a file that has `site`. */
function nested({ missing, into, key }: Data, metric: boolean): string {
  const { inch, mm } = WORDS[missing].example;
  const maps = key
    .slice(into.length + 1)
    .split("/")
    .slice(0, -1);
  return maps.reduceRight((inner, map) => `${map}: {${inner}}`, metric ? mm : inch);
}

/** The nearest map around a value that has something in it; a map of its own, such as `snow`, always does. */
function intoOf(path: string, { site, basis }: Frame): string {
  return path === site.path ? sectionOf(site) : path === basis.path ? sectionOf(basis) : path;
}

function sectionOf({ path, ...keys }: Frame["site"] | Frame["basis"]): string {
  const written = Object.values(keys).some((value) =>
    Array.isArray(value) ? value.length > 0 : value !== undefined,
  );
  return written ? path : "";
}

/** What only the site can give and the frame needs: loads with a roof, wind on tall frames, frost and soil with piers. */
function* missing(model: Model): Generator<{ path: string; missing: Missing }> {
  const { frame } = model;
  const { site, basis } = frame;
  const { snow, wind } = site;
  const sitePath = site.path;
  if (frame.roof) {
    if (snow?.ground === undefined) yield { path: snow?.path ?? sitePath, missing: "snow" };
    else if (snow.exposure === undefined) yield { path: snow.path, missing: "snow-exposure" };
    else if (snow.thermal === undefined) yield { path: snow.path, missing: "snow-thermal" };
    else if (model.roof?.slopes.some((slope) => lacksWinterWind(model, slope)))
      yield { path: snow.path, missing: "winter-wind" };
  }
  if (needsWind(model) || wind?.speed !== undefined) {
    // snow is in no combination without the exposure: it is asked for also where nothing is said of the wind
    const snows = frame.roof !== undefined && snow?.ground !== undefined;
    if (!wind) yield { path: sitePath, missing: snows ? "wind-and-snow" : frame.roof ? "wind" : "wind-bare" };
    else if (wind.speed === undefined) {
      yield { path: wind.path, missing: frame.roof ? "wind" : "wind-bare" };
      if (snows && wind.exposure === undefined) yield { path: wind.path, missing: "wind-exposure" };
    } else if (wind.exposure === undefined) yield { path: wind.path, missing: "wind-exposure" };
    else if (wind.flow === undefined && asksForFlow(model)) yield { path: wind.path, missing: "wind-flow" };
  }
  if (snow?.ground !== undefined || wind?.speed !== undefined) {
    if (basis.loads === undefined) yield { path: basis.path, missing: "basis-loads" };
    if (basis.riskCategory === undefined) yield { path: basis.path, missing: "risk-category" };
  }
  if (frame.piers.length > 0) {
    if (site.frostDepth === undefined) yield { path: sitePath, missing: "frost-depth" };
    if (site.soil === undefined) yield { path: sitePath, missing: "soil" };
  }
}

/** Only wind under a roof goes by what stands there. */
function asksForFlow(model: Model): boolean {
  return model.frame.roof !== undefined && goesByFlow(enclosureOfFrame(model));
}

/** The key that each value stands under. */
const KEYS: Readonly<Record<Missing, string>> = {
  snow: "/site/snow/ground",
  "snow-exposure": "/site/snow/exposure",
  "snow-thermal": "/site/snow/thermal",
  "winter-wind": "/site/snow/winter-wind",
  wind: "/site/wind/speed",
  "wind-bare": "/site/wind/speed",
  "wind-and-snow": "/site/wind/speed",
  "wind-exposure": "/site/wind/exposure",
  "wind-flow": "/site/wind/flow",
  "frost-depth": "/site/frost-depth",
  soil: "/site/soil",
  "basis-loads": "/basis/loads",
  "risk-category": "/basis/risk-category",
};

/** It is written, and what is wrong with it is said there; or the line that may give it has its own finding. */
function toldAlready({ facts }: SourceFacts, frame: Frame, key: string): boolean {
  const parents = [...frame.lost].some((section) => key.startsWith(`${section}/`));
  return (
    parents ||
    facts.some(
      (fact) =>
        "path" in fact && (key === fact.path || (fact.path !== "" && key.startsWith(`${fact.path}/`))),
    ) ||
    facts.some((fact) => fact.kind === "unknown-key" && nearTo(fact, key))
  );
}

/** A misspelt key has its finding, which names the right one. */
function nearTo(fact: Extract<SourceFacts["facts"][number], { kind: "unknown-key" }>, key: string): boolean {
  const cut = key.lastIndexOf("/");
  const [map, name] = [key.slice(0, cut), key.slice(cut + 1)];
  const beside = fact.path === `${map}/${fact.key}`;
  return beside && (fact.nearest === name || name.startsWith(fact.key));
}

export const siteValueMissing = defineCheck<"whole", Data>({
  meta: {
    id: "site-value-missing",
    title: "What only the site can give is missing",
    level: "warning",
    area: "loads",
    source: {
      text: "ASCE/SEI 7-16 and 7-22, chapters 7 and 26; IRC R403.1.4: site values have no default",
      status: "memory",
    },
    explanation: {
      what: "A value that depends on the place is not given: snow, wind, frost depth, soil, or the edition they belong to.",
      why: "It is never taken as zero: what depends on it is not checked until it is there.",
      remedy: "Get the value where the message says, and write it into the file.",
    },
  },
  input: "whole",
  *find({ source, model }) {
    for (const m of missing(model))
      if (!toldAlready(source, model.frame, KEYS[m.missing]))
        yield {
          path: m.path,
          onKey: true,
          apart: m.missing,
          data: { missing: m.missing, into: intoOf(m.path, model.frame), key: KEYS[m.missing] },
        };
  },
  words: (d, say) => {
    const { what, whom } = WORDS[d.missing];
    const values = {
      what: say.text(what),
      whom: say.text(whom),
      key: nested(d, say.metric),
      map: d.into.slice(d.into.lastIndexOf("/") + 1),
    };
    return d.into === ""
      ? say.text(
          "The file does not give {what}, so what depends on it is not checked. It comes from {whom}. Write “{key}”.",
          values,
        )
      : say.text(
          "The file does not give {what}, so what depends on it is not checked. It comes from {whom}. Write “{key}” under “{map}”.",
          values,
        );
  },
});
