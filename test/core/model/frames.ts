/** Small frames from parts of their text, and ways to say where a timber stands. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";
import type { Joint } from "../../../server/core/joinery/joint.ts";
import type { JointSizes } from "../../../server/core/joinery/joint-sizes.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import type { Model, Timber } from "../../../server/core/model/model.ts";
import type { ModelProblem } from "../../../server/core/model/problems.ts";
import { solidOf } from "../../../server/core/model/solid.ts";
import { readFrame } from "../../../server/document/read.ts";

export const MM = 1 / 25.4;

/** The blocks of a frame file; what is left out is the small two-bent frame below. */
export interface Parts {
  readonly units?: "inch" | "mm";
  readonly site?: string;
  readonly timber?: string;
  readonly walls?: string;
  readonly bents?: string;
  readonly levels?: string;
  readonly members?: Readonly<Record<string, string>>;
  readonly joints?: Readonly<Record<string, string>>;
  readonly roof?: string;
  readonly piers?: Readonly<Record<string, string>>;
}

const block = (name: string, entries: Readonly<Record<string, string>> | undefined): string =>
  entries && Object.keys(entries).length > 0
    ? `${name}:\n${Object.entries(entries)
        .map(([key, value]) => `  ${key}: ${value}\n`)
        .join("")}`
    : "";

/** Two walls 12 ft apart, three bents at 10 ft, datum at the posts' feet. */
export function textOf(parts: Parts): string {
  return [
    `frame: Test\nformat: 1\nunits: ${parts.units ?? "inch"}\n`,
    parts.site ? `site: ${parts.site}\n` : "",
    `timber: ${parts.timber ?? "{frame: {species: eastern-white-pine, grade: no-1, seasoning: green, surface: rough}}"}\n`,
    `grid:\n  walls: ${parts.walls ?? "{A: 0, B: 12 ft}"}\n  bents: ${parts.bents ?? "{1: 0, 2: 10 ft, 3: 20 ft}"}\n`,
    `  levels: ${parts.levels ?? "{base: 0, top: 8 ft, tie-top: 7 ft}"}\n`,
    block("members", parts.members),
    block("joints", parts.joints),
    parts.roof ? `roof: ${parts.roof}\n` : "",
    block("piers", parts.piers),
  ].join("");
}

/** From text to model; nothing in the text may be unreadable unless `unreadable` says so. */
export function modelOf(text: string, unreadable = false): Model {
  const { frame, source } = readFrame(text);
  if (!unreadable) expect(source.facts, text).toEqual([]);
  return buildModel(frame);
}

export const build = (parts: Parts): Model => modelOf(textOf(parts));

export const sample = (name: string): Model =>
  modelOf(
    readFileSync(fileURLToPath(new URL(`../../../samples/${name}.frame.yaml`, import.meta.url)), "utf8"),
  );

export function stick(model: Model, id: string): Timber {
  const found = model.byId.get(id);
  expect(found, `${id} among ${[...model.byId.keys()].join(", ")}`).toBeDefined();
  return found!;
}

export function joint(model: Model, id: string): Joint {
  const found = model.joints.find((j) => j.id === id);
  expect(found, `${id} among ${model.joints.map((j) => j.id).join(", ")}`).toBeDefined();
  return found!;
}

export const idsOf = (model: Model, member: string): string[] =>
  model.timbers.filter((t) => t.member === member).map((t) => t.id);

/** Problems of the kinds named, as `kind path`. */
export const problemsOf = (model: Model): string[] => model.problems.map((p) => `${p.kind} ${p.path}`);

export function problem<K extends ModelProblem["kind"]>(
  model: Model,
  kind: K,
): Extract<ModelProblem, { kind: K }> {
  const found = model.problems.find((p) => p.kind === kind);
  expect(found, `${kind} among ${problemsOf(model).join(", ")}`).toBeDefined();
  return found as Extract<ModelProblem, { kind: K }>;
}

type Interval = readonly [number, number];

/** The box around the full section between a timber's shoulders. */
export function boxOf(timber: Timber): { x: Interval; y: Interval; z: Interval } {
  const { low, high } = solidOf(timber);
  return { x: [low[0], high[0]], y: [low[1], high[1]], z: [low[2], high[2]] };
}

export function expectNear(got: number | undefined, want: number, what: string, tolerance = 1e-6): void {
  expect(got, what).toBeDefined();
  expect(Math.abs(got! - want), `${what}: got ${got}, want ${want}`).toBeLessThanOrEqual(tolerance);
}

export function expectPoint(got: readonly number[], want: readonly number[], what: string): void {
  want.forEach((w, i) => {
    expectNear(got[i], w, `${what} ${"xyz"[i]}`);
  });
}

/** Where the full section stands, between shoulders; `unit` of the figures in inches. */
export function expectBox(model: Model, id: string, x: Interval, y: Interval, z: Interval, unit = 1): void {
  const box = boxOf(stick(model, id));
  for (const [axis, want] of [
    ["x", x],
    ["y", y],
    ["z", z],
  ] as const) {
    expectNear(box[axis][0], want[0] * unit, `${id} ${axis} low`);
    expectNear(box[axis][1], want[1] * unit, `${id} ${axis} high`);
  }
}

/** The reference faces as directions in space, `-y` for the face that looks toward wall A. */
export function referenceFaces(timber: Timber): string[] {
  const names = ["x", "y", "z"];
  return (
    [
      [timber.widthDir, timber.reference.width],
      [timber.depthDir, timber.reference.depth],
    ] as const
  ).flatMap(([direction, sign]) => {
    if (sign === 0) return [];
    const looks = direction.map((d) => d * sign);
    const axis = looks.findIndex((d) => Math.abs(d) > 0.99);
    return axis < 0 ? ["slope"] : [`${(looks[axis] ?? 0) > 0 ? "+" : "-"}${names[axis]}`];
  });
}

/** Everything of a model that a user can see, apart from the order in which the file names it. */
export function summary(model: Model): unknown {
  const r = (n: number): number => Math.round(n * 1e6) / 1e6 + 0;
  const round = (value: unknown): unknown =>
    typeof value === "number"
      ? r(value)
      : Array.isArray(value)
        ? value.map(round)
        : value && typeof value === "object"
          ? Object.fromEntries(Object.entries(value).map(([k, v]) => [k, round(v)]))
          : value;
  const byId = (a: { id: string }, b: { id: string }): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
  return {
    timbers: model.timbers
      .map(({ class: c, ...t }) => ({ ...(round(t) as object), id: t.id, class: c?.name }))
      .sort(byId),
    joints: model.joints
      .map((j) => ({
        id: j.id,
        kind: j.kind,
        of: j.of.id,
        into: j.into.id,
        end: j.end,
        sizes: round(j.sizes),
      }))
      .sort(byId),
    piers: model.piers.map((p) => ({ id: p.id, top: round(p.top), bottom: r(p.bottom) })).sort(byId),
    problems: problemsOf(model).sort(),
  };
}

/** How many joints there are of each entry and kind. */
export function jointCounts(model: Model): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const j of model.joints) {
    const key = `${j.id.split("@")[0]} ${j.kind}`;
    counts[key] = (counts[key] ?? 0) + 1;
  }
  return counts;
}

/** Tenon of a joint: thickness, width, length, set-in, walls, room; in `unit` inches. */
export function expectTenon(
  sizes: JointSizes,
  want: {
    readonly thickness: number;
    readonly width: number;
    readonly length: number;
    readonly setIn: number;
    readonly walls: readonly [number, number];
    readonly room: number;
  },
  unit = 1,
): void {
  const tenon = sizes.tenon!;
  for (const key of ["thickness", "width", "length", "setIn"] as const)
    expectNear(tenon[key].value, want[key] * unit, key);
  expectNear(tenon.walls[0], want.walls[0] * unit, "wall at the reference face");
  expectNear(tenon.walls[1], want.walls[1] * unit, "far wall");
  expectNear(tenon.room, want.room * unit, "room");
}

export function expectLength(model: Model, id: string, want: number): void {
  expectNear(stick(model, id).length, want, `length of ${id}`);
}
