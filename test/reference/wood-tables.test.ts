/**
 * Every row of the tables of wood that the program holds, against the collected data in `design-values.yaml` and
 * `wood-species.yaml`, each figure with its status there: verified = seen in the named source, memory = remembered and not
 * seen. Any single figure or status that is changed on one side alone fails.
 */
import { describe, expect, test } from "vitest";
import { GREEN_WEIGHT } from "../../server/core/wood/data/green-weight.ts";
import { GROUPS } from "../../server/core/wood/data/groups.ts";
import { HARDWOODS } from "../../server/core/wood/data/hardwoods.ts";
import { SOFTWOODS } from "../../server/core/wood/data/softwoods.ts";
import { TABLE_4A } from "../../server/core/wood/data/table-4a.ts";
import { TABLE_4B } from "../../server/core/wood/data/table-4b.ts";
import { TABLE_4D } from "../../server/core/wood/data/table-4d.ts";
import type { DesignRow, Figure } from "../../server/core/wood/data/table-types.ts";
import { type Row, readReference } from "./cases.ts";

const VALUES = readReference("design-values");
const SPECIES = readReference("wood-species");

const STATUS: Readonly<Record<string, string>> = {
  verified: "published",
  memory: "memory",
  derived: "derived",
  uncertain: "uncertain",
};

const GRADES: Readonly<Record<string, readonly string[]>> = {
  "Dense Select Structural": ["dense-select-structural"],
  "Clear Structural": ["clear-structural"],
  "Select Structural": ["select-structural"],
  "Select Structural, open grain": ["select-structural-open-grain"],
  "Dense No.1": ["dense-no-1"],
  "No.1 Dense": ["dense-no-1"],
  "No.1 & Btr": ["no-1-and-better"],
  "No.1": ["no-1"],
  "No.1, open grain": ["no-1-open-grain"],
  "No.1/No.2": ["no-1", "no-2"],
  "No.2 Dense": ["dense-no-2"],
  "No.2": ["no-2"],
  "No.2, open grain": ["no-2-open-grain"],
  "No.3": ["no-3"],
};

const id = (name: string): string => name.replaceAll("_", "-");

const COLUMNS = ["Fb", "Ft", "Fv", "Fc_perp", "Fc", "E", "Emin"] as const;

type Line = Readonly<Record<string, string>>;

/** `{grade: "no-1", Fb: "1350 published", …}` */
function lineOf([grade, Fb, Ft, Fv, FcPerp, Fc, E, Emin, status, exceptions]: DesignRow): Line {
  const own = (key: (typeof COLUMNS)[number]): string =>
    exceptions?.[key === "Fc_perp" ? "Fc-perp" : key === "Emin" ? "E-min" : key] ?? status;
  const figures = { Fb, Ft, Fv, Fc_perp: FcPerp, Fc, E, Emin };
  return { grade, ...Object.fromEntries(COLUMNS.map((key) => [key, `${figures[key]} ${own(key)}`])) };
}

function wanted(row: Row): Line[] {
  const own = (key: string): string =>
    (["verified", "uncertain", "derived"] as const).find((s) => row[`${s}_fields`]?.includes(key)) ??
    row.status;
  const figures = Object.fromEntries(COLUMNS.map((key) => [key, `${row[key]} ${STATUS[own(key)]}`]));
  return GRADES[row.grade]!.map((grade) => ({ grade, ...figures }));
}

const lines = (rows: readonly DesignRow[] | undefined): Line[] | undefined => rows?.map(lineOf);
const wantedLines = (rows: readonly Row[] | undefined): Line[] | undefined => rows?.flatMap(wanted);

describe("reference design values, NDS Supplement", () => {
  const timbers: readonly Row[] = VALUES.table_4D_timbers;
  test.each(timbers.map((group) => [id(group.id), group] as const))("Table 4D, %s", (name, group) => {
    const own = TABLE_4D.find((g) => g.group === name);
    expect({ beams: lines(own?.beams), posts: lines(own?.posts), both: lines(own?.both) }).toEqual({
      beams: wantedLines(group.beams_and_stringers),
      posts: wantedLines(group.posts_and_timbers),
      both: wantedLines(group.timbers_5x5_and_larger),
    });
  });
  const lumber: readonly Row[] = VALUES.table_4A_dimension_lumber;
  test.each(lumber.map((group) => [id(group.id), group] as const))("Table 4A, %s", (name, group) => {
    expect(lines(TABLE_4A.find((g) => g.group === name)?.rows)).toEqual(wantedLines(group.rows));
  });
  const widths: readonly Row[] = VALUES.table_4B_southern_pine.by_width;
  test.each(widths.map((block, n) => [block.width_class, block, n] as const))(
    "Table 4B, %s",
    (name, block, n) => {
      const own = TABLE_4B[n];
      expect(own?.nominalWidth).toBe(Number(/(\d+) in wide/.exec(name)?.[1]));
      expect(lines(own?.rows)).toEqual(wantedLines(block.rows));
    },
  );
  test("no group stands in one place alone", () => {
    expect(TABLE_4D.map((g) => g.group).sort()).toEqual(timbers.map((g) => id(g.id)).sort());
    expect(TABLE_4A.map((g) => g.group).sort()).toEqual(lumber.map((g) => id(g.id)).sort());
    expect(TABLE_4B.length).toBe(widths.length);
  });
  test("assigned specific gravities of the groups, each with its status", () => {
    const known = new Map<string, string>();
    for (const { id: name, G } of [
      ...timbers,
      ...lumber,
      { id: "southern_pine", G: VALUES.table_4B_southern_pine.G },
    ]) {
      const figure = `${G.value} ${STATUS[G.status]}`;
      expect(known.get(id(name)) ?? figure, name).toBe(figure);
      known.set(id(name), figure);
    }
    expect(new Map(GROUPS.map(({ id: name, G: [value, status] }) => [name, `${value} ${status}`]))).toEqual(
      known,
    );
  });
});

const figure = (f: Figure | undefined): string | undefined => f && `${f[0]} ${f[1]}`;
const wantedFigure = (f: Row | null | undefined): string | undefined =>
  f ? `${f.value} ${STATUS[f.status]}` : undefined;

describe("species, USDA Wood Handbook", () => {
  const rows: readonly Row[] = SPECIES.species;
  const own = new Map([...SOFTWOODS, ...HARDWOODS].map((row) => [row.id, row]));
  test.each(rows.map((row) => [id(row.id), row] as const))("%s", (name, row) => {
    const found = own.get(name);
    expect({
      name: found?.name,
      botanical: found?.botanical,
      green: figure(found?.gravity.green),
      dry: figure(found?.gravity.dry),
      heartwood: figure(found?.greenMoisture?.heartwood),
      sapwood: figure(found?.greenMoisture?.sapwood),
      radial: figure(found?.shrinkage.radial),
      tangential: figure(found?.shrinkage.tangential),
      volumetric: figure(found?.volumetric),
      decay: found?.decay.slice(0, 2).join(" "),
    }).toEqual({
      name: row.common,
      botanical: row.botanical,
      green: wantedFigure(row.sg_green_volume),
      dry: wantedFigure(row.sg_12pct),
      heartwood: wantedFigure(row.green_mc_heartwood_pct),
      sapwood: wantedFigure(row.green_mc_sapwood_pct),
      radial: wantedFigure(row.shrink_radial_pct),
      tangential: wantedFigure(row.shrink_tangential_pct),
      volumetric: wantedFigure(row.shrink_volumetric_pct),
      decay: `${id(row.heartwood_decay.value)} ${STATUS[row.heartwood_decay.status]}`,
    });
    const kind = SOFTWOODS.some((s) => s.id === name) ? "softwood" : "hardwood";
    expect(kind).toBe(row.kind);
  });
  test("none stands in one place alone", () =>
    expect([...own.keys()].sort()).toEqual(rows.map((row) => id(row.id)).sort()));
  test.each(rows.map((row) => [id(row.id), row] as const))("%s, weight at 12 percent", (name, row) => {
    const [gravity] = own.get(name)!.gravity.dry;
    if (row.density_12pct_lb_ft3)
      expect(62.4 * gravity * 1.12).toBeCloseTo(row.density_12pct_lb_ft3.value, 0);
  });
});

describe("green weights of woods without a listed moisture (memory, Agriculture Handbook 72; lb/ft³)", () => {
  test.each([
    ["eastern-white-pine", 36],
    ["douglas-fir-interior-north", 36],
    ["slash-pine", 58],
    ["norway-spruce", 34],
    ["northern-white-cedar", 28],
    ["redwood-young", 50],
    ["black-locust", 58],
    ["red-maple", 50],
    ["hickory-shagbark", 64],
    ["aspen", 43],
  ])("%s: %s", (name, pounds) => expect(GREEN_WEIGHT[name]?.[0]).toBe(pounds));
  test("no other", () => expect(Object.keys(GREEN_WEIGHT).length).toBe(10));
});
