/**
 * How the loads of a frame came about, line by line: what the site gives, every factor with its source, what follows from
 * them, and the pressures of each load case. It retells the very values that load the frame (`basicLoads`), and computes
 * none of them anew.
 */
import { groupBy } from "../collect.ts";
import type { TimberClass } from "../frame/frame.ts";
import { editionName } from "../loads/snow-factors.ts";
import type { Model, Timber } from "../model/model.ts";
import type { Note } from "../note.ts";
import type { Sourced } from "../sourced.ts";
import { leastTimberDensity, timberDensity } from "../wood/timber-weight.ts";
import { type BasicLoads, isLeastDead, type StripLive } from "./basic-loads.ts";
import { floorWeight } from "./floor-loads.ts";
import {
  factorLine,
  type LoadLine,
  type LoadPattern,
  type LoadSection,
  resultLine,
  shapeLine,
  statedLine,
} from "./load-lines.ts";
import { snowCases, snowLines } from "./snow-derivation.ts";
import { weightOf } from "./wall-faces.ts";
import { windSections } from "./wind-derivation.ts";

/** Classes of timber that are in the frame, each once. */
function classesOf({ timbers }: Model): TimberClass[] {
  return [...new Map(timbers.flatMap((t) => (t.class ? [[t.class.name, t.class] as const] : []))).values()];
}

/** Density of each class of timber. */
function weightSection(model: Model): LoadSection[] {
  const lines = classesOf(model).flatMap((timberClass): LoadLine[] => {
    const density = timberDensity(timberClass);
    if (!density) return [];
    const { value, status, source } = density;
    const what: Note = timberClass.seasoning === "green" ? "timber, green" : "timber, dry";
    return [{ id: timberClass.name, what, value, unit: "lb/ft3", status, source }];
  });
  return lines.length === 0 ? [] : [{ part: "weight", path: "/timber", lines, patterns: [] }];
}

/** What is left of all weights against uplift: dry timber, the lighter end of what lies on it. */
function leastSection(model: Model, { all, roof, enclosure }: BasicLoads): LoadSection[] {
  if (!all.some(isLeastDead)) return [];
  const { frame } = model;
  const dry = classesOf(model).flatMap((timberClass): LoadLine[] => {
    const density = leastTimberDensity(timberClass);
    // a weight that the file states stands where the timber is dry, or where no dry weight of its wood is known
    const what = density?.status === "given" ? "timber, by the weight that the file states" : "timber, dry";
    return density ? [leastLine(timberClass.name, what, density, "lb/ft3")] : [];
  });
  const layers = (roof?.layers ?? []).map(({ what, least }) =>
    leastLine(what, what.replaceAll("-", " "), least, "psf"),
  );
  const siding = (enclosure?.faces ?? []).flatMap(({ line, siding }) => {
    const what: Note = { text: "siding of {line}", parts: { line: { words: line } } };
    return siding ? [leastLine(`siding ${line}`, what, weightOf(siding).least, "psf")] : [];
  });
  const floors = frame.floors.map((floor) =>
    leastLine(floor.name, "weight of the floor", floorWeight(floor).least, "psf"),
  );
  return [
    {
      part: "least-weight",
      path: frame.site.wind?.path ?? frame.site.path,
      lines: [...dry, ...layers, ...siding, ...floors],
      patterns: [],
    },
  ];
}

function leastLine(
  id: string,
  what: Note,
  { value, status, source }: Sourced,
  unit: LoadLine["unit"],
): LoadLine {
  return { id, what, value, unit, status, source };
}

/** Layers over the rafters, per area of slope. */
function roofSection({ frame }: Model, { roof }: BasicLoads): LoadSection[] {
  if (!frame.roof || !roof || roof.layers.length === 0) return [];
  const layers = roof.layers.map((layer): LoadLine => {
    const { what, value, status, source, note } = layer;
    const line = { id: what, what: what.replaceAll("-", " "), value, unit: "psf" as const, status, source };
    return note === undefined ? line : { ...line, note };
  });
  const total = resultLine("D", "all layers, on the slope", roof.total, "psf", {
    status: roof.status,
    source: "sum of the layers",
  });
  return [{ part: "roof", path: frame.roof.path, lines: [...layers, total], patterns: [] }];
}

/** Timbers of one entry that take the same roof live load make one pattern. */
function livePatterns(lives: readonly StripLive[]): LoadPattern[] {
  const groups = new Map<string, { readonly first: StripLive; readonly timbers: Timber[] }>();
  for (const one of lives) {
    const key = `${one.strip.timber.member} ${one.live.value.toFixed(3)}`;
    const group = groups.get(key) ?? { first: one, timbers: [] };
    group.timbers.push(one.strip.timber);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ first: { live }, timbers: [first, ...others] }) => {
    const timber = { words: first?.id ?? "" };
    const count = { value: others.length, unit: "ratio" as const };
    return {
      id: first?.id ?? "",
      words: {
        text: others.length === 0 ? "{timber}" : "{timber} and {count} more",
        parts: { timber, count },
      },
      pressures: [{ on: "level", psf: live.value }],
      status: live.status,
      source: live.source,
    };
  });
}

const LIVE: Readonly<Record<string, Note>> = {
  R_1: "by the area that the timber carries",
  R_2: "by the pitch",
};

/** The factors of the timber that carries the most, and what each timber takes. */
function liveSection({ frame }: Model, { live }: BasicLoads): LoadSection[] {
  const [first] = live;
  if (!frame.roof || !first) return [];
  const widest = live.reduce((most, one) => (one.area > most.area ? one : most), first);
  const { basic, value, status, source } = widest.live;
  return [
    {
      part: "roof-live",
      path: frame.roof.path,
      lines: [
        resultLine("L_o", "ordinary roofs, level", basic, "psf", { status, source }),
        shapeLine(
          "A_t",
          {
            text: "level area that {timber} carries, the most of all",
            parts: { timber: { words: widest.strip.timber.id } },
          },
          widest.area,
          "ft2",
        ),
        ...widest.live.factors.map(({ symbol, value: factor, ...known }) =>
          factorLine(
            { symbol, value: factor, status: known.status, source: known.source },
            LIVE[symbol] ?? symbol,
          ),
        ),
        resultLine("L_r", "roof live load on it, level", value, "psf", { status, source }),
      ],
      patterns: livePatterns(live),
    },
  ];
}

/** One section for all slopes that are snowed on alike. */
function snowSections({ frame }: Model, { snow }: BasicLoads): LoadSection[] {
  const alike = groupBy([...(snow ?? [])], ([, one]) => JSON.stringify([snowLines(one), snowCases(one)]));
  return [...alike.values()].flatMap((group): LoadSection[] => {
    const [[, first] = []] = group;
    if (!first) return [];
    return [
      {
        part: "snow",
        ...(alike.size > 1 ? { name: group.map(([{ wall }]) => wall).join(", ") } : {}),
        path: frame.site.snow?.path ?? frame.site.path,
        lines: snowLines(first),
        patterns: snowCases(first),
      },
    ];
  });
}

/** Siding on each side that has some: its weight, and what of the side stays open. */
function sidingSections({ enclosure }: BasicLoads): LoadSection[] {
  const sided = (enclosure?.faces ?? []).flatMap((f) => (f.siding ? [{ ...f, siding: f.siding }] : []));
  const [first] = sided;
  if (!first) return [];
  const path = first.siding.path.slice(0, first.siding.path.lastIndexOf("/"));
  const lines = sided.flatMap(({ line, siding, gross, openings, openingsKnown }): LoadLine[] => {
    const side = { line: { words: line } };
    const { value, status, source } = weightOf(siding);
    const known = { unit: "ft2", status: "derived", source: "geometry of the frame" } as const;
    return [
      {
        id: `${line}/weight`,
        what: { text: "siding of {line}", parts: side },
        unit: "psf",
        value,
        status,
        source,
      },
      { id: `${line}/gross`, what: { text: "side {line}", parts: side }, value: gross, ...known },
      ...(openingsKnown
        ? [{ id: `${line}/open`, what: { text: "open of it", parts: side }, value: openings, ...known }]
        : []),
    ];
  });
  return [{ part: "siding", path, lines, patterns: [] }];
}

/** Floors that are loaded: what lies on their timbers. */
function floorSections({ frame }: Model, { all }: BasicLoads): LoadSection[] {
  return frame.floors.flatMap((floor): LoadSection[] => {
    const { live, name, path } = floor;
    if (live === undefined || !all.some(({ id }) => id === `L/${name}`)) return [];
    const { note, ...dead } = floorWeight(floor);
    const weight = resultLine("D", "weight of the floor", dead.value, "psf", dead);
    return [
      {
        part: "floor",
        name,
        path,
        lines: [
          note === undefined ? weight : { ...weight, note },
          statedLine("L", "live load, kept whole whatever the area", live, "psf"),
        ],
        patterns: [],
      },
    ];
  });
}

/** @returns a section for each load that the frame has, in the order in which they are told */
export function loadDerivation(model: Model, loads: BasicLoads): LoadSection[] {
  return [
    ...weightSection(model),
    ...roofSection(model, loads),
    ...sidingSections(loads),
    ...floorSections(model, loads),
    ...liveSection(model, loads),
    ...snowSections(model, loads),
    ...windSections(model, loads),
    ...leastSection(model, loads),
  ];
}

/** @returns the standard that the loads follow: `ASCE 7-16`; undefined while the file names none */
export function loadStandard({ frame }: Model): string | undefined {
  return frame.basis.loads && editionName(frame.basis.loads);
}
