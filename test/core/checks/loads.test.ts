import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, gate, pavilion } from "./gate.ts";

findingsFixture(
  "site-value-missing: frost and soil where there are piers, at the nearest thing the file has",
  gate({
    site: `
      site: {}
      #@0-4 warning site-value-missing: the frost depth
      #@0-4 warning site-value-missing: the soil
    `,
  }),
);

findingsFixture(
  "site-value-missing: nothing at all of a site with a roof",
  pavilion({
    head: `
      frame: Pavilion
      #@0-5 warning site-value-missing: The file does not give the ground snow load, so what depends on it is not checked. It comes from the building department or the hazard map of the load standard. Write “site: {snow: {ground: 45 psf}}”.
      #@0-5 warning site-value-missing: the wind speed
      #@0-5 warning site-value-missing: the frost depth
      #@0-5 warning site-value-missing: the soil
      format: 1
    `,
    site: "",
  }),
);

findingsFixture(
  "site-value-missing: what belongs to the snow and the wind, and their edition",
  pavilion({
    head: `
      frame: Pavilion
      #@0-5 warning site-value-missing: which edition of ASCE 7
      #@0-5 warning site-value-missing: the risk category
      format: 1
    `,
    site: `
      site:
        snow: {ground: 45 psf}
      # ^^^^ warning site-value-missing: how exposed the roof is
        wind: {speed: 107 mph}
      # ^^^^ warning site-value-missing: the exposure category
        frost-depth: 30 in
        soil: sand
    `,
  }),
);

findingsFixture(
  "site-value-missing: the last of the snow's and the wind's",
  pavilion({
    site: `
      site:
        snow: {ground: 45 psf, exposure: sheltered}
      # ^^^^ warning site-value-missing: whether the roof is heated or open
        wind: {speed: 107 mph, exposure: C}
      # ^^^^ warning site-value-missing: whether wind passes freely under the open roof
        frost-depth: 30 in
        soil: sand
    `,
  }),
);

test("site-value-missing: a frame without roof and piers needs nothing of its site", () => {
  const bare = gate({ site: "", piers: "" }).replaceAll("from: pier-top", "from: 0");
  expect(findingsOf(bare).filter(({ finding }) => finding.check === "site-value-missing")).toEqual([]);
});
