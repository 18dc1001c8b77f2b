/**
 * Wood and water against outside figures. The cases of coverings, sheathing, panels, screws and heat belong to the roof.
 */
import { describe, expect, it } from "vitest";
import {
  density,
  equilibriumMoisture,
  estimatedVolumetricShrinkage,
  gravityAt,
  lumberShrinkage,
  mostMoisture,
  shrinkageTo,
  sinkingMoisture,
  sizeAfter,
} from "../../server/core/wood/moisture.ts";
import { type Case, casesOf, check, readReference, tableOf, titleOf } from "./cases.ts";

const FILE = "roof-and-wood";

function run(c: Case): Record<string, number> {
  const g = c.given;
  if (c.id.startsWith("shrink-mst-1")) {
    const loss = (g.size_in * (shrinkageTo(6, g.to_pct) - shrinkageTo(6, g.from_pct))) / 100;
    return { loss_in: loss, size_after_in: g.size_in - loss };
  }
  if (c.id.startsWith("shrink-mst-2")) {
    const [from, to] = [g.from_pct, g.to_pct].map((m) => 1 - lumberShrinkage(m).width / 100);
    return { size_after_in: (g.size_in * to!) / from! };
  }
  if (c.id === "shrink-rp") {
    const { width, thickness } = lumberShrinkage(g.moisture_pct);
    return { width_pct: width, thickness_pct: thickness };
  }
  if (c.id.startsWith("shrink-")) {
    const [radial, tangential] = [g.S0_radial, g.S0_tangential].map((s) => shrinkageTo(s, g.moisture_pct));
    const [r, t] = [g.S0_radial, g.S0_tangential].map((s) => sizeAfter(g.green_in, s, 30, g.moisture_pct));
    return {
      Sx_radial: radial!,
      Sx_tangential: tangential!,
      size_radial_in: r!,
      size_tangential_in: t!,
      mean_loss_in: g.green_in - (r! + t!) / 2,
    };
  }
  if (c.id.startsWith("change-")) {
    const after = sizeAfter(g.size_in, g.S0, g.from_pct, g.to_pct);
    const plain = (g.size_in * (shrinkageTo(g.S0, g.from_pct) - shrinkageTo(g.S0, g.to_pct))) / 100;
    return { size_after_in: after, change_in: after - g.size_in, plain_product_in: plain };
  }
  if (c.id.startsWith("emc-")) return { emc_pct: equilibriumMoisture(g.temperature_F, g.humidity_pct) };
  if (c.id.startsWith("max-mc-")) {
    const most = { MC_max_pct: mostMoisture(g.G_b) };
    return "MC_sink_pct" in c.expect ? { ...most, MC_sink_pct: sinkingMoisture(g.G_b) } : most;
  }
  if (c.id.startsWith("density-")) {
    const at12 = gravityAt(g.G_b, g.S0_volume, 12);
    return { green_lb_ft3: density(g.G_b, g.green_pct), G_12: at12, lb_ft3_12: density(at12, 12) };
  }
  if (c.id === "sg-estimate") {
    const volumetric = estimatedVolumetricShrinkage(g.G_b);
    return { S0_volume: volumetric, G_12: gravityAt(g.G_b, volumetric, 12) };
  }
  const volume = (g.b_in * g.d_in * g.length_ft) / 144;
  const whole = volume * density(g.G_b, g.moisture_pct);
  return { volume_ft3: volume, weight_lb: whole, water_lb: whole - volume * density(g.G_b, 0) };
}

describe("moisture, shrinkage and density", () => {
  const cases = casesOf(FILE, "shrink-", "change-", "emc-", "max-mc-", "density-", "sg-", "weight-");
  it.each(cases.map((c) => [titleOf(c), c] as const))("%s", (_title, c) => check(c, run(c)));
  it("leaves only cases of the roof to others", () => {
    const all: Case[] = readReference(FILE).cases;
    const left = all.filter((c) => c.agrees && !cases.some((mine) => mine.id === c.id));
    expect([...new Set(left.map((c) => c.id.split("-")[0]))].sort()).toEqual([
      "area",
      "panel",
      "screws",
      "sheath",
      "slope",
      "thermal",
    ]);
  });
});

describe("equilibrium moisture at 70 °F (memory, Wood Handbook Table 4-2)", () => {
  it.each(tableOf(FILE, "emc-70").records.map((r) => [r.humidity_pct, r.emc_pct]))(
    "%s percent: %s",
    (humidity, emc) => {
      expect(Math.abs(equilibriumMoisture(70, humidity) - emc)).toBeLessThanOrEqual(0.06);
    },
  );
});

describe("equilibrium moisture by temperature and humidity (derived, Eq 4-5)", () => {
  const cells = tableOf(FILE, "emc").records.flatMap((r) =>
    [20, 30, 40, 50, 60, 70, 80, 90].map((h) => [r.temperature_F, h, r[`h${h}`]] as const),
  );
  it.each(cells)("%s °F, %s percent: %s", (temperature, humidity, emc) => {
    expect(Math.abs(equilibriumMoisture(temperature, humidity) - emc)).toBeLessThanOrEqual(0.01);
  });
});
