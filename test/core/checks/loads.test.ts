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

const COVERED = "deck: {kind: boards, thickness: 1 in}, covering: {kind: standing-seam, coverage: 16 in}";
/** The gate's plate on wall A, a second one on wall B, and a roof over both. */
const covered = (members: string): string =>
  gate({
    head: `
      frame: Gate
      format: 1
      basis: {loads: asce-7-16, risk-category: i}
    `,
    site: `
      site:
        snow: {ground: 45 psf, exposure: partially-exposed, thermal: open}
        wind: {speed: 107 mph, exposure: C, flow: clear}
        frost-depth: 30 in
        soil: sand
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave}
        ${members}
    `,
  });

findingsFixture(
  "roof-uncarried: a roof without rafters and purlins bears on no timber",
  covered("").replace(
    "joints:\n",
    `roof: {kind: gable, pitch: "9:12", ${COVERED}}\n#@0-4 warning roof-uncarried: No timber of the frame carries this roof\njoints:\n`,
  ),
  { whole: true, only: ["warning"] },
);
findingsFixture(
  "roof-uncarried: a principal rafter in each bent carries it",
  covered("principal: {kind: rafter, section: 6x8, bents: [1, 2]}").replace(
    "joints:\n",
    `roof: {kind: gable, pitch: "9:12", deck: {kind: boards, thickness: 1 1/2 in}}\njoints:\n`,
  ),
  { only: ["error"] },
);
