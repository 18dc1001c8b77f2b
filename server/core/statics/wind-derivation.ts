/** The wind on a frame told line by line, from the wind that loads it. */
import type { Wind, WindCase } from "../loads/wind-cases.ts";
import type { Model } from "../model/model.ts";
import type { Note } from "../note.ts";
import type { Sourced } from "../sourced.ts";
import type { BasicLoads } from "./basic-loads.ts";
import {
  factorLine,
  type LoadLine,
  type LoadPattern,
  type LoadPressure,
  type LoadSection,
  resultLine,
  shapeLine,
  shareLine,
  statedLine,
} from "./load-lines.ts";

const FACTORS: Readonly<Record<string, Note>> = {
  K_z: "height above the ground",
  K_zt: "hills and ridges around",
  K_e: "height above the sea",
  K_d: "direction of the wind",
  G: "gusts",
  GC_pi: "pressure inside",
  C_f: "shape of posts and braces",
};

const factor = (f: Parameters<typeof factorLine>[0]): LoadLine =>
  factorLine(f, FACTORS[f.symbol] ?? f.symbol);

function windLines(wind: Wind): LoadLine[] {
  const { input, velocityPressure: q, members } = wind;
  const inQ = new Set(q.factors.map(({ symbol }) => symbol));
  const later = [...wind.factors, ...members.factors].filter(
    (f, i, all) => !inQ.has(f.symbol) && all.findIndex(({ symbol }) => symbol === f.symbol) === i,
  );
  return [
    statedLine("V", "speed of the wind, strength level", input.speed, "mph"),
    shapeLine(
      "h",
      input.planes.length > 0 ? "mean height of the roof" : "top of the frame",
      input.meanHeight,
      "ft",
    ),
    ...q.factors.map(factor),
    resultLine("q_h", "velocity pressure at that height", q.value, "psf", q),
    ...later.map(factor),
    resultLine(
      "F/A",
      members.least
        ? "on the faces of posts, ties and braces, the least allowed"
        : "on the faces of posts, ties and braces",
      members.value,
      "psf",
      members,
    ),
    ...leastLines(wind),
    shareLine(wind.asdFactor),
  ];
}

/** The least wind is a case of its own, instead of the pressures. */
function leastLines({ input, least, loneWall }: Wind): LoadLine[] {
  const line = (id: string, what: Note, { value, status, source }: Sourced): LoadLine => ({
    id,
    what,
    value,
    unit: "psf",
    status,
    source,
  });
  return input.enclosure === "open"
    ? [line("least", "the least on all that the wind sees", least.open)]
    : [
        line("lone-wall", "on a wall alone in the wind, both faces", loneWall),
        line("least-walls", "the least on walls", least.walls),
        line("least-roof", "the least on the upright projection of the roof", least.roof),
      ];
}

const on = (plane: string): Note => ({ text: "slope {slope}", parts: { slope: { words: plane } } });

function patternOf({ id, roof, walls, windwardOverhang, status, source }: WindCase): LoadPattern {
  const wall = (name: string, psf: number): LoadPressure => ({ on: name, psf });
  return {
    id,
    pressures: [
      ...roof.map(({ plane, coefficient, psf, from, to }) => ({ on: on(plane), coefficient, psf, from, to })),
      ...(windwardOverhang === undefined ? [] : [wall("overhang toward the wind", windwardOverhang)]),
      ...(walls
        ? [
            wall("wall toward the wind", walls.windward),
            wall("wall in the lee", walls.leeward),
            wall("walls along the wind", walls.side),
          ]
        : []),
    ],
    status,
    source,
  };
}

const OPEN = { clear: "open, clear flow", obstructed: "open, obstructed flow" } as const;
const ENCLOSED = {
  "partially-open": "partially open",
  "partially-enclosed": "partially enclosed",
  enclosed: "enclosed",
} as const;

/** What the figures take the building for. */
const nameOf = ({ enclosure, flow }: Wind["input"]): string =>
  enclosure === "open" ? OPEN[flow] : ENCLOSED[enclosure];

/** @returns one section, or none while the site leaves the wind open */
export function windSections({ frame }: Model, { wind }: BasicLoads): LoadSection[] {
  if (!wind) return [];
  return [
    {
      part: "wind",
      ...(wind.input.planes.length > 0 ? { name: nameOf(wind.input) } : {}),
      path: frame.site.wind?.path ?? frame.site.path,
      lines: windLines(wind),
      patterns: wind.cases.map(patternOf),
    },
  ];
}
